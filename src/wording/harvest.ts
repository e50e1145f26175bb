/** What is picked and what is to be done, as sentences. */
import type { Job } from '../core/turnover/jobs.ts';
import type { Sowing, TurnoverPlan } from '../core/turnover/turnover.ts';
import { type Catalogue, say } from './catalogue.ts';
import { dayText } from './date.ts';
import { noteSentence } from './note.ts';
import { amount, amountParts, type UnitSystem } from './quantity.ts';

export type SaidIn = { readonly catalogue: Catalogue; readonly units: UnitSystem };

/** "6 heads", "2.5 bunches", "0.8 kg": rounded down, as nobody is promised more; "a little" where that would leave nothing. */
export function harvestText(
  value: number,
  unit: 'head' | 'bunch' | 'kg',
  { catalogue, units }: SaidIn,
): string {
  // Of one plant less its likely losses: none would be too few, and one too many to promise.
  if (unit === 'head' && 0 < value && value < 1) return say(catalogue, 'turnover.units.oneHeadAtMost');
  const of = { kg: 'kg', head: 'plants', bunch: 'ratio' }[unit];
  const { number } = amountParts(value, of, 'down', units);
  if (0 < value && number === '0') return say(catalogue, 'turnover.units.little');
  if (unit === 'kg') return amount(value, of, 'down', units);
  return say(catalogue, `turnover.units.${unit}${number === '1' ? '' : 's'}`, { number });
}

/** "1 week", "24 seeds". */
export function counted(
  what: 'weeks' | 'seeds' | 'plants' | 'places',
  number: number,
  { catalogue, units }: SaidIn,
): string {
  const count = amount(number, 'ratio', 'nearest', units);
  return say(catalogue, `turnover.counts.${what}.${number === 1 ? 'one' : 'many'}`, { count });
}

/** "places 3–8 and 12". */
export function placesText(strips: readonly Run[], catalogue: Catalogue): string {
  const runs = joined(strips).map(({ first, last }) => (first === last ? `${first}` : `${first}–${last}`));
  const isOne = runs.length === 1 && !runs[0]?.includes('–');
  return say(catalogue, isOne ? 'turnover.place' : 'turnover.places', { places: runs.join(', ') });
}

type Run = { readonly first: number; readonly last: number };

/** Strips side by side are one strip to whoever stands before them. */
function joined(strips: readonly Run[]): readonly Run[] {
  const runs: Run[] = [];
  for (const { first, last } of [...strips].sort((a, b) => a.first - b.first)) {
    const open = runs.at(-1);
    if (open && first <= open.last + 1) runs[runs.length - 1] = { ...open, last: Math.max(open.last, last) };
    else runs.push({ first, last });
  }
  return runs;
}

/** What is to be done, in one sentence: "Sow 24 seeds of Head lettuce in trays." After the last picking a place may rest. */
export function jobText(job: Job, plan: TurnoverPlan, said: SaidIn): string {
  const wish = plan.task.wishes.find(({ crop }) => crop.id === job.crop);
  const text = say(said.catalogue, `turnover.jobs.${picksSome(job) ? 'pickSome' : job.kind}`, {
    crop: wish?.crop.name ?? job.crop,
    seeds: counted('seeds', job.seeds, said),
    plants: counted('plants', job.plants, said),
    count: amount(job.plants, 'ratio', 'nearest', said.units),
    bed: job.bed === null ? '' : (plan.task.beds[job.bed]?.name ?? ''),
    places: placesText(job.strips, said.catalogue),
    lifted: placesText(job.lifted, said.catalogue),
    amount: job.amount === null ? '' : harvestText(job.amount, wish?.unit ?? 'kg', said),
  });
  const rests = job.lifted.length > 0 && !picksSome(job) && plan.task.rest_d > 0;
  return rests ? `${text} ${say(said.catalogue, 'turnover.jobs.rest')}` : text;
}

/** Whether all is picked, but only some of it for the last time. */
export function picksSome({ kind, strips, lifted }: Pick<Job, 'kind' | 'strips' | 'lifted'>): boolean {
  return kind === 'pick' && lifted.length < strips.length;
}

/** "about 12 May 2031", or "week of 12 May 2031, plus or minus 2 weeks" where a day would promise too much. */
export function firstPicking({ first }: Pick<Sowing, 'first'>, said: SaidIn): string {
  const { catalogue } = said;
  const date = dayText(first.date, catalogue);
  const weeks = first.spreadWeeks;
  if (weeks === null) return say(catalogue, 'turnover.harvest.about', { date });
  return say(catalogue, 'turnover.harvest.weekOf', { date, weeks: counted('weeks', weeks, said) });
}

/** What must be said wherever these crops are named: their cautions, as the plan has them. */
export function cautionTexts(
  plan: TurnoverPlan,
  crops: ReadonlySet<string>,
  said: SaidIn,
): readonly string[] {
  const named = plan.task.wishes.map(({ crop }) => crop).filter(({ id }) => crops.has(id));
  return plan.notes
    .filter(({ code, words }) =>
      named.some(({ name, cautions }) => cautions.includes(code) && words?.['crop'] === name),
    )
    .map((note) => noteSentence(note, said.catalogue, said.units));
}
