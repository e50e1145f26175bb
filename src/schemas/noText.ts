/** Files that spreadsheet programs and cameras write and that are no text at all. */

/** What such files begin with: zip (and so workbooks and documents), PDF, PNG, JPEG, GIF, the older workbooks. */
const beginnings: readonly (readonly number[])[] = [
  [0x50, 0x4b, 0x03, 0x04],
  [0x25, 0x50, 0x44, 0x46],
  [0x89, 0x50, 0x4e, 0x47],
  [0xff, 0xd8, 0xff],
  [0x47, 0x49, 0x46, 0x38],
  [0xd0, 0xcf, 0x11, 0xe0],
];

/** So much of a file shows what it is. */
const headLength = 1_000;

/** One byte in so many may be empty by a slip; of UTF-16 that does not say so, every second one is. */
const rare = 10;

/** Whether these bytes are anything but text; UTF-16 that says so at its beginning is text. */
export function isNoText(bytes: Uint8Array): boolean {
  if (beginnings.some((beginning) => beginning.every((byte, at) => bytes[at] === byte))) return true;
  const isMarked = (bytes[0] === 0xff && bytes[1] === 0xfe) || (bytes[0] === 0xfe && bytes[1] === 0xff);
  const head = bytes.subarray(0, headLength);
  return !isMarked && head.filter((byte) => byte === 0).length * rare > head.length;
}
