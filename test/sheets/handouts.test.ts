import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { planOf } from '../../src/core/plan/planOf.ts';
import { levels } from '../../src/core/workshop/exercise.ts';
import { readSheetNumber } from '../../src/core/workshop/sheetNumber.ts';
import { overflows } from '../../src/paper/overflows.ts';
import type { Page } from '../../src/paper/page.ts';
import type { Filled } from '../../src/paper/stencil.ts';
import { tagPage } from '../../src/paper/tags.ts';
import { workshopStack } from '../../src/sheets/handouts/workshopStack.ts';
import { lint } from '../pdfLint/lint.ts';
import { readPdf } from '../paper/readPdf.ts';
import { scriptNames } from '../paper/scriptNames.ts';
import { deskFor, isPrinted, printedResults } from './handoutDesk.ts';
import { faultsOf, press } from './laidOut.ts';

/** The page as it is printed: what everybody has, and this person's words. */
function printed({ stencil, words: own }: Filled): Page {
  const slots = new Set([...stencil.slots.values()].flat().map(({ node }) => node));
  return { ...stencil.page, items: [...stencil.page.items.filter(({ node }) => !slots.has(node)), ...own] };
}

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

describe('an answer key', () => {
  test('has the numbers that the plan of the same containers has, every one of them', async () => {
    let compared = 0;
    for (const level of levels) {
      const everybody = Array.from({ length: 60 }, (_, at) => `Person ${at}`);
      const desk = deskFor(everybody, { level });
      for (const [at, person] of desk.people.entries()) {
        const { figures } = planOf(person.system);
        for (const { key, step, text } of await printedResults(desk, at)) {
          const figure = figures[key];
          const exact =
            (step === figure?.steps.length ? figure.value : figure?.steps[step - 1]?.gives.value) ??
            Number.NaN;
          expect(isPrinted(text, exact), `${key} of ${person.name}: ${text}`).toBe(true);
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

describe('a worksheet', () => {
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
        expect(said.replace(/\s+/g, '')).toContain(long.normalize('NFC').replace(/\s+/g, '').slice(0, 3));
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
    expect(desk.handoutOf(0).name).toBe('Team 0: Ada, Eli');
    expect(desk.input.people.map(({ name }) => name)).toEqual(['Ada', 'Eli', 'Bo', 'Cleo', 'Dov']);
  });
});
