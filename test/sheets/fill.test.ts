import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import type { System } from '../../src/core/system.ts';
import { fill } from '../../src/paper/fill.ts';
import { type Laid, layOutSettled, type Sheet } from '../../src/paper/layOut.ts';
import { nodeParts } from '../../src/paper/node.ts';
import { refilling } from '../../src/paper/refill.ts';
import { settle } from '../../src/paper/settle.ts';
import { allSheets } from '../../src/sheets/allSheets.ts';
import type { SheetInput } from '../../src/sheets/sheet.ts';
import type { SheetKind } from '../../src/sheets/sheetKind.ts';
import { systems } from '../systemArbitrary.ts';
import { content, inputOf } from './laidOut.ts';

const { types, engine } = await nodeParts();
const { type } = types;

/** What a person types one after the other. */
const edits: Readonly<Record<string, (system: System) => System>> = {
  'another name': (system) => ({ ...system, name: 'Tub by the old wall' }),
  'a name of many words': (system) => ({
    ...system,
    name: 'The tub beside the old brick wall where the quince tree stands',
  }),
  'a lower full line': (system) => ({
    ...system,
    tank: { ...system.tank, full_mm: system.tank.full_mm - 10 },
  }),
  'one fish more': (system) => {
    return { ...system, fish: system.fish && { ...system.fish, present: (system.fish.present ?? 4) + 1 } };
  },
  'a lower bed line': (system) => ({
    ...system,
    beds: system.beds.map((bed) => ({ ...bed, waterLine_mm: bed.waterLine_mm - 7 })),
  }),
};

type Tree = { readonly sheet: Sheet; readonly laid: Laid };

/** All trees that a sheet hands to the press, tries included, and what they are when laid out. */
async function treesOf(kind: SheetKind, input: SheetInput): Promise<readonly Tree[]> {
  const trees: Tree[] = [];
  const pages = kind.pages(input, async (sheet) => {
    const laid = await layOutSettled(sheet, await settle(sheet.root), type, engine);
    trees.push({ sheet, laid });
    return laid.page;
  });
  for await (const _ of pages);
  return trees;
}

/** Places are given to a thousandth of a point; a box that was rounded before may lead to the next one. */
function alike(one: unknown, other: unknown): boolean {
  if (typeof one === 'number' && typeof other === 'number') return Math.abs(one - other) <= 0.0025;
  if (typeof one !== 'object' || typeof other !== 'object' || one === null || other === null)
    return one === other;
  const [a, b] = [Object.entries(one), Object.entries(other)];
  return (
    a.length === b.length && a.every(([key, value], at) => b[at]?.[0] === key && alike(value, b[at]?.[1]))
  );
}

type Tried = { readonly filled: number; readonly anew: number };

/** Puts the values of one system into the sheets of another, and looks whether they are the sheets they should be. */
async function filledFrom(kind: SheetKind, before: SheetInput, after: SheetInput): Promise<Tried> {
  const [olds, nows] = [await treesOf(kind, before), await treesOf(kind, after)];
  const tried = { filled: 0, anew: 0 };
  for (const [at, { sheet, laid }] of nows.entries()) {
    const old = olds[at];
    const filled = old && (await fill(old.laid, { sheet, settled: laid.settled }, type, engine));
    if (!filled) tried.anew += 1;
    else {
      tried.filled += 1;
      expectAlike(filled.page, laid.page, `${kind.id}, tree ${at}`);
    }
  }
  return tried;
}

function expectAlike(filled: object, wanted: object, where: string): void {
  for (const [key, value] of Object.entries(wanted)) {
    const given: unknown = (filled as Record<string, unknown>)[key];
    if (alike(given, value)) continue;
    // Only for the message: which of the many it is.
    const [all, others] = [Object.values(value), Object.values(given as object)];
    const at = all.findIndex((one, index) => !alike(others[index], one));
    expect(others[at] ?? others.length, `${where}, ${key} ${at}`).toEqual(all[at] ?? all.length);
  }
}

const demo = content.systems.filter(({ id }) => ['hollow-lane-ibc', 'basket-tub'].includes(id));

describe('a filled sheet is the sheet that would have been laid out', () => {
  test.each(Object.entries(edits))(
    'after %s',
    async (name, edit) => {
      const tried = { filled: 0, anew: 0 };
      for (const { system, sheet } of demo) {
        const [before, after] = [system, edit(system)].map((one) => inputOf(one, sheet.paper, sheet.units));
        if (!before || !after) throw new Error('no input');
        for (const kind of allSheets.slice(0, 4).filter((one) => one.fits(before) === 'yes')) {
          const { filled, anew } = await filledFrom(kind, before, after);
          tried.filled += filled;
          tried.anew += anew;
        }
      }
      // A name that takes a second line moves all that stands under it.
      if (name !== 'a name of many words') expect(tried.filled).toBeGreaterThan(tried.anew);
    },
    120_000,
  );

  test('whatever the system, after any edit', async () => {
    const edit = fc.constantFrom(...Object.values(edits));
    const tried = { filled: 0, anew: 0 };
    await fc.assert(
      fc.asyncProperty(systems(), edit, async (system, change) => {
        const [card, worksheet] = allSheets;
        for (const kind of [card, worksheet]) {
          if (!kind) throw new Error('there are two sheets at least');
          const { filled, anew } = await filledFrom(kind, inputOf(system), inputOf(change(system)));
          tried.filled += filled;
          tried.anew += anew;
        }
      }),
      { numRuns: 8, endOnFailure: true },
    );
    expect(tried.filled).toBeGreaterThan(tried.anew);
  }, 240_000);
});

test('a press that fills gives the same sheets as one that lays everything out, and forgets no title', async () => {
  const [one] = demo;
  if (!one) throw new Error('no demo system');
  const layOut = refilling(types, engine);
  const [card] = allSheets;
  if (!card) throw new Error('no sheet');
  for (const edit of Object.values(edits)) {
    for (const { sheet, laid } of await treesOf(card, inputOf(edit(one.system))))
      expectAlike(await layOut(sheet), laid.page, card.id);
  }
}, 120_000);
