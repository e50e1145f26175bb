/** All that the core says about somebody's worksheet, and about the class that works on it. */
import type { Plan } from './figure.ts';
import { planOf, standingPlan } from './planOf.ts';
import { plantingFigures } from './plantingPlan.ts';
import { pumpWork } from './pumpPlan.ts';
import type { System } from '../system.ts';
import { type Asked, askedSteps } from '../workshop/askedSteps.ts';
import type { Level } from '../workshop/exercise.ts';
import { type Material, materials } from '../workshop/materials.ts';
import { clockAt, type Part, programme } from '../workshop/programme.ts';
import { careRota, type RotaDay, type RotaWish, turnsWithoutTeam } from '../workshop/rota.ts';

export type HandoutFacts = {
  readonly system: System;
  /** Sums many more figures than a worksheet asks for, and takes its time for them. */
  readonly wholePlan: () => Plan;
  /** In the order in which they are worked. */
  readonly asked: readonly Asked[];
};

const first = ['bed1.wetMedia_L', 'wetMedia_L', 'tankFull_L'] as const;
const allLimits = ['tankLow_L', 'fishByBed', 'fishByTank', 'fishByDensity', 'fishPlanned'] as const;

/**
 * What is asked on each level; of the beds everything for each of them. Every level ends its fish with the lowest
 * number, which is the plan's: children are told the limits that they do not work out.
 */
const askedOf: Readonly<Record<Level, readonly string[]>> = {
  primary: [...first, 'fishByBed', 'fishPlanned', 'bed1.placesSquare'],
  secondary: [...first, ...allLimits, 'bed1.placesSquare'],
  adults: [...first, ...allLimits, 'turnover', 'bed1.placesSquare'],
};

/**
 * A worksheet's system, the steps that it asks for, and its plan.
 * The plan's own steps, as askedSteps puts them.
 * @param system a checked system
 * @param level for whom
 * @returns figures that have a value here, in the order in which they are worked
 * @valid what planOf says
 * @source see the figures
 */
export function handoutFacts(system: System, level: Level): HandoutFacts {
  const { beds, at, figures } = standingPlan(system);
  const worked = [...figures, ...pumpWork(system, at).figures, ...plantingFigures(beds)];
  const found = new Map(worked.map((one) => [one.key, one]));
  const keys = askedOf[level].flatMap((key) => ofBeds(key, system.beds.length));
  const known = keys.flatMap((key) => {
    const one = found.get(key);
    return one === undefined || one.value === null || one.steps.length === 0 ? [] : [one];
  });
  return { system, asked: askedSteps(known, level), wholePlan: () => planOf(system) };
}

/** The sum of all beds is asked for where there are several. */
function ofBeds(key: string, beds: number): readonly string[] {
  if (key === 'wetMedia_L' && beds < 2) return [];
  if (!key.startsWith('bed1.')) return [key];
  return Array.from({ length: beds }, (_, at) => key.replace('bed1.', `bed${at + 1}.`));
}

export type ClassWish = {
  readonly level: Level;
  readonly starts: string;
  readonly length_min: number;
  readonly people: number;
  readonly teams: number;
  /** People in no team, each of whom works alone. */
  readonly alone: number;
  /** null where the class looks after no system. */
  readonly rota: Omit<RotaWish, 'teams'> | null;
};

export type ClassFacts = {
  /** The parts of the session, each with the time of day at which it begins. */
  readonly times: readonly (Part & { readonly at: string })[];
  readonly materials: readonly Material[];
  /** Teams come first, then those without one. */
  readonly rota: readonly RotaDay[];
  /** How many of those without a team come together, for each turn of theirs. */
  readonly together: readonly number[];
  /** Most days in a row without the class. */
  readonly longestGap_d: number;
};

/**
 * Times, materials and care rota of a class.
 * The programme from its beginning on; materials by people and teams; teams in turn, then those without one.
 * @param wish level, times, how many people, teams and people in none, and the rota's days
 * @returns no rota without people
 * @valid what programme, materials and careRota say
 * @source commonPractice
 */
export function classFacts(wish: ClassWish): ClassFacts {
  const { level, starts, length_min, people, teams, alone } = wish;
  const times = programme(level, length_min).map((part) => ({ ...part, at: clockAt(starts, part.from_min) }));
  const together = turnsWithoutTeam(alone, people - alone, teams);
  const turns = teams + together.length;
  const rota = wish.rota === null || turns === 0 ? null : careRota({ ...wish.rota, teams: turns });
  return {
    ...{ times, materials: materials(level, people, teams + alone) },
    ...{ rota: rota?.days ?? [], together, longestGap_d: rota?.longestGap_d ?? 0 },
  };
}
