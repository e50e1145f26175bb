/**
 * Builds everything once for all test files that look at the finished site and prints: into a folder of the
 * system's own for such things, never into the `dist` of whoever runs the tests.
 */
import { spawnSync } from 'node:child_process';
import { mkdtempSync, rmSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import type { TestProject } from 'vitest/node';

/** The day that all test prints bear. */
export const testDay = '2031-05-04';

declare module 'vitest' {
  export interface ProvidedContext {
    built: { readonly out: string; readonly log: string; readonly code: number | null };
  }
}

export default function setup(project: TestProject): () => void {
  const home = mkdtempSync(join(tmpdir(), 'bedfirst-'));
  const out = join(home, 'dist');
  const run = spawnSync('tsx', ['src/print/build.ts', `--out=${out}`, `--day=${testDay}`], {
    encoding: 'utf8',
    env: { ...process.env, ASTRO_TELEMETRY_DISABLED: '1' },
  });
  project.provide('built', { out, log: `${run.stdout}${run.stderr}`, code: run.status });
  return () => rmSync(home, { recursive: true, force: true });
}
