/**
 * Keeps what was read of the handbook for the next start of a compiled program: reading and checking three hundred files
 * takes longer than printing a page. It holds for the same files and the same program; nobody's names are in it.
 */
import { readdirSync, statSync } from 'node:fs';
import { readFile, rename, writeFile } from 'node:fs/promises';
import { join, resolve } from 'node:path';
import { fileURLToPath } from 'node:url';
import { deserialize, serialize } from 'node:v8';
import { handbookFolders, type Shelf } from '../schemas/readContent.ts';
import type { Handbook } from '../schemas/readHandbook.ts';

const program = fileURLToPath(import.meta.url);

/** @param dir the content folder; a program that was not compiled changes without notice, so it keeps nothing */
export function keptHandbook(dir: string): Shelf | null {
  if (!program.endsWith('.mjs')) return null;
  const file = program.replace(/\.mjs$/, '.handbook');
  return {
    kept: async () => {
      try {
        const [stamp, handbook] = deserialize(await readFile(file)) as [string, Handbook];
        return stamp === stampOf(dir) ? handbook : null;
      } catch {
        return null;
      }
    },
    keep: async (handbook) => {
      const beside = `${file}-${process.pid}`;
      await writeFile(beside, serialize([stampOf(dir), handbook]));
      await rename(beside, file);
    },
  };
}

/** Another one as soon as a file has come, gone or changed. */
function stampOf(dir: string): string {
  const told = (path: string): string => {
    const { size, mtimeMs } = statSync(path);
    return `${path} ${size} ${mtimeMs}`;
  };
  const filesIn = (folder: string): readonly string[] =>
    readdirSync(folder, { recursive: true, withFileTypes: true })
      .filter((entry) => entry.isFile())
      .map((entry) => join(entry.parentPath, entry.name));
  const files = handbookFolders.flatMap((folder) => filesIn(resolve(dir, folder)));
  return [program, ...files].map(told).join('\n');
}
