import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import {
  type CareTask,
  careFlags,
  careFor,
  careParts,
  careRhythms,
  careTopics,
  flagsOf,
} from '../../src/core/care/routine.ts';
import type { System } from '../../src/core/system.ts';
import { content, demoSystem } from '../demoSystems.ts';
import { systems } from '../systemArbitrary.ts';

const tasks = content.care;
const demo = content.systems.map((one) => one.system);

/** Where a task speaks of this tank's own fish, not of fish in general. */
const ofThisTank: readonly string[] = [
  'routine',
  'absence',
  'emergencies',
  'standstill',
  'sickFish',
  'harvest',
];

/** What a task says, without the name of the vessel. */
function textOf(task: CareTask): string {
  return `${task.do} ${task.why}`.replaceAll(/fish tank/gi, 'tank');
}

function saying(pattern: RegExp, of: readonly CareTask[]): readonly string[] {
  return of
    .filter((task) => ofThisTank.includes(task.topic) && pattern.test(textOf(task)))
    .map(({ id }) => id);
}

/** A random system, with or without its fish. */
const any = fc
  .tuple(systems(), fc.boolean())
  .map(([system, emptied]): System => (emptied ? { ...system, fish: null } : system));

describe('what a system has', () => {
  test.each([
    ['hollow-lane-ibc', ['pumped', 'siphon', 'floods', 'onStand', 'fish', 'tableFish']],
    ['basket-tub', ['inTank', 'levelStill', 'severalBeds', 'noFish']],
    ['pond-and-tray', ['pumped', 'constantFlood', 'levelStill', 'onStand', 'fish', 'ornamental', 'letIn']],
    [
      'hollow-lane-ibc-two-beds',
      [
        'pumped',
        'siphon',
        'constantFlood',
        'floods',
        'onStand',
        'severalBeds',
        'fish',
        'tableFish',
        'airStones',
      ],
    ],
    [
      'old-tank-as-sump',
      ['pumped', 'siphon', 'floods', 'onStand', 'severalBeds', 'fish', 'tableFish', 'sump'],
    ],
  ])('is told for %s', (id, flags) => {
    expect(flagsOf(demoSystem(id).system)).toEqual(flags);
  });

  test('fish that were entered but not counted yet are not there', () => {
    const { system } = demoSystem('hollow-lane-ibc');
    const waiting = { ...system, fish: system.fish && { ...system.fish, present: 0 } };
    expect(flagsOf(waiting)).toContain('noFish');
    expect(flagsOf(waiting)).not.toContain('tableFish');
  });

  test('every flag holds for some demo system, and some task asks for it', () => {
    expect([...new Set(demo.flatMap(flagsOf))].sort()).toEqual([...careFlags].sort());
    expect([...new Set(tasks.flatMap((task) => task.only))].sort()).toEqual([...careFlags].sort());
  });
});

describe('the tasks for a system', () => {
  test('every task fits at least one demo system, and no demo system gets all of them', () => {
    const fitting = new Set(demo.flatMap((system) => careFor(system, tasks)));
    expect(tasks.filter((task) => !fitting.has(task)).map(({ id }) => id)).toEqual([]);
    for (const system of demo) expect(careFor(system, tasks).length).toBeLessThan(tasks.length);
  });

  test('are those whose flags all hold, in the order in which they came', () => {
    fc.assert(
      fc.property(any, fc.shuffledSubarray([...tasks]), (system, some) => {
        const flags = flagsOf(system);
        const fits = careFor(system, some);
        expect(some.filter((task) => fits.includes(task))).toEqual(fits);
        for (const task of some) {
          expect(fits.includes(task)).toBe(task.only.every((flag) => flags.includes(flag)));
        }
      }),
    );
  });

  test('without fish none speaks of this tank’s fish or their feed; with fish none starts the water with ammonia', () => {
    fc.assert(
      fc.property(any, (system) => {
        const fits = careFor(system, tasks);
        const topics = new Set(fits.map(({ topic }) => topic));
        if (flagsOf(system).includes('fish')) {
          expect(topics).not.toContain('startUp');
        } else {
          expect(saying(/\bfish\b|\bfeed\b/i, fits)).toEqual([]);
          expect(topics).not.toContain('harvest');
          expect(topics).not.toContain('sickFish');
        }
      }),
    );
    expect(saying(/\bfish\b|\bfeed\b/i, tasks).length).toBeGreaterThan(20);
  });

  test('without a pump none speaks of one', () => {
    const noPump = demoSystem('basket-tub').system;
    const stocked = { ...noPump, fish: demoSystem('drum-corner').system.fish };
    for (const system of [noPump, stocked]) {
      expect(saying(/\bpumps?\b|\bsiphons?\b|\bstandpipe\b/i, careFor(system, tasks))).toEqual([]);
    }
  });

  test('tell every system exactly one time of the day at which it is topped up', () => {
    fc.assert(
      fc.property(any, (system) => {
        const topUps = careFor(system, tasks).filter(({ id }) => /^topUp(Draining|Still)$/.test(id));
        expect(topUps).toHaveLength(1);
      }),
    );
  });

  test('at the edges: no task fits nothing, and a task without conditions fits everything', () => {
    const [system] = demo;
    const [task] = tasks;
    if (!system || !task) throw new Error('there is no content');
    expect(careFor(system, [])).toEqual([]);
    expect(careFor(system, [{ ...task, only: [] }])).toHaveLength(1);
    expect(careFor(system, [{ ...task, only: ['fish', 'noFish'] }])).toEqual([]);
  });
});

describe('the parts', () => {
  test('hold every task once, in the order of topics and rhythms, whatever order it came in', () => {
    fc.assert(
      fc.property(fc.shuffledSubarray([...tasks]), (some) => {
        const parts = careParts(some);
        expect(new Set(parts.flatMap((part) => part.tasks))).toEqual(new Set(some));
        expect(parts.flatMap((part) => part.tasks)).toHaveLength(some.length);
        const places = parts.map(
          ({ topic, rhythm }) => careTopics.indexOf(topic) * 100 + careRhythms.indexOf(rhythm),
        );
        expect(places).toEqual([...new Set(places)].sort((a, b) => a - b));
      }),
    );
  });

  test('there is one for every topic and every rhythm', () => {
    const parts = careParts(tasks);
    expect(new Set(parts.map(({ topic }) => topic))).toEqual(new Set(careTopics));
    expect(new Set(parts.map(({ rhythm }) => rhythm))).toEqual(new Set(careRhythms));
    expect(careParts([])).toEqual([]);
  });
});
