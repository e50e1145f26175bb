/** The people of a workshop with a system each: their own containers, a system by name, or an exercise. */
import type { Problem } from '../core/problem.ts';
import type { System } from '../core/system.ts';
import { type Exercise, exercises } from '../core/workshop/exercise.ts';
import { firstLevels } from '../core/workshop/firstLevels.ts';
import { sheetNumber } from '../core/workshop/sheetNumber.ts';
import type { ContainerFile } from './container.ts';
import { toContainer } from './container.ts';
import { entry, type Facts } from './facts.ts';
import type { Roster, RosterRow } from './readRoster.ts';
import type { Starts } from './starts.ts';
import { toSystem } from './toSystem.ts';
import type { WorkshopFile } from './workshopFile.ts';

/** Somebody who gets a worksheet: a participant, or a team with all who belong to it. */
export type Person = {
  readonly line: number;
  readonly name: string;
  readonly team: string;
  /** Of a team its members, in the order of the roster. */
  readonly members: readonly string[];
  readonly notes: string;
  /** The number of an exercise; null for containers of one's own. */
  readonly number: string | null;
  readonly system: System;
};

export type PeopleFacts = Facts & {
  readonly starts: Starts;
  readonly systems: readonly { readonly id: string; readonly system: System }[];
  /** What a bed is called that nobody gave a name. */
  readonly bedName: string;
};

/**
 * Everybody with their system.
 * @param file a checked workshop
 * @param rows rows of its roster that have no problem
 * @param at where the containers of a row stand, for problems
 */
export function peopleOf(
  file: WorkshopFile,
  rows: readonly RosterRow[],
  facts: PeopleFacts,
  at: (line: number) => Problem['at'],
): { readonly people: readonly Person[]; readonly problems: readonly Problem[] } {
  const base = baseOf(file, facts);
  if ('problems' in base) return { people: [], problems: base.problems };
  const found = file.worksheets === 'teams' ? teamsOf(rows) : rows.map((row) => ({ ...row, members: [] }));
  const most_frac = entry(facts.media, file.media)?.void_frac.high ?? 0;
  const exercise = exercises(file.level, file.seed, found.length, most_frac);
  const problems: Problem[] = [];
  const people = found.flatMap((row, index): readonly Person[] => {
    const read = systemOf(row, exercise[index], base.system, file, facts);
    if ('problems' in read) {
      problems.push(...read.problems.map((one) => ({ ...one, at: at(row.line) }) as Problem));
      return [];
    }
    const number = read.is === 'exercise' ? sheetNumber({ level: file.level, seed: file.seed, index }) : null;
    const { line, name, team, members, notes } = row;
    return [{ line, name, team, members, notes, number, system: read.system }];
  });
  return { people, problems };
}

type Found = RosterRow & { readonly members: readonly string[] };

/** Rows of one team together, where its first one stands; who has no team is one alone. */
function teamsOf(rows: readonly RosterRow[]): readonly Found[] {
  const teams = new Map<string, Found>();
  for (const [index, row] of rows.entries()) {
    const key = row.team === '' ? `\n${index}` : row.team;
    const known = teams.get(key);
    if (known === undefined)
      teams.set(key, { ...row, name: row.team === '' ? row.name : row.team, members: [row.name] });
    else {
      const containers = known.containers ?? row.containers;
      teams.set(key, { ...known, containers, members: [...known.members, row.name] });
    }
  }
  return [...teams.values()];
}

type Read =
  | { readonly is: 'own' | 'named' | 'exercise'; readonly system: System }
  | { readonly problems: readonly Problem[] };

function systemOf(
  row: RosterRow,
  exercise: Exercise | undefined,
  base: System,
  file: WorkshopFile,
  facts: PeopleFacts,
): Read {
  const { containers } = row;
  if (containers === null) {
    if (exercise === undefined) throw new RangeError(`no exercise for line ${row.line}`);
    return { is: 'exercise', system: inExercise(base, exercise) };
  }
  if ('system' in containers) {
    const named = facts.systems.find(({ id }) => id === containers.system);
    if (named === undefined) throw new RangeError(`no system ${containers.system}`);
    return { is: 'named', system: named.system };
  }
  const { tank, bed } = containers.containers;
  const read = toSystem(rawOf(file, facts, { tank, bed }), facts);
  return 'system' in read ? { is: 'own', system: read.system } : read;
}

/** The system of the workshop with the containers of an exercise in it. */
function inExercise(base: System, { tank, full_mm, bed, waterLine_mm, mediaDepth_mm }: Exercise): System {
  const [first] = base.beds;
  if (first === undefined) throw new RangeError('a base without a bed');
  return {
    ...base,
    tank: { ...base.tank, container: tank, full_mm },
    beds: [{ ...first, container: bed, waterLine_mm, mediaDepth_mm, above_mm: tank.depth_mm + over_mm }],
  };
}

/** From the rim of the tank up to the bed. */
const over_mm = 150;

/** Containers of everyday sizes, from which the base of all exercises is read and checked. */
const usual: { readonly tank: ContainerFile; readonly bed: ContainerFile } = {
  tank: { shape: 'box', length_mm: 1000, width_mm: 1000, depth_mm: 800 },
  bed: { shape: 'box', length_mm: 1000, width_mm: 1000, depth_mm: 350 },
};

function baseOf(file: WorkshopFile, facts: PeopleFacts) {
  return toSystem(rawOf(file, facts, usual), facts);
}

/** A first plan: pump and media of the workshop, water where `firstLevels` puts it, no fish yet. */
function rawOf(
  { id, name, place, media, pump: size }: WorkshopFile,
  { starts, bedName }: PeopleFacts,
  { tank, bed }: { readonly tank: ContainerFile; readonly bed: ContainerFile },
): unknown {
  const { full_mm, mediaDepth_mm, waterLine_mm } = firstLevels(
    toContainer(tank).depth_mm,
    toContainer(bed).depth_mm,
  );
  const curve = entry(starts.pumps, size)?.curve ?? [];
  const flow_L_h = curve[Math.floor(curve.length / 2)]?.flow_L_h ?? 0;
  return {
    ...{ id, name, place },
    tank: { container: tank, full_mm },
    beds: [
      {
        ...{ name: bedName, container: bed, mode: 'siphon', media, mediaDepth_mm, waterLine_mm },
        above_mm: tank.depth_mm + over_mm,
      },
    ],
    pump: { flow_L_h, intake_mm: Math.min(100, full_mm / 5) },
  };
}

/** Where the containers of a row stand. */
export function containersAt(roster: Pick<Roster, 'columns'>, file: string): (line: number) => Problem['at'] {
  return (line) => ({ file, line, column: Math.max(1, roster.columns.containers) });
}
