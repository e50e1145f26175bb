import { describe, expect, test } from 'vitest';
import { allSheets } from '../../src/sheets/allSheets.ts';
import { sheetPrint } from '../../src/sheets/sheetPrint.ts';
import { partsOf } from '../paper/readPdf.ts';
import { content, inputOf, press } from './laidOut.ts';

/** The parts of a sheet as a screen reader walks through them. */
async function aloud(sheet: string): Promise<string> {
  const kind = allSheets.find(({ id }) => id === sheet);
  const of = content.systems.find(({ id }) => id === 'hollow-lane-ibc');
  if (!kind || !of) throw new Error('no such sheet');
  const input = inputOf(of.system);
  const pages = [];
  for await (const page of kind.pages(input, press.layOut)) pages.push(page);
  return (await partsOf(await press.toPdf(sheetPrint(kind, input, pages, '{}')))).join(' ');
}

describe('read aloud', () => {
  test('each reading of the care card heads its row, and every column has a head', async () => {
    const told = await aloud('care-card');
    expect(told).toContain(
      'TR(TH("Readings") TH("Good") TH("Otherwise") TH("source")) TR(TH("Ammonia, total") TD("up to 1 mg/L")',
    );
    expect(told).not.toContain('TH()');
  });

  test('the heads of the feed by weight are told once, though they are printed over both columns', async () => {
    const told = await aloud('care-card');
    expect(told.split('TH("one fish")')).toHaveLength(2);
    expect(told).toContain('TR(TH("one fish") TH("all 12, a day")) TR(TH("50 g") TD(');
  });

  test('what to do when something is wrong has a heading of its own on the wall poster', async () => {
    expect(await aloud('wall-poster-A3')).toMatch(/H2\("Something wrong\?[^"]*"\)/);
  });
});
