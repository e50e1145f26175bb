/** Why less is picked than was wanted: the reason that somebody can do something about. */
import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { grown } from '../../src/core/crops/growth.ts';
import type { Change } from '../../src/core/turnover/change.ts';
import type { Grows } from '../../src/core/turnover/choices.ts';
import { clockFor } from '../../src/core/turnover/clock.ts';
import type { TurnoverPlan, TurnoverTask } from '../../src/core/turnover/turnover.ts';
import { draftPlan, replans, turnoverPlans } from '../../src/core/turnover/turnoverPlan.ts';
import { shortLines } from '../../src/sheets/harvestWords.ts';
import { nodeSolver } from '../../src/solver/node.ts';
import { content, seasonInput, seasonPlan } from './seasons.ts';
import { cropOf, fixedGrowth, tasks } from './tasks.ts';

const solver = await nodeSolver();
const means = () => ({
  ...{ grows: fixedGrowth, solver },
  // All is proven long before, so that no machine is too slow for the same plan.
  clock: clockFor(() => performance.now() / 1000, 60),
});

/** Three weeks in the bed, and good for no longer than its day. */
const inBed = { nursery: 0, bed: 21, stands: 0, cuts: 1, regrow: 0, spacing: 200, family: 'Asteraceae' };
const fromTrays = { ...inBed, nursery: 14 };

function planOf(of: typeof inBed, places: number, change: Partial<TurnoverTask>): TurnoverPlan {
  const task = {
    ...seasonPlan('north-yard').task,
    ...{ weeks: 16, nurseryCells: null, holidays: [], rest_d: 0, rotation: 'ignored' as const },
    beds: [{ name: 'Bed', mode: 'siphon' as const, places, area_m2: places * 0.04 }],
    wishes: [
      { crop: cropOf('crop', of), unit: 'head' as const, perWeek: Array.from({ length: 16 }, () => 1.8) },
    ],
    ...change,
  };
  return [...turnoverPlans(task, means())].at(-1) as TurnoverPlan;
}

function again(plan: TurnoverPlan, change: Partial<Change> & Pick<Change, 'now_week'>): TurnoverPlan {
  const nothing = { failed: [], partly: [], missed_weeks: [], wishes: null };
  return [...replans(plan, { ...nothing, ...change }, means())].at(-1) as TurnoverPlan;
}

function why(plan: TurnoverPlan): readonly string[] {
  return plan.short.map((one) => `${one.week} ${one.why}`);
}

/** From a day on each sowing takes a week longer than the one before. */
const slowing =
  (from_d: number): typeof fixedGrowth =>
  (crop, sow_d) => {
    const likely = crop.bed_d.likely + Math.max(0, sow_d - from_d);
    return fixedGrowth({ ...crop, bed_d: { ...crop.bed_d, likely } }, sow_d);
  };

const early = ['0 tooEarly', '1 tooEarly', '2 tooEarly'];

describe('what falls short', () => {
  test('for want of cells is not said to be for want of a bed', () => {
    const short = planOf(fromTrays, 100, { nurseryCells: 3 }).short.filter(({ week }) => week > 4);
    expect(short.length).toBeGreaterThan(3);
    expect([...new Set(short.map((one) => one.why))]).toEqual(['trays']);
    const full = planOf(fromTrays, 1, { nurseryCells: 100 }).short.filter(({ week }) => week > 4);
    expect([...new Set(full.map((one) => one.why))]).toEqual(['room']);
  });

  test('as no more may be lifted in a week is said so', () => {
    const perWeek = Array.from({ length: 16 }, (_, week) => (week === 9 ? 3.6 : 0));
    const wishes = [{ crop: cropOf('crop', inBed), unit: 'head' as const, perWeek }];
    const plan = planOf(inBed, 9, { wishes });
    expect(why(plan)).toEqual(['9 clearing']);
    expect(shortLines(seasonInput(plan))).toEqual([
      'crop: in 1 week all of it would mean that more than a third of a bed is lifted at a time. Ask for less, or add places.',
    ]);
    expect(why(planOf(inBed, 12, { wishes }))).toEqual([]);
    // Four cells are enough for three plants, and three of nine places are lifted: the other six stay empty.
    const trayed = [{ ...wishes[0], crop: cropOf('crop', fromTrays) }] as typeof wishes;
    expect(why(planOf(fromTrays, 9, { wishes: trayed, nurseryCells: 4 }))).toEqual(['9 clearing']);
  });

  test('as nobody was there to sow it is not blamed on the weather', () => {
    const plan = planOf(inBed, 60, { holidays: [{ name: 'Away', from_week: 5, to_week: 6 }] });
    // In the holidays themselves nothing is wanted by those who wrote the season; here it still is.
    expect(why(plan)).toEqual([...early, '5 holiday', '6 holiday', '8 holiday', '9 holiday']);
  });

  test('is nobody’s absence where nobody is away', () => {
    fc.assert(
      fc.property(tasks({ crops: 4, weeks: 20, places: 16, most: 6 }), (task) => {
        const { short } = draftPlan({ ...task, holidays: [] }, slowing(task.firstMonday_d));
        expect(short.filter((one) => one.why === 'holiday')).toEqual([]);
      }),
      { numRuns: 100 },
    );
  });

  test('in a week between two sowings is not blamed on the weather', () => {
    const of = planOf(inBed, 60, {});
    const ways = { ...means(), grows: slowing(of.task.firstMonday_d + 5 * 7) };
    const plan = [...turnoverPlans(of.task, ways)].at(-1) as TurnoverPlan;
    const late = why(plan).filter((one) => !early.includes(one));
    expect(late.length).toBeGreaterThan(2);
    expect([...new Set(late.slice(0, -1).map((one) => one.split(' ')[1]))]).toEqual(['between']);
  });

  test('is said to be not ready yet only up to the first week in which anything can be ready', () => {
    for (const { task } of content.turnovers) {
      const { short, crops } = draftPlan(task, (crop, ...days) => grown(crop, task.place, ...days));
      for (const { crop, picked, wanted } of crops) {
        const early = short.filter((one) => one.crop === crop && one.why === 'tooEarly');
        const weeks = early.map(({ week }) => week);
        const first = picked.findIndex((amount) => amount > 0);
        const all = wanted.flatMap((amount, week) =>
          amount > 0 && week <= Math.max(...weeks) ? [week] : [],
        );
        expect([task.id, crop, ...weeks]).toEqual([task.id, crop, ...all]);
        if (first >= 0) expect(weeks.filter((week) => week > first)).toEqual([]);
      }
    }
  });

  test('later on, where only what was sown before the season is ready, is told so', () => {
    const of = planOf(inBed, 60, {});
    const first_d = of.task.firstMonday_d;
    const grows: Grows = (crop, sow_d) => {
      const week = Math.floor((sow_d - first_d) / 7);
      if (week < 0) return fixedGrowth({ ...crop, bed_d: { ...crop.bed_d, likely: 14 * 7 } }, sow_d);
      return 5 <= week && week <= 9
        ? { state: 'never', why: 'tooHot', on_d: sow_d }
        : fixedGrowth(crop, sow_d);
    };
    const plan = [...turnoverPlans(of.task, { ...means(), grows })].at(-1) as TurnoverPlan;
    expect(why(plan)).toEqual([...early, ...[8, 9, 10, 11, 12].map((week) => `${week} sownBefore`)]);
    expect(shortLines(seasonInput(plan)).at(-1)).toBe(
      'crop: in 5 weeks only what was sown before the season would be there.',
    );
  });

  test('after a sowing failed in part is not for want of room', () => {
    const plan = planOf(inBed, 60, {});
    expect(why(plan)).toEqual(early);
    const struck = plan.sowings.find(({ to_week }) => to_week === 9);
    const [strip] = struck?.strips ?? [];
    if (struck === undefined || strip === undefined) throw new Error('nothing is lifted in week 9');
    const change = { now_week: 8, partly: [{ sowing: struck.id, places: [strip.first] }] };
    expect(why(again(plan, change))).toEqual([...early, '9 unsown']);
  });

  test('as the week of planning again was missed itself is not blamed on the weather', () => {
    expect(why(again(planOf(inBed, 60, {}), { now_week: 6, missed_weeks: [6] }))).toContain('9 unsown');
  });
});
