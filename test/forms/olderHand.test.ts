/** A plan that an older page kept is still one to go on with. */
import { expect, test } from 'vitest';
import { grown } from '../../src/core/crops/growth.ts';
import type { Grows } from '../../src/core/turnover/choices.ts';
import { clockFor } from '../../src/core/turnover/clock.ts';
import type { Solver } from '../../src/core/turnover/solver.ts';
import { draftPlan, replans } from '../../src/core/turnover/turnoverPlan.ts';
import type { KeptHand } from '../../src/forms/season/hand.ts';
import { broughtUp } from '../../src/forms/season/olderHand.ts';
import { seasonWeeks } from '../../src/schemas/seasonWeeks.ts';
import { content } from '../turnover/seasons.ts';

/** Finds nothing: the plan stays what its first draft is. */
const idle: Solver = Object.assign(() => ({ values: null, bound: Number.NEGATIVE_INFINITY, prices: [] }), {
  trials: () => {},
});

test('a plan that an older page kept is planned again as one of today', () => {
  const of = content.turnovers.find(({ id }) => id === 'cape-school');
  if (of === undefined) throw new Error('no season');
  const grows: Grows = (crop, ...days) => grown(crop, of.task.place, ...days);
  const plan = draftPlan(of.task, grows);
  const { wasSown: _, ...older } = plan;
  const sowings = plan.sowings.map(({ ready_d: __, ...sowing }) => sowing);
  // The weeks were whole ones, whatever day the season was to end on.
  const file = { ...of.raw, season: { ...of.raw.season, to: '2031-12-08' } };
  const kept = { hand: { planned: { plan: { ...older, sowings }, file, changed: null } }, before: null };
  const { planned } = broughtUp(kept as unknown as KeptHand).hand;
  expect(planned.file.season).toEqual({ from: '2031-01-13', to: '2031-12-14' });
  expect(seasonWeeks(planned.file).weeks).toBe(plan.task.weeks);
  expect(
    broughtUp({ hand: { planned: { plan, file: of.raw, changed: null } } } as never).hand.planned,
  ).toEqual({
    ...{ plan, file: of.raw, changed: null },
  });
  const change = { now_week: 12, failed: [], partly: [], missed_weeks: [], wishes: null };
  const means = () => ({ grows, solver: idle, clock: clockFor(() => 0, 1) });
  const next = [...replans(planned.plan, change, means())].at(-1);
  const same = [...replans(plan, change, means())].at(-1);
  const strips = (all: typeof next) => all?.sowings.map(({ id, strips: on }) => [id, on]);
  expect(strips(next)).toEqual(strips(same));
  for (const { first } of next?.sowings ?? []) expect(first.spreadWeeks ?? 0).toBeLessThan(60);
});
