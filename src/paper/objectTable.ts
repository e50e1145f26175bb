/** Where the objects of a PDF are found (ISO 32000-1, 7.5.8): a few bytes for each, as a long print has millions. */

/** By its place in the file, or by the stream that it is packed in and its place there. */
export type Found = { readonly kind: 1 | 2; readonly at: number; readonly index: number };

export type ObjectTable = {
  readonly set: (number: number, found: Found) => void;
  /** So many rows, each less the one above it, which leaves next to nothing to pack. */
  readonly bytes: (rows: number) => Uint8Array;
};

/** One byte for the kind, four for the place, two for the place in a stream. */
const width = 7;

export function objectTable(): ObjectTable {
  let rows = new Uint8Array(1024 * width);
  let view = new DataView(rows.buffer);
  // The first object is none, as every table says.
  view.setUint16(5, 0xffff);
  const roomFor = (count: number): void => {
    if (count * width <= rows.length) return;
    const more = new Uint8Array(Math.max(2 * rows.length, count * width));
    more.set(rows);
    rows = more;
    view = new DataView(rows.buffer);
  };
  return {
    set: (number, { kind, at, index }) => {
      roomFor(number + 1);
      view.setUint8(number * width, kind);
      view.setUint32(number * width + 1, at);
      view.setUint16(number * width + 5, index);
    },
    bytes: (count) => {
      roomFor(count);
      return lessAbove(rows.subarray(0, count * width), count);
    },
  };
}

function lessAbove(rows: Uint8Array, count: number): Uint8Array {
  const bytes = new Uint8Array(count * (width + 1));
  for (let row = 0; row < count; row += 1) {
    const to = row * (width + 1);
    bytes[to] = 2;
    for (let column = 0; column < width; column += 1) {
      const at = row * width + column;
      bytes[to + 1 + column] = (rows[at] ?? 0) - (row === 0 ? 0 : (rows[at - width] ?? 0));
    }
  }
  return bytes;
}
