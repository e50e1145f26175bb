import { PDFDocument, PDFName } from 'pdf-lib';
import { describe, expect, test } from 'vitest';
import { pointsPerUnit } from '../../src/paper/measures.ts';
import type { Page } from '../../src/paper/page.ts';
import { tagPage } from '../../src/paper/tags.ts';
import { allSheets } from '../../src/sheets/allSheets.ts';
import type { SheetInput } from '../../src/sheets/sheet.ts';
import type { SheetKind } from '../../src/sheets/sheetKind.ts';
import { sheetPrint } from '../../src/sheets/sheetPrint.ts';
import { content, faultsOf, inputOf, press, textOf } from './laidOut.ts';

const others = allSheets.filter(({ id }) => id !== 'care-card');

async function pagesOf(kind: SheetKind, input: SheetInput): Promise<readonly Page[]> {
  const pages = [];
  for await (const page of kind.pages(input, press.layOut)) pages.push(page);
  return pages;
}

function demoInput(id: string): SheetInput {
  const of = content.systems.find((one) => one.id === id);
  if (of === undefined) throw new Error(`no system ${id}`);
  return inputOf(of.system, of.sheet.paper, of.sheet.units);
}

function kindOf(id: string): SheetKind {
  const found = allSheets.find((one) => one.id === id);
  if (found === undefined) throw new Error(`no sheet ${id}`);
  return found;
}

describe('every sheet of every demo system', () => {
  test.each(others.map((kind) => [kind.id, kind] as const))(
    '%s has no words on each other, outside the safe box, or out of reach of a screen reader',
    async (_, kind) => {
      let printed = 0;
      for (const { system, sheet } of content.systems) {
        const input = inputOf(system, sheet.paper, sheet.units);
        if (kind.fits(input) === 'no') continue;
        const pages = await pagesOf(kind, input);
        printed += pages.length;
        expect(pages.flatMap(faultsOf), system.id).toEqual([]);
        expect(
          pages.flatMap((page) => tagPage(page).faults),
          system.id,
        ).toEqual([]);
      }
      expect(printed).toBeGreaterThan(0);
    },
    120_000,
  );
});

describe('the sitter’s sheet', () => {
  test('has a line for every day of the absence, and says never two', async () => {
    const text = (await pagesOf(kindOf('sitters-sheet'), demoInput('hollow-lane-ibc'))).map(textOf).join(' ');
    expect(text).toContain('One packet a day, never two.');
    expect(text).toContain('Each packet holds 21 g');
    for (const day of ['20 Dec 2026', '31 Dec 2026', '2 Jan 2027']) expect(text).toContain(day);
    expect(text).not.toContain('3 Jan 2027');
  });

  test('tells no dose, no salt and no chemistry but what is never done', async () => {
    const text = (await pagesOf(kindOf('sitters-sheet'), demoInput('hollow-lane-ibc'))).map(textOf).join(' ');
    const salts = text
      .split(/(?<=\.)\s/)
      .filter((sentence) => /salt|medicine|pH liquid|bicarbonate/i.test(sentence));
    expect(
      salts.every((sentence) => /never/i.test(sentence)),
      salts.join('|'),
    ).toBe(true);
  });
});

describe('the start-up log', () => {
  test('is only there before the fish are', () => {
    expect(kindOf('start-up-log').fits(demoInput('hollow-lane-ibc'))).toBe('no');
    expect(kindOf('start-up-log').fits(demoInput('basket-tub'))).toBe('yes');
  });

  test('keeps children and bleach away, and has a line for every day until it can be ready', async () => {
    const text = (await pagesOf(kindOf('start-up-log'), demoInput('basket-tub'))).map(textOf).join(' ');
    expect(text).toContain('never near bleach');
    expect(text).toContain('55 56 READY on');
  });
});

describe('the dip strip', () => {
  test('has its marks at the heights of the core, to a tenth of a millimetre', async () => {
    for (const id of ['hollow-lane-ibc', 'room-seven-totes', 'pond-and-tray']) {
      const input = demoInput(id);
      const pages = await pagesOf(kindOf('dip-strip'), input);
      const wanted = input.units === 'us' ? 'gallons' : 'litres';
      const marks = input.dip.rows;
      const heights = marks.filter(([kind]) => kind === wanted).map((row) => Number(row[2]));
      const drawn = pages.flatMap(drawnHeights);
      const step = Math.max(1, Math.floor(heights.length / 10));
      for (const height of heights.filter((_, index) => index % step === 0)) {
        const nearest = Math.min(...drawn.map((one) => Math.abs(one - height)));
        expect(nearest, `${id}: ${height} mm`).toBeLessThan(0.1);
      }
    }
  });

  test('asks the printer not to scale it, and bears bars to measure', async () => {
    const input = demoInput('hollow-lane-ibc');
    const kind = kindOf('dip-strip');
    const pages = await pagesOf(kind, input);
    const pdf = await press.toPdf(sheetPrint(kind, input, pages, '{}'));
    const { catalog } = await PDFDocument.load(pdf);
    expect(catalog.lookup(PDFName.of('ViewerPreferences'))?.toString()).toContain('/PrintScaling /None');
    expect(pages.map(textOf).join(' ')).toContain('100 mm');
    const lengths = pages.flatMap(horizontals).map(([from, to]) => to - from);
    for (const bar_mm of [100, 101.6]) {
      expect(Math.min(...lengths.map((one) => Math.abs(one - bar_mm)))).toBeLessThan(0.05);
    }
  });
});

const pointsPer_mm = pointsPerUnit * 10;

/** Level lines of a page as from, to and height from the top, in millimetres. */
function horizontals(page: Page): readonly (readonly [from: number, to: number, y: number])[] {
  return page.items.flatMap((item) => {
    if (item.kind !== 'shape') return [];
    return item.path.flatMap((segment, index) => {
      const before = item.path[index - 1];
      if (segment[0] !== 'L' || before === undefined || before[0] === 'Z' || before[0] === 'C') return [];
      if (Math.abs(segment[2] - before[2]) > 0.01) return [];
      const ends = [segment[1] / pointsPer_mm, before[1] / pointsPer_mm];
      return [[Math.min(...ends), Math.max(...ends), segment[2] / pointsPer_mm] as const];
    });
  });
}

/** Heights over the tank's floor of all short lines: each piece stands on its own foot, 160 mm on from the last. */
function drawnHeights(page: Page): readonly number[] {
  const lines = horizontals(page);
  const feet = lines.filter(([from, to]) => Math.abs(to - from - 57.8) < 0.1);
  const lefts = [...new Set(feet.map(([from]) => Math.round(from)))].sort((a, b) => a - b);
  return lefts.flatMap((left, index) => {
    const own = lines.filter(([from]) => Math.abs(from - left) < 1.5);
    const foot = Math.max(...own.filter(([from, to]) => to - from > 50).map(([, , y]) => y)) + 0.1;
    const number = pieceNumber(page) + index;
    const base = number === 0 ? 0 : number * 160 - 10;
    return own.filter(([from, to]) => Math.abs(to - from - 8) < 0.1).map(([, , y]) => base + foot - y);
  });
}

/** From "Piece 4–5 of 5". */
function pieceNumber(page: Page): number {
  return Number(/Piece (\d+)/.exec(textOf(page))?.[1]) - 1;
}
