/** What the form starts with: a small system that yields a card at once, or empty fields. */
import type { Draft, Tree } from './draft.ts';
import type { UnitSystem } from '../wording/quantity.ts';
import { draftOf, inUnits } from './draftOf.ts';

/** Plausible together: the tank holds more than twice the bed, and the bed carries more fish than are there. */
export const exampleDraft: Draft = {
  ...draftOf({
    id: 'my-system',
    name: 'My first system',
    place: '',
    shared: false,
    sheet: { paper: 'A4', units: 'metric' },
    tank: {
      container: { shape: 'cylinder', diameter_mm: 1100, depth_mm: 750 },
      count: 1,
      full_mm: 650,
      above_mm: 0,
    },
    beds: [
      {
        name: 'Bed',
        container: { shape: 'box', length_mm: 1000, width_mm: 800, depth_mm: 350 },
        count: 1,
        mode: 'siphon',
        media: 'expandedClay',
        mediaDepth_mm: 320,
        waterLine_mm: 280,
        drained_mm: 0,
        standpipeBore_mm: 40,
        above_mm: 900,
      },
    ],
    pump: { flow_L_h: 800, intake_mm: 150 },
    fish: { kind: 'commonCarp', present: 6, massNow_g: 120, massAdult_g: 500 },
    spoon_g: 5,
    water: { pH: 6.8, now_degC: 24 },
  }),
  id: '',
};

const none: Tree = { text: '' };

/** A bed in which nothing but the usual choices is made. */
export const emptyBed: Tree = {
  name: none,
  container: { shape: { text: 'box' } },
  count: { text: '1' },
  mode: { text: 'siphon' },
  media: none,
};

const emptyVessel: Tree = { container: { shape: { text: 'box' } }, count: { text: '1' } };

export function emptyDraft(units: UnitSystem, paper: string): Draft {
  const draft: Draft = {
    version: 1,
    id: '',
    shared: false,
    parts: { sump: 'leftOut', pump: 'there', fish: 'there' },
    fields: {
      sheet: { paper: { text: paper }, units: { text: 'metric' } },
      tank: emptyVessel,
      sump: emptyVessel,
      beds: [emptyBed],
    },
  };
  return inUnits(draft, units);
}
