/** Bytes to text, strictly: a wrong byte is told by its place, never replaced in silence. */

export type Decoded = { readonly text: string } | { readonly wrongAt: Place };
export type Place = { readonly line: number; readonly column: number };

export function decodeUtf8(bytes: Uint8Array): Decoded {
  try {
    return { text: new TextDecoder('utf-8', { fatal: true }).decode(bytes) };
  } catch {
    return { wrongAt: endOf(soundText(bytes)) };
  }
}

/** The text before the first wrong byte, found by halving: a strict decoder says that, but not where, it fails. */
function soundText(bytes: Uint8Array): string {
  let [sound, wrong] = [0, bytes.length + 1];
  while (wrong - sound > 1) {
    const middle = (sound + wrong) >> 1;
    if (decodesTo(bytes, middle) === null) wrong = middle;
    else sound = middle;
  }
  return decodesTo(bytes, sound) ?? '';
}

/** As a stream, so that a character cut off at the end does not count as wrong. */
function decodesTo(bytes: Uint8Array, end: number): string | null {
  try {
    return new TextDecoder('utf-8', { fatal: true }).decode(bytes.subarray(0, end), { stream: true });
  } catch {
    return null;
  }
}

function endOf(text: string): Place {
  const lines = text.split('\n');
  return { line: lines.length, column: (lines.at(-1)?.length ?? 0) + 1 };
}
