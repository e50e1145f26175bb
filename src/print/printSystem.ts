/** One system's sheets as files: each a PDF, and each page as SVG and PNG. */
import { mkdir, writeFile } from 'node:fs/promises';
import { join } from 'node:path';
import { type CareTask, careFor } from '../core/care/routine.ts';
import { dipMarks } from '../core/plan/dipPlan.ts';
import { planOf } from '../core/plan/planOf.ts';
import type { Press } from '../paper/press.ts';
import type { ReadSystem } from '../schemas/content.ts';
import { writeRecord } from '../schemas/systemRecord.ts';
import { allSheets } from '../sheets/allSheets.ts';
import type { SheetInput, Words } from '../sheets/sheet.ts';
import type { SheetKind } from '../sheets/sheetKind.ts';
import { sheetPrint } from '../sheets/sheetPrint.ts';

/** Fine enough for a laser printer, and an A4 side stays under what phones can open. */
const dpi = 300;

/** What is the same for all systems of a build. */
export type PrintJob = {
  readonly words: Words;
  readonly care: readonly CareTask[];
  readonly day: string;
  readonly folder: string;
};

/** What the sheets of a system are made from. */
function sheetInput(of: ReadSystem, { words, care, day }: PrintJob): SheetInput {
  const { system, sheet } = of;
  const { paper, units } = sheet;
  const plan = planOf(system);
  const dip = dipMarks(system);
  return { system, plan, words, dip, care: careFor(system, care), paper, units, day };
}

/** Lays every sheet out and writes it into a folder of the system's own. */
export async function printSystem(of: ReadSystem, job: PrintJob, press: Press): Promise<void> {
  const input = sheetInput(of, job);
  const into = join(job.folder, of.id);
  await mkdir(into, { recursive: true });
  for (const kind of allSheets) {
    if (kind.fits(input) === 'yes') await printSheet(kind, input, writeRecord(of.raw), into, press);
  }
}

async function printSheet(
  kind: SheetKind,
  input: SheetInput,
  record: string,
  into: string,
  press: Press,
): Promise<void> {
  const pages = [];
  for await (const page of kind.pages(input, press.layOut)) pages.push(page);
  await writeFile(join(into, `${kind.id}.pdf`), await press.toPdf(sheetPrint(kind, input, pages, record)));
  for (const [i, page] of pages.entries()) {
    await writeFile(join(into, `${kind.id}-${i + 1}.svg`), press.toSvg(page));
    await writeFile(join(into, `${kind.id}-${i + 1}.png`), await press.toPng(page, { dpi }));
  }
}
