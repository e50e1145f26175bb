import { describe, expect, test } from 'vitest';
import { paperSizes } from '../../src/paper/measures.ts';
import type { Page } from '../../src/paper/page.ts';
import { overflows } from '../../src/paper/overflows.ts';
import { tagPage } from '../../src/paper/tags.ts';
import { pocketCard } from '../../src/sheets/pocketCard.tsx';
import { type Panel, pocketFold } from '../../src/sheets/pocketFold.ts';
import type { SheetInput } from '../../src/sheets/sheet.ts';
import { content, faultsOf, inputOf, press, textOf, wordsOf } from './laidOut.ts';

async function pocketPages(input: SheetInput): Promise<readonly Page[]> {
  const pages = [];
  for await (const page of pocketCard.pages(input, press.layOut)) pages.push(page);
  return pages;
}

/** A panel of the paper in the hand: where it lies, which way its words and its print look, and its layer. */
type Layer = {
  readonly name: string;
  readonly x: number;
  readonly y: number;
  readonly up: 1 | -1;
  readonly faces: 1 | -1;
  readonly z: number;
};

function flat(panels: readonly Panel[], width: number, height: number): readonly Layer[] {
  return panels.map((panel) => ({
    name: panel.name,
    // The middle of its quarter of the row, not of its words: those keep clear of the paper's edge.
    x: (Math.floor(((panel.left + panel.width / 2) / width) * 4) + 0.5) * (width / 4),
    y: panel.top + panel.height / 2 < height / 2 ? height / 4 : (3 * height) / 4,
    up: panel.turn === 'upright' ? 1 : -1,
    faces: 1,
    z: 0,
  }));
}

/** What lies beyond the line turns over it and goes behind everything else, its own layers in the other order. */
function foldBehind(
  all: readonly Layer[],
  axis: 'x' | 'y',
  at: number,
  beyond: 'more' | 'less',
): readonly Layer[] {
  const lowest = Math.min(...all.map(({ z }) => z));
  return all.map((one) => {
    if (beyond === 'more' ? one[axis] < at : one[axis] > at) return one;
    const turned = { ...one, [axis]: 2 * at - one[axis], z: 2 * lowest - 1 - one.z };
    const faces = one.faces === 1 ? -1 : 1;
    return { ...turned, faces, up: axis === 'y' ? (one.up === 1 ? -1 : 1) : one.up };
  });
}

describe('the fold of the pocket card', () => {
  for (const paper of ['A4', 'Letter'] as const) {
    const { panels, width, height, across, down } = pocketFold(paperSizes[paper]);
    const [first = 0, middle = 0] = down;
    const strip = foldBehind(flat(panels, width, height), 'y', across, 'less');
    const half = foldBehind(strip, 'x', middle, 'more');
    const folded = foldBehind(half, 'x', first, 'less');

    test(`of ${paper} puts the emergencies in front and the numbers to call behind, both printed side out`, () => {
      const layers = [...folded].sort((a, b) => b.z - a.z);
      expect(layers[0]).toMatchObject({ name: 'cover', faces: 1 });
      expect(layers.at(-1)).toMatchObject({ name: 'back', faces: -1 });
      expect(new Set(folded.map(({ x, y }) => `${x} ${y}`)).size).toBe(1);
      expect(new Set(folded.map(({ z }) => z)).size).toBe(8);
    });

    test(`of ${paper} leaves no panel upside down`, () => {
      expect(folded.map(({ up }) => up)).toEqual(panels.map(() => 1));
    });

    test(`of ${paper} reads in order on both sides of the strip`, () => {
      const side = (faces: 1 | -1) =>
        strip.filter((one) => one.faces === faces).sort((a, b) => faces * (a.x - b.x));
      expect(side(1).map(({ name }) => name)).toEqual(['back', 'cover', 'insideLeft', 'insideRight']);
      expect(side(-1).map(({ name }) => name)).toEqual(['behind1', 'behind2', 'behind3', 'behind4']);
    });

    test(`of ${paper} keeps every panel clear of the folds and inside the safe box`, () => {
      for (const panel of panels) {
        const [right, bottom] = [panel.left + panel.width, panel.top + panel.height];
        for (const x of down) expect(panel.left >= x + 30 || right <= x - 30).toBe(true);
        expect(panel.top >= across + 30 || bottom <= across - 30).toBe(true);
        expect(panel.left).toBeGreaterThanOrEqual((width - 2540) / 2 - 1e-6);
        expect(right).toBeLessThanOrEqual((width + 2540) / 2 + 1e-6);
        expect(panel.top).toBeGreaterThanOrEqual((height - 1900) / 2 - 1e-6);
        expect(bottom).toBeLessThanOrEqual((height + 1900) / 2 + 1e-6);
      }
    });
  }
});

describe('the pocket card', () => {
  for (const paper of ['A4', 'Letter'] as const) {
    test(`of every system keeps its words in its panels and 9.5 pt large on ${paper}`, async () => {
      for (const { id, system, sheet } of content.systems) {
        const pages = await pocketPages(inputOf(system, paper, sheet.units));
        expect(pages).toHaveLength(2);
        expect(pages.flatMap(overflows), id).toEqual([]);
        expect(pages.flatMap(faultsOf), id).toEqual([]);
        expect(
          pages.flatMap((page) => tagPage(page).faults),
          id,
        ).toEqual([]);
        expect(
          pages.flatMap(wordsOf).filter(({ size_pt }) => size_pt < 9.49),
          id,
        ).toEqual([]);
      }
    }, 120_000);
  }

  test('turns the words of the upper row by half a turn, and no others', async () => {
    const [sheet] = await pocketPages(inputOf(demo('hollow-lane-ibc')));
    for (const word of sheet ? wordsOf(sheet) : []) {
      const isUpper = word.baseline_pt < (sheet?.height_pt ?? 0) / 2;
      if (isUpper)
        expect(word.matrix?.slice(0, 4).map(Math.round), word.text).toEqual(
          [-1, -0, 0, -1].map((one) => one + 0),
        );
      else expect(word.matrix, word.text).toBeNull();
    }
  });

  test('holds what the front of the card tells', async () => {
    const [sheet] = await pocketPages(inputOf(demo('hollow-lane-ibc')));
    const text = sheet ? textOf(sheet).replace(/\u00a0/g, ' ') : '';
    for (const part of [
      ...['The big tank', 'Feed each day 21', '4¾ level spoons', 'never double', 'Call', 'Something wrong?'],
      ...[
        'Children: fetch an adult.',
        'Level falling: water pump OFF, air ON, call',
        'Air back within 11 min',
      ],
      ...['Never add salt, medicine or pH liquid.', 'Every day', 'Look for', 'Every week', 'bed full: 565 L'],
      ...['good 22 to 30 °C', 'Never release a fish.', '30 mA'],
    ]) {
      expect(text).toContain(part);
    }
  });

  test('of a system with fifty beds or a name of 500 letters still fits its panels', async () => {
    const plain = demo('hollow-lane-ibc');
    const [bed] = plain.beds;
    if (bed === undefined) throw new Error('a bed');
    const beds = Array.from({ length: 50 }, (_, index) => ({
      ...bed,
      name: `Bed ${index}`,
      mode: 'constantFlood' as const,
    }));
    for (const one of [
      { ...plain, beds },
      { ...plain, name: 'W'.repeat(500) },
    ]) {
      const pages = await pocketPages(inputOf(one));
      expect(pages.flatMap(overflows)).toEqual([]);
      expect(pages.flatMap(faultsOf)).toEqual([]);
    }
  });
});

function demo(id: string) {
  const found = content.systems.find((one) => one.id === id);
  if (found === undefined) throw new Error(`no system ${id}`);
  return found.system;
}
