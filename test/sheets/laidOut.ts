/** Cards laid out for the tests, and what can be read off their pages. */
import { careFor } from '../../src/core/care/routine.ts';
import { dipMarks } from '../../src/core/plan/dipPlan.ts';
import { planOf } from '../../src/core/plan/planOf.ts';
import type { System } from '../../src/core/system.ts';
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
  const care = careFor(system, content.care);
  const dip = dipMarks(system);
  return { system, plan: planOf(system), words, care, dip, paper, units, day: '2031-05-04' };
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

/** The room that words take: from the height of a capital to the foot of a g, in points. */
function rectOf(one: Words): Rect {
  return {
    left: one.x_pt,
    right: one.x_pt + one.width_pt,
    top: one.baseline_pt - 0.7 * one.size_pt,
    bottom: one.baseline_pt + 0.2 * one.size_pt,
  };
}

/** Words that stick out of the safe box, and words that lie on each other. */
export function faultsOf(page: Page): readonly string[] {
  const all = wordsOf(page).filter((one) => one.text.trim() !== '');
  const box = safeBox(page);
  const outside = all.filter((one) => {
    const rect = rectOf(one);
    return rect.left < box.left || rect.right > box.right || rect.top < box.top || rect.bottom > box.bottom;
  });
  return [...outside.map((one) => `outside the safe box: "${one.text}"`), ...overlaps(all)];
}

/** 190 by 254 mm in the middle of the sheet however it lies, with half a point of slack for side bearings. */
function safeBox(page: Page): Rect {
  const sides = [(190 / 25.4) * 72, (254 / 25.4) * 72] as const;
  const [width, height] = page.width_pt < page.height_pt ? sides : [sides[1], sides[0]];
  const left = (page.width_pt - width) / 2 - 0.5;
  const top = (page.height_pt - height) / 2 - 0.5;
  return { left, top, right: left + width + 1, bottom: top + height + 1 };
}

function overlaps(all: readonly Words[]): readonly string[] {
  const rects = all.map((one) => ({ ...rectOf(one), text: one.text }));
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
