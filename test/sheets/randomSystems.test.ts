import fc from 'fast-check';
import { expect, test } from 'vitest';
import { faultsOfAll, onePoster, printed } from './walk.ts';

test('no sheet of any system has words on each other, cut, outside the safe box, or out of reach of a screen reader', async () => {
  await fc.assert(
    fc.asyncProperty(printed, async (one) => {
      expect(await faultsOfAll(one, onePoster)).toEqual([]);
    }),
    // Each try takes seconds, so a failure is shown as it is instead of made smaller for minutes.
    { numRuns: 40, endOnFailure: true },
  );
}, 480_000);
