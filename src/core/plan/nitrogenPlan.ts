/** Nitrogen: ammonia of the day, the surface that turns it, the alkalinity it costs, the bed it feeds. */
import type { Note } from '../note.ts';
import type { System } from '../system.ts';
import {
  alkalinityUsed_g_d,
  nitrifyingSurface_m2,
  presentSurface_m2,
  tanByFeed_g_d,
  tanBySplit_g_d,
} from '../water/nitrogen.ts';
import { inForm_mg_L } from '../water/nitrogenForms.ts';
import {
  alkalinityLeast_mg_L,
  alkalinityPerNitrogen,
  feedProtein_frac,
  mediaSurface_m2_m3,
  nitrification_g_m2_d,
} from '../water/waterConstants.ts';
import type { BedPlan } from './beds.ts';
import { fedAreaFigures } from './fedArea.ts';
import type { Figure } from './figure.ts';
import type { Load } from './oxygenDemand.ts';
import { byHand, figure, quantity } from './write.ts';

/**
 * The day's load: its feed, and the ammonia nitrogen that comes of it by the larger of the two published splits.
 * @param system a checked system
 * @param feed_g_d feed of the day; null where no ration is known
 * @returns the load, or null
 * @source fao589 appendix 4
 */
export function loadOf(system: System, feed_g_d: number | null): Load {
  if (feed_g_d === null || feed_g_d === 0) return null;
  return { feed_g_d, tan_g_d: tanBySplit_g_d(feed_g_d, proteinOf(system)) };
}

function proteinOf(system: System): number {
  return system.feedProtein_frac ?? feedProtein_frac.value;
}

/**
 * Figures of nitrogen; only the surface that is there, where no feed is known.
 * @param system a checked system
 * @param beds its beds, worked out
 * @param wetMedia_L wet media of all beds together
 * @param load the day's load
 * @returns figures
 * @valid warm, settled beds; a new system turns nothing yet
 * @source see the figures
 */
export function nitrogenFigures(
  system: System,
  beds: readonly BedPlan[],
  wetMedia_L: number,
  load: Load,
): readonly Figure[] {
  const present = wetMedia_L > 0 ? [presentFigure(wetMedia_L)] : [];
  if (load === null) return present;
  return [
    tanFigure(system, load),
    neededFigure(load.tan_g_d, wetMedia_L),
    ...present,
    alkalinityFigure(system, load.tan_g_d),
    ...fedAreaFigures(beds, load.feed_g_d),
  ];
}

function tanFigure(system: System, load: NonNullable<Load>): Figure {
  const protein = proteinOf(system);
  const source = system.feedProtein_frac == null ? feedProtein_frac.source : 'keeper';
  const assumed: Note = {
    code: 'proteinAssumed',
    level: 'info',
    numbers: { protein_frac: protein },
    source,
  };
  const low = tanByFeed_g_d(load.feed_g_d, protein);
  const feed = quantity('f', 'feed', load.feed_g_d, 'g_d');
  const share = quantity('p', 'feedProtein', protein, 'frac');
  return figure({
    key: 'tan_g_d',
    value: load.tan_g_d,
    low,
    high: load.tan_g_d,
    unit: 'g_d',
    safeSide: 'up',
    confidence: 'estimate',
    steps: [
      byHand(quantity('a', 'tanByFarms', low, 'g_d'), 'f × p × 0.092', [feed, share], 'ebeling2006'),
      byHand(
        quantity('t', 'nitrogenOfDay', load.tan_g_d, 'g_d'),
        'f × p × 0.16 × 0.61',
        [feed, share],
        'fao589',
      ),
    ],
    notes: [
      ...(source === 'keeper' ? [] : [assumed]),
      { code: 'tanSplitsDisagree', level: 'info', numbers: {}, source: 'ebeling2006' },
    ],
  });
}

function neededFigure(tan_g_d: number, wetMedia_L: number): Figure {
  const ammonia_g_d = inForm_mg_L(tan_g_d, 'N', 'NH3');
  const of = (rate: number): number => nitrifyingSurface_m2(ammonia_g_d, rate);
  const { low, likely, high, source } = nitrification_g_m2_d;
  const ammonia = quantity('A', 'ammoniaOfDay', ammonia_g_d, 'g_d');
  const tan = quantity('t', 'nitrogenOfDay', tan_g_d, 'g_d');
  return figure({
    key: 'nitrifyingSurface_m2',
    value: of(likely),
    low: of(high),
    high: of(low),
    unit: 'm2',
    safeSide: 'up',
    confidence: 'estimate',
    steps: [
      byHand(ammonia, 't × 17.031 ÷ 14.007', [tan], 'molarMasses'),
      byHand(
        quantity('s', 'nitrifyingSurface', of(likely), 'm2'),
        'A ÷ r',
        [ammonia, quantity('r', 'nitrificationRate', likely, 'g_m2_d')],
        source,
      ),
    ],
    notes: [surfaceNote(of(likely), of(low), wetMedia_L)],
  });
}

/** Spare surface is said in words and never turned into fish. */
function surfaceNote(likely_m2: number, most_m2: number, wetMedia_L: number): Note {
  const least_m2 = presentSurface_m2(wetMedia_L, mediaSurface_m2_m3.low);
  const there_m2 = presentSurface_m2(wetMedia_L, mediaSurface_m2_m3.likely);
  const numbers = { needed_m2: likely_m2, present_m2: there_m2 };
  const { source } = nitrification_g_m2_d;
  if (there_m2 < likely_m2) return { code: 'surfaceShort', level: 'caution', numbers, source };
  if (least_m2 < most_m2) return { code: 'surfaceUnsure', level: 'info', numbers, source };
  return { code: 'nitrogenNotLimiting', level: 'info', numbers, source };
}

function presentFigure(wetMedia_L: number): Figure {
  const { low, likely, high, source } = mediaSurface_m2_m3;
  const value = presentSurface_m2(wetMedia_L, likely);
  return figure({
    key: 'presentSurface_m2',
    value,
    low: presentSurface_m2(wetMedia_L, low),
    high: presentSurface_m2(wetMedia_L, high),
    unit: 'm2',
    safeSide: 'down',
    confidence: 'estimate',
    steps: [
      byHand(
        quantity('S', 'presentSurface', value, 'm2'),
        'W × o ÷ 1000',
        [quantity('W', 'allWetMedia', wetMedia_L, 'L'), quantity('o', 'mediaSurface', likely, 'm2_m3')],
        source,
      ),
    ],
    notes: [{ code: 'spareSurface', level: 'info', numbers: {}, source: 'commonPractice' }],
  });
}

function alkalinityFigure(system: System, tan_g_d: number): Figure {
  const value = alkalinityUsed_g_d(tan_g_d);
  const now_mg_L = system.water.alkalinity_mg_L ?? null;
  const low: Note = {
    code: 'alkalinityLow',
    level: 'caution',
    numbers: { now_mg_L: now_mg_L ?? 0, least_mg_L: alkalinityLeast_mg_L.value },
    source: alkalinityLeast_mg_L.source,
  };
  return figure({
    key: 'alkalinityUsed_g_d',
    value,
    unit: 'g_d',
    safeSide: 'up',
    confidence: 'estimate',
    steps: [
      byHand(
        quantity('k', 'alkalinityUsed', value, 'g_d'),
        '7.14 × t',
        [quantity('t', 'nitrogenOfDay', tan_g_d, 'g_d')],
        alkalinityPerNitrogen.source,
      ),
    ],
    notes: [
      { code: 'alkalinityPartlyBack', level: 'info', numbers: {}, source: 'fromMemory' },
      ...(now_mg_L !== null && now_mg_L < alkalinityLeast_mg_L.value ? [low] : []),
    ],
  });
}
