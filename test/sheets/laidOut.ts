/** Cards laid out for the tests, and what can be read off their pages. */
import type { System } from '../../src/core/system.ts';
import { sheetFacts } from '../../src/core/plan/sheetFacts.ts';
import { pathEdges } from '../../src/paper/edges.ts';
import { nodePress } from '../../src/paper/node.ts';
import type { Page, Words } from '../../src/paper/page.ts';
import { readContent } from '../../src/schemas/readContent.ts';
import { careCard } from '../../src/sheets/careCard.tsx';
import type { PaperName, SheetInput } from '../../src/sheets/sheet.ts';
import type { UnitSystem } from '../../src/wording/quantity.ts';

export const press = await nodePress();
export const { content } = await readContent('content');

/** The words that belong to no system, as the build uses them. */
export const words = {
  catalogue: content.wording['en'] ?? {},
  terms: content.terms,
  sources: content.sources,
};

export function inputOf(system: System, paper: PaperName = 'A4', units: UnitSystem = 'metric'): SheetInput {
  return { ...sheetFacts(system, content.care), words, paper, units, day: '2031-05-04' };
}

export async function cardPages(input: SheetInput): Promise<readonly Page[]> {
  const pages = [];
  for await (const page of careCard(input, press.layOut)) pages.push(page);
  return pages;
}

export function wordsOf(page: Page): readonly Words[] {
  return page.items.filter((item) => item.kind === 'words');
}

/** All text of a page in the order of the sheet. */
export function textOf(page: Page): string {
  return wordsOf(page)
    .map((one) => one.text)
    .join(' ')
    .replace(/\s+/g, ' ');
}

type Rect = { readonly left: number; readonly right: number; readonly top: number; readonly bottom: number };

/** The room that words take, from the height of a capital to the foot of a g, in points; of words that are cut, what is left. */
function rectOf(one: Words): Rect {
  let rect = {
    left: one.x_pt,
    right: one.x_pt + one.width_pt,
    top: one.baseline_pt - 0.7 * one.size_pt,
    bottom: one.baseline_pt + 0.2 * one.size_pt,
  };
  for (let clip = one.clip; clip; clip = clip.within) rect = common(rect, pathEdges(clip.path));
  return rect;
}

function common(a: Rect, b: Rect): Rect {
  return {
    left: Math.max(a.left, b.left),
    right: Math.min(a.right, b.right),
    top: Math.max(a.top, b.top),
    bottom: Math.min(a.bottom, b.bottom),
  };
}

/** Words that stick out of the safe box, and words that lie on each other. */
export function faultsOf(page: Page): readonly string[] {
  const all = wordsOf(page)
    .filter((one) => one.text.trim() !== '')
    .map((one) => ({ ...rectOf(one), text: one.text }))
    .filter((one) => one.left < one.right && one.top < one.bottom);
  const box = safeBox(page);
  const outside = all.filter(
    (one) => one.left < box.left || one.right > box.right || one.top < box.top || one.bottom > box.bottom,
  );
  return [...outside.map((one) => `outside the safe box: "${one.text}"`), ...overlaps(all)];
}

/**
 * 190 by 254 mm in the middle of the sheet however it lies, with half a point of slack for side bearings. On paper for
 * walls: all but 10 mm at each edge, which any print shop reaches.
 */
function safeBox(page: Page): Rect {
  const per_mm = 72 / 25.4;
  const sides = [190 * per_mm, 254 * per_mm] as const;
  const lies = page.width_pt < page.height_pt ? sides : [sides[1], sides[0]];
  const onWall = Math.min(page.width_pt, page.height_pt) > 250 * per_mm;
  const [width, height] = onWall
    ? [page.width_pt - 20 * per_mm, page.height_pt - 20 * per_mm]
    : [lies[0] ?? 0, lies[1] ?? 0];
  const left = (page.width_pt - width) / 2 - 0.5;
  const top = (page.height_pt - height) / 2 - 0.5;
  return { left, top, right: left + width + 1, bottom: top + height + 1 };
}

function overlaps(rects: readonly (Rect & { readonly text: string })[]): readonly string[] {
  return rects.flatMap((a, i) =>
    rects
      .slice(i + 1)
      .filter(
        (b) =>
          overlap(a.left, a.right, b.left, b.right) > 0.6 && overlap(a.top, a.bottom, b.top, b.bottom) > 0.6,
      )
      .map((b) => `"${a.text}" lies on "${b.text}"`),
  );
}

function overlap(fromA: number, toA: number, fromB: number, toB: number): number {
  return Math.min(toA, toB) - Math.max(fromA, fromB);
}
