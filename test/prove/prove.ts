/**
 * `npm run prove`: every law of `test/laws/` on 100,000 random cases, on two workers. The laws of whole plans, level
 * simulation included, all look at one stream of 100,000 random systems. Then everything that 500 of them print is
 * walked. `--seed` repeats a run, `--runs` shortens it, `--only laws` or `--only sheets` takes one half.
 */
import { parseArgs } from 'node:util';
import { Worker } from 'node:worker_threads';
import { formulaLaws, lawNames, planLaws } from '../laws/laws.ts';
import { type Outcome, type Piece, sheetLaw } from './work.ts';

const { values } = parseArgs({
  options: { runs: { type: 'string' }, seed: { type: 'string' }, only: { type: 'string' } },
});
const runs = whole('runs', values.runs, 100_000);
const only = half(values.only);
/** Of 200 systems one is printed: a sheet takes hundreds of times as long as a plan. */
const printed = Math.ceil(runs / 200);
const seed = whole('seed', values.seed, Math.trunc(Math.random() * 2 ** 30));

/** Small enough that the time left can be told, large enough that handing them out costs nothing. */
const most = { formula: 10_000, plans: 250, sheets: 5 } as const;
const workers = 2;

const started = performance.now();
const pieces = allPieces();
let next = 0;
let tried = 0;
process.stdout.write(`${told().join('; ')}; seed ${seed}\n`);
await Promise.all(Array.from({ length: workers }, () => work()));
tell();

function whole(name: string, text: string | undefined, usual: number): number {
  const value = text === undefined ? usual : Number(text);
  if (Number.isInteger(value) && 0 < value) return value;
  process.stderr.write(`--${name} is ${text}. It must be a whole number above 0.\n`);
  process.exit(1);
}

function half(given: string | undefined): 'laws' | 'sheets' | 'both' {
  if (given === undefined) return 'both';
  if (given === 'laws' || given === 'sheets') return given;
  process.stderr.write(`--only is ${given}. It can be laws or sheets.\n`);
  process.exit(1);
}

/** What is going to be tried. */
function told(): readonly string[] {
  return [
    ...(only === 'sheets' ? [] : [`${lawNames().length} laws, ${runs} cases each`]),
    ...(only === 'laws' ? [] : [`all sheets of ${printed} systems`]),
  ];
}

/** In an order in which each law is as far on as the others at any time, so that the time left can be told. */
function allPieces(): readonly Piece[] {
  const laws = only === 'sheets' ? [] : [...formulaLaws.keys(), 'plans' as const];
  const sheets = only === 'laws' ? [] : ['sheets' as const];
  const cut = [...laws, ...sheets].flatMap((law) => {
    const size = typeof law === 'number' ? most.formula : most[law];
    const all = law === 'sheets' ? printed : runs;
    const parts = Math.ceil(all / size);
    return Array.from({ length: parts }, (_, part) => ({
      at: (part + 0.5) / parts,
      piece: { law, runs: Math.min(size, all - part * size), seed: seed + part },
    }));
  });
  return cut.sort((a, b) => a.at - b.at).map(({ piece }) => piece);
}

/** One worker, kept busy until nothing waits. */
function work(): Promise<void> {
  return new Promise((finished, failed) => {
    const worker = new Worker(new URL('./proveWorker.ts', import.meta.url));
    const give = (): void => {
      const piece = pieces[next++];
      if (piece) worker.postMessage(piece);
      else void worker.terminate().then(() => finished());
    };
    worker.on('message', (outcome: Outcome) => {
      if (outcome.broken) stop(outcome);
      progress();
      give();
    });
    worker.on('error', failed);
    give();
  });
}

function progress(): void {
  tried += 1;
  const share = tried / pieces.length;
  const left_min = ((performance.now() - started) / 60_000) * (1 / share - 1);
  const line = `${Math.floor(100 * share)} %, about ${Math.ceil(left_min)} min left`;
  if (process.stdout.isTTY) process.stdout.write(`\r${line}   `);
  else if (Math.floor(20 * share) > Math.floor((20 * (tried - 1)) / pieces.length))
    process.stdout.write(`${line}\n`);
}

function stop({ piece, broken }: Outcome): never {
  process.stdout.write(
    `\nBroken: ${broken?.law}\n${broken?.why}\nwith ${broken?.case}\n` +
      `Again: npm run prove -- ${again(piece)} (path ${broken?.path})\n`,
  );
  process.exit(1);
}

function again({ law, seed: own, runs: count }: Piece): string {
  return law === 'sheets'
    ? `--only sheets --seed ${own} --runs ${200 * count}`
    : `--seed ${own} --runs ${count}`;
}

function tell(): void {
  const names = only === 'sheets' ? [] : lawNames();
  const minutes = ((performance.now() - started) / 60_000).toFixed(1);
  const { user, system } = process.cpuUsage();
  const busy = ((user + system) / 60e6).toFixed(1);
  process.stdout.write(`\n${names.map((name, i) => `${String(i + 1).padStart(4)}. ${name}`).join('\n')}\n`);
  if (only !== 'sheets') {
    const cases = (formulaLaws.length + planLaws.length) * runs;
    process.stdout.write(
      `All ${names.length} laws hold on ${cases.toLocaleString('en')} cases, ${planLaws.length} of them on ` +
        `${runs} systems with level simulation.\n`,
    );
  }
  if (only !== 'laws') process.stdout.write(`On ${printed} systems: ${sheetLaw}.\n`);
  process.stdout.write(`Seed ${seed}, ${minutes} min, ${busy} min of processor time.\n`);
}
