/**
 * `npm run handouts -- fennick-hill --rows 3,5-8`: the handouts of some people of a workshop once more, as one PDF.
 * A row is a worksheet, counted in the order of the roster: a participant, or a team where teams share one.
 */
import { mkdir } from 'node:fs/promises';
import { dirname } from 'node:path';
import { parseArgs } from 'node:util';
import { dayOf } from '../core/calendar.ts';
import { classFacts, handoutFacts } from '../core/plan/handoutFacts.ts';
import { partsOf } from '../core/workshop/parts.ts';
import { nodePress } from '../paper/node.ts';
import { printable, writeAll } from '../print/printWorkshop.ts';
import type { Content } from '../schemas/content.ts';
import { readContent } from '../schemas/readContent.ts';
import type { ReadWorkshop } from '../schemas/workshops.ts';
import { keptFor } from './kept.ts';
import { classDesk } from '../sheets/handouts/classDesk.ts';
import { workshopStack } from '../sheets/handouts/workshopStack.ts';
import { rowsIn } from '../schemas/rowsIn.ts';
import { problemLine } from '../wording/problem.ts';

process.exitCode = await run().catch((error: Error) => refuse([error.message]));

/** @throws TypeError naming an option that there is not */
function options() {
  return parseArgs({
    allowPositionals: true,
    options: {
      rows: { type: 'string', default: '' },
      // Below what is printed and never published: a PDF with names is not left lying about.
      out: { type: 'string', default: 'dist/print/handouts.pdf' },
      answers: { type: 'boolean', default: false },
      content: { type: 'string', default: 'content' },
      day: { type: 'string', default: new Date().toISOString().slice(0, 10) },
    },
  });
}

async function run(): Promise<number> {
  const { values: told, positionals } = options();
  if (dayOf(told.day) === null) return refuse([`--day is ${told.day}. Write a day like 2031-04-30.`]);
  const kept = keptFor(told.content);
  const { content, problems } = await readContent(told.content, {
    shelf: kept.handbook,
    without: ['turnovers'],
  });
  if (problems.length > 0) return refuse(problems.map((one) => problemLine(one, content.wording['en'])));
  // A list with blanks in it reaches us as several words, unless it stood in quotation marks.
  const [id = '', ...further] = positionals;
  const rows = [told.rows, ...further].join(' ');
  const of = content.workshops.find((one) => one.id === id);
  const known = content.workshops.map((one) => one.id).join(', ');
  if (of === undefined) return refuse([`There is no workshop "${id}". The workshops are: ${known}.`]);
  const part = told.answers ? 'answers' : 'each';
  if (!partsOf(of.raw.sheets, 'none').includes(part)) return refuse([noPages[part](of.file)]);
  return printed(of, content, { ...told, rows, part, layouts: kept.layouts });
}

const noPages = {
  answers: (file: string) => `${file} has no key among its sheets, so there are no answers.`,
  each: (file: string) =>
    `${file} has neither worksheet nor plan among its sheets, so there are no handouts.`,
};

type Wish = {
  readonly rows: string;
  readonly out: string;
  readonly day: string;
  readonly part: 'answers' | 'each';
  readonly layouts: ReturnType<typeof keptFor>['layouts'];
};

async function printed(of: ReadWorkshop, content: Content, wish: Wish): Promise<number> {
  const { terms, sources } = content;
  const { out, day, layouts } = wish;
  const words = { catalogue: content.wording['en'] ?? {}, terms, sources };
  const press = await nodePress();
  const asked = await printable(of, words, press);
  for (const left of asked.skipped) say(`Left out: ${problemLine(left, words.catalogue)}`);
  const most = asked.people.length;
  const rows = rowsIn(wish.rows, most);
  if (rows === null)
    return refuse([`--rows is ${wish.rows}. Write numbers from 1 to ${most}, such as 3,5-8.`]);
  const desk = classDesk(asked, { words, day, core: { classFacts, handoutFacts }, layouts }, press);
  const { print, pages } = await workshopStack(desk, wish.part === 'answers' ? 'answers' : 'one', rows);
  try {
    await mkdir(dirname(out), { recursive: true });
    await writeAll(out, press.toStackPdf(print));
  } catch (error) {
    if (!(error instanceof Error && 'syscall' in error)) throw error;
    return refuse([`--out is ${out}, where nothing can be written: ${error.message}. Name another file.`]);
  }
  process.stdout.write(`${out}: ${rows.length} of ${most} worksheets, pages: ${pages()}\n`);
  return 0;
}

function refuse(lines: readonly string[]): number {
  for (const line of lines) say(line);
  return 1;
}

function say(line: string): void {
  process.stderr.write(`${line}\n`);
}
