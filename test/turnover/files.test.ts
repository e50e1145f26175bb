/** Plans as files: a calendar that another program reads back, and a table. */
import ICAL from 'ical.js';
import { describe, expect, test } from 'vitest';
import { jobsOf } from '../../src/core/turnover/jobs.ts';
import { calendarFile, planTable } from '../../src/wording/turnoverFiles.ts';
import { seasonPlan, words } from './seasons.ts';

const said = { catalogue: words.catalogue, units: 'metric', day: '2030-12-01' } as const;
const plan = seasonPlan('north-yard');
const jobs = jobsOf(plan);

function read(text: string | null): readonly InstanceType<typeof ICAL.Event>[] {
  const calendar = new ICAL.Component(ICAL.parse(text ?? ''));
  return calendar.getAllSubcomponents('vevent').map((event) => new ICAL.Event(event));
}

describe('the calendar file of a plan', () => {
  test('is read back by another program, an event for each job on its day', () => {
    const events = read(calendarFile(plan, jobs, said));
    expect(events).toHaveLength(jobs.length);
    expect(jobs.length).toBeGreaterThan(100);
    for (const [at, job] of jobs.entries()) {
      const event = events[at];
      expect(event?.startDate.isDate).toBe(true);
      expect(event?.startDate.toString()).toBe(job.date);
      expect(event?.uid).toContain(job.id);
      expect(event?.summary).toMatch(/\.$/);
    }
    expect(new Set(events.map(({ uid }) => uid)).size).toBe(jobs.length);
  });

  test('tells the caution of a crop with every job of it, and of no other', () => {
    const warm = seasonPlan('warm-terrace');
    const warmJobs = jobsOf(warm);
    const events = read(calendarFile(warm, warmJobs, said));
    const law = (at: number): boolean =>
      (events[at]?.description ?? '').includes('forbidden or bound to a permit');
    expect(warmJobs.map(({ crop }) => crop === 'kangkong')).toEqual(warmJobs.map((_, at) => law(at)));
    expect(warmJobs.some(({ crop }) => crop === 'kangkong')).toBe(true);
  });

  test('bears the same names when it is written again, and counts as newer', () => {
    const [first, second] = ['2030-12-01', '2031-02-03'].map((day) =>
      read(calendarFile(plan, jobs, { ...said, day })),
    );
    expect(second?.map(({ uid }) => uid)).toEqual(first?.map(({ uid }) => uid));
    expect(second?.[0]?.sequence).toBeGreaterThan(first?.[0]?.sequence ?? 0);
  });
});

describe('the table of a plan', () => {
  test('has a row for each job, with the columns of its head', () => {
    const rows = planTable(plan, jobs, said)
      .replace(/^\ufeff/, '')
      .trimEnd()
      .split('\r\n');
    expect(rows).toHaveLength(jobs.length + 1);
    expect(rows[0]?.split(',')).toHaveLength(10);
    expect(rows[1]).toMatch(/^2031-\d\d-\d\d,2031-W\d\d,/);
  });

  test('has columns that can be added up: seeds as they are sown, plants as they are lifted', () => {
    const sum = (all: readonly number[]) => all.reduce((total, one) => total + one, 0);
    for (const id of ['north-yard', 'cape-school']) {
      const of = seasonPlan(id);
      const rows = planTable(of, jobsOf(of), said)
        .trimEnd()
        .split('\r\n')
        .map((row) => row.replace(/"[^"]*"/g, '').split(','));
      const column = (at: number, jobs: RegExp) =>
        sum(rows.filter((row) => jobs.test(row[2] ?? '')).map((row) => Number(row[at])));
      expect(column(6, /^sow /)).toBe(sum(of.sowings.map(({ seeds }) => seeds)));
      expect(column(6, /^(plant|pick|cut)/)).toBe(0);
      const once = new Set(
        of.task.wishes.filter(({ crop }) => crop.picking.kind === 'once').map(({ crop }) => crop.id),
      );
      expect(column(7, /^pick with the root$/)).toBe(
        sum(of.sowings.filter(({ crop }) => once.has(crop)).map(({ plants }) => plants)),
      );
    }
  });

  test('tells amounts in the unit beside them, whatever units the sheets are in', () => {
    const school = seasonPlan('cape-school');
    const table = (units: 'metric' | 'us'): string => planTable(school, jobsOf(school), { ...said, units });
    expect(table('us')).toBe(table('metric'));
    const weighed = jobsOf(school).find(({ crop, amount }) => crop === 'lettuceLeaf' && amount !== null);
    expect(table('us')).toContain(`,${Number((weighed?.amount ?? 0).toPrecision(3))},kg\r\n`);
  });
});
