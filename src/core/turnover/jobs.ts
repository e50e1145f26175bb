/** What is to be done when: every sowing, planting and picking as one job. */
import { dateOf } from '../calendar.ts';
import { workday_d } from './weeks.ts';
import type { Pick as Picked, Sowing, Strip, TurnoverPlan, WasSown } from './turnover.ts';

export type JobKind = 'sowInTray' | 'sowInBed' | 'plantOut' | 'pick' | 'cut' | 'lift';

export type Job = {
  /** The same as long as its sowing is: `lettuceHead-2031W14-1-pick-2031W22`. */
  readonly id: string;
  readonly kind: JobKind;
  /** Week of the season. */
  readonly week: number;
  readonly day_d: number;
  /** The same as a date: `2031-04-28`. */
  readonly date: string;
  readonly crop: string;
  /** null in a tray: its plants may go to several beds. */
  readonly bed: number | null;
  /** Of the whole sowing. */
  readonly seeds: number;
  /** That are sown for, planted, or picked on this day. */
  readonly plants: number;
  /** Where; none in a tray. */
  readonly strips: readonly Run[];
  /** Of these, what is lifted with its root on this day. */
  readonly lifted: readonly Run[];
  /** What comes of it, in the unit of the wish; null where nothing is picked. */
  readonly amount: number | null;
};

/** Places with numbers in a row. */
type Run = Pick<Strip, 'first' | 'last'>;

const week_d = 7;

/**
 * The jobs of a plan.
 * A crop that is picked once is lifted with its root; one that is cut is lifted at its last cut. What is sown into trays on
 * one day is one job for each crop, whatever bed it goes to. What was sown is told as it was sown, whatever became of it.
 * @param plan any plan
 * @returns by day, on each day first what is picked, then what is planted, then what is sown
 * @valid every plan
 * @source geometry
 */
export function jobsOf(plan: TurnoverPlan): readonly Job[] {
  const jobs: readonly Undated[] = [
    ...trays(plan),
    ...sownIn(plan)
      .filter(({ plantOut_d }) => plantOut_d === null)
      .map((sowing) => sowingInBed(plan, sowing)),
    ...plan.sowings.flatMap((sowing) => planting(sowing)),
    ...plan.sowings.flatMap((sowing) => sowing.picks.map((pick) => picking(plan, sowing, pick))),
  ];
  return jobs
    .map((job): Job => ({ ...job, date: dateOf(job.day_d) }))
    .sort((a, b) => a.day_d - b.day_d || rank(a) - rank(b) || order(a.id, b.id));
}

type Undated = Omit<Job, 'date'>;

function order(a: string, b: string): number {
  return a < b ? -1 : Number(a > b);
}

/** Lifting makes room for planting. */
function rank({ kind }: Job): number {
  return ['lift', 'pick', 'cut', 'plantOut', 'sowInBed', 'sowInTray'].indexOf(kind);
}

function weekOf(plan: TurnoverPlan, day_d: number): number {
  return (day_d - workday_d(plan.task, 0)) / week_d;
}

function isoName({ calendar }: TurnoverPlan, week: number): string {
  const { isoYear = 0, isoWeek = 0 } = calendar[week] ?? {};
  return `${isoYear}W${String(isoWeek).padStart(2, '0')}`;
}

/** Everything that is or was sown. */
function sownIn({ sowings, wasSown }: TurnoverPlan): readonly WasSown[] {
  const less = new Set(wasSown.map(({ id }) => id));
  return [...wasSown, ...sowings.filter(({ id }) => !less.has(id))];
}

function trays(plan: TurnoverPlan): readonly Undated[] {
  const found = new Map<string, Undated>();
  for (const { crop, sow_d, plantOut_d, seeds, plants } of sownIn(plan)) {
    if (plantOut_d === null) continue;
    const week = weekOf(plan, sow_d);
    const id = `${crop}-${isoName(plan, week)}-sow`;
    const before = found.get(id) ?? { seeds: 0, plants: 0 };
    found.set(id, {
      ...{ id, kind: 'sowInTray', week, day_d: sow_d, crop, bed: null, amount: null },
      ...{ strips: [], lifted: [] },
      ...{ seeds: before.seeds + seeds, plants: before.plants + plants },
    });
  }
  return [...found.values()];
}

function sowingInBed(plan: TurnoverPlan, sowing: WasSown): Undated {
  const { id, crop, bed, sow_d, strips, seeds, plants } = sowing;
  return {
    ...{ id: `${id}-sow`, kind: 'sowInBed', week: weekOf(plan, sow_d), day_d: sow_d, crop, bed },
    ...{ strips, lifted: [], seeds, plants, amount: null },
  };
}

/** Plants from the tray; none of what is sown into the bed. */
function planting(sowing: Sowing): readonly Undated[] {
  const { id, crop, bed, plantOut_d, from_week, strips, seeds, plants } = sowing;
  if (plantOut_d === null) return [];
  const more = { crop, bed, strips, lifted: [], seeds, plants, amount: null };
  return [{ ...more, id: `${id}-plant`, kind: 'plantOut', week: from_week, day_d: plantOut_d }];
}

function picking(plan: TurnoverPlan, sowing: Sowing, { week, day_d, amount, lifts }: Picked): Undated {
  const { crop, bed, seeds } = sowing;
  const lifted = sowing.strips.filter(({ to_week }) => to_week === week);
  const standing = sowing.strips.filter(({ to_week }) => to_week >= week);
  const kind = lifts === 'none' ? 'cut' : isOnce(plan, sowing) ? 'lift' : 'pick';
  const strips = kind === 'lift' ? lifted : standing;
  return {
    ...{ id: `${sowing.id}-pick-${isoName(plan, week)}`, kind, week, day_d, crop, bed, seeds, amount },
    ...{ plants: plantsOn(sowing, strips), strips, lifted },
  };
}

function plantsOn({ plants, strips: all }: Sowing, strips: readonly Strip[]): number {
  return (plants * placesIn(strips)) / placesIn(all);
}

function placesIn(strips: readonly Run[]): number {
  return strips.reduce((sum, { first, last }) => sum + last - first + 1, 0);
}

function isOnce({ task }: TurnoverPlan, { crop }: Sowing): boolean {
  return task.wishes.find((wish) => wish.crop.id === crop)?.crop.picking.kind === 'once';
}
