/** `npm run plan -- FILE [--json]`: the worked figures, tables and care of one system, for reading or for another program. */
import { careFor } from '../core/care/routine.ts';
import type { Figure } from '../core/plan/figure.ts';
import { planOf } from '../core/plan/planOf.ts';
import type { Content, ReadSystem } from '../schemas/content.ts';
import { readContent, readSystem } from '../schemas/readContent.ts';
import { figureName, figureValue } from '../wording/figure.ts';
import { noteSentence } from '../wording/note.ts';
import { problemLine } from '../wording/problem.ts';
import { stepLine } from '../wording/step.ts';
import { tableWords } from '../wording/table.ts';
import { careLines } from './careLines.ts';
import { keptFor } from './kept.ts';
import { tableLines } from './tableLines.ts';

const usage = 'Say which system: npm run plan -- content/systems/NAME.yaml [--json]';

const args = process.argv.slice(2);
const file = args.find((arg) => !arg.startsWith('--'));
if (file === undefined) stop([usage]);
else await show(file);

async function show(path: string): Promise<void> {
  const { content, problems } = await readContent('content', {
    shelf: keptFor('content').handbook,
    without: ['turnovers', 'workshops'],
  });
  const line = (problem: (typeof problems)[number]): string => problemLine(problem, content.wording['en']);
  // Other systems may be half written; only what this one stands on has to be whole.
  const inTheWay = problems.filter((problem) => !problem.at?.file.startsWith('content/systems/'));
  if (inTheWay.length > 0) return stop(inTheWay.map(line));
  const read = await readSystem(path, content);
  if ('problems' in read) return stop(read.problems.map(line));
  const plan = planOf(read.system.system);
  const care = careFor(read.system.system, content.care);
  if (args.includes('--json')) return print(JSON.stringify({ ...plan, care }, null, 2));
  const { name, place } = read.system.system;
  const figures = Object.values(plan.figures).map((figure) => block(figure, read.system, content));
  const tables = plan.tables.flatMap((table) => [
    '',
    ...tableLines(tableWords(table, content.wording['en'] ?? {}, read.system.sheet.units)),
  ]);
  print(
    [`${name} — ${place}`, '', ...figures, ...tables, ...careLines(care, content.wording['en'] ?? {})].join(
      '\n',
    ),
  );
}

/** One figure: key, value, name and sources, then its steps and notes. */
function block(figure: Figure, of: ReadSystem, content: Content): string {
  const catalogue = content.wording['en'] ?? {};
  const { units } = of.sheet;
  const value = figureValue(figure, catalogue, units);
  const name = figureName(figure.key, of.system.beds.length, catalogue);
  const sources = figure.sources.map((key) => `[${key}]`).join(' ');
  const steps = figure.steps
    .filter((step) => step.formula !== '')
    .map((step) => `    ${stepLine(step, catalogue, content.terms)}`);
  const notes = figure.notes.map((note) => `    ${note.level}: ${noteSentence(note, catalogue, units)}`);
  return [
    `${figure.key.padEnd(22)} ${value.padEnd(16)} ${name}  ${sources}`.trimEnd(),
    ...steps,
    ...notes,
  ].join('\n');
}

function print(text: string): void {
  process.stdout.write(`${text}\n`);
}

function stop(lines: readonly string[]): void {
  process.stderr.write(`${lines.join('\n')}\n`);
  process.exitCode = 1;
}
