/**
 * What a compiled program keeps for its next start: what it read of the handbook, as reading and checking three hundred
 * files takes longer than printing a page, and worksheets laid out for everybody. It holds for the same files and the
 * same program; nobody's names are in it.
 */
import { createHash } from 'node:crypto';
import { existsSync, readdirSync, statSync } from 'node:fs';
import { mkdir, readFile, rename, writeFile } from 'node:fs/promises';
import { dirname, join, resolve } from 'node:path';
import { fileURLToPath } from 'node:url';
import { deserialize, serialize } from 'node:v8';
import { handbookFolders, type Shelf } from '../schemas/readContent.ts';
import type { LayoutShelf } from '../sheets/handouts/sharedLayouts.ts';

type Kept = { readonly handbook: Shelf | null; readonly layouts: LayoutShelf | null };

const program = fileURLToPath(import.meta.url);

/** @param dir the content folder; a program that was not compiled changes without notice, so it keeps nothing */
export function keptFor(dir: string): Kept {
  if (!program.endsWith('.mjs')) return { handbook: null, layouts: null };
  const folder = join(dirname(program), 'kept');
  const stamp = stampOf(dir);
  const fileOf = (what: string): string =>
    join(folder, createHash('sha256').update(`${stamp}\n${what}`).digest('hex'));
  return {
    handbook: {
      kept: () => read(fileOf('handbook')),
      keep: (handbook) => write(fileOf('handbook'), handbook),
    },
    layouts: {
      kept: (shape) => read(fileOf(shape)),
      keep: async (shape, pages) => {
        if (!existsSync(fileOf(shape))) await write(fileOf(shape), pages);
      },
    },
  };
}

async function read<Thing>(file: string): Promise<Thing | null> {
  try {
    return deserialize(await readFile(file)) as Thing;
  } catch {
    return null;
  }
}

/** Whoever runs beside us finds a whole file or none. What cannot be kept is made again next time. */
async function write(file: string, thing: unknown): Promise<void> {
  const beside = `${file}-${process.pid}`;
  try {
    await mkdir(dirname(file), { recursive: true });
    await writeFile(beside, serialize(thing));
    await rename(beside, file);
  } catch {
    return;
  }
}

/** Another one as soon as the program was compiled anew, or a file has come, gone or changed. */
function stampOf(dir: string): string {
  const told = (path: string): string => {
    const { size, mtimeMs } = statSync(path);
    return `${path} ${size} ${mtimeMs}`;
  };
  const filesIn = (folder: string): readonly string[] =>
    readdirSync(folder, { recursive: true, withFileTypes: true })
      .filter((entry) => entry.isFile())
      .map((entry) => join(entry.parentPath, entry.name));
  const folders = handbookFolders.map((folder) => resolve(dir, folder)).filter(existsSync);
  return [program, ...folders.flatMap(filesIn)].map(told).join('\n');
}
