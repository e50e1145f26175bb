import { spawnSync } from 'node:child_process';
import { mkdtempSync, rmSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import { afterAll, expect, test } from 'vitest';

const folder = mkdtempSync(join(tmpdir(), 'bedfirst-handouts-'));
afterAll(() => rmSync(folder, { recursive: true }));

/** What the terminal says to these words. */
function said(...words: readonly string[]): string {
  const out = join(folder, 'some.pdf');
  const start = ['src/terminal/start.js', 'src/terminal/handouts.ts', 'fennick-hill'];
  const { stdout, stderr } = spawnSync('node', [...start, ...words, '--out', out], { encoding: 'utf8' });
  return (stdout + stderr).replace(`${out}: `, '').trim();
}

test('rows that a shell has parted at their blanks are all printed', () => {
  expect(said('--rows', '3', '5', '-', '6')).toBe('3 of 24 worksheets, pages: 6');
  expect(said('--rows', '3; 5–6')).toBe('3 of 24 worksheets, pages: 6');
  expect(said('--rows', '3', 'Ada')).toBe('--rows is 3 Ada. Write numbers from 1 to 24, such as 3,5-8.');
}, 60_000);
