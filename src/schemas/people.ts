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
  const inTeams = file.worksheets === 'teams';
  const { sheets, others } = inTeams ? byTeam(rows) : eachAlone(rows);
  const problems = others.map(({ row, first }): Problem => {
    return { code: 'teamContainers', place: [], given: row.team, min: first, at: at(row.line) } as Problem;
  });
  const keyOf = inTeams ? sheetKey : ({ line }: { readonly line: number }) => String(line);
  const places = new Map([...new Set(all.map(keyOf))].map((key, index) => [key, index]));
  const exercise = exercises(file.level, file.seed, places.size, mostVoids_frac(facts));
  const base = baseOf(facts);
  const people = sheets.flatMap((row): readonly Person[] => {
    const index = places.get(keyOf(row)) ?? places.size;
    const read = systemOf(row, exercise[index], base, file, facts);
    if ('problems' in read) {
      problems.push(
        ...ofContainers(read.problems).map((one) => ({ ...one, at: at(row.containersLine) }) as Problem),
      );
      return [];
    }
    const number = read.is === 'exercise' ? sheetNumber({ level: file.level, seed: file.seed, index }) : null;
    const { line, name, team, members, notes } = row;
    const typed = row.containers && typedContainers(row.containers, file, ofExercises);
    return [{ line, name, team, members, notes, number, typed, system: read.system }];
  });
  return { people, problems };
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
  const read = toSystem(rawOf({ tank, bed }, file, facts), facts);
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
