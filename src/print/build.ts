/**
 * `npm run build`: content in, site and prints out. Content is checked before anything is made, everything is made
 * beside the old build, and only a whole new one takes its place.
 */
import { rm } from 'node:fs/promises';
import { join, resolve } from 'node:path';
import { parseArgs } from 'node:util';
import type { Problem } from '../core/problem.ts';
import type { Content } from '../schemas/content.ts';
import { readContent } from '../schemas/readContent.ts';
import { problemLine } from '../wording/problem.ts';
import { clearUp, freshFolder, swapIn } from './freshFolder.ts';
import { handsFor, printAll } from './printAll.ts';
import { pictureChoices, type Pictures } from './printSystem.ts';
import type { PrintAnswer } from './order.ts';
import { buildPages, shareSheets } from './site.ts';

const { values: told } = parseArgs({
  options: {
    content: { type: 'string', default: 'content' },
    out: { type: 'string', default: 'dist' },
    day: { type: 'string' },
    pictures: { type: 'string', default: 'first' },
    dpi: { type: 'string', default: '150' },
  },
});
const target = resolve(told.out);

/** Asked to stop, the build puts its own half of the work away before it ends. */
const stopped = new AbortController();
for (const signal of ['SIGINT', 'SIGTERM'] as const)
  process.once(signal, () => stopped.abort(new Error(signal)));

process.exitCode = await run();
// What Astro still has open must not keep a stopped build waiting.
if (stopped.signal.aborted) process.exit();

async function run(): Promise<number> {
  const wrong = wrongOptions();
  if (wrong.length > 0) return refuse(wrong);
  await clearUp(target);
  const { content, problems } = await readContent(told.content);
  if (problems.length > 0) return refuse(problems.map((problem) => lineOf(problem, content)));
  const fresh = await freshFolder(target);
  try {
    const refused = await make(content, fresh);
    if (refused.length > 0) return refuse(refused);
    await swapIn(fresh, target);
    say(
      `Done. To publish: ${told.out}/site. To print: ${told.out}/print, ${content.systems.length} systems, ${content.turnovers.length} seasons and ${content.workshops.length} workshops.`,
    );
    return 0;
  } catch (error) {
    if (stopped.signal.aborted) return refuse(['Stopped.']);
    return refuse([error instanceof Error ? (error.stack ?? error.message) : String(error)]);
  } finally {
    await rm(fresh, { recursive: true, force: true });
  }
}

/** Sheets first: what cannot be printed is told before the pages are built. */
async function make(content: Content, fresh: string): Promise<readonly string[]> {
  const printed = join(fresh, 'print');
  const site = join(fresh, 'site');
  const { terms, sources, care } = content;
  const words = { catalogue: content.wording['en'] ?? {}, terms, sources };
  const { pictures, dpi } = options();
  const job = { words, care, day: dayOfPrinting(), folder: printed, pictures, dpi };
  const started = performance.now();
  const answers = await printAll(
    content,
    job,
    ({ done, of, pages }) => progress(`Sheets: ${done} of ${of}, ${pages} pages`),
    stopped.signal,
  );
  const refused = refusedLines(answers);
  if (refused.length > 0) return refused;
  for (const line of new Set(answers.flatMap(({ leftOut }) => leftOut))) say(`Left out: ${line}`);
  tellSpeed(answers, (performance.now() - started) / 1000);
  say('Pages');
  await buildPages(site);
  await shareSheets(content.systems, printed, site);
  return [];
}

/** Each reason once: what stands in a name stands on every sheet. */
function refusedLines(answers: readonly PrintAnswer[]): readonly string[] {
  const sheetsBy = new Map<string, string[]>();
  for (const { file, sheet, refused } of answers) {
    if (refused === null) continue;
    const line = `${file}: ${refused}`;
    sheetsBy.set(line, [...(sheetsBy.get(line) ?? []), sheet]);
  }
  return [...sheetsBy].map(([line, sheets]) => `${line} (${sheets.join(', ')})`).sort();
}

function tellSpeed(answers: readonly PrintAnswer[], seconds: number): void {
  const sheets = answers.filter(({ pages }) => pages > 0).length;
  const pages = answers.reduce((sum, answer) => sum + answer.pages, 0);
  const speed = `${(pages / seconds).toFixed(1)} pages a second on ${handsFor(answers.length)} cores`;
  say(
    `${process.stdout.isTTY ? '\n' : ''}${sheets} sheets, ${pages} pages in ${seconds.toFixed(1)} s: ${speed}`,
  );
}

function options(): { readonly pictures: Pictures; readonly dpi: number } {
  const pictures = pictureChoices.find((choice) => choice === told.pictures) ?? 'first';
  return { pictures, dpi: Number(told.dpi) };
}

function wrongOptions(): readonly string[] {
  const wrong = [];
  const { pictures, dpi } = options();
  if (pictures !== told.pictures)
    wrong.push(`--pictures is ${told.pictures}. It can be ${pictureChoices.join(', ')}.`);
  if (!(Number.isInteger(dpi) && 30 <= dpi && dpi <= 1200))
    wrong.push(`--dpi is ${told.dpi}. It must be a whole number from 30 to 1200.`);
  return wrong;
}

/** The one clock of the build: today, or the day it is told. */
function dayOfPrinting(): string {
  const epoch = process.env['SOURCE_DATE_EPOCH'];
  const day = epoch === undefined ? new Date() : new Date(Number(epoch) * 1000);
  return told.day ?? day.toISOString().slice(0, 10);
}

function lineOf(problem: Problem, content: Content): string {
  return problemLine(problem, content.wording['en']);
}

function refuse(lines: readonly string[]): number {
  const count = lines.length === 1 ? '1 problem' : `${lines.length} problems`;
  process.stderr.write(`${lines.join('\n')}\n\n${count}; ${told.out} was left as it is.\n`);
  return 1;
}

function say(line: string): void {
  process.stdout.write(`${line}\n`);
}

/** One line that counts up on a terminal, a line each elsewhere. */
function progress(line: string): void {
  process.stdout.write(process.stdout.isTTY ? `\r${line}\u001b[K` : `${line}\n`);
}
