/**
 * The one reader of all content: build, pages, terminal and tests use it. It reads, checks and cross-checks every
 * file and tells every problem at once, each with file, line and column.
 */
import { basename, join, resolve, sep } from 'node:path';
import type { Problem } from '../core/problem.ts';
import { nameProblems, namesBrokenFile, type ReadFile, systemsOf, turnoversOf } from './collections.ts';
import type { Content, ReadSystem } from './content.ts';
import type { Facts } from './facts.ts';
import type { PeopleFacts } from './people.ts';
import { type Beside, plansNamed } from './plansBeside.ts';
import { bytesOf, missingFile, namesIn, readFolder, readOne, readText } from './readFiles.ts';
import { inOrder } from './problemOrder.ts';
import type { Handbook } from './readHandbook.ts';
import { mostRosterBytes } from './readRoster.ts';
import { type ReadWorkshop, toWorkshop } from './workshops.ts';

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
  const seasons = await read('turnovers');
  const plans = await plansOf(dir, seasons, problems);
  const turnovers = turnoversOf(seasons, cropFacts, names.crops, problems, plans);
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

/** The plans that seasons name, each read once. */
async function plansOf(
  dir: string,
  seasons: readonly ReadFile[],
  problems: Problem[],
): Promise<(season: ReadFile) => Beside> {
  const found = new Map<string, ReturnType<Beside>>();
  const placeOf = ({ file }: ReadFile, name: string): string =>
    `${file.slice(0, file.lastIndexOf('/') + 1)}${name}`;
  for (const season of seasons)
    for (const name of plansNamed(season.raw)) {
      const file = placeOf(season, name);
      const path = join(dir, file.slice(file.indexOf('/') + 1));
      if (found.has(file) || (await bytesOf(path)) === null) continue;
      found.set(file, (await readText(path, file, problems)) ?? 'broken');
    }
  return (season) => (name) => found.get(placeOf(season, name)) ?? 'missing';
}

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
