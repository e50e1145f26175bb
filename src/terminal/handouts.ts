/**
 * `npm run handouts -- fennick-hill --rows 3,5-8`: the handouts of some people of a workshop once more, as one PDF.
 * Rows are counted as on the sheet for signing in.
 */
import { parseArgs } from 'node:util';
import { classFacts, handoutFacts } from '../core/plan/handoutFacts.ts';
import { nodePress } from '../paper/node.ts';
import { printable, writeAll } from '../print/printWorkshop.ts';
import { readContent } from '../schemas/readContent.ts';
import { keptFor } from './kept.ts';
import { classDesk } from '../sheets/handouts/classDesk.ts';
import { workshopStack } from '../sheets/handouts/workshopStack.ts';
import { rowsIn } from '../schemas/rowsIn.ts';
import { problemLine } from '../wording/problem.ts';

const { values: told, positionals } = parseArgs({
  allowPositionals: true,
  options: {
    rows: { type: 'string' },
    out: { type: 'string', default: 'handouts.pdf' },
    answers: { type: 'boolean', default: false },
    content: { type: 'string', default: 'content' },
    day: { type: 'string', default: new Date().toISOString().slice(0, 10) },
  },
});

process.exitCode = await run();

async function run(): Promise<number> {
  const kept = keptFor(told.content);
  const { content, problems } = await readContent(told.content, {
    shelf: kept.handbook,
    without: ['turnovers'],
  });
  if (problems.length > 0) return refuse(problems.map((one) => problemLine(one, content.wording['en'])));
  const [id = ''] = positionals;
  const of = content.workshops.find((one) => one.id === id);
  const known = content.workshops.map((one) => one.id).join(', ');
  if (of === undefined) return refuse([`There is no workshop "${id}". The workshops are: ${known}.`]);
  const { terms, sources } = content;
  const words = { catalogue: content.wording['en'] ?? {}, terms, sources };
  const press = await nodePress();
  const asked = await printable(of, words, press).catch((error: Error) => error);
  if (asked instanceof Error) return refuse([asked.message]);
  const most = asked.people.length;
  const rows = rowsIn(told.rows ?? '', most);
  if (rows === null)
    return refuse([`--rows is ${told.rows}. Write numbers from 1 to ${most}, such as 3,5-8.`]);
  const desk = classDesk(
    asked,
    { words, day: told.day, core: { classFacts, handoutFacts }, layouts: kept.layouts },
    press,
  );
  const { print, pages } = await workshopStack(desk, told.answers ? 'answers' : 'one', rows);
  await writeAll(told.out, press.toStackPdf(print));
  process.stdout.write(`${told.out}: ${pages()} pages for ${rows.length} of ${asked.people.length}\n`);
  return 0;
}

function refuse(lines: readonly string[]): number {
  process.stderr.write(`${lines.join('\n')}\n`);
  return 1;
}
