/**
 * The one reader of all content: build, pages, terminal and tests use it. It reads, checks and cross-checks every
 * file and tells every problem at once, each with file, line and column. The only file here that touches the disk.
 */
import { readdir, readFile, stat } from 'node:fs/promises';
import { basename, join, resolve, sep } from 'node:path';
import type { Problem } from '../core/problem.ts';
import { nameProblems, namesBrokenFile, type ReadFile, systemsOf, turnoversOf } from './collections.ts';
import type { Content, ReadSystem } from './content.ts';
import type { Facts } from './facts.ts';
import type { PeopleFacts } from './people.ts';
import { inOrder } from './problemOrder.ts';
import type { Handbook } from './readHandbook.ts';
import { mostRosterBytes } from './readRoster.ts';
import { decodeUtf8 } from './utf8.ts';
import { type ReadWorkshop, toWorkshop } from './workshops.ts';
import { readYaml } from './yamlFile.ts';

/** Larger files are refused without being read: nobody types two million characters. */
const mostBytes = 2_000_000;

/**
 * Reads a content folder.
 * @param dir the folder that holds `systems/`, `turnovers/`, `fish/`, `crops/`, `media/`, `climates/`, `containers/`,
 *   `pumps/`, `sources/`, `terms/` and `wording/`
 * @param how where the handbook is kept from one run to the next, and what this run has no use for
 * @returns what could be read, and all problems in the order of file and line; content is only to be used for a
 *   build when there are none
 */
export async function readContent(
  dir: string,
  { shelf = null, without = [] }: Reading = {},
): Promise<{ readonly content: Content; readonly problems: readonly Problem[] }> {
  const problems: Problem[] = [];
  const read = async (folder: Folder) =>
    folder !== 'systems' && without.includes(folder) ? [] : readFolder(dir, folder, problems);
  const { names, ...book } = await handbookOf(dir, problems, shelf);
  const facts = { fish: book.fish, media: book.media, climates: book.climates };
  const systemFiles = await read('systems');
  const systems = systemsOf(systemFiles, facts, names.facts, problems);
  const cropFacts = { crops: book.crops, climates: book.climates };
  const turnovers = turnoversOf(await read('turnovers'), cropFacts, names.crops, problems);
  const workshops = without.includes('workshops')
    ? []
    : await readWorkshops(
        dir,
        { ...facts, starts: book.starts, systems, bedName: bedName(book.wording) },
        systemFiles.map(({ name }) => name),
        problems,
      );
  return { content: { ...book, turnovers, systems, workshops }, problems: inOrder(problems) };
}

/** The folders that a handbook is read from. */
export const handbookFolders = [
  ...['sources', 'fish', 'media', 'climates', 'crops'],
  ...['containers', 'pumps', 'terms', 'care', 'wording'],
] as const;

type Folder = 'systems' | 'turnovers' | 'workshops';

export type Reading = {
  readonly shelf?: Shelf | null;
  /** Folders that are not read, so that what is wrong in them is in nobody's way. */
  readonly without?: readonly Exclude<Folder, 'systems'>[];
};

/** Where a handbook without problems is kept from one run to the next, for those who would read it every time. */
export type Shelf = {
  readonly kept: () => Promise<Handbook | null>;
  readonly keep: (handbook: Handbook) => Promise<void>;
};

async function handbookOf(dir: string, problems: Problem[], shelf: Shelf | null): Promise<Handbook> {
  const kept = await shelf?.kept();
  if (kept) return kept;
  // Its schemas take a while to be made, so they are loaded only where it is read.
  const { readHandbook } = await import('./readHandbook.ts');
  const found: Problem[] = [];
  const handbook = await readHandbook((folder) => readFolder(dir, folder, found), found);
  if (!handbook.names.wording.includes('en'))
    found.push(missingFile(`${basename(resolve(dir))}/wording/en.yaml`));
  if (found.length === 0) await shelf?.keep(handbook);
  problems.push(...found);
  return handbook;
}

/**
 * Reads one system file that lies anywhere, as `plan` is given it.
 * @param path the file
 * @param facts kinds of fish and media, from `readContent`
 */
export async function readSystem(
  path: string,
  facts: Facts,
): Promise<{ readonly system: ReadSystem } | { readonly problems: readonly Problem[] }> {
  const problems: Problem[] = [];
  const file = await readOne(path, path.split(sep).join('/'), problems);
  const [system] = file ? systemsOf([file], facts, [], problems) : [];
  return system ? { system } : { problems: inOrder(problems) };
}

/** Rosters lie beside their workshops; they are read with them, and are no content of their own. */
const isRoster = (name: string): boolean => /\.(csv|tsv|txt)$/i.test(name);

/** In the order of their ids. A project need not have any. */
async function readWorkshops(
  dir: string,
  facts: PeopleFacts,
  existing: readonly string[],
  problems: Problem[],
): Promise<readonly ReadWorkshop[]> {
  const folder = join(dir, 'workshops');
  if ((await namesIn(folder)) === null) return [];
  const files = await readFolder(dir, 'workshops', problems);
  const fileOfId = new Map<string, string>();
  const read = await Promise.all(
    files.map(async ({ file, name, raw, locate }) => {
      const beside = join(dir, 'workshops', file.slice(file.indexOf('/workshops/') + 11), '..');
      const bytesOf_ = (roster: string) => bytesOf(join(beside, roster), mostRosterBytes);
      const named = nameProblems(raw, name, file, fileOfId);
      const { workshop, problems: found } = await toWorkshop(raw, file, facts, bytesOf_);
      const told = [...named, ...found].filter((problem) => !namesBrokenFile(problem, existing));
      problems.push(...told.map((problem) => (problem.at ? problem : locate(problem))));
      return workshop === null ? [] : [workshop];
    }),
  );
  return read.flat().sort((a, b) => (a.id < b.id ? -1 : 1));
}

/** What a bed is called that nobody gave a name. */
function bedName(wording: Content['wording']): string {
  const workshop = wording['en']?.['workshop'];
  const name = typeof workshop === 'object' ? workshop['bed'] : undefined;
  return typeof name === 'string' ? name : 'Bed';
}

async function readFolder(dir: string, folder: string, problems: Problem[]): Promise<readonly ReadFile[]> {
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

function missingFile(file: string): Problem {
  return { code: 'fileMissing', place: [], given: file, at: { file, line: 1, column: 1 } };
}

/** Every file below a folder but hidden ones and notes to people, in a fixed order. */
async function namesIn(folder: string): Promise<readonly string[] | null> {
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
      .filter((name) => basename(folder) !== 'workshops' || !isRoster(name))
      .sort();
  } catch {
    return null;
  }
}

async function readOne(path: string, file: string, problems: Problem[]): Promise<ReadFile | null> {
  const start = { file, line: 1, column: 1 };
  const refuse = (problem: Omit<Problem, 'place'>) => {
    problems.push({ place: [], at: start, ...problem });
    return null;
  };
  const name = /([^/]*)\.yaml$/.exec(file)?.[1];
  if (name === undefined) return refuse({ code: 'fileName', given: basename(file) });
  const bytes = await bytesOf(path);
  if (bytes === null) return refuse({ code: 'fileMissing', given: file });
  if (typeof bytes === 'number')
    return refuse({ code: 'fileTooLarge', given: String(bytes), max: mostBytes });
  const decoded = decodeUtf8(bytes);
  if ('wrongAt' in decoded) return refuse({ code: 'notUtf8', at: { file, ...decoded.wrongAt } });
  const yaml = readYaml(decoded.text, file);
  if ('raw' in yaml) return { ...yaml, file, name };
  problems.push(...yaml.problems);
  return null;
}

/** The bytes of a file; only their number where there are too many; null where it cannot be read. */
async function bytesOf(path: string, most = mostBytes): Promise<Uint8Array | number | null> {
  try {
    const { size } = await stat(path);
    return size > most ? size : await readFile(path);
  } catch {
    return null;
  }
}
