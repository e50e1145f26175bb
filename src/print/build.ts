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
import { printAll } from './printAll.ts';
import { buildPages, shareSheets } from './site.ts';

const { values: told } = parseArgs({
  options: {
    content: { type: 'string', default: 'content' },
    out: { type: 'string', default: 'dist' },
    day: { type: 'string' },
  },
});
const target = resolve(told.out);

process.exitCode = await run();

async function run(): Promise<number> {
  await clearUp(target);
  const { content, problems } = await readContent(told.content);
  if (problems.length > 0) return refuse(problems.map((problem) => lineOf(problem, content)));
  const fresh = await freshFolder(target);
  try {
    const refused = await make(content, fresh);
    if (refused.length > 0) return refuse(refused);
    await swapIn(fresh, target);
    say(
      `Done. To publish: ${told.out}/site. To print: ${told.out}/print, ${content.systems.length} systems.`,
    );
    return 0;
  } catch (error) {
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
  const job = { words, care, day: dayOfPrinting(), folder: printed };
  const total = content.systems.length;
  const answers = await printAll(content.systems, job, (done) =>
    progress(`Systems printed: ${done} of ${total}`),
  );
  const refused = answers.flatMap(({ file, refused }) => (refused === null ? [] : [`${file}: ${refused}`]));
  if (refused.length > 0) return refused.sort();
  say('Pages');
  await buildPages(site);
  await shareSheets(content.systems, printed, site);
  return [];
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
