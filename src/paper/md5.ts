/**
 * MD5 (RFC 1321). PDF asks for it as the checksum of an attached file (ISO 32000-1, table 46) and browsers do not have
 * it. It protects nothing; it only shows that a file came through whole.
 */

const shifts = [
  [7, 12, 17, 22],
  [5, 9, 14, 20],
  [4, 11, 16, 23],
  [6, 10, 15, 21],
];
const sines = Array.from({ length: 64 }, (_, at) => Math.floor(Math.abs(Math.sin(at + 1)) * 2 ** 32) >>> 0);

type State = [number, number, number, number];

/** As it is written in text. */
export function checksum(bytes: Uint8Array): string {
  return [...md5(bytes)].map((byte) => byte.toString(16).padStart(2, '0')).join('');
}

export function md5(bytes: Uint8Array): Uint8Array {
  const padded = new Uint8Array((((bytes.length + 8) >> 6) + 1) * 64);
  padded.set(bytes);
  padded[bytes.length] = 0x80;
  const view = new DataView(padded.buffer);
  view.setUint32(padded.length - 8, (bytes.length << 3) >>> 0, true);
  view.setUint32(padded.length - 4, Math.floor(bytes.length / 2 ** 29), true);
  let state: State = [0x67452301, 0xefcdab89, 0x98badcfe, 0x10325476];
  for (let at = 0; at < padded.length; at += 64) state = block(state, view, at);
  const digest = new DataView(new ArrayBuffer(16));
  for (const [index, word] of state.entries()) digest.setUint32(index * 4, word, true);
  return new Uint8Array(digest.buffer);
}

function block(before: State, view: DataView, start: number): State {
  let [a, b, c, d] = before;
  for (let step = 0; step < 64; step++) {
    const round = step >> 4;
    const [mixed, word] = mix(round, step, { b, c, d });
    const sum = (a + mixed + (sines[step] ?? 0) + view.getUint32(start + word * 4, true)) >>> 0;
    const shift = shifts[round]?.[step & 3] ?? 0;
    [a, b, c, d] = [d, (b + ((sum << shift) | (sum >>> (32 - shift)))) >>> 0, b, c];
  }
  return [(before[0] + a) >>> 0, (before[1] + b) >>> 0, (before[2] + c) >>> 0, (before[3] + d) >>> 0];
}

function mix(
  round: number,
  step: number,
  { b, c, d }: { b: number; c: number; d: number },
): [number, number] {
  if (round === 0) return [(b & c) | (~b & d), step];
  if (round === 1) return [(d & b) | (~d & c), (5 * step + 1) & 15];
  if (round === 2) return [b ^ c ^ d, (3 * step + 5) & 15];
  return [c ^ (b | ~d), (7 * step) & 15];
}
