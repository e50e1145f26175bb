import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import type { Figure } from '../../src/core/plan/figure.ts';
import { planOf } from '../../src/core/plan/planOf.ts';
import { type Level, levels } from '../../src/core/workshop/exercise.ts';
import { readSheetNumber } from '../../src/core/workshop/sheetNumber.ts';
import { overflows } from '../../src/paper/overflows.ts';
import type { Sheet } from '../../src/paper/layOut.ts';
import type { Page } from '../../src/paper/page.ts';
import type { Filled } from '../../src/paper/stencil.ts';
import { tagPage } from '../../src/paper/tags.ts';
import { handoutKinds } from '../../src/sheets/handouts/handoutKinds.ts';
import { handoutDesk } from '../../src/sheets/handouts/handoutPages.ts';
import { givenContainers, handoutShape, handoutTasks } from '../../src/sheets/handouts/handoutTasks.ts';
import { handoutWorksheet } from '../../src/sheets/handouts/handoutWorksheet.ts';
import { workshopStack } from '../../src/sheets/handouts/workshopStack.ts';
import { figureValue } from '../../src/wording/figure.ts';
import { lint } from '../pdfLint/lint.ts';
import { readPdf } from '../paper/readPdf.ts';
import { scriptNames } from '../paper/scriptNames.ts';
import { cells, deskFor, isPrinted, printed, printedResults, printedSlots } from './handoutDesk.ts';
import { faultsOf, press, words } from './laidOut.ts';

async function allPages(kind: 'everything' | 'answers', desk: ReturnType<typeof deskFor>) {
  const pages: Page[] = [];
  const { print } = await workshopStack(desk, kind);
  const starts: number[] = [];
  for await (const set of print.sets) {
    starts.push(pages.length);
    pages.push(...set.pages.map(printed));
  }
  return { pages, starts };
}

/** Containers of every shape, and systems with several beds, baskets, dips, bathtubs and fish of their own. */
const several = [...cells, 'hollow-lane-ibc-two-beds', 'basket-tub', 'two-bathtubs', 'kitchen-frame'];

/** One class for each level, so that its sheets are laid out once. */
const classes = new Map(
  levels.map((level) => [
    level,
    deskFor(
      several.map((_, at) => `Person ${at}`),
      { level },
      several,
    ),
  ]),
);

function classOf(level: Level): ReturnType<typeof deskFor> {
  const desk = classes.get(level);
  if (desk === undefined) throw new Error(level);
  return desk;
}

const names = [
  ...scriptNames.map(({ name }) => name),
  'Ada',
  'Somebody with a name that is as long as a whole line of the sheet, and a little longer than that, to be sure',
];

describe('every handout', () => {
  test.each(levels)(
    'keeps its words apart and in their places: %s',
    async (level) => {
      for (const sheet of [{ paper: 'A4' }, { paper: 'Letter', units: 'us' }]) {
        const desk = deskFor(names, { level, sheet });
        for (const kind of ['everything', 'answers'] as const) {
          const { pages, starts } = await allPages(kind, desk);
          expect(pages.length).toBeGreaterThan(names.length);
          for (const [at, page] of pages.entries()) {
            const where = `${kind} ${level}, page ${at + 1}`;
            expect(faultsOf(page), where).toEqual([]);
            const cut = overflows(page).filter(({ node }) => page.nodes[node]?.slot === null);
            expect(cut, where).toEqual([]);
            expect(tagPage(page, 'printed').faults, where).toEqual([]);
          }
          // Every set begins on a front side.
          expect(starts.filter((start) => start % 2 !== 0)).toEqual([]);
        }
      }
    },
    120_000,
  );

  test('has nothing that a machine finds fault with', async () => {
    const desk = deskFor(names);
    for (const kind of ['everything', 'answers'] as const) {
      const parts: Uint8Array[] = [];
      for await (const part of press.toStackPdf((await workshopStack(desk, kind)).print)) parts.push(part);
      expect((await lint(new Uint8Array(Buffer.concat(parts)))).findings, kind).toEqual([]);
    }
  }, 120_000);
});

describe('a layout that many share', () => {
  const own = (pages: readonly Filled[]) =>
    pages.map(({ stencil, items }) => ({ shared: stencil.page.items, items }));

  test('is the same whoever is printed first, and where it was kept from an earlier print', async () => {
    const kept = new Map<string, readonly Page[]>();
    const shelf = {
      kept: async (shape: string) => structuredClone(kept.get(shape) ?? null),
      keep: async (shape: string, pages: readonly Page[]) => void kept.set(shape, pages),
    };
    const inputs = names.map((_, at) => deskFor(names).handoutOf(at));
    for (const view of ['blank', 'key'] as const) {
      const [forwards, backwards, again] = [
        handoutDesk(press, shelf),
        handoutDesk(press),
        handoutDesk(press, shelf),
      ];
      const first = [];
      for (const input of inputs) first.push(own(await forwards(input, view)));
      const last = [];
      for (const input of [...inputs].reverse()) last.unshift(own(await backwards(input, view)));
      expect(last).toEqual(first);
      const later = [];
      for (const input of inputs) later.push(own(await again(input, view)));
      expect(later).toEqual(first);
    }
    expect(kept.size).toBeGreaterThan(cells.length);
  }, 120_000);
});

test('people who are asked for all at once share as many layouts as one after the other', async () => {
  const desk = deskFor(
    Array.from({ length: 12 }, (_, at) => `Person ${at}`),
    {},
    [''],
  );
  let laidOut = 0;
  const counting = {
    ...press,
    layOutAnew: (sheet: Sheet) => {
      laidOut += 1;
      return press.layOutAnew(sheet);
    },
  };
  const slowly = handoutDesk(counting);
  for (const at of desk.people.keys()) await slowly(desk.handoutOf(at), 'blank');
  const needed = laidOut;
  expect(needed).toBeLessThan(12);
  const handouts = handoutDesk(counting);
  await Promise.all(desk.people.map((_, at) => handouts(desk.handoutOf(at), 'blank')));
  expect(laidOut).toBe(2 * needed);
});

describe('the kinds of worksheets', () => {
  test('read the numbers of all that have the same tasks as those tasks have them', () => {
    let [kinds, sheets] = [new Set<string>(), 0];
    for (const level of levels) {
      const kindOf = handoutKinds();
      const everybody = Array.from({ length: 150 }, (_, at) => `Person ${at}`);
      const desk = deskFor(everybody, { level }, ['', ...several]);
      for (const at of everybody.keys()) {
        const input = desk.handoutOf(at);
        const { shapes, values } = kindOf(input);
        const { name, team } = input;
        const { number = '', typed, ...numbers } = values('key');
        expect({ name, team, ...numbers }).toEqual({ name, team, ...textsOf(input, 'key') });
        expect([number === '', typed]).toEqual([false, input.typed ?? undefined]);
        expect(Object.keys(values('blank'))).toEqual(
          expect.arrayContaining(Object.keys(textsOf(input, 'blank'))),
        );
        for (const slot of openSlots(input)) expect(values('blank')[slot]).toBeUndefined();
        expect(shapes).toEqual({ blank: `blank ${handoutShape(input)}`, key: `key ${handoutShape(input)}` });
        kinds = kinds.add(shapes.key);
        sheets += 1;
      }
    }
    expect(kinds.size).toBeGreaterThan(3 * cells.length);
    expect(kinds.size).toBeLessThan(sheets / 5);
  });
});

describe('a plan to take home', () => {
  const slotsOf = (page: Page): ReadonlyMap<string, string> =>
    new Map(page.nodes.flatMap(({ slot }, node) => (slot === null ? [] : [[slot, wordsAt(page, node)]])));

  test('has the figures of the plan and a drawing of its own, on a page that all others share', async () => {
    const { catalogue } = words;
    const stencils = new Set<unknown>();
    for (const level of levels) {
      const desk = classOf(level);
      for (const at of several.keys()) {
        const [filled, ...more] = await desk.plans(desk.handoutOf(at));
        if (filled === undefined) throw new Error(`${several[at]} has no plan`);
        stencils.add(filled.stencil);
        const page = printed(filled);
        expect([more, faultsOf(page), overflows(page)], several[at]).toEqual([[], [], []]);
        const { figures } = planOf(desk.people[at]?.system as never);
        const slots = [...slotsOf(page)].filter(([slot]) => slot.startsWith('plan-'));
        expect(slots.length).toBeGreaterThan(5);
        for (const [slot, text] of slots) {
          const figure = figures[slot.slice('plan-'.length)] as Figure;
          expect(text, `${slot} of ${several[at]}`).toBe(figureValue(figure, catalogue, 'metric'));
        }
        expect(slotsOf(page).get('drawing')).toContain(
          figureValue(figures['tankFull_L'] as Figure, catalogue, 'metric'),
        );
      }
    }
    // Only who has other figures has another page.
    expect(stencils.size).toBeLessThan(2 * several.length);
  }, 120_000);

  test('has room for every name, and loses nothing of it', async () => {
    const long = (count: number): string =>
      Array.from({ length: count }, (_, at) => `Somebody${at}`).join(' ');
    const some = [
      ...names,
      long(10),
      long(16),
      long(25),
      long(40),
      '青石巷养鱼种菜一号池 '.repeat(15).trim(),
    ];
    for (const sheet of [{ paper: 'A4' }, { paper: 'Letter', units: 'us' }]) {
      const desk = deskFor(some, { sheet });
      for (const [at, name] of some.entries()) {
        const [page] = (await desk.plans(desk.handoutOf(at))).map(printed);
        if (page === undefined) throw new Error(name);
        expect([faultsOf(page), overflows(page)], name).toEqual([[], []]);
        const plain = (text: string): string => [...text.replace(/\s/g, '')].sort().join('');
        expect(plain(slotsOf(page).get('name') ?? '')).toBe(plain(name));
      }
    }
  }, 120_000);
});

function wordsAt({ items }: Page, node: number): string {
  return items
    .flatMap((item) => (item.kind === 'words' && item.node === node ? [item.text] : []))
    .join('')
    .trim();
}

describe('an answer key', () => {
  test('has the numbers that the plan of the same containers has, every one of them', async () => {
    let compared = 0;
    for (const level of levels) {
      const everybody = Array.from({ length: 60 }, (_, at) => `Person ${at}`);
      const desk = deskFor(everybody, { level }, ['', ...cells]);
      for (const [at, person] of desk.people.entries()) {
        const { figures } = planOf(person.system);
        for (const { key, step, text } of await printedResults(desk, at)) {
          const figure = figures[key];
          const exact =
            (step === figure?.steps.length ? figure.value : figure?.steps[step - 1]?.gives.value) ??
            Number.NaN;
          expect(isPrinted(text, exact, key), `${key} of ${person.name}: ${text}`).toBe(true);
          compared += 1;
        }
      }
    }
    expect(compared).toBeGreaterThan(1_200);
  }, 120_000);

  test('stands in the order of the worksheets, with the same numbers on both', async () => {
    const desk = deskFor(names);
    const text = async (kind: 'everything' | 'answers') => {
      const parts: Uint8Array[] = [];
      for await (const part of press.toStackPdf((await workshopStack(desk, kind)).print)) parts.push(part);
      const { pages } = await readPdf(new Uint8Array(Buffer.concat(parts)));
      return pages.flatMap((page) =>
        /Worksheet|Answers/.test(page.text) ? (page.text.match(/\d-\d{4}-\d{4}-\d\d/) ?? []) : [],
      );
    };
    const onSheets = await text('everything');
    expect(onSheets.length).toBeGreaterThan(2);
    expect(await text('answers')).toEqual(onSheets);
    for (const number of onSheets)
      expect(readSheetNumber(number)).toMatchObject({ level: 'secondary', seed: 417 });
  }, 60_000);
});

type Input = ReturnType<ReturnType<typeof deskFor>['handoutOf']>;

function numbersOf(input: Input) {
  return handoutTasks(input).flatMap(({ lines }) =>
    lines.flatMap(({ groups, result }) => [
      ...groups.flat().flatMap((part) => (part.kind === 'number' ? [part] : [])),
      result,
    ]),
  );
}

function openSlots(input: Input): readonly string[] {
  return numbersOf(input).flatMap(({ is, slot }) => (is === 'open' ? [slot] : []));
}

/** What the tasks themselves say in their slots. */
function textsOf(input: Input, view: 'blank' | 'key'): Readonly<Record<string, string>> {
  const given = givenContainers(input).flatMap(({ measures }) => measures);
  const shown = numbersOf(input).filter(({ is }) => is === 'told' || (is === 'open' && view === 'key'));
  return Object.fromEntries([...given, ...shown].map(({ slot, text }) => [slot, text]));
}

/** Every number within the tasks that stands in no slot. */
function fixedNumbers(pages: readonly Page[]): readonly string[] {
  const inEntry = ({ nodes }: Page, node: number | null): boolean =>
    node !== null && (nodes[node]?.entry === true || inEntry({ nodes } as Page, nodes[node]?.parent ?? null));
  return pages.flatMap((page) =>
    page.items.flatMap((item) => {
      const isFixed = item.kind === 'words' && page.nodes[item.node]?.slot === null;
      return isFixed && /\d/.test(item.text) && inEntry(page, item.node) ? [item.text.trim()] : [];
    }),
  );
}

/** Numbers that nobody fills in: their own measures, and what is told because a pencil is too slow for it. */
const isGiven = (slot: string): boolean => slot.startsWith('given-');

describe('a worksheet', () => {
  test.each(levels)(
    'asks only for what stands on it or comes out of it, and tells none of its answers: %s',
    async (level) => {
      const desk = classOf(level);
      let asked = 0;
      for (const at of several.keys()) {
        const blank = await printedSlots(desk, at, 'blank');
        const key = await printedSlots(desk, at, 'key');
        const known = new Set([...key].flatMap(([slot, text]) => (isGiven(slot) ? [text] : [])));
        for (const [slot, text] of key) {
          if (!/-\d+-(\d+|result)$/.test(slot) || isGiven(slot)) continue;
          if (blank.has(slot)) expect(blank.get(slot)).toBe(text);
          else if (!slot.endsWith('-result'))
            expect(known, `${several[at]}: ${slot}, ${text}`).toContain(text);
          if (!blank.has(slot)) asked += 1;
          if (slot.endsWith('-result')) known.add(text);
        }
        for (const slot of blank.keys())
          expect(isGiven(slot) || key.get(slot) === blank.get(slot), slot).toBe(true);
        // Beside its slots a blank has no number that the key has not beside its answers.
        const input = desk.handoutOf(at);
        const onKey = fixedNumbers((await desk.handouts(input, 'key')).map(printed));
        expect(fixedNumbers((await desk.handouts(input, 'blank')).map(printed))).toEqual(onKey);
        if (at > 0) continue;
        // Nor where it is laid out for one person alone.
        const alone: Page[] = [];
        for await (const page of handoutWorksheet(input, 'blank', press.layOutAnew)) alone.push(page);
        expect(fixedNumbers(alone)).toEqual(onKey);
      }
      expect(asked).toBeGreaterThan(several.length * 5);
    },
    120_000,
  );

  test.each(levels)('is filled into a layout that all with its shape share: %s', async (level) => {
    const desk = classOf(level);
    for (const at of several.keys())
      for (const view of ['blank', 'key'] as const)
        for (const { stencil } of await desk.handouts(desk.handoutOf(at), view))
          expect(stencil.slots.size, `${several[at]}, ${view}`).toBeGreaterThan(0);
  });

  test('never has a last fish number that is above the plan to take home', async () => {
    for (const level of levels) {
      const desk = classOf(level);
      for (const at of several.keys()) {
        const { value } = planOf(desk.people[at]?.system as never).figures['fishPlanned'] ?? {};
        const fish = (await printedResults(desk, at)).filter(({ key }) => key.startsWith('fish'));
        if (value === null) expect(fish, several[at]).toEqual([]);
        else expect(fish.at(-1), several[at]).toMatchObject({ key: 'fishPlanned', text: String(value) });
      }
    }
  }, 120_000);

  test('is the same whoever was laid out before', async () => {
    const everybody = Array.from({ length: 12 }, (_, at) => `Person ${at}`);
    const [forth, back] = [deskFor(everybody), deskFor(everybody)];
    const order = [...everybody.keys()];
    const drawn = async (desk: typeof forth, at: number): Promise<string> =>
      JSON.stringify((await desk.handouts(desk.handoutOf(at), 'blank')).map((one) => printed(one).items));
    const there = new Map<number, string>();
    for (const at of order) there.set(at, await drawn(forth, at));
    for (const at of order.reverse()) expect((await drawn(back, at)) === there.get(at), `${at}`).toBe(true);
  }, 60_000);

  test('takes names of any length, in any script, on more lines or pages, and loses nothing', async () => {
    const bits = fc.constantFrom(...scriptNames.flatMap(({ name }) => name.split(' ')));
    const name = fc
      .array(bits, { minLength: 1, maxLength: 40 })
      .map((some) => some.join(' ').slice(0, 480).trim());
    await fc.assert(
      fc.asyncProperty(name, async (long) => {
        const desk = deskFor([long]);
        const pages = (await desk.handouts(desk.handoutOf(0), 'blank')).map(printed);
        const [first] = pages;
        const said = first?.items.map((item) => (item.kind === 'words' ? item.text : '')).join(' ') ?? '';
        expect(said.replace(/\s+/g, '')).toContain(long.normalize('NFC').replace(/\s+/g, ''));
        for (const page of pages) expect(faultsOf(page)).toEqual([]);
      }),
      { numRuns: 25 },
    );
  }, 120_000);

  test('for a team names all who belong to it', async () => {
    const desk = deskFor(['Ada', 'Bo', 'Cleo', 'Dov', 'Eli'], { worksheets: 'teams' });
    expect(desk.people.map(({ members }) => members.map(({ name }) => name))).toEqual([
      ['Ada', 'Eli'],
      ['Bo'],
      ['Cleo'],
      ['Dov'],
    ]);
    expect(desk.handoutOf(0)).toMatchObject({ name: 'Team 0: Ada, Eli', team: '', shared: 'team' });
    expect(desk.handoutOf(2)).toMatchObject({ name: 'Team 2: Cleo', team: '', shared: 'alone' });
    expect(desk.input.people.map(({ name }) => name)).toEqual(['Ada', 'Eli', 'Bo', 'Cleo', 'Dov']);
  });
});
