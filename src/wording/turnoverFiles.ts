/** A plan as files for phone and spreadsheet. */
import type { Job } from '../core/turnover/jobs.ts';
import type { TurnoverPlan } from '../core/turnover/turnover.ts';
import { type Catalogue, say } from './catalogue.ts';
import { csv } from './csv.ts';
import { cautionTexts, jobText, picksSome, placesText, type SaidIn } from './harvest.ts';
import { iCalendar } from './iCalendar.ts';
import { precise } from './quantity.ts';

/** No address of anybody: the name is kept free for this by the standard for names. */
const domain = 'bedfirst.invalid';

/** All jobs as days of a calendar, one event each; null for a plan without jobs. */
export function calendarFile(
  plan: TurnoverPlan,
  jobs: readonly Job[],
  said: SaidIn & { readonly day: string },
): string | null {
  const { task } = plan;
  return iCalendar({
    name: task.name,
    day: said.day,
    events: jobs.map((job) => ({
      uid: `${job.id}.${task.id}@${domain}`,
      date: job.date,
      summary: jobText(job, plan, said),
      description: [
        say(said.catalogue, 'turnover.file.likely', { name: task.name }),
        ...cautionTexts(plan, new Set([job.crop]), said),
      ].join('\n'),
      location: job.bed === null ? '' : (task.beds[job.bed]?.name ?? ''),
      category: say(said.catalogue, `turnover.file.jobs.${job.kind}`),
    })),
  });
}

const columns = [
  'date',
  'week',
  'job',
  'crop',
  'bed',
  'places',
  'seeds',
  'plants',
  'amount',
  'unit',
] as const;

/** All jobs as rows of a table. */
export function planTable(plan: TurnoverPlan, jobs: readonly Job[], said: SaidIn): string {
  const { catalogue } = said;
  const head = columns.map((column) => say(catalogue, `turnover.file.columns.${column}`));
  const rows = jobs.map((job) => {
    const wish = plan.task.wishes.find(({ crop }) => crop.id === job.crop);
    const week = plan.calendar[job.week];
    return [
      job.date,
      week === undefined ? '' : `${week.isoYear}-W${String(week.isoWeek).padStart(2, '0')}`,
      say(catalogue, `turnover.file.jobs.${job.kind}`),
      wish?.crop.name ?? job.crop,
      job.bed === null ? '' : (plan.task.beds[job.bed]?.name ?? ''),
      whereText(job, catalogue),
      // Counted where they are sown, so that a sum of the column is what has to be bought.
      job.kind === 'sowInTray' || job.kind === 'sowInBed' ? job.seeds : '',
      job.plants,
      // In the unit that stands beside it, whatever units the sheets are in.
      job.amount === null ? '' : Number(precise(job.amount, 3)),
      job.amount === null ? '' : (wish?.unit ?? ''),
    ];
  });
  return csv([head, ...rows]);
}

function whereText(job: Job, catalogue: Catalogue): string {
  if (job.strips.length === 0) return '';
  const places = placesText(job.strips, catalogue);
  if (!picksSome(job)) return places;
  return say(catalogue, 'turnover.file.lifting', { places, lifted: placesText(job.lifted, catalogue) });
}
