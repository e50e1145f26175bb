import { unzlibSync } from 'fflate';

/** The signature of a WOFF 1.0 file: 'wOFF'. */
const woffSignature = 0x774f4646;

/** Unpacks bytes (RFC 1950) that will be so many. A runtime may have a faster way than ours. */
export type Inflate = (packed: Uint8Array, length: number) => Uint8Array;

const unpacked: Inflate = (packed, length) => unzlibSync(packed, { out: new Uint8Array(length) });

/** Unpacks a WOFF 1.0 font (W3C Recommendation, 2012, sections 3 to 5) into the sfnt it was made from. */
export function sfntFromWoff(woff: Uint8Array, inflate = unpacked): Uint8Array {
  const from = new DataView(woff.buffer, woff.byteOffset, woff.byteLength);
  if (from.getUint32(0) !== woffSignature) throw new Error('Not a WOFF font.');
  const tables = new Map<string, Uint8Array>();
  const count = from.getUint16(12);
  for (let index = 0; index < count; index++) {
    const entry = 44 + index * 20;
    const tag = String.fromCharCode(...woff.subarray(entry, entry + 4));
    const offset = from.getUint32(entry + 4);
    const packed = woff.subarray(offset, offset + from.getUint32(entry + 8));
    const length = from.getUint32(entry + 12);
    tables.set(tag, packed.length < length ? inflate(packed, length) : packed);
  }
  return sfntOf(from.getUint32(4), tables);
}

/** Writes an sfnt: header, table directory sorted by tag, tables padded to four bytes. */
export function sfntOf(version: number, tables: ReadonlyMap<string, Uint8Array>): Uint8Array {
  const tags = [...tables.keys()].sort();
  const sizes = tags.map((tag) => tables.get(tag)?.length ?? 0);
  const padded = sizes.map((size) => (size + 3) & ~3);
  let offset = 12 + tags.length * 16;
  const bytes = new Uint8Array(padded.reduce((sum, size) => sum + size, offset));
  const to = new DataView(bytes.buffer);
  const entrySelector = Math.floor(Math.log2(tags.length));
  const searchRange = 16 << entrySelector;
  to.setUint32(0, version);
  to.setUint16(4, tags.length);
  to.setUint16(6, searchRange);
  to.setUint16(8, entrySelector);
  to.setUint16(10, tags.length * 16 - searchRange);
  for (const [index, tag] of tags.entries()) {
    const record = 12 + index * 16;
    bytes.set(tables.get(tag) ?? new Uint8Array(), offset);
    for (let at = 0; at < 4; at++) bytes[record + at] = tag.charCodeAt(at);
    to.setUint32(record + 4, checksum(to, offset, padded[index] ?? 0));
    to.setUint32(record + 8, offset);
    to.setUint32(record + 12, sizes[index] ?? 0);
    offset += padded[index] ?? 0;
  }
  return bytes;
}

function checksum(view: DataView, offset: number, length: number): number {
  let sum = 0;
  for (let at = 0; at < length; at += 4) sum = (sum + view.getUint32(offset + at)) >>> 0;
  return sum;
}

/** The tables of an sfnt, by tag. */
export function tablesOf(sfnt: Uint8Array): ReadonlyMap<string, Uint8Array> {
  const view = new DataView(sfnt.buffer, sfnt.byteOffset, sfnt.byteLength);
  const tables = new Map<string, Uint8Array>();
  for (let index = 0; index < view.getUint16(4); index++) {
    const record = 12 + index * 16;
    const tag = String.fromCharCode(...sfnt.subarray(record, record + 4));
    const offset = view.getUint32(record + 8);
    tables.set(tag, sfnt.subarray(offset, offset + view.getUint32(record + 12)));
  }
  return tables;
}
