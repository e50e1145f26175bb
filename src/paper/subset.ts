import { boundsOf, composedOutline } from './composedOutline.ts';
import type { Face } from './face.ts';
import type { Composed } from './letters.ts';
import { sfntOf, tablesOf } from './woff.ts';

/** Tables that a TrueType font embedded in a PDF keeps (ISO 32000-1, 9.9); hinting, where there is any, as it is. */
const kept = ['cvt ', 'fpgm', 'prep'];
const trueType = 0x00010000;

/**
 * A font with only the glyphs in this list: glyph 0 first, then one for each entry, in order. The same glyph may be
 * listed twice, for two texts that look alike. Parts of composed glyphs are added at the end; letters may be composed here.
 *
 * @param still numbers in the new font of those glyphs that shall have no width
 * @param cmap its table of characters, where it is called by them
 */
export function subsetFont(
  face: Face,
  glyphs: readonly (number | Composed)[],
  still: ReadonlySet<number> = new Set(),
  cmap: Uint8Array | null = null,
): Uint8Array {
  const tables = tablesOf(face.sfnt);
  const source = glyphReader(tables);
  const all = [0, ...glyphs];
  const added = new Map<number, number>();
  const outlines: Uint8Array[] = [];
  // The list grows while it is read: a composed glyph adds the parts it is made of.
  for (let at = 0; at < all.length; at++) {
    outlines.push(
      withParts(source.outline(all[at] ?? 0), (part) => {
        const known = added.get(part);
        if (known !== undefined) return known;
        added.set(part, all.length);
        return all.push(part) - 1;
      }),
    );
  }
  const written = new Map<string, Uint8Array>();
  for (const tag of kept) {
    const table = tables.get(tag);
    if (table) written.set(tag, table);
  }
  if (cmap) written.set('cmap', cmap);
  const offsets = offsetsOf(outlines);
  written.set('glyf', joined(outlines, offsets));
  written.set('loca', longs(offsets));
  written.set('hmtx', metrics(all, source, still));
  written.set(
    'head',
    changed(tables, 'head', (view) => {
      view.setUint32(8, 0);
      view.setInt16(50, 1);
    }),
  );
  written.set(
    'hhea',
    changed(tables, 'hhea', (view) => view.setUint16(34, all.length)),
  );
  written.set(
    'maxp',
    changed(tables, 'maxp', (view) => view.setUint16(4, all.length)),
  );
  return sealed(sfntOf(trueType, written));
}

type GlyphReader = {
  readonly outline: (glyph: number | Composed) => Uint8Array;
  readonly advance: (glyph: number | Composed) => number;
  readonly bearing: (glyph: number | Composed) => number;
};

function glyphReader(tables: ReadonlyMap<string, Uint8Array>): GlyphReader {
  const [glyf, loca, hmtx] = [
    table(tables, 'glyf'),
    viewOf(table(tables, 'loca')),
    viewOf(table(tables, 'hmtx')),
  ];
  const long = viewOf(table(tables, 'head')).getInt16(50) === 1;
  const full = viewOf(table(tables, 'hhea')).getUint16(34);
  const offset = (glyph: number) => (long ? loca.getUint32(glyph * 4) : loca.getUint16(glyph * 2) * 2);
  const outline = (glyph: number) => glyf.subarray(offset(glyph), offset(glyph + 1));
  return {
    outline: (glyph) => (typeof glyph === 'number' ? outline(glyph) : composedOutline(glyph, outline)),
    advance: (glyph) =>
      typeof glyph === 'number' ? hmtx.getUint16(Math.min(glyph, full - 1) * 4) : glyph.advance,
    bearing: (glyph) => {
      if (typeof glyph !== 'number') return boundsOf(glyph, outline)[0];
      return hmtx.getInt16(glyph < full ? glyph * 4 + 2 : full * 4 + (glyph - full) * 2);
    },
  };
}

export function table(tables: ReadonlyMap<string, Uint8Array>, tag: string): Uint8Array {
  const found = tables.get(tag);
  if (!found) throw new Error(`A font has no table ${tag}.`);
  return found;
}

export function viewOf(bytes: Uint8Array): DataView {
  return new DataView(bytes.buffer, bytes.byteOffset, bytes.byteLength);
}

const wordArguments = 0x0001;
const oneScale = 0x0008;
const moreParts = 0x0020;
const twoScales = 0x0040;
const fourScales = 0x0080;

/** Renames the parts of a composed glyph (OpenType, glyf table, composite description); other glyphs as they are. */
function withParts(outline: Uint8Array, rename: (part: number) => number): Uint8Array {
  if (outline.length === 0 || viewOf(outline).getInt16(0) >= 0) return outline;
  const copy = outline.slice();
  const view = viewOf(copy);
  for (let at = 10, flags = moreParts; flags & moreParts; ) {
    flags = view.getUint16(at);
    view.setUint16(at + 2, rename(view.getUint16(at + 2)));
    at += 4 + (flags & wordArguments ? 4 : 2);
    if (flags & oneScale) at += 2;
    else if (flags & twoScales) at += 4;
    else if (flags & fourScales) at += 8;
  }
  return copy;
}

function offsetsOf(parts: readonly Uint8Array[]): number[] {
  const offsets = [0];
  for (const part of parts) offsets.push((offsets.at(-1) ?? 0) + ((part.length + 3) & ~3));
  return offsets;
}

function joined(parts: readonly Uint8Array[], offsets: readonly number[]): Uint8Array {
  const bytes = new Uint8Array(offsets.at(-1) ?? 0);
  for (const [index, part] of parts.entries()) bytes.set(part, offsets[index]);
  return bytes;
}

function longs(values: readonly number[]): Uint8Array {
  const view = new DataView(new ArrayBuffer(values.length * 4));
  for (const [index, value] of values.entries()) view.setUint32(index * 4, value);
  return new Uint8Array(view.buffer);
}

function metrics(
  glyphs: readonly (number | Composed)[],
  source: GlyphReader,
  still: ReadonlySet<number>,
): Uint8Array {
  const view = new DataView(new ArrayBuffer(glyphs.length * 4));
  for (const [index, glyph] of glyphs.entries()) {
    view.setUint16(index * 4, still.has(index) ? 0 : source.advance(glyph));
    view.setInt16(index * 4 + 2, source.bearing(glyph));
  }
  return new Uint8Array(view.buffer);
}

function changed(
  tables: ReadonlyMap<string, Uint8Array>,
  tag: string,
  change: (view: DataView) => void,
): Uint8Array {
  const copy = table(tables, tag).slice();
  change(viewOf(copy));
  return copy;
}

/** Sets the sum over the whole file that its head table holds (OpenType, head, checksumAdjustment). */
function sealed(sfnt: Uint8Array): Uint8Array {
  const view = viewOf(sfnt);
  let sum = 0;
  for (let at = 0; at < sfnt.length; at += 4) sum = (sum + view.getUint32(at)) >>> 0;
  const head = table(tablesOf(sfnt), 'head');
  view.setUint32(head.byteOffset - sfnt.byteOffset + 8, (0xb1b0afba - sum) >>> 0);
  return sfnt;
}
