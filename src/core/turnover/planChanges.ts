/** What planning again has made of a plan. */
import type { Change } from './change.ts';
import type { Sowing, TurnoverPlan } from './turnover.ts';
import { weekFrom } from './weeks.ts';

export type PlanChanges = {
  /** Everything before this week stood already. */
  readonly now_week: number;
  readonly missed_weeks: readonly number[];
  /** Sowings that came to nothing. */
  readonly failed: readonly Sowing[];
  /** Sowings that failed in part, as they stand now. */
  readonly partly: readonly Sowing[];
  /** Number of sowings that stand and keep their places and weeks. */
  readonly stand: number;
  /** Sowings that stand, but are planted or picked in other weeks now. */
  readonly moved: readonly Sowing[];
  /** Of what was still to be sown: how many are as before, new or other, and no longer there. */
  readonly ahead: { readonly same: number; readonly fresh: number; readonly gone: number };
  /** Picked in the whole season, before and now, of each crop where the two differ and are counted alike. */
  readonly totals: readonly { readonly crop: string; readonly before: number; readonly now: number }[];
};

/**
 * What is other than it was.
 * @param before the plan so far
 * @param after the plan that replans made of it
 * @param change what came differently
 * @returns sowings by what became of them
 * @valid two plans of one season; the later one may be of other wishes
 * @source geometry
 */
export function planChanges(before: TurnoverPlan, after: TurnoverPlan, change: Change): PlanChanges {
  const { now_week, missed_weeks } = change;
  const isOld = ({ sow_d }: Sowing): boolean => weekFrom(before.task, sow_d) < now_week;
  const old = new Set(before.sowings.map(look));
  const struck = new Set([...change.failed, ...change.partly.map(({ sowing }) => sowing)]);
  const standing = after.sowings.filter((one) => isOld(one) && !struck.has(one.id));
  const moved = standing.filter((one) => !old.has(look(one)));
  const next = after.sowings.filter((one) => !isOld(one)).map(look);
  const same = next.filter((one) => old.has(one)).length;
  const was = before.sowings.filter((one) => !isOld(one)).length;
  return {
    ...{ now_week, missed_weeks, moved, stand: standing.length - moved.length },
    failed: before.sowings.filter(({ id }) => change.failed.includes(id)),
    partly: after.sowings.filter(({ id }) => change.partly.some(({ sowing }) => sowing === id)),
    ahead: { same, fresh: next.length - same, gone: was - same },
    totals: after.crops.flatMap(({ crop, unit, totals: { picked } }) => {
      const was = before.crops.find((one) => one.crop === crop);
      const old = was?.totals.picked ?? 0;
      return old === picked || (was && was.unit !== unit) ? [] : [{ crop, before: old, now: picked }];
    }),
  };
}

/** Two sowings that look alike are the same work on the same days. */
function look({ id, plants, strips, picks }: Sowing): string {
  const stays = strips.map(({ first, last, from_week, to_week }) => [first, last, from_week, to_week]);
  return JSON.stringify([id, plants, stays, picks.map(({ week }) => week)]);
}
