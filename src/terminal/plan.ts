/** `npm run plan -- FILE [--json]`: the worked figures of one system, for reading or for another program. */
import { planOf } from '../core/plan/planOf.ts';
import { readContent, readSystem } from '../schemas/readContent.ts';
import type { ReadSystem } from '../schemas/content.ts';
import { figureName, workedSteps } from '../sheets/keeperWords.ts';
import { noteSentence } from '../wording/note.ts';
import { problemLine } from '../wording/problem.ts';

const usage = 'Say which system: npm run plan -- content/systems/NAME.yaml [--json]';

const args = process.argv.slice(2);
const file = args.find((arg) => !arg.startsWith('--'));
if (file === undefined) stop([usage]);
else await show(file);

async function show(path: string): Promise<void> {
  const { content, problems } = await readContent('content');
  const words = content.wording['en'];
  if (words === undefined) return stop(problems.map((problem) => JSON.stringify(problem)));
  const line = (problem: (typeof problems)[number]): string => problemLine(problem, words);
  // Other systems may be half written; only what this one stands on has to be whole.
  const inTheWay = problems.filter((problem) => !problem.at?.file.startsWith('content/systems/'));
  if (inTheWay.length > 0) return stop(inTheWay.map(line));
  const read = await readSystem(path, content);
  if ('problems' in read) return stop(read.problems.map(line));
  const plan = planOf(read.system.system);
  if (args.includes('--json')) return print(JSON.stringify(plan, null, 2));
  print(report(read.system));

  function report(system: ReadSystem): string {
    const input = {
      system: system.system,
      plan,
      words: { catalogue: words ?? {}, terms: content.terms, sources: content.sources },
      paper: system.sheet.paper,
      units: system.sheet.units,
      day: '1970-01-01',
    };
    const steps = new Map(workedSteps(input).map((step) => [step.name, step]));
    const blocks = Object.values(plan.figures).map((figure) => {
      const step = steps.get(figureName(figure.key, input));
      const head = `${figure.key.padEnd(24)} ${(step?.result ?? String(figure.value ?? '—')).padEnd(18)} ${figureName(figure.key, input)}  ${figure.sources.map((key) => `[${key}]`).join(' ')}`;
      const notes = figure.notes.map(
        (note) => `    ${note.level}: ${noteSentence(note, input.words.catalogue, input.units)}`,
      );
      return [head, ...(step?.lines ?? []).map((one) => `    ${one}`), ...notes].join('\n');
    });
    return [`${system.system.name} — ${system.system.place}`, '', ...blocks].join('\n');
  }
}

function print(text: string): void {
  process.stdout.write(`${text}\n`);
}

function stop(lines: readonly string[]): void {
  process.stderr.write(`${lines.join('\n')}\n`);
  process.exitCode = 1;
}
