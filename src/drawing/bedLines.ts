/** A bed from above at true scale as lines: its rim, and a ring with a cross for every plant. */
import type { BedTemplate } from '../core/plan/figure.ts';
import type { Line, Spot } from './tiles.ts';

export type BedLines = { readonly width: number; readonly height: number; readonly lines: readonly Line[] };

/** Sheet units in a millimetre. */
const unit = 10;
/** Clear paper around the rim. */
const margin = 10;
const ring = 100;
const arm = 60;
const ringSteps = 36;

/** The bed lies along the sheet or across it, whichever way the caller wants. */
export function bedLines({ outline, rim, places }: BedTemplate, lies: 'across' | 'down'): BedLines {
  const long = outline.length_mm * unit + 2 * margin;
  const short = outline.width_mm * unit + 2 * margin;
  const spot = (at: { readonly along_mm: number; readonly across_mm: number }): Spot => {
    const [along, across] = [at.along_mm * unit + long / 2, at.across_mm * unit + short / 2];
    return lies === 'across' ? [along, across] : [across, along];
  };
  return {
    ...(lies === 'across' ? { width: long, height: short } : { width: short, height: long }),
    lines: [
      { spots: rim.map(spot), end: 'closed', width: 5 },
      ...places.flatMap((place) => plantMark(spot(place))),
    ],
  };
}

function plantMark([x, y]: Spot): readonly Line[] {
  const round = Array.from({ length: ringSteps }, (_, index): Spot => {
    const angle = (index * 2 * Math.PI) / ringSteps;
    return [x + ring * Math.cos(angle), y + ring * Math.sin(angle)];
  });
  return [
    {
      spots: [
        [x - arm, y],
        [x + arm, y],
      ],
      end: 'open',
      width: 3,
    },
    {
      spots: [
        [x, y - arm],
        [x, y + arm],
      ],
      end: 'open',
      width: 3,
    },
    { spots: round, end: 'closed', width: 3 },
  ];
}
