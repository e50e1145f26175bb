/** What a season says of numbers: one is one. */
import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { dayNumber_d } from '../../src/core/calendar.ts';
import { jobsOf } from '../../src/core/turnover/jobs.ts';
import { draftPlan } from '../../src/core/turnover/turnoverPlan.ts';
import { shortLines, totalLines } from '../../src/sheets/harvestWords.ts';
import { firstPicking, harvestText, jobText } from '../../src/wording/harvest.ts';
import { noteSentence } from '../../src/wording/note.ts';
import { problemSentence } from '../../src/wording/problem.ts';
import { seasonInput, seasonPlan, words } from './seasons.ts';
import { fixedGrowth, tasks } from './tasks.ts';

const small = tasks({ crops: 3, weeks: 12, places: 6, most: 2 });

/** "1 weeks", and "2 week". */
const wrong =
  /\b1 (weeks|seeds|plants|places|heads|bunches)\b|\b(?!1 )\d+ (week|seed|plant|place|head|bunch)\b/;

describe('the sentences of a season', () => {
  test('speak of one week, seed, plant or place as of one', () => {
    let ones = 0;
    fc.assert(
      fc.property(small, (task) => {
        const plan = draftPlan(task, fixedGrowth);
        const input = seasonInput(plan);
        const said = { catalogue: input.words.catalogue, units: input.units };
        const all = [
          ...jobsOf(plan).map((job) => jobText(job, plan, said)),
          ...plan.sowings.map((sowing) => firstPicking(sowing, said)),
          ...shortLines(input),
          ...totalLines(input),
        ];
        for (const one of all) expect(one.replaceAll('\u00a0', ' ')).not.toMatch(wrong);
        ones += all.filter((one) => /\b1\s(week|plant|head)\b/.test(one)).length;
      }),
      { numRuns: 200 },
    );
    expect(ones).toBeGreaterThan(50);
  });

  test('promise no more than there is, and never send anybody out for nothing', () => {
    const said = (units: 'metric' | 'us') => ({ catalogue: words.catalogue, units });
    const text = (value: number, unit: 'head' | 'bunch' | 'kg', units: 'metric' | 'us' = 'metric') =>
      harvestText(value, unit, said(units)).replace('\u00a0', ' ');
    expect([text(0, 'bunch'), text(0.06, 'bunch'), text(0.19, 'bunch')]).toEqual([
      ...['0 bunches', 'a little', '0.1 bunches'],
    ]);
    expect([text(0, 'kg'), text(0.04, 'kg'), text(0.04, 'kg', 'us')]).toEqual([
      '0 kg',
      'a little',
      'a little',
    ]);
    expect([text(0.9, 'head'), text(1.8, 'head')]).toEqual(['one head at most', '1 head']);
  });

  test('say which places are lifted, where only some are, and of rest only where there is any', () => {
    const plan = seasonPlan('cape-school');
    const said = { catalogue: words.catalogue, units: 'metric' } as const;
    const week = 20;
    const sowing = plan.sowings.find(({ crop }) => crop === 'chard');
    if (sowing === undefined) throw new Error('no chard');
    const strip = (first: number, last: number, to_week: number) => ({
      ...{ first, last, from_week: 10, to_week, restTo_week: to_week },
    });
    const texts = (strips: ReturnType<typeof strip>[], lifts: 'all' | 'some', rest_d = 3) => {
      const pick = { week, day_d: plan.task.firstMonday_d + 142, amount: 2, mass_g: 100, lifts };
      const sowings = [{ ...sowing, bed: 0, plants: 12, strips, picks: [pick] }];
      const of = { ...plan, task: { ...plan.task, rest_d }, sowings };
      const jobs = jobsOf(of).filter(({ kind }) => kind === 'pick');
      return jobs.map((job) => `${job.plants}: ${jobText(job, of, said)}`);
    };
    expect(texts([strip(1, 4, week), strip(5, 12, 22)], 'some')).toEqual([
      '12: Pick 2 bunches of Chard: Drum bed one, places 1–12. Of these lift places 1–4 with the roots, and leave the others.',
    ]);
    expect(texts([strip(1, 4, 18), strip(5, 12, week)], 'all')).toEqual([
      '8: Pick 2 bunches of Chard, for the last time, and lift it with its root: Drum bed one, places 5–12. Then let the place rest.',
    ]);
    expect(texts([strip(1, 12, week)], 'all', 0)[0]).toMatch(/places 1–12\.$/);
  });

  test('tell frosts by days of any year, and long seasons by a number', () => {
    const task = { ...seasonPlan('north-yard').task, firstMonday_d: dayNumber_d('2030-11-04'), weeks: 14 };
    const frost = draftPlan(task, fixedGrowth).notes.find(({ code }) => code === 'frostDates');
    expect(frost && noteSentence(frost, words.catalogue, 'metric')).toMatch(
      /the last one falls before \d+ (Apr|May) in half of the years and before \d+ (May|Jun) in nine of ten; the first one after \d+ Sep in/,
    );
    const long = { code: 'seasonLong', place: ['season', 'to'], given: '763', max: 742 } as const;
    expect(problemSentence(long, words.catalogue)).toContain('These are 763 days, and 742 are the most');
  });

  test('count towards what was asked for only what is picked in its own week', () => {
    const input = seasonInput(seasonPlan('cape-school'));
    const [of] = input.plan.crops;
    if (of === undefined) throw new Error('nothing is wanted');
    const line = (wanted: readonly number[], picked: readonly number[]) => {
      const sum = (all: readonly number[]) => all.reduce((total, one) => total + one, 0);
      const totals = { wanted: sum(wanted), picked: sum(picked), most: 9 };
      const crop = { ...of, unit: 'bunch' as const, wanted, picked, totals };
      return totalLines(seasonInput({ ...input.plan, crops: [crop] }))[0];
    };
    expect(line([2, 2, 2], [6, 0, 0])).toBe(
      'Leaf lettuce: 2 bunches of 6 bunches that were asked for; 6 bunches are picked in all',
    );
    expect(line([2, 2, 2], [2, 2, 1])).toBe('Leaf lettuce: 5 bunches of 6 bunches that were asked for');
  });
});
