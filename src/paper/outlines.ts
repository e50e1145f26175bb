import { maySee } from './edges.ts';
import { thousandth } from './measures.ts';
import type { Clip, Ink, Item, Page, Path, Shape, Words } from './page.ts';
import type { Face } from './face.ts';
import type { Type } from './type.ts';

/** The marks of a page in SVG, with every letter drawn as its outline: no font is needed to see it. */
export type Outlines = {
  /** Each letter and each cut once. */
  readonly definitions: readonly string[];
  /** One for each item; neighbours that are cut alike are one mark. */
  readonly marks: readonly string[];
};

type Desk = {
  readonly type: Type;
  readonly glyphs: Map<string, string>;
  readonly clips: Map<Clip, { id: string; mark: string }>;
};

/**
 * Ids come from what they name, never from counting, so that two pages in one document may share an id only where
 * they share the thing itself.
 */
export function outlines(page: Page, type: Type): Outlines {
  const desk: Desk = { type, glyphs: new Map(), clips: new Map() };
  const marks: string[] = [];
  let clip: Clip | null = null;
  for (const item of page.items) {
    // Nothing is lost by it, and a raster that is handed a cut box far off its canvas may end the whole process.
    if (!maySee(item, page)) continue;
    const mark = drawItem(desk, item);
    if (mark === '') continue;
    if (item.clip === null || item.clip !== clip) marks.push(cutMark(desk, item.clip, mark));
    else marks.push(joined(marks.pop() ?? '', mark));
    clip = item.clip;
  }
  const cuts = [...desk.clips.values()].map((each) => each.mark);
  return { definitions: [...desk.glyphs.values(), ...cuts].filter((mark) => mark !== ''), marks };
}

function cutMark(desk: Desk, clip: Clip | null, mark: string): string {
  return clip ? `<g clip-path="url(#${clipId(desk, clip)})">${mark}</g>` : mark;
}

/** One more in the same cut. */
function joined(group: string, mark: string): string {
  return `${group.slice(0, -'</g>'.length)}${mark}</g>`;
}

function number(value: number): string {
  return String(thousandth(value));
}

function pathData(path: Path): string {
  return path.map(([letter, ...numbers]) => letter + numbers.map(number).join(' ')).join('');
}

function clipId(desk: Desk, clip: Clip): string {
  const known = desk.clips.get(clip);
  if (known) return known.id;
  const within = clip.within ? ` clip-path="url(#${clipId(desk, clip.within)})"` : '';
  const rule = clip.rule === 'evenodd' ? ' clip-rule="evenodd"' : '';
  const inner = `${within}><path d="${pathData(clip.path)}"${rule}/></clipPath>`;
  const id = `c${hash(inner)}`;
  desk.clips.set(clip, { id, mark: `<clipPath id="${id}"${inner}` });
  return id;
}

/** FNV-1a, twice with different starts: short, and different for different clips in practice. */
function hash(text: string): string {
  const run = (start: number) => {
    let value = start;
    for (let at = 0; at < text.length; at++) value = Math.imul(value ^ text.charCodeAt(at), 0x01000193);
    return (value >>> 0).toString(36);
  };
  return `${run(0x811c9dc5)}-${run(0x1234567)}`;
}

function drawItem(desk: Desk, item: Item): string {
  return item.kind === 'words' ? drawWords(desk, item) : drawShape(item);
}

function paintOf(name: 'fill' | 'stroke', { red, green, blue, alpha_frac }: Ink): string {
  const digits = [red, green, blue]
    .map((channel) => Math.round(channel).toString(16).padStart(2, '0'))
    .join('');
  const faded = alpha_frac < 1 ? ` ${name}-opacity="${number(alpha_frac)}"` : '';
  return ` ${name}="#${digits}"${faded}`;
}

function drawShape({ path, fill, stroke }: Shape): string {
  const attributes = [` d="${pathData(path)}"`, fill ? paintOf('fill', fill.ink) : ' fill="none"'];
  if (fill?.rule === 'evenodd') attributes.push(' fill-rule="evenodd"');
  if (stroke) {
    attributes.push(paintOf('stroke', stroke.ink), ` stroke-width="${number(stroke.width_pt)}"`);
    if (stroke.cap !== 'butt') attributes.push(` stroke-linecap="${stroke.cap}"`);
    if (stroke.join !== 'miter') attributes.push(` stroke-linejoin="${stroke.join}"`);
    if (stroke.miterLimit !== 4) attributes.push(` stroke-miterlimit="${number(stroke.miterLimit)}"`);
    if (stroke.dashes_pt.length > 0)
      attributes.push(` stroke-dasharray="${stroke.dashes_pt.map(number).join(' ')}"`);
    if (stroke.dashStart_pt !== 0) attributes.push(` stroke-dashoffset="${number(stroke.dashStart_pt)}"`);
  }
  return `<path${attributes.join('')}/>`;
}

/** Each run is a group in the units of its font, with y up, so that glyphs stand at whole numbers. */
function drawWords(desk: Desk, words: Words): string {
  if (words.ink.alpha_frac === 0 || words.text.trim() === '') return '';
  let x_pt = words.x_pt;
  const runs = desk.type.shape(words.text, words.weight, words.direction).map((run) => {
    const scale = words.size_pt / run.face.unitsPerEm;
    let across = 0;
    const uses = run.glyphs.map((glyph) => {
      const [x, y] = [across + glyph.right, glyph.up];
      across += glyph.advance;
      return useOf(desk, { face: run.face, glyph: glyph.id, x, y });
    });
    const size = Number(scale.toFixed(6));
    const open = `<g transform="translate(${number(x_pt)} ${number(words.baseline_pt)}) scale(${size} ${-size})">`;
    x_pt += across * scale;
    return `${open}${uses.join('')}</g>`;
  });
  const turn = words.matrix
    ? ` transform="matrix(${words.matrix.map((value) => Number(value.toFixed(6))).join(' ')})"`
    : '';
  return `<g${paintOf('fill', words.ink)}${turn}>${runs.join('')}</g>`;
}

function useOf(
  desk: Desk,
  { face, glyph, x, y }: { face: Face; glyph: number; x: number; y: number },
): string {
  const id = `f${face.index}-${glyph}`;
  if (!desk.glyphs.has(id)) {
    const outline = desk.type.outline(face, glyph);
    desk.glyphs.set(id, outline === '' ? '' : `<path id="${id}" d="${outline}"/>`);
  }
  // A space has no outline and needs no mark.
  if (desk.glyphs.get(id) === '') return '';
  return `<use href="#${id}"${x === 0 ? '' : ` x="${number(x)}"`}${y === 0 ? '' : ` y="${number(y)}"`}/>`;
}
