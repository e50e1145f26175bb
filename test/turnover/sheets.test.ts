/** Sheets of seasons: everything on the paper, nothing cut, and read aloud in order. */
import { describe, expect, test } from 'vitest';
import { mapParts } from '../../src/drawing/bedMap.ts';
import { turnoverRows } from '../../src/drawing/turnoverRows.ts';
import { seasonMonths } from '../../src/sheets/seasonMonths.ts';
import { dayInYear } from '../../src/wording/date.ts';
import { mmPerPoint } from '../../src/paper/measures.ts';
import { overflows } from '../../src/paper/overflows.ts';
import type { Page } from '../../src/paper/page.ts';
import type { Strip, TurnoverPlan } from '../../src/core/turnover/turnover.ts';
import { plainPrint } from '../../src/sheets/sheetPrint.ts';
import type { TurnoverInput, TurnoverKind } from '../../src/sheets/turnoverSheet.ts';
import { turnoverSheets } from '../../src/sheets/turnoverSheets.ts';
import { lint } from '../pdfLint/lint.ts';
import { press, textOf, wordsOf } from '../sheets/laidOut.ts';
import { content, planOf, seasonInput, seasonPlan } from './seasons.ts';

const emptyPage: Page = { title: '', lang: 'en', width_pt: 1, height_pt: 1, packs: [], nodes: [], items: [] };

async function pagesOf(kind: TurnoverKind, input: TurnoverInput): Promise<readonly Page[]> {
  const pages = [];
  for await (const page of kind.pages(input, press.layOut)) pages.push(page);
  return pages;
}

const plans: readonly (readonly [string, 'A4' | 'Letter'])[] = [
  ['north-yard', 'A4'],
  ['cape-school', 'Letter'],
  ['warm-terrace', 'A4'],
];

describe.each(turnoverSheets.map((kind) => [kind.id, kind] as const))('%s', (_, kind) => {
  test('keeps every word on its paper and in its box, and machines find no fault with it', async () => {
    let seen = 0;
    for (const [id, paper] of plans) {
      const input = seasonInput(seasonPlan(id), paper);
      if (kind.fits(input) === 'no') continue;
      seen += 1;
      const pages = await pagesOf(kind, input);
      expect(pages.length).toBeGreaterThan(0);
      for (const page of pages) expect(overflows(page)).toEqual([]);
      expect((await lint(await press.toPdf(plainPrint(kind, input, pages)))).findings).toEqual([]);
    }
    expect(seen).toBeGreaterThan(0);
  }, 120_000);
});

/** With a week of rest more. */
function rested(strip: Strip): Strip {
  return { ...strip, restTo_week: strip.to_week + 1 };
}

function kindOf(id: string): TurnoverKind {
  const kind = turnoverSheets.find((one) => one.id === id);
  if (kind === undefined) throw new Error(`no sheet ${id}`);
  return kind;
}

async function wordsOn(id: string, plan: TurnoverPlan): Promise<string> {
  const pages = await pagesOf(kindOf(id), seasonInput(plan));
  return pages.map(textOf).join(' ');
}

describe('the weekly job list', () => {
  test('names every job of the plan, week by week, and the cautions of its crops', async () => {
    const plan = seasonPlan('warm-terrace');
    const text = await wordsOn('weekly-jobs', plan);
    expect(text).toContain('Water spinach: forbidden or bound to a permit in some places');
    expect(text.match(/Sow \d+ seeds? /g)?.length).toBe(
      seasonInput(plan).jobs.filter(({ kind }) => kind === 'sowInTray' || kind === 'sowInBed').length,
    );
  });

  test('says on every page of which week its jobs are', async () => {
    const pages = await pagesOf(kindOf('weekly-jobs'), seasonInput(seasonPlan('warm-terrace')));
    expect(pages.length).toBeGreaterThan(5);
    const texts = pages.map((page) => textOf(page).replace(/\u00a0/g, ' '));
    const jobs = texts.map((text) => text.replace(/^.*?alone at the tank with children\. ?/s, ''));
    expect(jobs.filter((text) => !/^(Mind|Week \d+: )/.test(text))).toEqual([]);
    const goesOn = jobs.flatMap((text) => /^(Week \d+: [^,]*), continued/.exec(text)?.[1] ?? []);
    expect(goesOn.length).toBeGreaterThan(0);
    for (const head of goesOn) expect(jobs.filter((text) => text.includes(head)).length).toBeGreaterThan(1);
  });
});

describe('the season month by month', () => {
  test('has every sowing, planting and picking in the month of its day, and no other', async () => {
    const plan = seasonPlan('cape-school');
    const input = seasonInput(plan);
    const months = seasonMonths(input);
    const { catalogue } = input.words;
    for (const { first, lines } of months) {
      const jobs = input.jobs.filter(({ date }) => date.slice(0, 7) === first.slice(0, 7));
      const told = lines.filter(({ group }) => group !== 'rest').flatMap(({ text }) => text.split('; '));
      expect(told, first).toHaveLength(jobs.length);
      expect(told.map((text) => text.split(' ').slice(0, 2).join(' ')).sort()).toEqual(
        jobs.map(({ date }) => dayInYear(date, catalogue)).sort(),
      );
    }
    expect(months.length).toBe(12);
    const pages = await pagesOf(kindOf('turnover-months'), input);
    const text = pages.map(textOf).join(' ');
    for (const { name } of plan.task.holidays)
      expect(text).toContain(`${name}: nobody is there in the week of`);
  });

  test('lets a place rest in the month in which it was lifted, also where its week began in another', () => {
    const of = seasonPlan('north-yard');
    const plan = { ...of, sowings: of.sowings.map((one) => ({ ...one, strips: one.strips.map(rested) })) };
    let seen = 0;
    for (const { first, lines } of seasonMonths(seasonInput(plan))) {
      const crops = (groups: readonly string[]) =>
        lines.filter(({ group }) => groups.includes(group)).map(({ crop }) => crop);
      for (const crop of crops(['rest'])) expect(crops(['pick']), first).toContain(crop);
      seen += crops(['rest']).length;
    }
    expect(seen).toBeGreaterThan(5);
  });

  test('begins each month on a page of its own, with a map of every bed', async () => {
    const plan = seasonPlan('cape-school');
    const pages = await pagesOf(kindOf('turnover-months'), seasonInput(plan));
    const maps = pages.map((page) => page.nodes.filter(({ role }) => role === 'Figure'));
    expect(maps.filter((some) => some.length > 0).map((some) => some.length)).toEqual(
      Array.from({ length: 12 }, () => plan.task.beds.length),
    );
    expect(maps.flat()[0]?.alt).toMatch(/^Drum bed one as a row of its places\. /);
  });
});

describe('the calendar', () => {
  test('has one row in the nursery for each crop that is sown in trays', () => {
    const plan = seasonPlan('cape-school');
    const rows = turnoverRows(plan).flatMap((row) => (row.kind === 'nursery' ? [row.crop] : []));
    const inTrays = new Set(plan.sowings.filter((one) => one.plantOut_d !== null).map(({ crop }) => crop));
    expect([...rows].sort()).toEqual([...inTrays].sort());
  });

  test('on the wall tells crops by numbers whose capitals are higher than 5 mm, and weeks by 4 mm', async () => {
    const plan = seasonPlan('cape-school');
    const [page] = await pagesOf(kindOf('turnover-calendar-A3'), seasonInput(plan));
    const sizes_mm = (text: string): readonly number[] =>
      wordsOf(page ?? emptyPage)
        .filter((one) => one.text.trim() === text && one.weight === 'heavy')
        .map(({ size_pt }) => size_pt * mmPerPoint);
    // Figures of this typeface are 0.66 times as high as it is.
    for (const number of ['1', '2', '3']) expect(0.66 * Math.max(...sizes_mm(number))).toBeGreaterThan(5);
    expect(0.66 * Math.max(...sizes_mm('20'))).toBeGreaterThan(3.9);
  });

  test('names what must be said of a crop on every page, and who is away', async () => {
    const pages = await pagesOf(kindOf('turnover-calendar'), seasonInput(seasonPlan('cape-school')));
    expect(pages.length).toBeGreaterThan(1);
    for (const page of pages) {
      expect(textOf(page)).toContain('Spring onion: roots and bulbs that lie in the media');
      expect(textOf(page)).toContain('Autumn holidays, Winter holidays, Spring holidays');
    }
  });
});

describe('the map of a bed', () => {
  test('holds each place once, from the first to the last, in every week of every season', () => {
    for (const id of ['cape-school', 'north-yard', 'warm-terrace']) {
      const plan = seasonPlan(id);
      for (const [bed, { places }] of plan.task.beds.entries()) {
        const rows = turnoverRows(plan).flatMap((row) =>
          row.kind === 'places' && row.bed === bed ? [row] : [],
        );
        for (const { index } of plan.calendar) {
          const parts = mapParts(rows, places, index, new Set([index]));
          const numbers = parts.flatMap(({ first, last }) =>
            Array.from({ length: last - first + 1 }, (_, at) => first + at),
          );
          expect(numbers).toEqual(Array.from({ length: places }, (_, at) => at + 1));
          const standing = parts
            .filter(({ state }) => state === 'grows' || state === 'pick')
            .reduce((sum, { first, last }) => sum + last - first + 1, 0);
          const planned = plan.sowings
            .filter((one) => one.bed === bed)
            .flatMap(({ strips }) => strips)
            .filter(({ from_week, to_week }) => from_week <= index && index <= to_week)
            .reduce((sum, { first, last }) => sum + last - first + 1, 0);
          // In its last week a strip may already be followed by the next one in the same place.
          expect(standing).toBeLessThanOrEqual(planned);
          expect(standing).toBeGreaterThan(0.5 * planned - 1e-9);
        }
      }
    }
  });
});

describe('sowing tags', () => {
  test('are as many as the sowings, each with its caution where its crop has one', async () => {
    const plan = seasonPlan('warm-terrace');
    const [how, ...sheets] = await pagesOf(kindOf('sowing-tags'), seasonInput(plan));
    const tags = sheets.flatMap((page) => page.nodes.filter(({ role }) => role === 'Sect'));
    expect(tags).toHaveLength(plan.sowings.length);
    const text = sheets.map(textOf).join(' ');
    const sown = plan.sowings.filter(({ crop }) => crop === 'kangkong').length;
    expect(text.split('Water spinach: forbidden or bound to a permit')).toHaveLength(sown + 1);
    expect(sown).toBeGreaterThan(0);
    expect(how && textOf(how)).toContain('3 across and 6 down');
  });

  test('lie on the labels that the keeper measured, after the used ones', async () => {
    const labels = {
      ...{ columns: 2, rows: 7, labelWidth_mm: 99, labelHeight_mm: 38.1, left_mm: 4.7, top_mm: 15.2 },
      ...{ across_mm: 101.6, down_mm: 38.1, used: 3 },
    };
    const input = { ...seasonInput(seasonPlan('warm-terrace')), labels };
    const [, first] = await pagesOf(kindOf('sowing-tags'), input);
    const boxes = first?.nodes.filter(({ role }) => role === 'Sect') ?? [];
    expect(boxes).toHaveLength(11);
    expect(boxes[0] && boxes[0].box.x_pt * mmPerPoint).toBeCloseTo(4.7 + 101.6 + 3, 1);
    expect(boxes[0] && boxes[0].box.y_pt * mmPerPoint).toBeCloseTo(15.2 + 38.1 + 3, 1);
    expect(first && overflows(first)).toEqual([]);
  });

  test('tell a week and how far it may be off where a day would promise too much', async () => {
    const plan = seasonPlan('warm-terrace');
    const wide = plan.sowings.filter(({ first }) => first.spreadWeeks !== null);
    expect(wide.length).toBeGreaterThan(0);
    const text = (await wordsOn('sowing-tags', plan)).replace(/\u00a0/g, ' ');
    expect(text.match(/week of \d+ \w+ \d+, plus or minus \d+ weeks?/g)).toHaveLength(wide.length);
  });
});

describe('the expected harvest', () => {
  test('tells every first picking by its week where a day would promise too much, and the top of each graph', async () => {
    const plan = seasonPlan('cape-school');
    const text = (await wordsOn('expected-harvest', plan)).replace(/\u00a0/g, ' ');
    const wide = plan.sowings.filter(({ first }) => first.spreadWeeks !== null);
    expect(wide.length).toBeGreaterThan(0);
    expect(text.match(/week of \d+ \w+ \d+, plus or minus \d+ weeks?/g)).toHaveLength(wide.length);
    expect(text.match(/top: [\d.]+ /g)?.length).toBe(plan.crops.length);
    for (const { totals, wanted, picked } of plan.crops)
      expect(totals.most).toBe(Math.max(...wanted, ...picked));
  });
});

describe('what a grower would believe', () => {
  test('nothing is in the beds of the far north in winter', () => {
    const { calendar, planted } = seasonPlan('north-yard');
    const winter = calendar
      .filter(({ mean_degC }) => mean_degC < 2)
      .map(({ index }) => planted[index]?.places);
    expect(winter.length).toBeGreaterThan(10);
    expect([...new Set(winter)]).toEqual([0]);
  });

  test('no lettuce is promised in the hot tropics, and the season is named as the reason', async () => {
    const plan = seasonPlan('warm-terrace');
    expect(plan.sowings.filter(({ crop }) => crop === 'lettuceLeaf')).toEqual([]);
    const why = plan.short.filter(({ crop }) => crop === 'lettuceLeaf').map((one) => one.why);
    expect([...new Set(why)]).toEqual(['season']);
    expect(await wordsOn('expected-harvest', plan)).toContain(
      'Leaf lettuce: in 52 weeks it is too cold, too hot',
    );
  });
});

describe('at the edges', () => {
  test('names as long as a paragraph, in another script, are shortened and lie on nothing', async () => {
    const of = content.turnovers.find(({ id }) => id === 'warm-terrace');
    if (of === undefined) throw new Error('no season');
    const long = 'Сад за старой мельницей '.repeat(20).slice(0, 400);
    const beds = of.task.beds.map((bed) => ({ ...bed, name: long }));
    const plan = planOf({ ...of.task, weeks: 14, name: long, placeName: long, beds });
    for (const kind of turnoverSheets.filter((one) => one.fits(seasonInput(plan)) === 'yes'))
      for (const page of await pagesOf(kind, seasonInput(plan))) expect(overflows(page), kind.id).toEqual([]);
  }, 120_000);

  test('one place, a season of three weeks, and nothing that grows, each have their sheets or none', async () => {
    const of = content.turnovers.find(({ id }) => id === 'north-yard');
    if (of === undefined) throw new Error('no season');
    const beds = [{ name: 'Pot', mode: 'siphon' as const, places: 1, area_m2: 0.04 }];
    for (const change of [{ beds }, { weeks: 3 }]) {
      const plan = planOf({ ...of.task, ...change });
      for (const kind of turnoverSheets.filter((one) => one.fits(seasonInput(plan)) === 'yes'))
        for (const page of await pagesOf(kind, seasonInput(plan)))
          expect(overflows(page), kind.id).toEqual([]);
    }
  }, 120_000);
});
