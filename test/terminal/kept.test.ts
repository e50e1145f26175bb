import { spawnSync } from 'node:child_process';
import { cpSync, mkdtempSync, readdirSync, readFileSync, rmSync, writeFileSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import { afterAll, expect, test } from 'vitest';
import { readPdf } from '../paper/readPdf.ts';

const folder = mkdtempSync(join(tmpdir(), 'bedfirst-kept-'));
const content = join(folder, 'content');
const kept = 'node_modules/.cache/bedfirst/kept';
cpSync('content', content, { recursive: true });
afterAll(() => rmSync(folder, { recursive: true }));

/** The words of the first person's worksheet, as `npm run handouts` prints it; what the terminal said where it does not. */
async function handout(): Promise<string> {
  const out = join(folder, 'handout.pdf');
  const args = ['fennick-hill', '--rows', '1', '--day', '2031-05-04', '--content', content, '--out', out];
  const { status, stderr } = spawnSync(
    'node',
    ['src/terminal/start.js', 'src/terminal/handouts.ts', ...args],
    {
      encoding: 'utf8',
    },
  );
  if (status !== 0) return stderr;
  return (await readPdf(new Uint8Array(readFileSync(out)))).pages[0]?.text ?? '';
}

function change(file: string, from: string, to: string): void {
  const path = join(content, file);
  const text = readFileSync(path, 'utf8');
  expect(text).toContain(from);
  writeFileSync(path, text.replace(from, to));
}

test('what is kept from one start to the next gives the same print, and none that is no longer true', async () => {
  const first = await handout();
  expect(first).toContain('Your containers');
  expect(await handout()).toBe(first);
  change('wording/en.yaml', 'Your containers', 'What the tape said');
  expect(await handout()).toBe(first.replace('Your containers', 'What the tape said'));
  change('wording/en.yaml', 'What the tape said', 'Your containers');
  change('workshops/fennick-hill.yaml', 'A tank, a bed and a pump', 'Three totes and a pump');
  expect(await handout()).toBe(first.replace('A tank, a bed and a pump', 'Three totes and a pump'));
  change('media/coarseGravel.yaml', 'name:', 'nome:');
  expect(await handout()).toContain('coarseGravel.yaml');
}, 120_000);

test('nobody who is in a roster is in what is kept', () => {
  const roster = readFileSync(join(content, 'workshops/invented-fennick-hill.csv'), 'utf8').split('\n');
  const [, ...rows] = roster.filter((row) => row.trim() !== '');
  const names = rows.map((row) => row.split(';')[0] ?? '');
  expect(names.length).toBeGreaterThan(20);
  for (const file of readdirSync(kept)) {
    const text = readFileSync(join(kept, file), 'latin1');
    expect(names.filter((name) => text.includes(Buffer.from(name).toString('latin1')))).toEqual([]);
  }
});
