/** Walks everything that the sheets of a system place on paper. */
import fc from 'fast-check';
import type { System } from '../../src/core/system.ts';
import { overflows } from '../../src/paper/overflows.ts';
import { tagPage } from '../../src/paper/tags.ts';
import { allSheets } from '../../src/sheets/allSheets.ts';
import type { SheetKind } from '../../src/sheets/sheetKind.ts';
import type { PaperName } from '../../src/sheets/sheet.ts';
import type { UnitSystem } from '../../src/wording/quantity.ts';
import { systems } from '../systemArbitrary.ts';
import { faultsOf, inputOf, press } from './laidOut.ts';

export type Printed = { readonly system: System; readonly paper: PaperName; readonly units: UnitSystem };

/** Any system, on either paper, in either system of units. */
export const printed: fc.Arbitrary<Printed> = fc.record({
  system: systems(),
  paper: fc.constantFrom('A4' as const, 'Letter' as const),
  units: fc.constantFrom('metric' as const, 'us' as const),
});

/** The poster in one size only: the others are the same one enlarged. */
export const onePoster: readonly SheetKind[] = allSheets.filter(
  ({ id }) => !/^wall-poster-(A2|A1|17|22)/.test(id),
);

/** What is wrong on any page of any sheet: words on each other, cut, lost, outside the safe box, or out of reach. */
export async function faultsOfAll(
  { system, paper, units }: Printed,
  kinds: readonly SheetKind[] = allSheets,
): Promise<readonly string[]> {
  const input = inputOf(system, paper, units);
  const faults: string[] = [];
  for (const kind of kinds.filter((one) => one.fits(input) === 'yes')) {
    let number = 0;
    for await (const page of kind.pages(input, press.layOut)) {
      number += 1;
      const wrong = [
        ...faultsOf(page),
        ...overflows(page).map(({ why, text }) => `${why}: ${text}`),
        ...tagPage(page).faults,
      ];
      faults.push(...wrong.map((one) => `${kind.id}, page ${number}: ${one}`));
    }
    if (number === 0) faults.push(`${kind.id}: fits, and has no page`);
  }
  return faults;
}
