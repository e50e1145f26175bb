/** What everything weighs with its outlet blocked and water to the rim, and how hard it presses. */
import { area_m2, rim_L, volume_L } from '../geometry/container.ts';
import { rim_mm } from '../geometry/rim.ts';
import type { Note } from '../note.ts';
import type { Bed, Container, System, Vessel } from '../system.ts';
import { floodedBed_kg, load_kg_m2 } from '../weight/full.ts';
import { deckLoad_kg_m2, legShare_frac, smallFoot_frac, smallWhole_kg } from '../weight/weightConstants.ts';
import type { Figure } from './figure.ts';
import { byHand, figure, noFigure, quantity } from './write.ts';

/** Something that stands somewhere: its weight at the heavy end, and the area that it stands on. */
type Standing = { readonly count: number; readonly weight_kg: number; readonly footprint_m2: number };

/**
 * Figures of the weight, each for one container.
 * @param system a checked system
 * @returns bedWeight_kg and legLoad_kg a bed, tankWeight_kg, sumpWeight_kg, load_kg_m2
 * @valid water and media alone; container, frame, plants, ice and people come on top
 * @source dasGeotechnical, chapter 3; the weight of each media as its file says; deckLoads as a yardstick
 */
export function weightFigures(system: System): readonly Figure[] {
  const standing = [
    vesselStanding(system.tank),
    ...(system.sump ? [vesselStanding(system.sump)] : []),
    ...system.beds.filter((bed) => bed.mode !== 'inTank').flatMap(bedStanding),
  ];
  return [
    ...system.beds.flatMap((bed, index) => bedWeightFigures(bed, `bed${index + 1}`)),
    tankFigure('tankWeight_kg', system.tank),
    ...(system.sump ? [tankFigure('sumpWeight_kg', system.sump)] : []),
    loadFigure(standing),
  ];
}

/** The floor where it is flat; the widest plan where it lies in a cradle or stands on a mere edge. */
function footprint_m2(container: Container): number {
  const floor = area_m2(container, 0);
  const middle = area_m2(container, rim_mm(container) / 2);
  const widest = Math.max(floor, middle, area_m2(container, rim_mm(container)));
  return floor < widest * smallFoot_frac ? widest : floor;
}

function vesselStanding(vessel: Vessel): Standing {
  const weight_kg = floodedBed_kg(rim_L(vessel.container), 0, 0, 1);
  return { count: vessel.count, weight_kg, footprint_m2: footprint_m2(vessel.container) };
}

function bedStanding(bed: Bed): readonly Standing[] {
  const bulk = bed.media.bulk ?? null;
  if (bulk === null) return [];
  const weight_kg = weight(bed, bulk.high_kg_m3, bed.media.void_frac.high);
  return [{ count: bed.count, weight_kg, footprint_m2: footprint_m2(bed.container) }];
}

function weight(bed: Bed, bulk_kg_m3: number, void_frac: number): number {
  const all_L = rim_L(bed.container);
  return floodedBed_kg(
    all_L,
    Math.min(all_L, volume_L(bed.container, bed.mediaDepth_mm)),
    bulk_kg_m3,
    void_frac,
  );
}

function bedWeightFigures(bed: Bed, prefix: string): readonly Figure[] {
  const key = `${prefix}.bedWeight_kg`;
  const bulk = bed.media.bulk ?? null;
  const words = { media: bed.media.name };
  const unknown: Note = {
    code: 'bulkUnknown',
    level: 'caution',
    numbers: {},
    words,
    source: 'commonPractice',
  };
  if (bulk === null) return [noFigure(key, 'kg', unknown)];
  const { void_frac } = bed.media;
  const value = weight(bed, bulk.likely_kg_m3, void_frac.likely);
  const high = weight(bed, bulk.high_kg_m3, void_frac.high);
  const media_L = volume_L(bed.container, bed.mediaDepth_mm);
  const heavy = figure({
    key,
    value,
    low: weight(bed, bulk.low_kg_m3, void_frac.low),
    high,
    unit: 'kg',
    safeSide: 'up',
    confidence: 'estimate',
    steps: [
      byHand(
        quantity('G', 'bedWeight', value, 'kg'),
        'm × b ÷ 1000 + m × e + R − m',
        [
          quantity('m', 'mediaVolume', media_L, 'L'),
          quantity('b', 'bulkDensity', bulk.likely_kg_m3, 'kg_m3'),
          quantity('e', 'voidFraction', void_frac.likely, 'frac'),
          quantity('R', 'rimVolume', rim_L(bed.container), 'L'),
        ],
        bulk.source,
      ),
    ],
  });
  return bed.mode === 'inTank' ? [heavy] : [heavy, legFigure(`${prefix}.legLoad_kg`, bed, value, high)];
}

/** One of four legs. */
function legFigure(key: string, bed: Bed, weight_kg: number, heaviest_kg: number): Figure {
  const tied: Note = {
    code: 'standTied',
    level: 'info',
    numbers: {},
    words: { bed: bed.name },
    source: 'commonPractice',
  };
  const value = weight_kg * legShare_frac.rocking;
  return figure({
    key,
    value,
    low: weight_kg * legShare_frac.level,
    high: heaviest_kg * legShare_frac.rocking,
    unit: 'kg',
    safeSide: 'up',
    confidence: 'estimate',
    steps: [
      byHand(
        quantity('L', 'legLoad', value, 'kg'),
        'G × x',
        [
          quantity('G', 'bedWeight', weight_kg, 'kg'),
          quantity('x', 'legShare', legShare_frac.rocking, 'frac'),
        ],
        legShare_frac.source,
      ),
    ],
    notes: [tied],
  });
}

function tankFigure(key: 'tankWeight_kg' | 'sumpWeight_kg', vessel: Vessel): Figure {
  const rim = rim_L(vessel.container);
  const value = floodedBed_kg(rim, 0, 0, 1);
  return figure({
    key,
    value,
    unit: 'kg',
    safeSide: 'up',
    confidence: 'measured',
    steps: [
      byHand(
        quantity('G', 'fullWeight', value, 'kg'),
        'R × 1',
        [quantity('R', 'rimVolume', rim, 'L')],
        'geometry',
      ),
    ],
  });
}

/** The hardest of all, against a floor that nobody has looked at. */
function loadFigure(standing: readonly Standing[]): Figure {
  const loads = standing.map((one) => ({ ...one, load: load_kg_m2(one.weight_kg, one.footprint_m2) }));
  const hardest = loads.reduce((most, one) => (one.load > most.load ? one : most));
  const all_kg = standing.reduce((sum, one) => sum + one.weight_kg * one.count, 0);
  return figure({
    key: 'load_kg_m2',
    value: hardest.load,
    unit: 'kg_m2',
    safeSide: 'up',
    confidence: 'estimate',
    steps: [
      byHand(
        quantity('p', 'load', hardest.load, 'kg_m2'),
        'G ÷ A',
        [
          quantity('G', 'fullWeight', hardest.weight_kg, 'kg'),
          quantity('A', 'footprint', hardest.footprint_m2, 'm2'),
        ],
        'geometry',
      ),
    ],
    notes: [refusal(hardest.load, all_kg)],
  });
}

/**
 * Nobody told where it stands, so upper floors are refused by default; a small one asks for a qualified person's word.
 * A caution and no stop: on solid ground, where most of them stand, nothing is wrong.
 */
function refusal(load: number, all_kg: number): Note {
  const small = all_kg <= smallWhole_kg.value;
  return {
    code: small ? 'groundPreferred' : 'groundOnly',
    level: 'caution',
    numbers: { load_kg_m2: load, deck_kg_m2: deckLoad_kg_m2.value, weight_kg: all_kg },
    source: small ? smallWhole_kg.source : deckLoad_kg_m2.source,
  };
}
