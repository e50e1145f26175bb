import { spawn } from 'node:child_process';
import { cp, mkdtemp, readdir, rm } from 'node:fs/promises';
import { tmpdir } from 'node:os';
import { join } from 'node:path';

export type Ran = { readonly code: number | null; readonly out: string; readonly err: string };

/** The system that the tests change. */
const kept = 'hollow-lane-ibc.yaml';

/** A fresh home with a copy of the content, of the systems only so many, and a `dist` that does not exist yet. */
export async function freshHome(most: number): Promise<{
  readonly home: string;
  readonly content: string;
  readonly dist: string;
}> {
  const home = await mkdtemp(join(tmpdir(), 'bedfirst-build-'));
  const content = join(home, 'content');
  await cp('content', content, { recursive: true });
  const systems = (await readdir(join(content, 'systems'))).sort().filter((name) => name !== kept);
  for (const name of systems.slice(most - 1)) await rm(join(content, 'systems', name), { recursive: true });
  // Seasons take seconds each, and are looked at in the whole build.
  for (const name of await readdir(join(content, 'turnovers'))) await rm(join(content, 'turnovers', name));
  // Nor workshops, whose examples may be gone.
  await rm(join(content, 'workshops'), { recursive: true });
  return { home, content, dist: join(home, 'dist') };
}

/** Runs the build as npm does; `until` may end it at once, as a power cut would, or ask it to stop. */
export function runBuild(
  content: string,
  dist: string,
  until: (printedSoFar: string) => 'go on' | 'kill' | 'stop' = () => 'go on',
  options: readonly string[] = [],
): Promise<Ran> {
  return new Promise((done) => {
    // A process group of its own, so that a kill takes the build and not only the script that started it.
    const child = spawn('tsx', ['src/print/build.ts', `--content=${content}`, `--out=${dist}`, ...options], {
      detached: true,
    });
    let out = '';
    let err = '';
    let asked = false;
    child.stdout.on('data', (chunk: Buffer) => {
      out += chunk.toString();
      const wanted = until(out);
      if (child.pid === undefined || wanted === 'go on') return;
      if (wanted === 'kill') process.kill(-child.pid, 'SIGKILL');
      else if (!asked) child.kill('SIGINT');
      asked = true;
    });
    child.stderr.on('data', (chunk: Buffer) => {
      err += chunk.toString();
    });
    child.on('close', (code) => done({ code, out, err }));
  });
}
