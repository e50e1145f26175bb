/** Limits that a plan may pass only where it tells so: what is lifted in a week, cells of trays, and families in a row. */
import { clearedOf, widestIn } from './bedKinds.ts';
import { numbersOf } from './emptied.ts';
import type { Relaxed, Sowing, Strip, TurnoverPlan } from './turnover.ts';

type Stands = { readonly sowing: Sowing; readonly strip: Strip };

function standsIn({ sowings }: TurnoverPlan): readonly Stands[] {
  return sowings.flatMap((sowing) => sowing.strips.map((strip) => ({ sowing, strip })));
}

function isTold({ relaxed }: TurnoverPlan, one: Partial<Relaxed>): boolean {
  const keys = ['wish', 'crop', 'bed', 'week'] as const;
  return relaxed.some((told) => keys.every((key) => one[key] === undefined || told[key] === one[key]));
}

/**
 * Whether more than a third of a bed is lifted in a week, and the plan does not tell it.
 * @param plan any plan
 * @returns yes or no
 * @valid one plant may always be lifted, however wide it is
 * @source commonPractice
 */
export function clearsTooMuch(plan: TurnoverPlan): boolean {
  const { task } = plan;
  return task.beds.some((of, bed) => {
    const most = clearedOf(of, widestIn(task, of));
    const lifted = new Map<number, number>();
    for (const { sowing, strip } of standsIn(plan))
      if (sowing.bed === bed)
        lifted.set(strip.to_week, (lifted.get(strip.to_week) ?? 0) + strip.last - strip.first + 1);
    return [...lifted].some(
      ([week, places]) => places > most && !isTold(plan, { wish: 'clearing', bed, week }),
    );
  });
}

/**
 * Whether more cells are taken than there are, and the plan does not tell it.
 * @param plan any plan
 * @returns yes or no
 * @valid one seed a cell
 * @source geometry
 */
export function takesTooManyCells(plan: TurnoverPlan): boolean {
  const { task, planted } = plan;
  const most = task.nurseryCells ?? Number.POSITIVE_INFINITY;
  return planted.some(({ cells }, week) => cells > most && !isTold(plan, { wish: 'cells', week }));
}

/**
 * Whether a family stands straight after itself in a place where that is not wanted, and the plan does not tell it.
 * @param plan any plan
 * @returns yes or no
 * @valid every plan
 * @source commonPractice
 */
export function repeatsFamily(plan: TurnoverPlan): boolean {
  const { task } = plan;
  if (task.rotation === 'ignored') return false;
  const families = new Map(task.wishes.map(({ crop }) => [crop.id, crop.family]));
  const last = new Map<string, string | undefined>();
  const inOrder = [...standsIn(plan)].sort((a, b) => a.strip.from_week - b.strip.from_week);
  return inOrder.some(({ sowing: { crop, bed }, strip }) => {
    const family = families.get(crop);
    const places = numbersOf({ strips: [strip] }).map((place) => `${bed} ${place}`);
    const isSame = places.some((place) => last.has(place) && last.get(place) === family);
    for (const place of places) last.set(place, family);
    return isSame && !isTold(plan, { wish: 'family', crop, bed, week: strip.from_week });
  });
}
