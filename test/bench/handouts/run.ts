/**
 * Handouts of 1, 100, 1,000 and 5,000 people, a worksheet and its answers for each, as whole processes side by side:
 * ours, two floors, and with `--peers` others that draw the same words and lines, which for them are laid out already;
 * these are fetched into a temporary folder. `--most N` ends sooner. Both floors write the same tagged objects without any
 * layout: `given` from pages whose words have their places, so that glyphs, drawing commands and parts are still to be
 * written; `replayed` from the objects themselves, which then only have to be packed.
 * All are compiled beforehand, and ours has kept the handbook and its layouts. `cold` is ours before anything is kept,
 * `first` before it is compiled, and `plans` is ours with a plan to take home besides, whose drawing is everybody's own.
 */
import { spawnSync } from 'node:child_process';
import { mkdtempSync, rmSync, writeFileSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import { parseArgs } from 'node:util';
import { peerPackages } from './peers.ts';

const { values: told } = parseArgs({
  allowPositionals: true,
  options: {
    peers: { type: 'boolean', default: false },
    most: { type: 'string', default: '5000' },
    rounds: { type: 'string', default: '3' },
  },
});
const folder = mkdtempSync(join(tmpdir(), 'bedfirst-bench-'));
/** Slower ones would take hours over thousands of pages. */
const mostOfPeers = 1_000;
const mostSeconds = 60;
const start = 'src/terminal/start.js';
/**
 * As `npm run handouts` starts ours. What one person's page needs is done with at the next, but Node would put such
 * things by for long at once, as many are made at the same place, and look there only when they have become many. There is
 * room from the start, since nearly all that is loaded stays, and would be moved again and again.
 */
const small = [
  ...['--min-semi-space-size=16', '--max-semi-space-size=16'],
  ...['--no-allocation-site-pretenuring', '--heap-growing-percent=50'],
];
const kept = 'node_modules/.cache/bedfirst';

type Measured = { readonly seconds: number; readonly bytes: number; readonly memory_MB: number };

const kinds = ['ours', 'plans', 'given', 'replayed', ...(told.peers ? fetched() : [])];
for (const count of [1, 100, 1_000, 5_000].filter((some) => some <= Number(told.most))) compare(count);
rmSync(folder, { recursive: true });

function fetched(): readonly string[] {
  writeFileSync(join(folder, 'package.json'), '{"private":true}');
  return Object.entries(peerPackages).flatMap(([kind, packages]) => {
    if (packages.length === 0) return [kind];
    const { status } = spawnSync('npm', ['i', '--no-audit', '--no-fund', '--prefix', folder, ...packages], {
      encoding: 'utf8',
    });
    if (status !== 0) process.stdout.write(`${kind}: could not be fetched\n`);
    return status === 0 ? [kind] : [];
  });
}

function compare(count: number): void {
  process.stdout.write(`\n${count} people, ${2 * count} pages\n`);
  const first = count === 1 ? ['first', 'cold'] : [];
  run('prepare', count);
  const rows = [...first, ...kinds]
    .filter((kind) => count <= mostOfPeers || ['ours', 'given', 'replayed'].includes(kind))
    .flatMap((kind) => {
      const rounds: (Measured | null)[] = [];
      for (let round = 0; round < (count > 100 ? 1 : Number(told.rounds)); round += 1) {
        rounds.push(run(kind, count));
        // What was stopped once would be stopped again.
        if (rounds.at(-1) === null) break;
      }
      const sound = rounds.filter((round) => round !== null).sort((a, b) => a.seconds - b.seconds);
      const median = sound[Math.floor(sound.length / 2)];
      return median === undefined ? [] : [{ kind, ...median }];
    });
  const alive = processOf('alive', count);
  const ours = rows.find(({ kind }) => kind === 'ours');
  for (const { kind, seconds, bytes, memory_MB } of rows) {
    const ratio = (seconds / (ours?.seconds ?? 1)).toFixed(2).padStart(6);
    const perPage = Math.round(bytes / ((kind === 'plans' ? 3 : 2) * count));
    process.stdout.write(
      `  ${kind.padEnd(10)} ${seconds.toFixed(2).padStart(7)} s  ${ratio} × ours  ${String(memory_MB).padStart(5)} MB  ${String(perPage).padStart(6)} bytes a page\n`,
    );
  }
  const { alive_MB } = JSON.parse(alive.stdout || '{}') as { readonly alive_MB?: number };
  process.stdout.write(`  of ours, ${alive_MB ?? '?'} MB are still needed when the last page is written\n`);
}

function processOf(kind: string, count: number) {
  const source = `test/bench/handouts/${fileOf(kind)}.ts`;
  return spawnSync(
    'node',
    [...(fileOf(kind) === 'peer' ? [] : small), start, source, kind, String(count), folder],
    {
      encoding: 'utf8',
      ...(kind === 'prepare' ? {} : { timeout: mostSeconds * 1000, killSignal: 'SIGKILL' as const }),
    },
  );
}

function run(kind: string, count: number): Measured | null {
  if (kind === 'first') rmSync(kept, { recursive: true, force: true });
  if (kind === 'cold') rmSync(join(kept, 'kept'), { recursive: true, force: true });
  const started = performance.now();
  const { stdout, status, stderr, error } = processOf(kind, count);
  const seconds = (performance.now() - started) / 1000;
  if (status !== 0) {
    const stopped = error !== undefined && 'code' in error && error.code === 'ETIMEDOUT';
    const why = stderr.split('\n').find((line) => line.includes('Error')) ?? status;
    process.stdout.write(`  ${kind.padEnd(10)} ${stopped ? `stopped after ${mostSeconds} s` : why}\n`);
    return null;
  }
  return { seconds, ...(JSON.parse(stdout.trim().split('\n').at(-1) || '{}') as Omit<Measured, 'seconds'>) };
}

/** Each loads what it needs and no more. */
function fileOf(kind: string): 'ours' | 'given' | 'floor' | 'peer' {
  if (kind === 'replayed') return 'floor';
  if (kind === 'given') return 'given';
  return ['ours', 'first', 'cold', 'plans', 'alive', 'prepare'].includes(kind) ? 'ours' : 'peer';
}
