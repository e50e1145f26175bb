import { describe, expect, test } from 'vitest';
import type { Page } from '../../src/paper/page.ts';
import { planningWorksheet } from '../../src/sheets/planningWorksheet.tsx';
import type { SheetInput } from '../../src/sheets/sheet.ts';
import { sheetPrint } from '../../src/sheets/sheetPrint.ts';
import { partsOf } from '../paper/readPdf.ts';
import { content, inputOf, press, textOf } from './laidOut.ts';

async function pagesOf(input: SheetInput): Promise<readonly Page[]> {
  const pages = [];
  for await (const page of planningWorksheet.pages(input, press.layOut)) pages.push(page);
  return pages;
}

function fieldsOf(pages: readonly Page[]) {
  return pages.flatMap((page) => page.nodes.flatMap(({ field }) => field ?? []));
}

/** Lines of the width of a blank, 17 mm, that stand on a page. */
function linesOf(page: Page): number {
  const widths = page.items.flatMap((item) => {
    if (item.kind !== 'shape') return [];
    const xs = item.path.flatMap((segment) => (segment[0] === 'Z' ? [] : [Number(segment[1])]));
    return [Math.max(...xs) - Math.min(...xs)];
  });
  return widths.filter((width) => Math.abs(width - (17 * 72) / 25.4) < 0.05).length;
}

describe('the blanks of the planning worksheet', () => {
  test('are fields, one for each line, each with a name of its own and a tip of its own, on any paper', async () => {
    for (const { system, sheet } of content.systems) {
      const pages = await pagesOf(inputOf(system, sheet.paper, sheet.units));
      const fields = fieldsOf(pages);
      expect(fields.length, system.id).toBeGreaterThan(10);
      expect(fields.length, system.id).toBe(pages.reduce((sum, page) => sum + linesOf(page), 0));
      expect(new Set(fields.map(({ name }) => name)).size, system.id).toBe(fields.length);
      const other = sheet.paper === 'A4' ? 'Letter' : 'A4';
      expect(fieldsOf(await pagesOf(inputOf(system, other, sheet.units))), system.id).toEqual(fields);
    }
  });

  test('stand only on the pages to fill in', async () => {
    for (const { system, sheet } of content.systems) {
      for (const page of await pagesOf(inputOf(system, sheet.paper, sheet.units))) {
        const isBlank = textOf(page).includes('To fill in.');
        expect(fieldsOf([page]).length > 0, system.id).toBe(isBlank);
      }
    }
  });

  test('say which task and number they are for, and in which unit', async () => {
    const of = content.systems.find(({ id }) => id === 'hollow-lane-ibc');
    if (!of) throw new Error('no system');
    const tips = new Map(
      fieldsOf(await pagesOf(inputOf(of.system))).map(({ name, tip }) => [name, tip] as const),
    );
    expect(tips.get('bed1-wetMedia_L-1-1')).toBe('Task 1, Wet media: length in mm');
    expect(tips.get('bed1-wetMedia_L-1-result')).toBe('Task 1, Wet media: your answer in L');
    expect(tips.get('fishPlanned-1-result')).toBe('Task 7, Fish to plan for: your answer');
    expect(tips.get('last-supplier')).toBe('How many fish the fish supplier says');
  });

  test('are read aloud between the words of their step', async () => {
    const of = content.systems.find(({ id }) => id === 'hollow-lane-ibc');
    if (!of) throw new Error('no system');
    const input = inputOf(of.system);
    const print = sheetPrint(planningWorksheet, input, await pagesOf(input), '{}');
    const parts = (await partsOf(await press.toPdf(print))).join(' ');
    const tip = 'Task 4, Fish that the wet media carries:';
    expect(parts).toContain(
      `P("rounded down (wet media" Form[${tip} wet media in L](field) "L ÷ media for one fish 25 L) =" ` +
        `Form[${tip} your answer](field))`,
    );
    expect(parts).toContain('P("The fish supplier says" Form[How many fish the fish supplier says](field)');
  });
});
