/** What stands on the plans that people take home, read off their pages. */
import { describe, expect, test } from 'vitest';
import { planOf } from '../../src/core/plan/planOf.ts';
import { levels } from '../../src/core/workshop/exercise.ts';
import { handoutTasks } from '../../src/sheets/handouts/handoutTasks.ts';
import { workshopStack } from '../../src/sheets/handouts/workshopStack.ts';
import { deskFor, printed, systemIds } from './handoutDesk.ts';
import { faultsOf, textOf } from './laidOut.ts';

const owners = systemIds.map((id) => `Owner of ${id}`);

async function planOfCell(cell: string, more: object = {}): Promise<string> {
  const desk = deskFor(['Ada'], more, [cell]);
  const pages = (await desk.plans(desk.handoutOf(0))).map(printed);
  expect(pages.flatMap(faultsOf)).toEqual([]);
  expect(pages).toHaveLength(1);
  return pages.map(textOf).join(' ');
}

test('every system of the handbook has its plan on one page, with each of its beds', async () => {
  const desk = deskFor(owners, { sheet: { paper: 'Letter', units: 'us' } }, systemIds);
  for (const at of owners.keys()) {
    const input = desk.handoutOf(at);
    const pages = (await desk.plans(input)).map(printed);
    expect(pages.flatMap(faultsOf), owners[at]).toEqual([]);
    const text = pages.map(textOf).join(' ');
    const { length } = input.system.beds;
    for (let bed = 1; length > 1 && bed <= length; bed += 1) {
      expect(text, owners[at]).toMatch(
        new RegExp(`Bed ${bed} [\\d.]+ gal \\([\\d.]+ L\\) [\\d.]+( to [\\d.]+)? lb \\d+ plants`),
      );
      expect(text, owners[at]).toContain(`bed ${bed}: wet media`);
    }
  }
}, 60_000);

test('a plan without fish, or with too little water under its beds, says so', async () => {
  const small = await planOfCell('tank box 100 x 60 x 55 cm + bed box 100 x 60 x 30 cm');
  expect(small).toContain('Fish to plan for 0 fish');
  expect(small).toContain('Table-size fish need 500 L or more');
  expect(await planOfCell('yard-tub')).toContain('Ask the supplier how many');
  expect(await planOfCell('drum-corner')).toMatch(/Under these flood beds it should hold \d+ L or more/);
  expect(await planOfCell('drum-corner')).toContain('over the rim');
  expect(await planOfCell('hollow-lane-ibc')).not.toContain('should hold');
});

describe('a plan of many beds', () => {
  const small = 'tank box 200 x 200 x 100 cm + bed box 40 x 40 x 25 cm';
  const longName = Array.from({ length: 50 }, (_, at) => `Iseult${at}`)
    .join(' ')
    .slice(0, 500);

  function deskOfBeds(count: number, names: readonly string[], more: object = {}) {
    const desk = deskFor(names, more, [small]);
    const handoutOf: typeof desk.handoutOf = (at) => {
      const own = desk.handoutOf(at);
      const [bed] = own.system.beds;
      if (bed === undefined) throw new Error('a system without a bed');
      const system = { ...own.system, beds: Array.from({ length: count }, () => bed) };
      return { ...own, system, wholePlan: () => planOf(system) };
    };
    return { ...desk, handoutOf };
  }

  async function planOfBeds(count: number, name = 'Ada', more: object = {}) {
    const desk = deskOfBeds(count, [name], more);
    const pages = (await desk.plans(desk.handoutOf(0))).map(printed);
    expect(pages.flatMap(faultsOf)).toEqual([]);
    return pages;
  }

  test.each([
    [6, 1],
    [7, 2],
    [25, 2],
    [26, 3],
    [50, 3],
  ])('lists all %i of them, and has room for a drawing', async (count, length) => {
    const us = { sheet: { paper: 'Letter', units: 'us' } };
    for (const pages of [await planOfBeds(count), await planOfBeds(count, longName, us)]) {
      expect(pages).toHaveLength(length);
      const text = pages.map(textOf).join(' ');
      const listed = [...text.matchAll(/Bed (\d+) [\d.]+ (?:gal|L)/g)].map(([, bed]) => Number(bed));
      expect(listed).toEqual(Array.from({ length: count }, (_, at) => at + 1));
      expect(text.includes('The beds are listed on a page of their own.')).toBe(length > 1);
      for (const page of pages) expect(textOf(page)).toContain('PLAN: not measured, no fish yet');
    }
    const [first] = await planOfBeds(count);
    expect(first?.nodes.filter(({ role }) => role === 'Figure')).toHaveLength(1);
  });

  test('has the next one begin on a front side, where the contents say', async () => {
    const desk = deskOfBeds(40, ['Ada', 'Bo', 'Cleo'], { sheets: ['contents', 'plan'] });
    const starts: number[] = [];
    let [text, count] = ['', 0];
    for await (const { pages } of (await workshopStack(desk, 'everything')).print.sets) {
      if (count === 0) text = pages.map(printed).map(textOf).join(' ');
      starts.push(count + 1);
      count += pages.length;
    }
    // Two pages of contents, then three pages and an empty back for each.
    expect(starts).toEqual([1, 3, 7, 11]);
    expect([...text.matchAll(/own containers (\d+)/g)].map(([, page]) => Number(page))).toEqual([3, 7, 11]);
  });
});

test('whoever reads gallons finds the litres of the worksheet beside them', async () => {
  const us = { sheet: { paper: 'Letter', units: 'us' } };
  const cell = 'tank box 120 x 100 x 100 cm + bed box 100 x 60 x 30 cm';
  expect(await planOfCell(cell, us)).toContain('Wet media 31 gal (120 L)');
  expect(await planOfCell(cell)).toContain('Wet media 120 L');
});

test.each(levels)('a worksheet of two round containers is one page: %s', async (level) => {
  const desk = deskFor(['Ada', 'Bo'], { level }, [
    'tank drum 58 x 88 cm + bed lying drum 58 x 88 x 29 cm',
    '',
  ]);
  for (const at of [0, 1])
    for (const view of ['blank', 'key'] as const)
      expect(await desk.handouts(desk.handoutOf(at), view)).toHaveLength(1);
});

test('nothing on a worksheet is told more closely than it is known', async () => {
  const named = ['hollow-lane-ibc', 'old-tank-as-sump', 'kitchen-frame', 'drum-corner'];
  const desk = deskFor(named, { level: 'adults' }, named);
  const own = deskFor(['Ada'], {}, ['tank drum 58 x 88 cm + bed lying drum 58 x 88 x 29 cm']);
  const texts = [...named.map((_, at) => desk.handoutOf(at)), own.handoutOf(0)].map((input) =>
    handoutTasks(input).flatMap(({ lines }) =>
      lines.flatMap(({ groups, result }) => [...groups.flat(), result]),
    ),
  );
  for (const part of texts.flat()) {
    if (part.kind !== 'number') continue;
    const digits = part.text.replace(/\D/g, '').replace(/^0+|0+$/g, '');
    expect(digits.length, part.text).toBeLessThanOrEqual(/L\/h/.test(part.text) ? 3 : 4);
  }
});
