/** One system's care card as files: a PDF of all sides, and each side as SVG and PNG. */
import { mkdir, writeFile } from 'node:fs/promises';
import { join } from 'node:path';
import { planOf } from '../core/plan/planOf.ts';
import type { Press } from '../paper/press.ts';
import type { ReadSystem } from '../schemas/content.ts';
import { writeRecord } from '../schemas/systemRecord.ts';
import { careCard } from '../sheets/careCard.tsx';
import { cardPrint } from '../sheets/cardPrint.ts';
import type { SheetInput, Words } from '../sheets/sheet.ts';

/** Fine enough for a laser printer, and an A4 side stays under what phones can open. */
const dpi = 300;

/** What the card of a system is made from. */
function sheetInput(of: ReadSystem, words: Words, day: string): SheetInput {
  const { system, sheet } = of;
  return { system, plan: planOf(system), words, paper: sheet.paper, units: sheet.units, day };
}

/** Lays the card out and writes it into a folder of the system's own. */
export async function printCard(
  of: ReadSystem,
  words: Words,
  day: string,
  folder: string,
  press: Press,
): Promise<void> {
  const input = sheetInput(of, words, day);
  const pages = [];
  for await (const page of careCard(input, press.layOut)) pages.push(page);
  const into = join(folder, of.id);
  await mkdir(into, { recursive: true });
  await writeFile(
    join(into, 'care-card.pdf'),
    await press.toPdf(cardPrint(input, pages, writeRecord(of.raw))),
  );
  for (const [i, page] of pages.entries()) {
    await writeFile(join(into, `care-card-${i + 1}.svg`), press.toSvg(page));
    await writeFile(join(into, `care-card-${i + 1}.png`), await press.toPng(page, { dpi }));
  }
}
