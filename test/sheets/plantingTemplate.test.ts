import { PDFDocument, PDFName } from 'pdf-lib';
import { describe, expect, test } from 'vitest';
import { bedRim_mm } from '../../src/core/crops/bedRim.ts';
import type { BedTemplate } from '../../src/core/plan/figure.ts';
import { bedTemplates } from '../../src/core/plan/plantingTemplate.ts';
import type { System } from '../../src/core/system.ts';
import { paperSizes } from '../../src/paper/measures.ts';
import { overflows } from '../../src/paper/overflows.ts';
import type { Page } from '../../src/paper/page.ts';
import { tagPage } from '../../src/paper/tags.ts';
import { plantingTemplate } from '../../src/sheets/plantingTemplate.tsx';
import type { SheetInput } from '../../src/sheets/sheet.ts';
import { sheetPrint } from '../../src/sheets/sheetPrint.ts';
import { drawnLines, type Spot } from './drawnLines.ts';
import { content, faultsOf, inputOf, press, textOf } from './laidOut.ts';

async function templatePages(input: SheetInput): Promise<readonly Page[]> {
  const pages = [];
  for await (const page of plantingTemplate.pages(input, press.layOut)) pages.push(page);
  return pages;
}

function demo(id: string): System {
  const found = content.systems.find((one) => one.id === id);
  if (found === undefined) throw new Error(`no system ${id}`);
  return found.system;
}

/** A sheet of the template: its lines where they lie on the whole, by the place that its name tells. */
type Sheet = { readonly name: string; readonly lines: readonly (readonly Spot[])[] };

/** Sheets reach 190 by 254 mm and overlap by 10 mm. */
const step = { x_mm: 180, y_mm: 244 };

async function sheetsOf(input: SheetInput): Promise<readonly Sheet[]> {
  const pages = await templatePages(input);
  const lines = await drawnLines(await press.toPdf(sheetPrint(plantingTemplate, input, pages, '{}')));
  const paper = paperSizes[input.paper];
  const corner = { x_mm: (paper.width_mm - 190) / 2, y_mm: (paper.height_mm - 254) / 2 };
  return pages.flatMap((page, index) => {
    const [, letter, row] = /Sheet ([A-Z])(\d+)/.exec(textOf(page)) ?? [];
    if (letter === undefined) return [];
    const moved = {
      x_mm: (letter.charCodeAt(0) - 65) * step.x_mm - corner.x_mm,
      y_mm: (Number(row) - 1) * step.y_mm - corner.y_mm,
    };
    const whole = (spot: Spot): Spot => ({ x_mm: spot.x_mm + moved.x_mm, y_mm: spot.y_mm + moved.y_mm });
    return [{ name: `${letter}${row}`, lines: (lines[index] ?? []).map((line) => line.map(whole)) }];
  });
}

/** Middles of the crosses for plants that a sheet shows whole: a level stroke of 12 mm and an upright one across it. */
function plantsOn({ lines }: Sheet): readonly Spot[] {
  return lines.flatMap(([from, until, more]) => {
    const isLevel = from && until && more === undefined && Math.abs(from.y_mm - until.y_mm) < 0.01;
    if (!isLevel || Math.abs(Math.abs(until.x_mm - from.x_mm) - 12) > 0.05) return [];
    return [{ x_mm: (from.x_mm + until.x_mm) / 2, y_mm: from.y_mm }];
  });
}

/** The same from the core, from the left top of the whole; the rim stands 1 mm inside it. */
function wantedOf({ outline, places }: BedTemplate, lies: 'across' | 'down') {
  const [a, b] = [outline.length_mm / 2 + 1, outline.width_mm / 2 + 1];
  const spot = ({ along_mm, across_mm }: { along_mm: number; across_mm: number }): Spot =>
    lies === 'across'
      ? { x_mm: along_mm + a, y_mm: across_mm + b }
      : { x_mm: across_mm + b, y_mm: along_mm + a };
  return { plants: places.map(spot), rim: bedRim_mm(outline).map(spot) };
}

/** The paper itself is painted white. */
function isDrawn(line: readonly Spot[]): boolean {
  return !line.some(({ x_mm, y_mm }) => x_mm === 0 && Math.abs(y_mm) < 0.01);
}

function nearest_mm(spot: Spot, all: readonly Spot[]): number {
  return Math.min(...all.map((one) => Math.hypot(one.x_mm - spot.x_mm, one.y_mm - spot.y_mm)));
}

describe('the planting template', () => {
  for (const paper of ['A4', 'Letter'] as const) {
    test(`of every system keeps its words in their boxes and inside the safe box on ${paper}`, async () => {
      for (const { id, system, sheet } of content.systems) {
        const input = inputOf(system, paper, sheet.units);
        if (plantingTemplate.fits(input) === 'no') continue;
        const pages = await templatePages(input);
        expect(pages.flatMap(overflows), id).toEqual([]);
        expect(pages.flatMap(faultsOf), id).toEqual([]);
        expect(
          pages.flatMap((page) => tagPage(page).faults),
          id,
        ).toEqual([]);
      }
    }, 120_000);

    for (const id of ['hollow-lane-ibc', 'drum-corner', 'basket-tub', 'room-seven-totes']) {
      test(`of ${id} has a cross for every plant of the core and no other, to a tenth of a millimetre on ${paper}`, async () => {
        const [template] = bedTemplates(demo(id));
        if (template === undefined) throw new Error('no template');
        const sheets = await sheetsOf(inputOf(demo(id), paper));
        const drawn = sheets.flatMap(plantsOn);
        const ways = (['across', 'down'] as const).map((lies) => wantedOf(template, lies));
        const off = ways.map(({ plants }) =>
          Math.max(
            ...plants.map((one) => nearest_mm(one, drawn)),
            ...drawn.map((one) => nearest_mm(one, plants)),
          ),
        );
        expect(Math.min(...off)).toBeLessThan(0.1);
        const { rim } = ways[off.indexOf(Math.min(...off))] ?? { rim: [] };
        // Where the rim was drawn there is a corner of it, on one sheet or on two.
        const corners = sheets.flatMap(({ lines }) => lines.flat());
        expect(Math.max(...rim.map((one) => nearest_mm(one, corners)))).toBeLessThan(0.1);
      });
    }
  }

  test('has every cross for joining on two sheets at the same place of the whole', async () => {
    const sheets = await sheetsOf(inputOf(demo('hollow-lane-ibc')));
    const marks = sheets.map(({ lines }) =>
      lines.flatMap(([from, until, more]) => {
        const isSlanted =
          from &&
          until &&
          more === undefined &&
          Math.abs(Math.abs(from.x_mm - until.x_mm) - 6) < 0.05 &&
          Math.abs(Math.abs(from.y_mm - until.y_mm) - 6) < 0.05;
        return isSlanted ? [{ x_mm: (from.x_mm + until.x_mm) / 2, y_mm: (from.y_mm + until.y_mm) / 2 }] : [];
      }),
    );
    expect(marks.flat().length).toBeGreaterThan(100);
    for (const [index, own] of marks.entries()) {
      const others = marks.filter((_, other) => other !== index).flat();
      for (const one of own) expect(nearest_mm(one, others)).toBeLessThan(0.05);
    }
  });

  test('draws nothing outside the safe box', async () => {
    const input = inputOf(demo('drum-corner'));
    const pages = await drawnLines(
      await press.toPdf(sheetPrint(plantingTemplate, input, await templatePages(input), '{}')),
    );
    for (const { x_mm, y_mm } of pages.slice(1).flat().filter(isDrawn).flat()) {
      expect(x_mm > 9.9 && x_mm < 200.1 && y_mm > 21.4 && y_mm < 275.6, `${x_mm} ${y_mm}`).toBe(true);
    }
  });

  test('asks the printer not to scale it, and bears bars to measure', async () => {
    const input = inputOf(demo('basket-tub'));
    const pdf = await press.toPdf(sheetPrint(plantingTemplate, input, await templatePages(input), '{}'));
    const { catalog } = await PDFDocument.load(pdf);
    expect(catalog.lookup(PDFName.of('ViewerPreferences'))?.toString()).toContain('/PrintScaling /None');
    const [how = []] = await drawnLines(pdf);
    const lengths = how.flatMap(([from, until]) => (from && until ? [Math.abs(until.x_mm - from.x_mm)] : []));
    expect(Math.min(...lengths.map((one) => Math.abs(one - 100)))).toBeLessThan(0.05);
  });

  test('tells the distances of the plan, and to leave the places of pipes empty', async () => {
    const [how] = await templatePages(inputOf(demo('hollow-lane-ibc')));
    const text = how ? textOf(how).replace(/\u00a0/g, ' ') : '';
    expect(text).toContain('For bed 1, in square rows, leafy plants: 25');
    expect(text).toContain('From plant to plant 200 mm, to the wall 100 mm.');
    expect(text).toContain('Under a standpipe, a bell, an inlet or their screens stays empty');
  });

  test('of a bed that would take too much paper is a page that says what to do instead', async () => {
    const plain = demo('hollow-lane-ibc');
    const beds = plain.beds.map((bed) => ({
      ...bed,
      mode: 'constantFlood' as const,
      container: { shape: 'box', length_mm: 9000, width_mm: 1200, depth_mm: 360 } as const,
    }));
    const pages = await templatePages(inputOf({ ...plain, beds }));
    expect(pages).toHaveLength(1);
    expect(pages[0] && textOf(pages[0])).toContain('Stretch strings over it instead');
    expect(pages.flatMap(faultsOf)).toEqual([]);
  });

  test('is not there for a bed of which only the litres are known', () => {
    expect(plantingTemplate.fits(inputOf(demo('two-bathtubs')))).toBe('no');
  });
});
