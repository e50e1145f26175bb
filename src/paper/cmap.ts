/**
 * The table of a font that leads from characters to glyphs (OpenType, cmap, format 4): one Unicode table of the basic
 * plane. Fonts that are called by glyph need none.
 *
 * @param glyphs glyph by character, in rising order of characters
 */
export function cmapOf(glyphs: ReadonlyMap<number, number>): Uint8Array {
  const segments = [...segmentsOf(glyphs), { first: 0xffff, last: 0xffff, delta: 1 }];
  const count = segments.length;
  const search = 2 ** Math.floor(Math.log2(count));
  const header = [0, 1, 3, 1, 0, 12];
  const values = [
    ...[4, 16 + 8 * count, 0, count * 2, search * 2, Math.log2(search), (count - search) * 2],
    ...segments.map(({ last }) => last),
    0,
    ...segments.map(({ first }) => first),
    ...segments.map(({ delta }) => delta & 0xffff),
    ...segments.map(() => 0),
  ];
  const view = new DataView(new ArrayBuffer(2 * (header.length + values.length)));
  for (const [at, value] of [...header, ...values].entries()) view.setUint16(2 * at, value);
  return new Uint8Array(view.buffer);
}

type Segment = { readonly first: number; last: number; readonly delta: number };

/** Characters in a row whose glyphs are in a row too. */
function segmentsOf(glyphs: ReadonlyMap<number, number>): readonly Segment[] {
  const segments: Segment[] = [];
  for (const [character, glyph] of glyphs) {
    const open = segments.at(-1);
    if (open && open.last + 1 === character && open.delta === glyph - character) open.last = character;
    else segments.push({ first: character, last: character, delta: glyph - character });
  }
  return segments;
}
