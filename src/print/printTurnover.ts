/** Plans one season and prints all that belongs to it. */
import { mkdir, writeFile } from 'node:fs/promises';
import { join } from 'node:path';
import { jobsOf } from '../core/turnover/jobs.ts';
import { seasonFigures } from '../core/turnover/seasonFigures.ts';
import type { Solver } from '../core/turnover/solver.ts';
import type { Page } from '../paper/page.ts';
import { finestDpi } from '../paper/toPng.ts';
import type { Press } from '../paper/press.ts';
import type { ReadTurnover } from '../schemas/content.ts';
import { planText } from '../schemas/planFile.ts';
import { plainPrint } from '../sheets/sheetPrint.ts';
import type { TurnoverInput } from '../sheets/turnoverSheet.ts';
import { turnoverSheets } from '../sheets/turnoverSheets.ts';
import { calendarFile, planTable } from '../wording/turnoverFiles.ts';
import type { PrintJob } from './printSystem.ts';
import { seasonPlan } from './seasonPlan.ts';

/** Where the seasons lie beside the systems. */
const turnoverFolder = 'turnovers';

/** Seconds for a season; most are proven best long before. */
const most_s = 9;

/** Returns the number of pages. */
export async function printTurnover(
  of: ReadTurnover,
  job: PrintJob,
  press: Press,
  solver: Solver,
): Promise<number> {
  const plan = seasonPlan(of, solver, job.words.catalogue, most_s);
  const { paper, units } = of.sheet;
  const labels = of.raw.labels ?? null;
  const figures = seasonFigures(plan);
  const input = { plan, jobs: jobsOf(plan), figures, words: job.words, paper, units, day: job.day, labels };
  const into = join(job.folder, turnoverFolder, of.id);
  await mkdir(into, { recursive: true });
  const said = { catalogue: job.words.catalogue, units, day: job.day };
  const calendar = calendarFile(plan, input.jobs, said);
  if (calendar !== null) await writeFile(join(into, 'calendar.ics'), calendar);
  await writeFile(join(into, 'plan.json'), planText(plan));
  await writeFile(join(into, 'plan.csv'), planTable(plan, input.jobs, said));
  let pages = 0;
  for (const kind of turnoverSheets) pages += await printKind(kind, input, { into, job, press });
  return pages;
}

type Place = { readonly into: string; readonly job: PrintJob; readonly press: Press };

async function printKind(
  kind: (typeof turnoverSheets)[number],
  input: TurnoverInput,
  { into, job, press }: Place,
): Promise<number> {
  if (kind.fits(input) === 'no') return 0;
  const pages: Page[] = [];
  for await (const page of kind.pages(input, press.layOut)) pages.push(page);
  await writeFile(join(into, `${kind.id}.pdf`), await press.toPdf(plainPrint(kind, input, pages)));
  const [first] = pages;
  if (job.pictures === 'none' || first === undefined) return pages.length;
  const dpi = Math.min(job.dpi, finestDpi(first));
  await writeFile(join(into, `${kind.id}-1.png`), await press.toPng(first, { dpi }));
  return pages.length;
}
