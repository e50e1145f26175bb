/**
 * The crop turnover planner on its standard case, a year of twelve crops wanted weekly on 8 m2: in Node and on the
 * finished page in real Chromium, each as a process of its own. `--season` names another season, or `all`; `--rounds N`;
 * `--only node` or `chromium`; `--site folder` takes pages that are built already.
 */
import { spawnSync } from 'node:child_process';
import { mkdtemp, rm } from 'node:fs/promises';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import { parseArgs } from 'node:util';
import { buildPages } from '../../../src/print/site.ts';
import { readContent } from '../../../src/schemas/readContent.ts';
import type { Measured } from './measured.ts';

const { values: told } = parseArgs({
  allowPositionals: true,
  options: {
    season: { type: 'string', default: 'twelve-crops' },
    rounds: { type: 'string', default: '3' },
    only: { type: 'string' },
    site: { type: 'string' },
  },
});

const { content } = await readContent('content');
const ids = content.turnovers.map(({ id }) => id).filter((id) => told.season === 'all' || id === told.season);
if (ids.length === 0) throw new Error(`there is no season ${told.season}`);
const runtimes = (['node', 'chromium'] as const).filter(
  (one) => told.only === undefined || told.only === one,
);

const home = await mkdtemp(join(tmpdir(), 'bedfirst-bench-'));
const site = told.site ?? join(home, 'site');
if (told.site === undefined && runtimes.includes('chromium')) await buildPages(site);
for (const id of ids) for (const runtime of runtimes) measure(runtime, id);
await rm(home, { recursive: true });

/** The median round as a whole, so that its figures belong together. */
function measure(runtime: string, id: string): void {
  const rounds = Array.from({ length: Number(told.rounds) }, () => run(runtime, id));
  const median = rounds.sort((a, b) => a.whole_s - b.whole_s)[Math.floor(rounds.length / 2)];
  if (median !== undefined) print(id, runtime, median);
}

function run(runtime: string, id: string): Measured {
  const { pathname } = new URL(`./${runtime}.ts`, import.meta.url);
  const { stdout, status, stderr } = spawnSync('tsx', [pathname, id, site], { encoding: 'utf8' });
  if (status !== 0) throw new Error(stderr);
  return JSON.parse(stdout.trim().split('\n').at(-1) ?? '') as Measured;
}

function print(id: string, runtime: string, { first_s, whole_s, stages, peak_MB, cpu_s }: Measured): void {
  const lines = [
    `${id} in ${runtime}`,
    `  first draft ${at(first_s)}`,
    ...stages.map(({ name, at_s, gap_frac }) => `  ${name.padEnd(11)} ${at(at_s)}   ${gapText(gap_frac)}`),
    `  whole plan  ${at(whole_s)}   processor ${cpu_s.toFixed(1)} s, peak ${peak_MB} MB`,
  ];
  process.stdout.write(`${lines.join('\n')}\n\n`);
}

function at(seconds: number): string {
  return `${seconds.toFixed(2).padStart(6)} s`;
}

function gapText(gap_frac: number): string {
  return gap_frac === 0 ? 'proven' : `gap ${(100 * gap_frac).toFixed(1)} %`;
}
