/** One sheet of one system as files: a PDF, and pages as SVG and PNG. */
import { mkdir, writeFile } from 'node:fs/promises';
import { join } from 'node:path';
import type { CareTask } from '../core/care/routine.ts';
import { sheetFacts } from '../core/plan/sheetFacts.ts';
import type { Page } from '../paper/page.ts';
import type { Press } from '../paper/press.ts';
import { finestDpi } from '../paper/toPng.ts';
import type { ReadSystem } from '../schemas/content.ts';
import { writeRecord } from '../schemas/systemRecord.ts';
import type { SheetInput, Words } from '../sheets/sheet.ts';
import type { SheetKind } from '../sheets/sheetKind.ts';
import { carriedRecord, sheetPrint } from '../sheets/sheetPrint.ts';

/** Of which pages pictures are made beside the PDF. Those of the care card are always made: the site shows them. */
export const pictureChoices = ['all', 'first', 'none'] as const;
export type Pictures = (typeof pictureChoices)[number];

/** What is the same for all systems of a build. */
export type PrintJob = {
  readonly words: Words;
  readonly care: readonly CareTask[];
  readonly day: string;
  readonly folder: string;
  readonly pictures: Pictures;
  /** Dots per inch of the pictures; fewer where a page would have more than every device shows. */
  readonly dpi: number;
};

function inputOf(of: ReadSystem, { words, care, day }: PrintJob): SheetInput {
  const { system, sheet } = of;
  return { ...sheetFacts(system, care), words, ...sheet, day };
}

/** Lays a sheet out and writes it into a folder of the system's own. Returns the number of its pages. */
export async function printSheet(
  kind: SheetKind,
  of: ReadSystem,
  job: PrintJob,
  press: Press,
): Promise<number> {
  const input = inputOf(of, job);
  if (kind.fits(input) === 'no') return 0;
  const into = join(job.folder, of.id);
  await mkdir(into, { recursive: true });
  const pages: Page[] = [];
  for await (const page of kind.pages(input, press.layOut)) pages.push(page);
  const record = writeRecord(of.raw);
  await writeFile(join(into, `${kind.id}.pdf`), await press.toPdf(sheetPrint(kind, input, pages, record)));
  const carries = carriedRecord(input, record);
  for (const [at, page] of pictured(kind, pages, job).entries()) {
    const dpi = Math.min(job.dpi, finestDpi(page));
    await writeFile(join(into, `${kind.id}-${at + 1}.svg`), press.toSvg(page, carries));
    await writeFile(join(into, `${kind.id}-${at + 1}.png`), await press.toPng(page, { dpi, carries }));
  }
  return pages.length;
}

function pictured(kind: SheetKind, pages: readonly Page[], { pictures }: PrintJob): readonly Page[] {
  if (kind.pictures === 'none') return [];
  if (pictures === 'all' || kind.id === 'care-card') return pages;
  return pictures === 'first' ? pages.slice(0, 1) : [];
}
