/** All plans of a small season, one by one: counted from its weeks, not from the rows that a solver is given. */
import type { Choice } from '../../src/core/turnover/choices.ts';
import { unitsFor, worthIn } from '../../src/core/turnover/need.ts';
import type { Season } from '../../src/core/turnover/season.ts';

/** What a plan is worth, in the order of the stages; smaller is better. */
export type Score = readonly [unmet: number, rises: number, days: number, peak: number];

/** Most units of each choice: no more than its best week asks for. */
export function mostUnits({ needs }: Season, { wish, pick_weeks }: Choice): number {
  return Math.max(...pick_weeks.map((week) => unitsFor(needs[wish]?.[week] ?? [])));
}

/** How many plans there are to look at. */
export function plansIn(season: Season): number {
  return season.choices.reduce((product, choice) => product * (mostUnits(season, choice) + 1), 1);
}

/** The best score of all plans that keep the limits. */
export function bestOf(season: Season): Score {
  const counts = season.choices.map(() => 0);
  let best: Score | null = null;
  const look = (at: number): void => {
    const choice = season.choices[at];
    if (choice === undefined) {
      const score = scoreOf(season, counts);
      if (score !== null && (best === null || compare(score, best) < 0)) best = score;
      return;
    }
    for (let units = 0; units <= mostUnits(season, choice); units += 1) {
      counts[at] = units;
      look(at + 1);
    }
    counts[at] = 0;
  };
  look(0);
  if (best === null) throw new Error('not even an empty bed is a plan');
  return best;
}

const near = 1e-6;

function compare(a: Score, b: Score): number {
  for (const [at, value] of a.entries()) {
    const other = b[at] ?? 0;
    if (Math.abs(value - other) > near) return value - other;
  }
  return 0;
}

/** null where a limit is broken. */
function scoreOf(season: Season, counts: readonly number[]): Score | null {
  const { task, choices, kinds, units, rest_weeks } = season;
  const weeks = Array.from({ length: task.weeks }, (_, week) => week);
  const places = (choice: Choice): number => units[choice.wish]?.places ?? 1;
  const sum = (of: (choice: Choice) => number): number =>
    choices.reduce((total, choice, at) => total + (counts[at] ?? 0) * of(choice), 0);
  const stands = (choice: Choice, week: number): boolean =>
    choice.from_week <= week && week < Math.max(choice.from_week + 1, choice.to_week + rest_weeks);
  for (const [number, kind] of kinds.entries())
    for (const week of weeks) {
      const held = sum((one) => (one.kind === number && stands(one, week) ? places(one) : 0));
      const lifted = sum((one) => (one.kind === number && one.to_week === week ? places(one) : 0));
      if (held > kind.places || lifted > kind.clearing) return null;
    }
  for (const week of weeks) {
    const cells = sum(({ wish, sow_week, from_week }) => {
      const success = task.wishes[wish]?.crop.germination.success_frac ?? 1;
      return sow_week <= week && week < from_week ? (units[wish]?.plants ?? 1) / success : 0;
    });
    if (task.nurseryCells !== null && cells > task.nurseryCells + near) return null;
  }
  let unmet = 0;
  for (const [wish, needs] of season.needs.entries())
    for (const [week, need] of needs.entries()) {
      const picked = sum((one) => (one.wish === wish && one.pick_weeks.includes(week) ? 1 : 0));
      const isOnce = task.wishes[wish]?.crop.picking.kind === 'once';
      if (isOnce && picked > unitsFor(need)) return null;
      unmet += worthIn(need, unitsFor(need)) - worthIn(need, picked);
    }
  const planted = weeks.map((week) => sum((one) => (stands(one, week) ? places(one) : 0)));
  const rises = planted.reduce((total, now, week) => total + Math.max(0, now - (planted[week - 1] ?? 0)), 0);
  const days = new Set(choices.filter((_, at) => (counts[at] ?? 0) > 0).map(({ sow_week }) => sow_week)).size;
  return [unmet, rises, days, Math.max(0, ...planted)];
}
