/** Feed of today beside what the plants take up: which weeks fit, and where the two part. */
import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { feedStretches } from '../../src/core/turnover/feedWeeks.ts';
import type { PlantedWeek } from '../../src/core/turnover/turnover.ts';
import { feedBars } from '../../src/drawing/harvestBars.ts';
import { feedLines } from '../../src/sheets/feedWords.ts';
import { seasonInput, seasonPlan } from './seasons.ts';

const week = (feedLow_g_d: number, feedHigh_g_d: number): PlantedWeek => ({
  ...{ places: 1, area_m2: 1, cells: 0, feedLow_g_d, feedHigh_g_d },
});
const weeks = fc.array(
  fc.tuple(fc.nat(90), fc.nat(30)).map(([low, more]) => week(low, low + more)),
  { maxLength: 60 },
);

describe('feed and plants', () => {
  test('fit from the least to the most that the area takes up, both included', () => {
    const all = [week(40, 50), week(51, 60), week(50, 60), week(0, 0), week(40, 49)];
    expect(feedStretches(all, 50)).toEqual([
      { fit: 'fits', from_week: 0, to_week: 0 },
      { fit: 'morePlants', from_week: 1, to_week: 1 },
      { fit: 'fits', from_week: 2, to_week: 2 },
      { fit: 'moreFeed', from_week: 3, to_week: 4 },
    ]);
  });

  test('are told in stretches that cover every week once, and change from one to the next', () => {
    fc.assert(
      fc.property(weeks, fc.nat(120), (planted, feed) => {
        const stretches = feedStretches(planted, feed);
        const covered = stretches.flatMap(({ from_week, to_week }) =>
          Array.from({ length: to_week - from_week + 1 }, (_, at) => from_week + at),
        );
        expect(covered).toEqual([...planted.keys()]);
        for (const [at, { fit }] of stretches.entries()) expect(stretches[at + 1]?.fit).not.toBe(fit);
      }),
    );
  });

  test('are told with the week numbers of the calendar, as many weeks as the notes count', () => {
    const plan = seasonPlan('cape-school');
    const lines = feedLines(seasonInput(plan));
    const counted = (text: string) =>
      (text.match(/\d+(–\d+)?/g) ?? []).reduce((sum, run) => {
        const [first = 0, last = first] = run.split('–').map(Number);
        return sum + last - first + 1;
      }, 0);
    const wanted = plan.notes
      .filter(({ code }) => code === 'feedMoreThanPlants' || code === 'plantsMoreThanFeed')
      .map(({ numbers }) => numbers['weeks']);
    expect(wanted.length).toBeGreaterThan(0);
    expect(lines.map((line) => counted(line.split(':')[0] ?? ''))).toEqual(wanted);
    expect(lines[0]).toContain('More feed than the plants take up in weeks 3');
  });

  test('are drawn on one scale: nothing stands above the graph, and an empty bed has no bar', () => {
    const size = { width: 600, height: 120 };
    const drawn = feedBars(
      [
        { low: 0, high: 0 },
        { low: 20, high: 40 },
      ],
      80,
      size,
    );
    // A bar is its outline and its hatching; then the line, and the foot.
    expect(drawn.shapes).toHaveLength(4);
    expect(drawn.shapes[0]?.d).toContain('90');
    expect(drawn.shapes[2]?.d).toMatch(/^M0 0L300 0M300 0L600 0$/);
  });
});
