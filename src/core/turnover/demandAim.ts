/** First: as many wishes met as there can be. */
import type { Aim } from './aim.ts';
import { worthMet } from './counts.ts';
import type { Desk } from './desk.ts';
import { unitsFor, worthIn } from './need.ts';
import type { Entry } from './rows.ts';
import type { Season } from './season.ts';

/**
 * Wishes that are left unmet, by what they are worth.
 * @param desk the programme
 * @returns the aim
 * @valid every season
 * @source commonPractice
 */
export function demandAim(desk: Desk): Aim {
  const { season, model } = desk;
  const all = season.needs.flat().reduce((sum, need) => sum + worthIn(need, unitsFor(need)), 0);
  return {
    name: 'demand',
    columns: [],
    rows: [],
    entries: model.met.flatMap(({ need, steps }) =>
      steps.map((column, at): Entry => [column, -(need[at]?.worth ?? 0)]),
    ),
    offset: all,
    unused: longer(season),
    implied: () => [],
    least: 0,
    fill: () => [],
    value: (counts) => Math.max(0, all - worthMet(season, counts)),
    steps: 'any',
  };
}

/**
 * Choices that are picked in the same weeks as another, but planted earlier: they take more of the bed and give no more.
 * Where the cells of the nursery are counted, an earlier planting may still be of use.
 */
function longer({ choices, fixed, task }: Season): ReadonlySet<number> {
  const found = new Set<number>();
  if (task.nurseryCells !== null) return found;
  const best = new Map<string, number>();
  for (const [column, choice] of choices.entries()) {
    if (fixed.has(choice)) continue;
    const key = [choice.wish, choice.kind, ...choice.pick_weeks].join(' ');
    const other = best.get(key);
    const isShorter = other === undefined || choice.from_week > (choices[other]?.from_week ?? 0);
    if (isShorter) best.set(key, column);
    const beaten = isShorter ? other : column;
    if (beaten !== undefined) found.add(beaten);
  }
  return found;
}
