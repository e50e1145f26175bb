/** What holds for every plan of every season, and what happens at the edges. */
import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { clockFor } from '../../src/core/turnover/clock.ts';
import { faultsIn } from '../../src/core/turnover/faults.ts';
import type { TurnoverPlan, TurnoverTask } from '../../src/core/turnover/turnover.ts';
import { draftPlan, turnoverPlans } from '../../src/core/turnover/turnoverPlan.ts';
import { nodeSolver } from '../../src/solver/node.ts';
import { cropOf, fixedGrowth, tasks } from './tasks.ts';

const solver = await nodeSolver();
const means = () => ({
  ...{ grows: fixedGrowth, solver },
  clock: clockFor(() => performance.now() / 1000, 1),
});

function lastPlan(task: TurnoverTask): TurnoverPlan {
  const plan = [...turnoverPlans(task, means())].at(-1);
  if (plan === undefined) throw new Error('no plan');
  return plan;
}

const some = tasks({ crops: 5, weeks: 16, places: 30, most: 12 });
const [sample] = fc.sample(some, { seed: 7, numRuns: 1 });
if (sample === undefined) throw new Error('no sample');
const lettuce = cropOf('lettuce', {
  ...{ nursery: 14, bed: 28, stands: 7, cuts: 1, regrow: 0, spacing: 200, family: 'Asteraceae' },
});

function season(change: Partial<TurnoverTask>): TurnoverTask {
  return {
    ...(sample as TurnoverTask),
    ...{ weeks: 20, nurseryCells: null, holidays: [], rest_d: 3, rotation: 'wanted' },
    beds: [{ name: 'Bed', mode: 'siphon', places: 40, area_m2: 1.6 }],
    wishes: [{ crop: lettuce, unit: 'head', perWeek: Array.from({ length: 20 }, () => 4) }],
    ...change,
  };
}

/** Places that are planted or rest in a week. */
function heldIn({ sowings }: TurnoverPlan, week: number): number {
  const strips = sowings.flatMap((sowing) => sowing.strips);
  const here = strips.filter(
    ({ from_week, to_week, restTo_week }) =>
      from_week <= week && week <= Math.max(restTo_week, Math.min(from_week, to_week)),
  );
  return here.reduce((sum, { first, last }) => sum + last - first + 1, 0);
}

describe('every plan', () => {
  test('has none of the faults that it is looked at for', () => {
    fc.assert(
      fc.property(some, (task) => {
        for (const plan of [draftPlan(task, fixedGrowth), ...turnoverPlans(task, means())])
          expect(faultsIn(plan)).toEqual([]);
      }),
      { numRuns: 60 },
    );
  });

  test('is no worse than the one of the stage before', () => {
    fc.assert(
      fc.property(some, (task) => {
        const plans = [...turnoverPlans(task, means())];
        expect(plans).toHaveLength(4);
        // Later stages move plants about, but give up no wish that the first stage has met.
        const met = plans[0]?.stages[0]?.value ?? 0;
        for (const plan of plans) expect(plan.stages[0]?.value).toBeCloseTo(met, 9);
        // What the last two stages claim is counted once more, from the sowings.
        const last = plans.at(-1);
        const claimed = (name: string) => last?.stages.find((stage) => stage.name === name)?.value;
        expect(new Set(last?.sowings.map(({ sow_d }) => sow_d)).size).toBe(claimed('days'));
        const held = last?.calendar.map(({ index }) => heldIn(last, index)) ?? [];
        expect(Math.max(0, ...held)).toBe(claimed('idle'));
      }),
      { numRuns: 40 },
    );
  });

  test('is seen through when it is spoilt', () => {
    const plan = lastPlan(season({}));
    expect(plan.sowings.length).toBeGreaterThan(5);
    const [first, ...others] = plan.sowings;
    const spoilt = (change: object): TurnoverPlan => ({
      ...plan,
      sowings: first === undefined ? [] : [{ ...first, ...change }, ...others],
    });
    const twin = { ...first, id: 'twin' } as (typeof plan.sowings)[number];
    expect(faultsIn({ ...plan, sowings: [...plan.sowings, twin] })).toContain('doubleBooked');
    expect(faultsIn(spoilt({ seeds: 1 }))).toContain('seedSum');
    expect(faultsIn(spoilt({ plants: 400 }))).toContain('plantSum');
    expect(faultsIn(spoilt({ picks: [] }))).toContain('harvestSum');
    const strips = first?.strips.map((strip) => ({ ...strip, last: strip.last + 100 }));
    expect(faultsIn(spoilt({ strips }))).toContain('tooManyPlaces');
    const hasty = first?.strips.map((strip) => ({ ...strip, restTo_week: strip.to_week - 1 }));
    expect(faultsIn(spoilt({ strips: hasty }))).toContain('noRest');
    const away = { ...plan.task, holidays: [{ name: 'Away', from_week: 0, to_week: 19 }] };
    expect(faultsIn({ ...plan, task: away })).toContain('workOnHoliday');
    expect(faultsIn({ ...plan, planted: plan.planted.map((week) => ({ ...week, places: 40 })) })).toContain(
      'littlesLaw',
    );
  });
});

describe('a limit that is passed', () => {
  // Room enough for no place to be planted twice.
  const beds = [{ name: 'Field', mode: 'siphon' as const, places: 200, area_m2: 8 }];
  const wish = (id: string, amount: number, family = 'Asteraceae') => ({
    ...{ crop: { ...lettuce, id, family }, unit: 'head' as const },
    perWeek: Array.from({ length: 20 }, () => amount),
  });
  const wishes = [wish('lettuce', 4), wish('endive', 0)];
  const plan = lastPlan(season({ beds, wishes }));
  const told = (of: TurnoverPlan, ...relaxed: TurnoverPlan['relaxed']) => faultsIn({ ...of, relaxed });

  test('is none in a sound plan, which gives no wish up', () => {
    expect([plan.relaxed, faultsIn(plan)]).toEqual([[], []]);
  });

  test('is a fault where more than a third of a bed is lifted in a week, unless it is told', () => {
    const all = plan.sowings.map((one) => {
      const strips = one.strips.map((strip) => ({ ...strip, to_week: 18 }));
      return { ...one, strips };
    });
    const spoilt = { ...plan, sowings: all };
    expect(faultsIn(spoilt)).toContain('clearedTooMuch');
    const one = { wish: 'clearing', crop: 'lettuce', bed: 0, week: 18 } as const;
    expect(told(spoilt, one)).not.toContain('clearedTooMuch');
    expect(told(spoilt, { ...one, week: 17 })).toContain('clearedTooMuch');
  });

  test('is a fault where more cells are taken than there are, unless it is told', () => {
    const cells = Math.max(...plan.planted.map((week) => week.cells));
    const full = { ...plan, task: { ...plan.task, nurseryCells: cells } };
    expect(faultsIn(full)).toEqual([]);
    const spoilt = { ...plan, task: { ...plan.task, nurseryCells: cells - 1 } };
    expect(faultsIn(spoilt)).toEqual(['tooManyCells']);
    const over = plan.planted.flatMap((of, week) => (of.cells === cells ? [week] : []));
    const one = (week: number) => ({ wish: 'cells', crop: 'lettuce', bed: null, week }) as const;
    expect(told(spoilt, ...over.map(one))).toEqual([]);
    expect(told(spoilt, ...over.slice(1).map(one))).toEqual(['tooManyCells']);
  });

  test('is a fault where a family follows itself in a place, unless it is told or nobody minds', () => {
    const [first] = plan.sowings;
    if (first === undefined) throw new Error('nothing is sown');
    const [strip] = first.strips;
    if (strip === undefined) throw new Error('nothing is planted');
    const next = { ...strip, first: strip.last, from_week: 16, to_week: 18, restTo_week: 18 };
    const after = { ...first, id: 'after', crop: 'endive', from_week: 16, to_week: 18, strips: [next] };
    const alone = { ...plan, sowings: [first, after] };
    expect(faultsIn(alone)).toContain('sameFamily');
    const one = { wish: 'family', crop: 'endive', bed: 0, week: 16 } as const;
    expect(told(alone, one)).not.toContain('sameFamily');
    expect(told(alone, { ...one, crop: 'lettuce' })).toContain('sameFamily');
    expect(faultsIn({ ...alone, task: { ...plan.task, rotation: 'ignored' } })).not.toContain('sameFamily');
    const other = {
      crop: { ...lettuce, id: 'endive', family: 'Apiaceae' },
      unit: 'head' as const,
      perWeek: [],
    };
    const mixed = { ...plan.task, wishes: [...wishes.slice(0, 1), other] };
    expect(faultsIn({ ...alone, task: mixed })).not.toContain('sameFamily');
  });
});

describe('at the edges', () => {
  test('nothing wanted is an empty bed, and no shortfall', () => {
    const plan = lastPlan(season({ wishes: [{ crop: lettuce, unit: 'head', perWeek: [0, 0, 0] }] }));
    expect([plan.sowings, plan.short]).toEqual([[], []]);
  });

  test('a bed of one place grows one plant at a time', () => {
    const plan = lastPlan(season({ beds: [{ name: 'Pot', mode: 'siphon', places: 1, area_m2: 0.04 }] }));
    expect(plan.sowings.length).toBeGreaterThan(1);
    expect(Math.max(...plan.planted.map(({ places }) => places))).toBe(1);
    expect(plan.short.some(({ why }) => why === 'room')).toBe(true);
  });

  test('ten thousand places and sixty crops still make a plan', () => {
    const wishes = Array.from({ length: 60 }, (_, at) => ({
      crop: { ...lettuce, id: `crop${at}` },
      unit: 'head' as const,
      perWeek: Array.from({ length: 20 }, () => 20 + at),
    }));
    const beds = [{ name: 'Field', mode: 'siphon' as const, places: 10_000, area_m2: 400 }];
    const plan = lastPlan(season({ wishes, beds }));
    expect(plan.sowings.length).toBeGreaterThan(60);
  });

  test('more wanted than there is room for says how much is missing, week by week', () => {
    const perWeek = Array.from({ length: 20 }, () => 200);
    const plan = lastPlan(season({ wishes: [{ crop: lettuce, unit: 'head', perWeek }] }));
    expect(plan.sowings.length).toBeGreaterThan(0);
    const late = plan.short.filter(({ week }) => week > 8);
    expect(late.length).toBeGreaterThan(5);
    for (const { wanted, picked, why } of late) {
      expect(picked).toBeLessThan(wanted);
      expect(why).toBe('room');
    }
  });

  test('the first weeks of a season are too early, not too full', () => {
    const plan = lastPlan(season({}));
    expect(plan.short.length).toBeGreaterThan(0);
    expect([...new Set(plan.short.map(({ why }) => why))]).toEqual(['tooEarly']);
  });

  test('in holidays nothing is sown, planted or picked', () => {
    const plan = lastPlan(season({ holidays: [{ name: 'Away', from_week: 9, to_week: 10 }] }));
    const weeks = plan.sowings.flatMap(({ from_week, picks }) => [
      from_week,
      ...picks.map(({ week }) => week),
    ]);
    expect(weeks.filter((week) => week === 9 || week === 10)).toEqual([]);
    expect(plan.calendar[9]?.holiday).toBe('Away');
  });

  test('roots that stay are refused where the water stands, with the reason', () => {
    const mint = { ...lettuce, id: 'mint', name: 'Mint', stays: 'long' as const };
    const wishes = [{ crop: mint, unit: 'head' as const, perWeek: Array.from({ length: 20 }, () => 1) }];
    const still = [{ name: 'Bed', mode: 'constantFlood' as const, places: 40, area_m2: 1.6 }];
    const refused = lastPlan(season({ wishes, beds: still }));
    expect(refused.sowings).toEqual([]);
    expect(refused.notes.map(({ code }) => code)).toContain('cropRefusedStill');
    expect([...new Set(refused.short.map(({ why }) => why))]).toEqual(['refused']);
    expect(lastPlan(season({ wishes })).notes.map(({ code }) => code)).toContain('cropLongRoots');
  });
});
