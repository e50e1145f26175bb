/** Weeks in which a crop can be picked: with holidays in between, with frost ahead, and before heat comes. */
import { describe, expect, test } from 'vitest';
import type { Crop } from '../../src/core/crops/crop.ts';
import { bedKinds } from '../../src/core/turnover/bedKinds.ts';
import { choicesOf, type Grows } from '../../src/core/turnover/choices.ts';
import type { TurnoverTask } from '../../src/core/turnover/turnover.ts';
import { draftPlan } from '../../src/core/turnover/turnoverPlan.ts';
import { cropOf, type FixedCrop, fixedGrowth } from './tasks.ts';
import { seasonPlan } from './seasons.ts';

const quick = { nursery: 0, bed: 21, stands: 0, cuts: 1, regrow: 14, spacing: 200, family: 'Asteraceae' };

function taskOf(crop: Crop, change: Partial<TurnoverTask> = {}): TurnoverTask {
  return {
    ...seasonPlan('north-yard').task,
    ...{ weeks: 20, nurseryCells: null, holidays: [], rest_d: 3 },
    beds: [{ name: 'Bed', mode: 'siphon', places: 40, area_m2: 1.6 }],
    wishes: [{ crop, unit: 'head', perWeek: Array.from({ length: 20 }, () => 4) }],
    ...change,
  };
}

/** All weeks in which what is sown in the first week can be picked, longest choice first. */
function picksOfFirst(
  of: Partial<FixedCrop>,
  change: Partial<TurnoverTask> = {},
  grows: Grows = fixedGrowth,
) {
  const task = taskOf(cropOf('crop', { ...quick, ...of }), change);
  return choicesOf(task, bedKinds(task), grows)
    .filter(({ sow_week }) => sow_week === 0)
    .map(({ pick_weeks }) => pick_weeks)
    .sort((a, b) => b.length - a.length);
}

/** Dies so many days after it is sown. */
const dying =
  (days: number): Grows =>
  (crop, sow_d) =>
    ({ ...fixedGrowth(crop, sow_d), livesTo_d: sow_d + days }) as ReturnType<Grows>;

describe('a crop that is cut again and again', () => {
  test('grows back from the day on which it was cut, not from that on which nobody was there', () => {
    expect(picksOfFirst({ cuts: 4 })[0]).toEqual([3, 5, 7, 9]);
    const holidays = [{ name: 'Away', from_week: 5, to_week: 8 }];
    expect(picksOfFirst({ cuts: 4 }, { holidays })[0]).toEqual([3, 9, 11, 13]);
    const early = [{ name: 'Away', from_week: 2, to_week: 3 }];
    expect(picksOfFirst({ cuts: 3 }, { holidays: early })[0]).toEqual([4, 6, 8]);
  });

  test('is not cut after it has died, however often its file says', () => {
    expect(picksOfFirst({ cuts: 4, regrow: 4 })[0]).toEqual([3, 4, 5, 6]);
    expect(picksOfFirst({ cuts: 4, regrow: 4 }, {}, dying(35))[0]).toEqual([3, 4, 5]);
    const holidays = [{ name: 'Away', from_week: 4, to_week: 6 }];
    expect(picksOfFirst({ cuts: 4, regrow: 4 }, { holidays }, dying(48))[0]).toEqual([3]);
  });
});

describe('the first picking', () => {
  /** Ready so many days sooner or later than is likely. */
  const within =
    (days: number): Grows =>
    (crop, sow_d) => {
      const found = fixedGrowth(crop, sow_d) as Extract<ReturnType<Grows>, { state: 'grows' }>;
      return { ...found, readyFrom_d: found.ready_d - days, readyTo_d: found.ready_d + days };
    };
  /** Of what is sown in the first week, and only then: week and spread. */
  const firstOf = (grows: Grows, away: readonly [from_week: number, to_week: number] | null) => {
    const holidays = away === null ? [] : [{ name: 'Away', from_week: away[0], to_week: away[1] }];
    const task = taskOf(cropOf('crop', { ...quick, cuts: 2 }), { holidays });
    const once: Grows = (crop, sow_d) =>
      sow_d < task.firstMonday_d + 7 ? grows(crop, sow_d) : { state: 'never', why: 'tooHot', on_d: sow_d };
    return draftPlan(task, once).sowings.map(({ picks, first }) => [picks[0]?.week, first.spreadWeeks]);
  };

  test('is no less sharp where holidays put it off, which are known', () => {
    expect(firstOf(within(2), null)).toEqual([[3, null]]);
    expect(firstOf(within(2), [3, 5])).toEqual([[6, null]]);
    expect(firstOf(within(10), null)).toEqual([[3, 2]]);
    expect(firstOf(within(10), [3, 5])).toEqual([[6, 2]]);
  });

  test('is not said to be sharp where it may be ready only long after the holidays', () => {
    expect(firstOf(within(40), null)).toEqual([[3, 6]]);
    expect(firstOf(within(40), [3, 3])).toEqual([[4, 6]]);
  });
});

describe('seedlings that wait in their trays', () => {
  test('have all of their days in the bed still to come when they are planted', () => {
    const grows: Grows = (crop, sow_d, planted_d = sow_d) => {
      const nursed_d = sow_d + (crop.nursery_d?.likely ?? 0);
      const later_d = Math.max(0, planted_d - nursed_d);
      const found = fixedGrowth(crop, sow_d + later_d);
      return { ...found, sow_d } as ReturnType<Grows>;
    };
    const holidays = [{ name: 'Away', from_week: 1, to_week: 2 }];
    // Ready for the bed in week 1, planted in week 3.
    expect(picksOfFirst({ nursery: 7, bed: 28 }, { holidays }, grows)).toEqual([[7]]);
    expect(picksOfFirst({ nursery: 7, bed: 28 }, {}, grows)).toEqual([[5]]);
  });
});

describe('a crop that is picked once', () => {
  test('stands no longer than it lives', () => {
    expect(picksOfFirst({ stands: 21 }).flat()).toEqual([3, 4, 5, 6]);
    expect(picksOfFirst({ stands: 21 }, {}, dying(28)).flat()).toEqual([3, 4]);
    expect(picksOfFirst({ bed: 19 }, {}, dying(20))).toEqual([]);
  });

  test('is warned of where heat comes while it stands, and not where it is lifted before', () => {
    const hotFrom =
      (days: number): Grows =>
      (crop, sow_d) =>
        ({ ...fixedGrowth(crop, sow_d), hot_d: sow_d + days }) as ReturnType<Grows>;
    const bolting = (days: number) =>
      draftPlan(taskOf(cropOf('crop', quick)), hotFrom(days)).sowings.map(({ mayBolt }) => mayBolt);
    expect([...new Set(bolting(21))]).toEqual(['yes']);
    expect([...new Set(bolting(22))]).toEqual(['no']);
  });
});
