/**
 * The care of a system as tasks with reasons, and which of them fit a system. The tasks come in from `content/care/`;
 * nothing here knows a sentence.
 */
import type { SourceKey } from '../note.ts';
import type { System } from '../system.ts';

/** What a task belongs to, in the order in which a keeper meets them. */
export const careTopics = [
  'routine',
  'absence',
  'emergencies',
  'standstill',
  'sickFish',
  'newFish',
  'harvest',
  'solids',
  'startUp',
  'materials',
  'safety',
] as const;

/** How often a task of the routine comes round. `event`: when something happens, not by the calendar. */
export const careRhythms = [
  'day',
  'week',
  'month',
  'spring',
  'summer',
  'autumn',
  'winter',
  'year',
  'event',
] as const;

/**
 * Who does it. anyone: also a child or a sitter who was shown once. keeper: whoever answers for the fish. adult: no
 * child, but it need not be the keeper. trained: somebody who has learnt it, where local law lets them.
 */
export const careHands = ['anyone', 'keeper', 'adult', 'trained'] as const;

/** What a system has, as far as a task can depend on it. */
export const careFlags = [
  'pumped',
  'siphon',
  'timer',
  'constantFlood',
  'inTank',
  'floods',
  'levelStill',
  'onStand',
  'severalBeds',
  'fish',
  'noFish',
  'tableFish',
  'ornamental',
  'sump',
  'letIn',
  'airStones',
] as const;

export type CareTopic = (typeof careTopics)[number];
export type CareRhythm = (typeof careRhythms)[number];
export type CareHand = (typeof careHands)[number];
export type CareFlag = (typeof careFlags)[number];

export type CareTask = {
  readonly id: string;
  readonly topic: CareTopic;
  readonly rhythm: CareRhythm;
  readonly who: CareHand;
  /** What to do, as a short order. */
  readonly do: string;
  readonly why: string;
  readonly source: SourceKey;
  /** The task is only for a system that has all of these; for any system where there are none. */
  readonly only: readonly CareFlag[];
};

/** Tasks that stand under one heading. */
export type CarePart = {
  readonly topic: CareTopic;
  readonly rhythm: CareRhythm;
  readonly tasks: readonly CareTask[];
};

/**
 * What a system has.
 * @param system any system
 * @returns the flags that hold for it, in the order of `careFlags`
 */
export function flagsOf(system: System): readonly CareFlag[] {
  const holds: Readonly<Record<CareFlag, boolean>> = {
    pumped: system.pump !== null,
    ...bedFlags(system),
    ...fishFlags(system),
    sump: system.sump !== null,
    letIn: system.tank.above_mm < 0 || (system.sump?.above_mm ?? 0) < 0,
    airStones: (system.air ?? null) !== null,
  };
  return careFlags.filter((flag) => holds[flag]);
}

type BedFlag =
  | 'siphon'
  | 'timer'
  | 'constantFlood'
  | 'inTank'
  | 'floods'
  | 'levelStill'
  | 'onStand'
  | 'severalBeds';

function bedFlags(system: System): Readonly<Record<BedFlag, boolean>> {
  const modes = system.beds.map((bed) => bed.mode);
  const floods = modes.includes('siphon') || modes.includes('timer');
  return {
    siphon: modes.includes('siphon'),
    timer: modes.includes('timer'),
    constantFlood: modes.includes('constantFlood'),
    inTank: modes.includes('inTank'),
    floods,
    levelStill: !floods,
    onStand: system.beds.some((bed) => bed.mode !== 'inTank' && 0 < bed.above_mm),
    severalBeds: 1 < system.beds.reduce((count, bed) => count + bed.count, 0),
  };
}

type FishFlag = 'fish' | 'noFish' | 'tableFish' | 'ornamental';

/** Fish that were entered but not counted yet are not there. */
function fishFlags(system: System): Readonly<Record<FishFlag, boolean>> {
  const there = system.fish !== null && 0 < system.fish.present ? system.fish : null;
  return {
    fish: there !== null,
    noFish: there === null,
    tableFish: there?.species.use === 'table',
    ornamental: there?.species.use === 'ornamental',
  };
}

/**
 * The tasks that fit a system.
 * @param system any system
 * @param tasks all tasks there are
 * @returns those whose flags all hold, in the order in which they came
 */
export function careFor(system: System, tasks: readonly CareTask[]): readonly CareTask[] {
  const flags = new Set(flagsOf(system));
  return tasks.filter((task) => task.only.every((flag) => flags.has(flag)));
}

/**
 * Tasks under their headings.
 * @param tasks in any order
 * @returns one part for each topic and rhythm that has a task, in the order of topics and rhythms; inside a part the
 *   tasks keep the order in which they came
 */
export function careParts(tasks: readonly CareTask[]): readonly CarePart[] {
  return careTopics
    .flatMap((topic) => careRhythms.map((rhythm) => ({ topic, rhythm })))
    .map(({ topic, rhythm }) => ({
      topic,
      rhythm,
      tasks: tasks.filter((task) => task.topic === topic && task.rhythm === rhythm),
    }))
    .filter((part) => part.tasks.length > 0);
}
