/** A season month by month: what is sown, planted, picked and rested, crop by crop. */
import type { Job, JobKind } from '../core/turnover/jobs.ts';
import type { Week } from '../core/turnover/turnover.ts';
import { dayInYear } from '../wording/date.ts';
import { amount } from '../wording/quantity.ts';
import { counted, harvestText, picksSome, placesText } from '../wording/harvest.ts';
import { shorten } from '../wording/shorten.ts';
import { cropName, saidIn, season, type TurnoverInput } from './turnoverSheet.ts';

export type MonthGroup = 'sow' | 'plant' | 'pick' | 'rest';

/** What happens to a crop in a month, in one line. */
export type MonthLine = {
  readonly group: MonthGroup;
  readonly crop: string;
  readonly name: string;
  readonly text: string;
};

export type SeasonMonth = {
  /** Its first day, ISO 8601. */
  readonly first: string;
  /** Weeks that begin in it. */
  readonly weeks: readonly Week[];
  /** Weeks whose day of work falls into it: that of the last week may fall into the next month. */
  readonly worked: ReadonlySet<number>;
  readonly lines: readonly MonthLine[];
};

/** Months of the season in turn; those in which nothing is done have no lines. */
export function seasonMonths(input: TurnoverInput): readonly SeasonMonth[] {
  const { calendar } = input.plan;
  const days = [...calendar.map(({ monday }) => monday), ...input.jobs.map(({ date }) => date)];
  return [...new Set(days.map(monthOf))].sort().map((month) => {
    const weeks = calendar.filter(({ monday }) => monthOf(monday) === month);
    const jobs = input.jobs.filter(({ date }) => monthOf(date) === month);
    const worked = new Set(jobs.map(({ week }) => week));
    const lines = [...jobLines(input, jobs), ...restLines(input, worked)];
    return { first: `${month}-01`, weeks, worked, lines };
  });
}

function monthOf(iso: string): string {
  return iso.slice(0, 7);
}

const groups: Readonly<Record<JobKind, Exclude<MonthGroup, 'rest'>>> = {
  ...{ sowInTray: 'sow', sowInBed: 'sow', plantOut: 'plant', lift: 'pick', pick: 'pick', cut: 'pick' },
};

function jobLines(input: TurnoverInput, jobs: readonly Job[]): readonly MonthLine[] {
  return (['sow', 'plant', 'pick'] as const).flatMap((group) => {
    const own = jobs.filter(({ kind }) => groups[kind] === group);
    return cropsIn(input, own).map((crop) => ({
      group,
      crop,
      name: cropName(input, crop),
      text: own
        .filter((job) => job.crop === crop)
        .map((job) => jobWords(input, job))
        .join('; '),
    }));
  });
}

/** In the order of the wishes. */
function cropsIn({ plan }: TurnoverInput, some: readonly { readonly crop: string }[]): readonly string[] {
  const there = new Set(some.map(({ crop }) => crop));
  return plan.task.wishes.map(({ crop }) => crop.id).filter((id) => there.has(id));
}

/** "5 Apr 16 into Long bed places 24–33" */
function jobWords(input: TurnoverInput, job: Job): string {
  const said = saidIn(input);
  const unit = input.plan.task.wishes.find(({ crop }) => crop.id === job.crop)?.unit ?? 'kg';
  return season(input, `months.${picksSome(job) ? 'pickSome' : job.kind}`, {
    date: dayInYear(job.date, said.catalogue),
    seeds: counted('seeds', job.seeds, said),
    count: amount(job.plants, 'ratio', 'nearest', input.units),
    amount: job.amount === null ? '' : harvestText(job.amount, unit, said),
    where: job.bed === null ? '' : whereText(input, job.bed, job.strips),
    lifted: placesText(job.lifted, said.catalogue),
  });
}

const longBed = 24;

function whereText(input: TurnoverInput, bed: number, strips: Job['strips']): string {
  const name = shorten(input.plan.task.beds[bed]?.name ?? '', longBed);
  return season(input, 'months.where', { bed: name, places: placesText(strips, input.words.catalogue) });
}

/** Places whose rest begins in one of these weeks and lasts into a later one. */
function restLines(input: TurnoverInput, worked: ReadonlySet<number>): readonly MonthLine[] {
  const { calendar, sowings } = input.plan;
  const rests = sowings.flatMap(({ crop, bed, strips }) =>
    strips
      .filter(({ to_week, restTo_week }) => worked.has(to_week) && restTo_week > to_week)
      .map((strip) => ({ crop, bed, strip, until: calendar[strip.restTo_week]?.monday ?? null })),
  );
  return cropsIn(input, rests).map((crop) => ({
    group: 'rest',
    crop,
    name: cropName(input, crop),
    text: rests
      .filter((one) => one.crop === crop)
      .map(({ bed, strip, until }) =>
        season(input, until === null ? 'months.restOn' : 'months.rest', {
          where: whereText(input, bed, [strip]),
          date: until === null ? '' : dayInYear(until, input.words.catalogue),
        }),
      )
      .join('; '),
  }));
}
