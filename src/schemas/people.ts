/** The people of a workshop with a system each: their own containers, a system by name, or an exercise. */
import type { Problem } from '../core/problem.ts';
import type { System } from '../core/system.ts';
import { type Exercise, exercises } from '../core/workshop/exercise.ts';
import { firstLevels } from '../core/workshop/firstLevels.ts';
import type { Person } from '../core/workshop/person.ts';
import { type SheetNumber, sheetNumber } from '../core/workshop/sheetNumber.ts';
import { typedContainers } from './checkLine.ts';
import type { WrittenContainers } from './containersText.ts';
import { ofContainers } from './containersProblems.ts';
import { toContainer } from './container.ts';
import { entry, type Facts } from './facts.ts';
import type { RosterRow } from './readRoster.ts';
import type { Starts } from './starts.ts';
import { byTeam, eachAlone, sheetKey } from './teams.ts';
import { toSystem } from './toSystem.ts';
import type { WorkshopFile } from './workshopFile.ts';

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
 * @param all every row, also those with a problem: mending one must not give the others another exercise
 */
export function peopleOf(
  file: WorkshopFile,
  rows: readonly RosterRow[],
  facts: PeopleFacts,
  at: (line: number) => Problem['at'],
  all: readonly Pick<RosterRow, 'line' | 'team'>[] = rows,
): { readonly people: readonly Person[]; readonly problems: readonly Problem[] } {
  const { sound, brought, problems } = broughtBy(rows, file, facts, at);
  const inTeams = file.worksheets === 'teams';
  // Only now: what is wrong with one row shall cost nobody else of its team a place.
  const { sheets, others } = inTeams ? byTeam(sound) : eachAlone(sound);
  const ofTeams = others.map(({ row, first }): Problem => {
    return { code: 'teamContainers', place: [], given: row.team, min: first, at: at(row.line) } as Problem;
  });
  const keyOf = inTeams ? sheetKey : ({ line }: { readonly line: number }) => String(line);
  const places = new Map([...new Set(all.map(keyOf))].map((key, index) => [key, index]));
  const exercise = exercises(file.level, file.seed, places.size, mostVoids_frac(facts));
  const base = baseOf(facts);
  const people = sheets.map((row): Person => {
    const { line, name, team, members, notes, containers } = row;
    const whose = { line, name, team, members, notes };
    const system = brought.get(row.containersLine);
    if (containers !== null && system !== undefined)
      return { ...whose, number: null, typed: typedContainers(containers, file, ofExercises), system };
    const index = places.get(keyOf(row)) ?? places.size;
    const given = exercise[index];
    if (given === undefined) throw new RangeError(`no exercise for line ${line}`);
    const number = sheetNumber({ level: file.level, seed: file.seed, index });
    return { ...whose, number, typed: null, system: inExercise(base, given) };
  });
  return { people, problems: [...problems, ...ofTeams] };
}

type Brought = {
  /** Rows whose containers can be built, or that have none. */
  readonly sound: readonly RosterRow[];
  /** Systems by the lines that brought them. */
  readonly brought: ReadonlyMap<number, System>;
  readonly problems: readonly Problem[];
};

function broughtBy(
  rows: readonly RosterRow[],
  file: WorkshopFile,
  facts: PeopleFacts,
  at: (line: number) => Problem['at'],
): Brought {
  const problems: Problem[] = [];
  const brought = new Map<number, System>();
  const sound = rows.filter(({ line, containers }) => {
    if (containers === null) return true;
    const read = broughtIn(containers, file, facts);
    if ('system' in read) brought.set(line, read.system);
    else problems.push(...ofContainers(read.problems).map((one) => ({ ...one, at: at(line) }) as Problem));
    return 'system' in read;
  });
  return { sound, brought, problems };
}

/** The system that somebody's cell stands for, or what is wrong with it. */
function broughtIn(
  containers: NonNullable<RosterRow['containers']>,
  file: WorkshopFile,
  facts: PeopleFacts,
): { readonly system: System } | { readonly problems: readonly Problem[] } {
  if (!('system' in containers)) return toSystem(rawOf(containers.containers, file, facts), facts);
  const named = facts.systems.find(({ id }) => id === containers.system);
  if (named === undefined) throw new RangeError(`no system ${containers.system}`);
  return { system: named.system };
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
const usual: WrittenContainers = {
  tank: { shape: 'box', length_mm: 1000, width_mm: 1000, depth_mm: 800 },
  bed: { shape: 'box', length_mm: 1000, width_mm: 1000, depth_mm: 350 },
};

/** The media and the pump of every exercise, so that its number alone says what it is. */
const ofExercises = {
  id: 'worksheet',
  name: 'worksheet',
  place: '',
  media: 'coarseGravel',
  pump: 'medium',
} as const;

function mostVoids_frac({ media }: PeopleFacts): number {
  return entry(media, ofExercises.media)?.void_frac.high ?? 0;
}

function baseOf(facts: PeopleFacts): System {
  const read = toSystem(rawOf(usual, ofExercises, facts), facts);
  if ('system' in read) return read.system;
  throw new Error(`the base of all exercises: ${JSON.stringify(read.problems)}`);
}

/** The system of one exercise, from its number. */
export function exerciseSystem({ level, seed, index }: SheetNumber, facts: PeopleFacts): System {
  const exercise = exercises(level, seed, index + 1, mostVoids_frac(facts))[index];
  if (exercise === undefined) throw new RangeError(`no exercise ${index}`);
  return inExercise(baseOf(facts), exercise);
}

/** A first plan for somebody's own containers; with the media and the pump of the exercises where no others are told. */
export function ownSystem(
  containers: WrittenContainers,
  facts: PeopleFacts,
  other: Partial<Pick<WorkshopFile, 'media' | 'pump'>> = {},
): ReturnType<typeof toSystem> {
  return toSystem(rawOf(containers, { ...ofExercises, ...other }, facts), facts);
}

/** A first plan: pump and media of the workshop, water where `firstLevels` puts it, no fish yet. */
function rawOf(
  { tank, bed }: WrittenContainers,
  { id, name, place, media, pump: size }: Pick<WorkshopFile, 'id' | 'name' | 'place' | 'media' | 'pump'>,
  { starts, bedName }: PeopleFacts,
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
