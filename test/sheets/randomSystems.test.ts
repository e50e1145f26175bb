import fc from 'fast-check';
import { expect, test } from 'vitest';
import { tagPage } from '../../src/paper/tags.ts';
import { systems } from '../systemArbitrary.ts';
import { cardPages, faultsOf, inputOf } from './laidOut.ts';

/** Papers and units in turn, so that each run sees another pair. */
const settings = fc.record({
  system: systems(),
  paper: fc.constantFrom('A4' as const, 'Letter' as const),
  units: fc.constantFrom('metric' as const, 'us' as const),
});

test('no card of any system has words on each other, outside the safe box, or out of reach of a screen reader', async () => {
  await fc.assert(
    fc.asyncProperty(settings, async ({ system, paper, units }) => {
      const pages = await cardPages(inputOf(system, paper, units));
      expect(pages.length).toBeGreaterThanOrEqual(2);
      expect(pages.flatMap(faultsOf)).toEqual([]);
      expect(pages.flatMap((page) => tagPage(page).faults)).toEqual([]);
    }),
    // Each try takes a second, so a failure is shown as it is instead of made smaller for minutes.
    { numRuns: 40, endOnFailure: true },
  );
}, 120_000);
