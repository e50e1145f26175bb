/**
 * Handouts of 1, 100, 1,000 and 5,000 people, a worksheet and its answers for each, as whole processes side by side:
 * ours, the floor (the same tagged objects written without any layout), and with `--peers` others that draw the same
 * words and lines, which for them are laid out already. They are fetched into a temporary folder. `--most N` ends sooner.
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

type Measured = { readonly seconds: number; readonly bytes: number; readonly memory_MB: number };

const kinds = ['ours', 'floor', ...(told.peers ? fetched() : [])];
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
  run('prepare', count);
  const rows = kinds
    .filter((kind) => count <= mostOfPeers || kind === 'ours' || kind === 'floor')
    .flatMap((kind) => {
      const rounds = Array.from({ length: count > 100 ? 1 : Number(told.rounds) }, () => run(kind, count));
      const sound = rounds.filter((round) => round !== null).sort((a, b) => a.seconds - b.seconds);
      const median = sound[Math.floor(sound.length / 2)];
      return median === undefined ? [] : [{ kind, ...median }];
    });
  const ours = rows.find(({ kind }) => kind === 'ours');
  process.stdout.write(`\n${count} people, ${2 * count} pages\n`);
  for (const { kind, seconds, bytes, memory_MB } of rows) {
    const ratio = (seconds / (ours?.seconds ?? 1)).toFixed(2).padStart(6);
    const perPage = Math.round(bytes / (2 * count));
    process.stdout.write(
      `  ${kind.padEnd(10)} ${seconds.toFixed(2).padStart(7)} s  ${ratio} × ours  ${String(memory_MB).padStart(5)} MB  ${String(perPage).padStart(6)} bytes a page\n`,
    );
  }
}

function run(kind: string, count: number): Measured | null {
  const started = performance.now();
  const { pathname } = new URL(`${fileOf(kind)}.ts`, import.meta.url);
  const { stdout, status, stderr } = spawnSync('tsx', [pathname, kind, String(count), folder], {
    encoding: 'utf8',
  });
  const seconds = (performance.now() - started) / 1000;
  if (status !== 0) {
    process.stdout.write(
      `${kind}, ${count}: ${stderr.split('\n').find((line) => line.includes('Error')) ?? status}\n`,
    );
    return null;
  }
  return { seconds, ...(JSON.parse(stdout.trim().split('\n').at(-1) || '{}') as Omit<Measured, 'seconds'>) };
}

/** Each loads what it needs and no more. */
function fileOf(kind: string): 'ours' | 'floor' | 'peer' {
  if (kind === 'floor') return 'floor';
  return kind === 'ours' || kind === 'prepare' ? 'ours' : 'peer';
}
