import { PDFDocument, PDFName } from 'pdf-lib';
import { describe, expect, test } from 'vitest';
import type { Page } from '../../src/paper/page.ts';
import { tagPage } from '../../src/paper/tags.ts';
import type { PaperName, SheetInput } from '../../src/sheets/sheet.ts';
import { sheetPrint } from '../../src/sheets/sheetPrint.ts';
import { systemDrawing } from '../../src/sheets/systemDrawing.tsx';
import { content, faultsOf, inputOf, press, textOf, wordsOf } from './laidOut.ts';

async function pagesOf(input: SheetInput): Promise<readonly Page[]> {
  const pages = [];
  for await (const page of systemDrawing.pages(input, press.layOut)) pages.push(page);
  return pages;
}

function demo(id: string, paper: PaperName = 'A4'): SheetInput {
  const of = content.systems.find((one) => one.id === id);
  if (of === undefined) throw new Error(`no system ${id}`);
  return inputOf(of.system, paper, of.sheet.units);
}

async function plainText(input: SheetInput): Promise<string> {
  return (await pagesOf(input))
    .map(textOf)
    .join(' ')
    .replace(/\u00a0/g, ' ');
}

function inOrder(text: string, parts: readonly string[]): void {
  let at = 0;
  for (const part of parts) {
    const found = text.indexOf(part, at);
    expect(found, `"${part}" after "${text.slice(Math.max(0, at - 40), at)}"`).toBeGreaterThanOrEqual(0);
    at = found + part.length;
  }
}

describe('the system drawing', () => {
  test('cuts the system open, then tells the way of the water, what fails, and every line, hole and pipe', async () => {
    inOrder(await plainText(demo('kitchen-frame')), [
      ...['Cut open', 'scale 1 :', 'How the water moves', '1. Pump', '2. Supply pipe', '3. Bed'],
      ...['4. Standpipe of a bed by timer', '5. Return', 'When something fails', 'From above'],
      ...['Not a site plan', 'Water lines', 'tank, full line', 'Holes to cut', 'A', 'for the standpipe'],
      ...['B', 'to drain', 'Pipe run', 'standpipe', 'Goggles', 'licensed electrician'],
    ]);
  });

  test('prints the plan’s own heights and litres', async () => {
    const input = demo('hollow-lane-ibc');
    const text = await plainText(input);
    const figure = (key: string): number => input.plan.figures[key]?.value ?? Number.NaN;
    expect(text).toContain(`tank, lowest ${Math.floor(figure('tankLow_mm') + 1e-6)} mm`);
    expect(text).toContain(`tank, full line 700 mm`);
    expect(text).toContain(`${Math.floor(figure('tankLow_L') + 1e-6)} L`);
    expect(text).toContain('1260 mm bed rim');
    expect(text).toContain('bed: 1000 mm by 1000 mm');
  });

  test('puts a number on every station and a letter on every hole, the same as in its lists', async () => {
    for (const { id } of content.systems) {
      const input = demo(id);
      const pages = await pagesOf(input);
      const first = pages[0];
      const marks = first ? wordsOf(first).map((one) => one.text.trim()) : [];
      input.plan.section.way.forEach((_, i) => {
        expect(marks.filter((one) => one === String(i + 1)).length, `${id} ${i + 1}`).toBeGreaterThan(0);
      });
      const rows = input.plan.tables.find(({ key }) => key === 'holes')?.rows ?? [];
      for (const i of rows.keys()) expect(marks, id).toContain(String.fromCharCode(65 + i));
    }
  });

  test('warns where a power cut spills, with the plan’s own words', async () => {
    const input = demo('hollow-lane-ibc');
    // Drained beds leave half of their water behind, and the tank is full to a finger under its rim.
    const system = {
      ...input.system,
      tank: { ...input.system.tank, full_mm: 779 },
      beds: input.system.beds.map((bed) => ({ ...bed, drained_mm: 150 })),
    };
    expect(await plainText(inputOf(system))).toMatch(
      /After a power cut \d+ L more can come down than the fish tank holds/,
    );
  });

  test('asks the printer not to scale it', async () => {
    const input = demo('drum-corner');
    const pdf = await press.toPdf(sheetPrint(systemDrawing, input, await pagesOf(input), '{}'));
    const { catalog } = await PDFDocument.load(pdf);
    expect(catalog.lookup(PDFName.of('ViewerPreferences'))?.toString()).toContain('/PrintScaling /None');
  });

  test.each(['A4', 'Letter'] as const)(
    'keeps its words apart and inside the safe box on %s',
    async (paper) => {
      for (const { id } of content.systems) {
        const pages = await pagesOf(demo(id, paper));
        expect(pages.flatMap(faultsOf), id).toEqual([]);
        expect(
          pages.flatMap((page) => tagPage(page).faults),
          id,
        ).toEqual([]);
        expect(pages.length, id).toBeLessThanOrEqual(3);
      }
    },
  );

  test('flows on where there are more beds than a page tells, and still lays nothing on anything', async () => {
    const input = demo('old-tank-as-sump');
    const [bed] = input.system.beds;
    if (bed === undefined) throw new Error('no bed');
    const beds = Array.from({ length: 30 }, (_, i) => ({
      ...{ ...bed, mode: 'constantFlood' as const },
      name: `Bed ${i + 1}`,
      above_mm: 1150 + i * 7,
    }));
    const pages = await pagesOf(inputOf({ ...input.system, beds }));
    expect(pages.length).toBeGreaterThan(3);
    expect(pages.flatMap(faultsOf)).toEqual([]);
    expect(pages.map(textOf).join(' ')).toContain('bed 30');
  });
});
