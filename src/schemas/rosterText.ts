/** Bytes that a spreadsheet program saved, to text: UTF-8 with or without its mark, UTF-16, or Windows-1252. */
import { type Decoded, decodeUtf8 } from './utf8.ts';

/** `mixed`: some of it is UTF-8 and some is not, so no reading of the whole is right. */
export type RosterText = Decoded | { readonly mixedAt: { readonly line: number; readonly column: number } };

export function rosterText(bytes: Uint8Array): RosterText {
  const marked = bytes[0] === 0xff && bytes[1] === 0xfe ? 'utf-16le' : 'utf-16be';
  if (marked === 'utf-16le' || (bytes[0] === 0xfe && bytes[1] === 0xff))
    return { text: new TextDecoder(marked).decode(bytes) };
  const decoded = decodeUtf8(bytes);
  if ('text' in decoded) return decoded;
  // Windows-1252 gives every byte a letter, so nothing but this tells whether it was meant.
  if (hasUtf8Letter(bytes)) return { mixedAt: decoded.wrongAt };
  return { text: new TextDecoder('windows-1252').decode(bytes) };
}

/** Whether two or more bytes stand together that only UTF-8 writes one after the other. */
function hasUtf8Letter(bytes: Uint8Array): boolean {
  for (let at = 0; at < bytes.length; at += 1) {
    const further = furtherBytes(bytes[at] ?? 0);
    const tail = bytes.subarray(at + 1, at + 1 + further);
    if (further > 0 && tail.length === further && tail.every((byte) => byte >> 6 === 0b10)) return true;
  }
  return false;
}

/** How many bytes follow the first one of a letter (RFC 3629, section 3); none where it is no such first byte. */
function furtherBytes(first: number): number {
  if (0xc2 <= first && first <= 0xdf) return 1;
  if (0xe0 <= first && first <= 0xef) return 2;
  return 0xf0 <= first && first <= 0xf4 ? 3 : 0;
}
