/** Files of a content folder as plain data, each problem with its file, line and column. Only here is the disk touched. */
import { readdir, readFile, stat } from 'node:fs/promises';
import { basename, join, resolve, sep } from 'node:path';
import type { Problem } from '../core/problem.ts';
import type { ReadFile } from './collections.ts';
import { decodeUtf8 } from './utf8.ts';
import { readYaml, type YamlFile } from './yamlFile.ts';

/** Larger files are refused without being read: nobody types two million characters. */
const mostBytes = 2_000_000;

/** Every file of a folder that could be read. */
export async function readFolder(
  dir: string,
  folder: string,
  problems: Problem[],
): Promise<readonly ReadFile[]> {
  const shown = `${basename(resolve(dir))}/${folder}`;
  const names = await namesIn(join(dir, folder));
  if (names === null) {
    problems.push(missingFile(shown));
    return [];
  }
  const read = await Promise.all(
    names.map((name) => readOne(join(dir, folder, name), `${shown}/${name}`, problems)),
  );
  return read.filter((file) => file !== null);
}

export function missingFile(file: string): Problem {
  return { code: 'fileMissing', place: [], given: file, at: { file, line: 1, column: 1 } };
}

/** What lies beside the files of a folder and is read with them: it is no content of its own. */
const besides: Readonly<Record<string, RegExp>> = { workshops: /\.(csv|tsv|txt)$/i, turnovers: /\.json$/i };

/** Every file below a folder but hidden ones and notes to people, in a fixed order. */
export async function namesIn(folder: string): Promise<readonly string[] | null> {
  try {
    const entries = await readdir(folder, { recursive: true, withFileTypes: true });
    return entries
      .filter((entry) => !entry.isDirectory())
      .map((entry) =>
        join(entry.parentPath, entry.name)
          .slice(folder.length + 1)
          .split(sep)
          .join('/'),
      )
      .filter((name) => !name.split('/').some((part) => part.startsWith('.')) && !name.endsWith('.md'))
      .filter((name) => !besides[basename(folder)]?.test(name))
      .sort();
  } catch {
    return null;
  }
}

/** One file of content. */
export async function readOne(path: string, file: string, problems: Problem[]): Promise<ReadFile | null> {
  const name = /([^/]*)\.yaml$/.exec(file)?.[1];
  if (name === undefined) {
    problems.push({ code: 'fileName', place: [], given: basename(file), at: { file, line: 1, column: 1 } });
    return null;
  }
  const read = await readText(path, file, problems);
  return read && { ...read, file, name };
}

/** A file of YAML, or of JSON, which is YAML too. */
export async function readText(path: string, file: string, problems: Problem[]): Promise<YamlFile | null> {
  const start = { file, line: 1, column: 1 };
  const refuse = (problem: Omit<Problem, 'place'>) => {
    problems.push({ place: [], at: start, ...problem });
    return null;
  };
  const bytes = await bytesOf(path);
  if (bytes === null) return refuse({ code: 'fileMissing', given: file });
  if (typeof bytes === 'number')
    return refuse({ code: 'fileTooLarge', given: String(bytes), max: mostBytes });
  const decoded = decodeUtf8(bytes);
  if ('wrongAt' in decoded) return refuse({ code: 'notUtf8', at: { file, ...decoded.wrongAt } });
  const yaml = readYaml(decoded.text, file);
  if ('raw' in yaml) return yaml;
  problems.push(...yaml.problems);
  return null;
}

/** The bytes of a file; only their number where there are too many; null where it cannot be read. */
export async function bytesOf(path: string, most = mostBytes): Promise<Uint8Array | number | null> {
  try {
    const { size } = await stat(path);
    return size > most ? size : await readFile(path);
  } catch {
    return null;
  }
}
