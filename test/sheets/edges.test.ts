import { describe, expect, test } from 'vitest';
import type { System } from '../../src/core/system.ts';
import { overflows } from '../../src/paper/overflows.ts';
import { allSheets } from '../../src/sheets/allSheets.ts';
import { content, faultsOf, inputOf, press, textOf } from './laidOut.ts';

const demo = content.systems.find(({ id }) => id === 'hollow-lane-ibc');
if (!demo) throw new Error('no system hollow-lane-ibc');
const plain: System = demo.system;
const [bed] = plain.beds;
if (!bed || !plain.fish) throw new Error('the big tank has a bed and fish');

const longName = 'a wordy name that never ends '.repeat(18).slice(0, 500);

const hugeTank: System['tank'] = {
  ...plain.tank,
  full_mm: 2800,
  container: { shape: 'box', length_mm: 3000, width_mm: 3000, depth_mm: 3000 },
};

/** What people do that the sheets were not drawn for. */
const edges: Readonly<Record<string, System>> = {
  'a name of 500 characters': {
    ...plain,
    name: longName,
    place: longName,
    beds: [{ ...bed, name: longName }],
  },
  'a name of 500 letters without a gap': { ...plain, name: 'W'.repeat(500), place: 'W'.repeat(500) },
  'forty fish': { ...plain, fish: { ...plain.fish, present: 40, massNow_g: 900 } },
  'a tank of 3 m': { ...plain, tank: hugeTank },
  'a bed of 5 cm': {
    ...plain,
    beds: [
      {
        ...bed,
        container: { shape: 'box', length_mm: 300, width_mm: 200, depth_mm: 50 },
        mediaDepth_mm: 45,
        waterLine_mm: 40,
      },
    ],
  },
  'eight beds': {
    ...plain,
    tank: hugeTank,
    beds: Array.from({ length: 8 }, (_, index) => ({ ...bed, name: `Bed ${index + 1} by the wall` })),
  },
  'no fish': { ...plain, fish: null },
  'nothing but a tank': { ...plain, beds: [], pump: null, fish: null },
};

describe.each(Object.entries(edges))('with %s', (_, system) => {
  test.each(allSheets.map((kind) => [kind.id, kind] as const))(
    '%s prints apart and whole, on more pages if it must, or has nothing to print',
    async (_id, kind) => {
      const input = inputOf(system, 'Letter', 'us');
      if (kind.fits(input) === 'no') return;
      const pages = [];
      for await (const page of kind.pages(input, press.layOut)) pages.push(page);
      expect(pages.length).toBeGreaterThan(0);
      for (const [at, page] of pages.entries()) {
        expect(faultsOf(page), `page ${at + 1}`).toEqual([]);
        expect(
          overflows(page).map(({ why, text }) => `${why}: ${text}`),
          `page ${at + 1}`,
        ).toEqual([]);
        expect(textOf(page)).not.toMatch(/NaN|Infinity|undefined|null/);
      }
    },
    60_000,
  );
});
