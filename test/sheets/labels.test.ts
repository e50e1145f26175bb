import fc from 'fast-check';
import { PDFDocument, PDFName } from 'pdf-lib';
import { describe, expect, test } from 'vitest';
import type { LabelGrid } from '../../src/core/labelGrid.ts';
import { labelPlaces_mm } from '../../src/drawing/labelPlaces.ts';
import type { System } from '../../src/core/system.ts';
import { mmPerPoint, paperSizes } from '../../src/paper/measures.ts';
import { overflows } from '../../src/paper/overflows.ts';
import type { Page } from '../../src/paper/page.ts';
import { tagPage } from '../../src/paper/tags.ts';
import { labels } from '../../src/sheets/labels.tsx';
import type { SheetInput } from '../../src/sheets/sheet.ts';
import { sheetPrint } from '../../src/sheets/sheetPrint.ts';
import { drawnLines, type Spot } from './drawnLines.ts';
import { content, faultsOf, inputOf, press, textOf, wordsOf } from './laidOut.ts';

const ownGrid: LabelGrid = {
  ...{ columns: 2, rows: 7, labelWidth_mm: 99, labelHeight_mm: 38.1, left_mm: 4.7, top_mm: 15.2 },
  ...{ across_mm: 101.6, down_mm: 38.1, used: 3 },
};

async function labelPages(input: SheetInput): Promise<readonly Page[]> {
  const pages = [];
  for await (const page of labels.pages(input, press.layOut)) pages.push(page);
  return pages;
}

function demo(id: string, grid: LabelGrid | null = null): System {
  const found = content.systems.find((one) => one.id === id);
  if (found === undefined) throw new Error(`no system ${id}`);
  return { ...found.system, labels: grid };
}

async function pdfOf(input: SheetInput): Promise<Uint8Array> {
  return press.toPdf(sheetPrint(labels, input, await labelPages(input), '{}'));
}

/** Where the words of each label begin, in turn. */
function starts(page: Page): readonly { readonly x_mm: number; readonly y_mm: number }[] {
  const boxes = page.nodes.filter(({ role }) => role === 'Sect').map(({ box }) => box);
  return boxes.map(({ x_pt, y_pt }) => ({ x_mm: x_pt * mmPerPoint, y_mm: y_pt * mmPerPoint }));
}

function isRectangle(line: readonly Spot[], width_mm: number, height_mm: number): boolean {
  const [first, , third] = line;
  if (line.length !== 4 || first === undefined || third === undefined) return false;
  const off_mm = [third.x_mm - first.x_mm - width_mm, third.y_mm - first.y_mm - height_mm];
  return off_mm.every((one) => Math.abs(one) < 0.5);
}

describe('labels', () => {
  for (const paper of ['A4', 'Letter'] as const) {
    test(`of every system keep their words in their labels on ${paper}`, async () => {
      for (const { id, system, sheet } of content.systems) {
        // A measured grid is one of its own paper.
        const own = sheet.paper === paper ? system : { ...system, labels: null };
        const pages = await labelPages(inputOf(own, paper, sheet.units));
        expect(pages.flatMap(overflows), id).toEqual([]);
        expect(pages.flatMap(faultsOf), id).toEqual([]);
        expect(
          pages.flatMap((page) => tagPage(page).faults),
          id,
        ).toEqual([]);
      }
    }, 120_000);

    test(`are cut from plain ${paper} where the lines are, 63 by 42 mm, inside the safe box`, async () => {
      const [, sheet = []] = await drawnLines(await pdfOf(inputOf(demo('hollow-lane-ibc'), paper)));
      const cells = sheet.filter((line) => isRectangle(line, 63, 42));
      expect(cells).toHaveLength(18);
      const { width_mm, height_mm } = paperSizes[paper];
      for (const [index, [topLeft, , bottomRight]] of cells.entries()) {
        const left = (width_mm - 3 * 63) / 2 + (index % 3) * 63;
        const top = (height_mm - 6 * 42) / 2 + Math.floor(index / 3) * 42;
        for (const [drawn, wanted] of [
          [topLeft?.x_mm, left],
          [topLeft?.y_mm, top],
          [bottomRight?.x_mm, left + 63],
          [bottomRight?.y_mm, top + 42],
        ] as const) {
          expect(Math.abs((drawn ?? Number.NaN) - wanted)).toBeLessThan(0.05);
        }
      }
    });
  }

  test('say what is never done at each thing, and warn children off the plugs', async () => {
    const text = (await labelPages(inputOf(demo('hollow-lane-ibc'))))
      .map(textOf)
      .join(' ')
      .replace(/\u00a0/g, ' ');
    for (const part of [
      ...[
        'Not for drinking',
        'Full line: 700 L',
        'Low line, beds full: 565 L',
        'Water pump: do not switch off',
      ],
      ...[
        'Off only as the card says.',
        'Air pump: leave on',
        'so that drops fall off',
        '30 mA',
        'Children: do not touch.',
      ],
      ...['READY barrel', 'chlorine reads zero', 'ready since', 'temperature', 'Lid on. Not for drinking.'],
      ...['Outlet: keep it clear', 'Crop', 'planted', 'lift by'],
    ]) {
      expect(text).toContain(part);
    }
  });

  test('of a system without a pump name no water pump', async () => {
    const text = (await labelPages(inputOf(demo('basket-tub')))).map(textOf).join(' ');
    expect(text).not.toContain('Water pump');
    expect(text).not.toContain('Outlet');
  });

  test('lie where the ruler found them, to a tenth of a millimetre, after the used ones', async () => {
    const [, first, ...others] = await labelPages(inputOf(demo('hollow-lane-ibc', ownGrid)));
    if (first === undefined) throw new Error('no labels');
    const drawn = starts(first);
    expect(drawn).toHaveLength(11);
    for (const [index, box] of drawn.entries()) {
      const [column, row] = [(index + 3) % 2, Math.floor((index + 3) / 2)];
      // 3 mm inside the label, and 6 mm inside the paper.
      const wanted = { x_mm: Math.max(4.7 + column * 101.6 + 3, 6), y_mm: 15.2 + row * 38.1 + 3 };
      expect(Math.abs(box.x_mm - wanted.x_mm)).toBeLessThan(0.1);
      expect(Math.abs(box.y_mm - wanted.y_mm)).toBeLessThan(0.1);
    }
    // The words themselves stand in those boxes: the first of each label at its left edge.
    const lefts = new Set(wordsOf(first).map(({ x_pt }) => Math.round(x_pt * mmPerPoint * 10)));
    for (const { x_mm } of drawn)
      expect([...lefts].some((left) => Math.abs(left / 10 - x_mm) < 0.35)).toBe(true);
    // Six labels and eight tags do not fit eleven places: the next sheet is whole.
    expect(others).toHaveLength(1);
    expect(others[0] && starts(others[0])).toHaveLength(14);
  });

  test('on a sheet of labels of one’s own bear no lines to cut', async () => {
    const [, sheet = []] = await drawnLines(await pdfOf(inputOf(demo('hollow-lane-ibc', ownGrid))));
    expect(sheet.filter((line) => isRectangle(line, 99, 38.1))).toEqual([]);
  });

  test('ask the printer not to scale them, and bear bars to measure', async () => {
    const pdf = await pdfOf(inputOf(demo('hollow-lane-ibc')));
    const { catalog } = await PDFDocument.load(pdf);
    expect(catalog.lookup(PDFName.of('ViewerPreferences'))?.toString()).toContain('/PrintScaling /None');
    const [how = []] = await drawnLines(pdf);
    const lengths = how.flatMap(([from, to]) => (from && to ? [Math.abs(to.x_mm - from.x_mm)] : []));
    for (const bar_mm of [100, 101.6])
      expect(Math.min(...lengths.map((one) => Math.abs(one - bar_mm)))).toBeLessThan(0.05);
  });

  test('of any size that can be entered keep their words inside, the small ones with fewer lines', async () => {
    const sizes = fc.record({
      labelWidth_mm: fc.integer({ min: 30, max: 200 }),
      labelHeight_mm: fc.integer({ min: 20, max: 120 }),
      name: fc.constantFrom('The big tank', 'W'.repeat(500), 'a wordy name '.repeat(38)),
    });
    await fc.assert(
      fc.asyncProperty(sizes, async ({ labelWidth_mm, labelHeight_mm, name }) => {
        const columns = Math.floor(210 / labelWidth_mm);
        const rows = Math.floor(297 / labelHeight_mm);
        const grid = {
          columns,
          rows,
          labelWidth_mm,
          labelHeight_mm,
          left_mm: 0,
          top_mm: 0,
          across_mm: labelWidth_mm,
          down_mm: labelHeight_mm,
          used: 0,
        };
        const [, ...sheets] = await labelPages(inputOf({ ...demo('hollow-lane-ibc', grid), name }));
        expect(sheets.flatMap(overflows)).toEqual([]);
        // A warning that was cut would say the opposite.
        expect(sheets.map(textOf).join(' ')).toContain('Water pump: do not switch off');
      }),
      {
        numRuns: 8,
        endOnFailure: true,
        examples: [[{ labelWidth_mm: 30, labelHeight_mm: 20, name: 'W'.repeat(500) }]],
      },
    );
  }, 120_000);
});

describe('the places of a grid', () => {
  const grids = fc.record({
    columns: fc.integer({ min: 1, max: 20 }),
    rows: fc.integer({ min: 1, max: 40 }),
    labelWidth_mm: fc.double({ min: 30, max: 99, noNaN: true }),
    labelHeight_mm: fc.double({ min: 16, max: 99, noNaN: true }),
    left_mm: fc.double({ min: 0, max: 20, noNaN: true }),
    top_mm: fc.double({ min: 0, max: 20, noNaN: true }),
    gap: fc.double({ min: 0, max: 9, noNaN: true }),
  });

  test('are as many as the labels that are left, and none lies on another', () => {
    fc.assert(
      fc.property(grids, fc.nat({ max: 799 }), ({ gap, ...rest }, any) => {
        const used = any % (rest.columns * rest.rows);
        const grid = {
          ...rest,
          across_mm: rest.labelWidth_mm + gap,
          down_mm: rest.labelHeight_mm + gap,
          used,
        };
        const places = labelPlaces_mm(grid, 'first');
        expect(places).toHaveLength(grid.columns * grid.rows - used);
        expect(labelPlaces_mm(grid, 'later').slice(used)).toEqual(places);
        for (const [index, one] of places.entries()) {
          const next = places[index + 1];
          if (next === undefined) continue;
          const isBeside = next.left_mm - one.left_mm >= grid.labelWidth_mm - 1e-9;
          const isBelow = next.top_mm - one.top_mm >= grid.labelHeight_mm - 1e-9;
          expect(isBeside || isBelow).toBe(true);
        }
      }),
    );
  });
});
