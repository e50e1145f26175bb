/** A season as rows: the nursery, then each bed, places that run alike drawn as one. */
import type { Sowing, Strip, TurnoverPlan } from '../core/turnover/turnover.ts';

/** Something that stands from one week into another. */
export type Stay = {
  readonly crop: string;
  readonly begins: 'sow' | 'plant';
  readonly from_week: number;
  /** Week in which it leaves. */
  readonly to_week: number;
  readonly pick_weeks: readonly number[];
  /** Last week of the rest; the week in which it leaves where there is none. */
  readonly restTo_week: number;
};

export type TurnoverRow =
  | { readonly kind: 'nurseryHead' }
  | { readonly kind: 'nursery'; readonly crop: string; readonly stays: readonly Stay[] }
  | { readonly kind: 'bed'; readonly bed: number }
  | {
      readonly kind: 'places';
      readonly bed: number;
      readonly first: number;
      readonly last: number;
      readonly stays: readonly Stay[];
    };

/** All rows of a plan from top to bottom; the nursery, crop by crop, only where something waits in it. */
export function turnoverRows(plan: TurnoverPlan): readonly TurnoverRow[] {
  const beds = plan.task.beds.flatMap((_, bed): readonly TurnoverRow[] => {
    const rows = placeRows(
      plan.sowings.filter((one) => one.bed === bed),
      pickedOnce(plan),
    );
    return rows.length === 0
      ? []
      : [{ kind: 'bed', bed }, ...rows.map((row) => ({ ...row, bed, kind: 'places' as const }))];
  });
  const nursery = nurseryRows(plan);
  return [...(nursery.length === 0 ? [] : [{ kind: 'nurseryHead' as const }]), ...nursery, ...beds];
}

type PlaceRow = { readonly first: number; readonly last: number; readonly stays: readonly Stay[] };

/** From each place on which anything begins or ends to the next. */
function placeRows(sowings: readonly Sowing[], once: ReadonlySet<string>): readonly PlaceRow[] {
  const strips = sowings.flatMap((sowing) => sowing.strips.map((strip) => ({ sowing, strip })));
  const edges = [...new Set(strips.flatMap(({ strip }) => [strip.first, strip.last + 1]))].sort(
    (a, b) => a - b,
  );
  return edges.slice(0, -1).flatMap((first, at) => {
    const last = (edges[at + 1] ?? first + 1) - 1;
    const here = strips.filter(({ strip }) => strip.first <= first && last <= strip.last);
    const stays = here
      .map(({ sowing, strip }) => stayOf(sowing, strip, once))
      .sort((a, b) => a.from_week - b.from_week);
    return stays.length === 0 ? [] : [{ first, last, stays }];
  });
}

function pickedOnce({ task }: TurnoverPlan): ReadonlySet<string> {
  return new Set(task.wishes.filter(({ crop }) => crop.picking.kind === 'once').map(({ crop }) => crop.id));
}

function stayOf(sowing: Sowing, strip: Strip, once: ReadonlySet<string>): Stay {
  const weeks = sowing.picks.map(({ week }) => week).filter((week) => week <= strip.to_week);
  return {
    crop: sowing.crop,
    begins: sowing.plantOut_d === null ? 'sow' : 'plant',
    from_week: strip.from_week,
    to_week: strip.to_week,
    pick_weeks: once.has(sowing.crop) ? [strip.to_week] : weeks,
    restTo_week: Math.max(strip.to_week, strip.restTo_week),
  };
}

const week_d = 7;

/** A row for each crop, in the order of the wishes, with its trays of every week. */
function nurseryRows(plan: TurnoverPlan): readonly TurnoverRow[] {
  return plan.task.wishes.flatMap(({ crop }): readonly TurnoverRow[] => {
    const stays = traysOf(plan, crop.id);
    return stays.length === 0 ? [] : [{ kind: 'nursery', crop: crop.id, stays }];
  });
}

/** Trays of a crop that are sown and planted out in the same weeks are one, whatever beds they go to. */
function traysOf({ task, sowings }: TurnoverPlan, id: string): readonly Stay[] {
  const found = new Map<string, Stay>();
  for (const { crop, sow_d, plantOut_d, from_week: to_week } of sowings) {
    if (crop !== id || plantOut_d === null) continue;
    const from_week = (sow_d - task.firstMonday_d - task.workday) / week_d;
    const begins = 'sow' as const;
    found.set(`${from_week} ${to_week}`, {
      ...{ crop, begins, from_week, to_week, pick_weeks: [], restTo_week: to_week },
    });
  }
  return [...found.values()];
}
