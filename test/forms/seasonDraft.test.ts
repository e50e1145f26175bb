/** A season as a file, as typed text and back: nothing is lost on the way, in either units. */
import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { type Fields, type Place, textAt, withTree } from '../../src/forms/draft.ts';
import { inUnits } from '../../src/forms/draftOf.ts';
import {
  changeOf,
  draftOf,
  failedIn,
  rawOf,
  wishedBy,
  withChangeOf,
  withFailed,
  withOthers,
  withoutChange,
  withWishes,
} from '../../src/forms/season/seasonDraft.ts';
import { type TurnoverFile, turnoverFile } from '../../src/schemas/turnoverFile.ts';
import { toTurnover } from '../../src/schemas/toTurnover.ts';
import { content } from '../turnover/seasons.ts';

const facts = { crops: content.crops, climates: content.climates };

function read(raw: unknown): Extract<ReturnType<typeof toTurnover>, { task: unknown }> {
  const result = toTurnover(raw, facts);
  if ('problems' in result) throw new Error(JSON.stringify(result.problems));
  return result;
}

const school = schoolOf(content.turnovers);

function schoolOf(all: typeof content.turnovers): TurnoverFile {
  const found = all.find(({ id }) => id === 'cape-school');
  if (found === undefined) throw new Error('no such season');
  return found.raw;
}

/** Some text typed at a place. */
function typed<D extends Fields>(draft: D, place: Place, text: string): D {
  return withTree(draft, place, { text });
}

const day = fc
  .record({ month: fc.integer({ min: 1, max: 12 }), day: fc.integer({ min: 1, max: 28 }) })
  .map((of) => `2031-${String(of.month).padStart(2, '0')}-${String(of.day).padStart(2, '0')}`);
const name = fc.stringMatching(/^[A-Za-zäß][A-Za-z ]{0,12}[a-z]$/);
const amount = fc.double({ min: 0, max: 500, noNaN: true });
const degC = (max: number) => fc.double({ min: -40, max, noNaN: true });
const months = fc.array(degC(45), { minLength: 12, maxLength: 12 });
const maybe = <T>(of: fc.Arbitrary<T>) => fc.option(of, { nil: undefined });

const pulse = <K extends string>(key: K) =>
  fc.record({ from: day, to: maybe(day), [key]: fc.double({ min: 0, max: 90, noNaN: true }) });

const wish = fc.record({
  crop: fc.constantFrom('lettuceHead', 'rocket', 'basil'),
  perWeek: amount,
  unit: fc.constantFrom('head', 'bunch', 'kg'),
  from: maybe(day),
  to: maybe(day),
  pulses: fc.array(pulse('amount'), { maxLength: 3 }),
});

const length_mm = fc.double({ min: 30, max: 190, noNaN: true });
const labels = fc.record({
  ...{ columns: fc.integer({ min: 1, max: 20 }), rows: fc.integer({ min: 1, max: 40 }) },
  ...{ labelWidth_mm: length_mm, labelHeight_mm: length_mm, left_mm: length_mm, top_mm: length_mm },
  ...{ across_mm: length_mm, down_mm: length_mm, used: fc.integer({ min: 0, max: 799 }) },
});

/** Sound field by field; whether the fields fit each other is another matter. */
const files: fc.Arbitrary<TurnoverFile> = fc
  .record({
    name,
    sheet: fc.record({ paper: fc.constantFrom('A4', 'Letter'), units: fc.constantFrom('metric', 'us') }),
    climate: fc.constant('deBilt'),
    own: maybe(
      fc.record({
        ...{ name, mean_degC: months, night_degC: months },
        latitude: fc.double({ min: -90, max: 90, noNaN: true }),
      }),
    ),
    water_degC: maybe(months),
    nursery: fc.record(
      { even_degC: fc.double({ min: 2, max: 45, noNaN: true }), cells: fc.integer({ min: 1, max: 900 }) },
      { requiredKeys: [] },
    ),
    shortDays: fc.constantFrom('slow', 'ignored'),
    season: fc.record({ from: day, to: day }),
    workday: fc.constantFrom('monday', 'saturday'),
    place_mm: fc.double({ min: 50, max: 1000, noNaN: true }),
    beds: fc.array(
      fc.record({
        ...{ name, mode: fc.constantFrom('siphon', 'inTank') },
        length_mm: fc.double({ min: 10, max: 20_000, noNaN: true }),
        width_mm: fc.double({ min: 10, max: 20_000, noNaN: true }),
      }),
      { minLength: 1, maxLength: 3 },
    ),
    rest_d: fc.integer({ min: 0, max: 60 }),
    rotation: fc.constantFrom('wanted', 'ignored'),
    wishes: fc.array(wish, { minLength: 1, maxLength: 4 }),
    pulses: fc.array(pulse('times'), { maxLength: 3 }),
    holidays: fc.array(fc.record({ name, from: day, to: day }), { maxLength: 2 }),
    feed_g_d: maybe(fc.double({ min: 0, max: 900, noNaN: true })),
    labels: maybe(labels),
  })
  .map((drawn) => turnoverFile.parse({ id: 'drawn', ...drawn }));

/** What the form may leave out: the id, and a climate beside own months. */
function known(file: TurnoverFile): unknown {
  const { id: _, climate, ...rest } = file;
  return JSON.parse(JSON.stringify(file.own === undefined ? { climate, ...rest } : rest));
}

describe('a season in the form', () => {
  test('comes back as the file that it was, whatever it holds', () => {
    fc.assert(
      fc.property(files, (file) => {
        expect(known(turnoverFile.parse(rawOf(draftOf(file))))).toEqual(known(file));
      }),
      { numRuns: 200 },
    );
  });

  test('is the same in the other units, and there and back', () => {
    fc.assert(
      fc.property(files, (file) => {
        const other = file.sheet.units === 'us' ? ('metric' as const) : ('us' as const);
        const turned = inUnits(draftOf(file), other);
        const sheet = { ...file.sheet, units: other };
        expect(known(turnoverFile.parse(rawOf(turned)))).toEqual(known({ ...file, sheet }));
        expect(rawOf(inUnits(turned, file.sheet.units))).toEqual(rawOf(draftOf(file)));
      }),
      { numRuns: 200 },
    );
  });

  test('shows its months in the units of the form', () => {
    const months = Array.from({ length: 12 }, (_, month) => month * 2.5);
    const us = { ...school, sheet: { paper: 'Letter', units: 'us' }, water_degC: months } as const;
    expect(textAt(draftOf(us), ['water_degC', 4])).toBe('50');
    expect(textAt(inUnits(draftOf(us), 'metric'), ['water_degC', 4])).toBe('10');
    expect(textAt(inUnits(draftOf({ ...us, sheet: school.sheet }), 'us'), ['water_degC', 11])).toBe('81.5');
  });

  test.each(content.turnovers.map(({ id, raw }) => [id, raw] as const))(
    'plans %s as its file does',
    (_, raw) => {
      const { task } = read(raw);
      expect({ ...read(rawOf(draftOf(raw))).task, id: task.id }).toEqual(task);
    },
  );

  test('hangs on the wishes and not on the paper', () => {
    const draft = draftOf(school);
    expect(wishedBy(typed(draft, ['sheet', 'paper'], 'Letter'))).toBe(wishedBy(draft));
    expect(wishedBy(inUnits(draft, 'us'))).toBe(wishedBy(draft));
    expect(wishedBy(typed(draft, ['wishes', 0, 'perWeek'], '7'))).not.toBe(wishedBy(draft));
  });
});

describe('what is typed', () => {
  const draft = draftOf(school);
  const places = (of: typeof draft): readonly string[] => {
    const result = toTurnover(rawOf(of), facts);
    return 'problems' in result ? result.problems.map(({ place }) => place.join('.')) : [];
  };

  test('stays as it was typed where it makes no sense, and is told at its field, all at once', () => {
    const wrong = typed(
      typed(typed(draft, ['wishes', 0, 'pulses', 0, 'amount'], 'lots'), ['pulses', 0, 'times'], '?'),
      ['pulses', 0, 'from'],
      school.season.from,
    );
    expect(textAt(wrong, ['wishes', 0, 'pulses', 0, 'amount'])).toBe('lots');
    expect([...places(wrong)].sort()).toEqual([
      'pulses.0.times',
      'wishes.0.pulses.0.amount',
      'wishes.0.pulses.0.from',
    ]);
  });

  test('may be a month in the middle first: the eleven others are still to fill in', () => {
    const march = typed(draft, ['water_degC', 2], '14');
    expect(places(march)).toHaveLength(11);
    expect(places(march)).not.toContain('water_degC.2');
    expect(places(typed(march, ['water_degC', 2], ''))).toEqual([]);
  });

  test('of own months stays while they are left out', () => {
    const { climate } = school;
    const own = typed({ ...draft, own: 'there' as const }, ['own', 'name'], 'Glasshouse');
    expect(rawOf(own)).toMatchObject({ own: { name: 'Glasshouse' } });
    expect(rawOf(own)).not.toHaveProperty('climate');
    const without = { ...own, own: 'leftOut' as const };
    expect(rawOf(without)).not.toHaveProperty('own');
    expect(rawOf(without)).toHaveProperty('climate', climate);
    expect(textAt(without, ['own', 'name'])).toBe('Glasshouse');
  });

  test('in rows at the end that hold nothing yet does not count, a row before them does', () => {
    const rows = withTree(draft, ['holidays'], [{}, { name: { text: 'Fair' } }, {}, { from: { text: ' ' } }]);
    expect(rawOf(rows)).toMatchObject({ holidays: [{}, { name: 'Fair' }] });
    expect(rawOf(withTree(draft, ['holidays'], [{}]))).not.toHaveProperty('holidays');
  });
});

describe('what came differently', () => {
  const draft = draftOf(school);

  test('is no part of the season', () => {
    const ticked = typed(withFailed(draft, 'rocket-2031W10-1', 'yes'), ['again', 'from'], '2031-05-01');
    expect(rawOf(ticked)).toEqual(rawOf(draft));
  });

  test('counts from today where no day is typed, and holds what is ticked and missed', () => {
    expect(changeOf(draft, '2031-05-04', [])).toEqual({ from: '2031-05-04', failed: [] });
    const two = withFailed(withFailed(draft, 'one', 'yes'), 'two', 'yes');
    const more = typed(
      typed(two, ['again', 'from'], '2031-05-01'),
      ['again', 'missed', 0, 'on'],
      '2031-04-20',
    );
    const told = { from: '2031-05-01', missed: [{ on: '2031-04-20' }] };
    expect(changeOf(withFailed(more, 'one', 'no'), '2031-05-04', ['one', 'two'])).toEqual({
      ...{ ...told, failed: ['two'] },
    });
    // What was ticked in another plan and is not in this one does not count.
    expect(changeOf(more, '2031-05-04', ['one'])).toEqual({ ...told, failed: ['one'] });
  });

  test('holds sowings that failed in part; empty rows at the end do not count', () => {
    const rows = [{ sowing: { text: 'one' }, plants: { text: ' 8 ' }, empty: { text: '' } }, {}];
    const part = withTree(draft, ['again', 'partly'], rows);
    expect(changeOf(part, '2031-05-04', [])).toMatchObject({ partly: [{ sowing: 'one', plants: 8 }] });
    const typo = typed(part, ['again', 'partly', 0, 'plants'], 'eight');
    expect(changeOf(typo, '2031-05-04', [])).toMatchObject({ partly: [{ sowing: 'one', plants: 'eight' }] });
  });

  test('holds other wishes, which begin as those of now; unticked, they and their day do not count', () => {
    const others = typed(withOthers(draft, 'yes'), ['again', 'wishesFrom'], '2031-07-01');
    const more = typed(others, ['again', 'wishes', 0, 'perWeek'], '7');
    const { wishes, wishesFrom } = changeOf(more, '2031-05-04', []);
    expect(wishesFrom).toBe('2031-07-01');
    const [first, ...rest] = rawOf(draft)['wishes'] as readonly object[];
    expect(wishes).toEqual([{ ...first, perWeek: 7 }, ...rest]);
    expect(rawOf(more)).toEqual(rawOf(draft));
    expect(changeOf(withOthers(more, 'no'), '2031-05-04', [])).toEqual({ from: '2031-05-04', failed: [] });
    // Once it is planned, the form holds the wishes of the whole season; where it failed after all, those of before.
    const joined = withWishes(withoutChange(more), school.wishes.slice(0, 1));
    expect(rawOf(joined)['wishes']).toHaveLength(1);
    expect(rawOf(withChangeOf(joined, more))).toEqual(rawOf(draft));
  });

  test('is cleared once it is planned, and comes back where that failed', () => {
    const ticked = withFailed(draft, 'one', 'yes');
    const cleared = typed(withoutChange(ticked), ['name'], 'Typed meanwhile');
    expect(failedIn(cleared)).toEqual([]);
    const back = withChangeOf(cleared, ticked);
    expect(failedIn(back)).toEqual(['one']);
    expect(textAt(back, ['name'])).toBe('Typed meanwhile');
  });
});
