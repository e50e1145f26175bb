/**
 * Where the objects of a PDF are found (ISO 32000-1, 7.5.8). A long print has a million of them; but those of a page are
 * packed together one after the other, so that whole runs of them are noted at once.
 */

/** By its place in the file, or by the stream that it is packed in and its place there. */
export type Found = { readonly kind: 1 | 2; readonly at: number; readonly index: number };

export type ObjectTable = {
  readonly set: (number: number, found: Found) => void;
  /** So many rows, each less the one above it, which leaves next to nothing to pack. */
  readonly bytes: (rows: number) => Uint8Array;
};

/** Objects with numbers one after the other: each at a place of its own, or packed one after the other. */
type Run = { readonly from: number; readonly found: Found; count: number };

/** How rows are told (PNG's "up"), then one byte for the kind, four for the place, two for the place in a stream. */
const width = 8;
const up = 2;

export function objectTable(): ObjectTable {
  const runs: Run[] = [];
  return {
    set: (number, found) => {
      const last = runs.at(-1);
      if (last !== undefined && goesOn(last, number, found)) last.count += 1;
      else runs.push({ from: number, found, count: 1 });
    },
    bytes: (count) => lessAbove(rowsOf(runs, count)),
  };
}

function goesOn({ from, found, count }: Run, number: number, { kind, at, index }: Found): boolean {
  return (
    number === from + count &&
    kind === 2 &&
    found.kind === 2 &&
    at === found.at &&
    index === found.index + count
  );
}

function rowsOf(runs: readonly Run[], count: number): Uint8Array {
  const rows = new Uint8Array(count * width);
  const view = new DataView(rows.buffer);
  for (let at = 0; at < rows.length; at += width) view.setUint8(at, up);
  // The first object is none, as every table says.
  view.setUint16(6, 0xffff);
  for (const { from, found, count: many } of runs)
    for (let more = 0; more < many; more += 1) {
      const at = (from + more) * width;
      view.setUint8(at + 1, found.kind);
      view.setUint32(at + 2, found.at);
      view.setUint16(at + 6, found.index + more);
    }
  return rows;
}

/** From the last row on, so that the one above is still whole. */
function lessAbove(rows: Uint8Array): Uint8Array {
  for (let row = rows.length - width; row >= width; row -= width)
    for (let at = row + 1; at < row + width; at += 1) rows[at] = (rows[at] ?? 0) - (rows[at - width] ?? 0);
  return rows;
}
