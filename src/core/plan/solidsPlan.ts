/** Solids of a day, what catches them, and where they go. */
import { settlerArea_m2 } from '../hydraulics/settler.ts';
import type { Note } from '../note.ts';
import type { Range, System } from '../system.ts';
import type { Figure } from './figure.ts';
import { byHand, figure, noFigure, quantity } from './write.ts';

/** Dry solids for a gram of feed: salmon 0.3 to 0.4, catfish 0.2 to 0.7. The middle is that of the salmon. */
const solids_frac = { low: 0.2, likely: 0.35, high: 0.7, source: 'wasSolidsAbstract' } as const;

/** Overflow rate at which a radial-flow settler took out 78 % of the solids, and a swirl separator 37 %. */
const overflow_m_s = { value: 0.0031, source: 'davidsonSummerfelt2005' } as const;

/** Waters from which on the trade takes the next larger catcher. Common practice, no source. */
const catcherFrom_L = { filter: 50, canister: 60, settler: 500, source: 'commonPractice' } as const;

/** Wet sludge from rinsing a catcher is this much dry matter, and lies in the barrel for so long. From memory. */
const sludge_g_L = { low: 10, high: 20, source: 'fromMemory' } as const;
const mineralising_d = { low: 10, high: 20 } as const;

/**
 * Figures of the solids.
 * @param system a checked system
 * @param feed_g_d feed of a day; null where no ration is known
 * @param flow_L_h the pump's flow; null without one
 * @param systemWater_L all water of the system
 * @returns solids_g_d with the catcher that fits, settler_m2, mineralBarrel_L; none without fish
 * @valid dry solids; what lies in the catcher is some ten times as much, since it is wet
 * @source wasSolidsAbstract; davidsonSummerfelt2005; commonPractice for the catchers
 */
export function solidsFigures(
  system: System,
  feed_g_d: number | null,
  flow_L_h: Range | null,
  systemWater_L: number,
): readonly Figure[] {
  if (system.fish === null || system.fish.present === 0) return [];
  return [
    solidsFigure(feed_g_d, systemWater_L),
    settlerFigure(flow_L_h),
    ...(feed_g_d === null || feed_g_d === 0 ? [] : [barrelFigure(feed_g_d)]),
  ];
}

function solidsFigure(feed_g_d: number | null, systemWater_L: number): Figure {
  const unknown: Note = { code: 'solidsNeedFeed', level: 'info', numbers: {}, source: 'commonPractice' };
  const notes = [catcherFor(systemWater_L), whereTo];
  if (feed_g_d === null) return { ...noFigure('solids_g_d', 'g_d', unknown), notes: [unknown, ...notes] };
  const value = feed_g_d * solids_frac.likely;
  return figure({
    key: 'solids_g_d',
    value,
    low: feed_g_d * solids_frac.low,
    high: feed_g_d * solids_frac.high,
    unit: 'g_d',
    safeSide: 'up',
    confidence: 'estimate',
    steps: [
      byHand(
        quantity('s', 'solids', value, 'g_d'),
        'f × y',
        [quantity('f', 'feed', feed_g_d, 'g_d'), quantity('y', 'solidsShare', solids_frac.likely, 'frac')],
        solids_frac.source,
      ),
    ],
    notes,
  });
}

/** Never onto food that is eaten raw. */
const whereTo: Note = { code: 'solidsGoTo', level: 'info', numbers: {}, source: 'commonPractice' };

function catcherFor(systemWater_L: number): Note {
  const { filter, canister, settler, source } = catcherFrom_L;
  const note = (code: string): Note => ({ code, level: 'info', numbers: { systemWater_L }, source });
  if (systemWater_L < filter) return note('catchSponge');
  if (systemWater_L <= canister) return note('catchFilter');
  return note(systemWater_L < settler ? 'catchCanister' : 'catchSettler');
}

/** For all that the pump gives. */
function settlerFigure(flow_L_h: Range | null): Figure {
  const none: Note = { code: 'settlerNeedsFlow', level: 'info', numbers: {}, source: overflow_m_s.source };
  if (flow_L_h === null) return noFigure('settler_m2', 'm2', none);
  const area = (flow: number): number => settlerArea_m2(flow, overflow_m_s.value);
  const value = area(flow_L_h.likely);
  const across_mm = 1000 * Math.sqrt((4 * value) / Math.PI);
  return figure({
    key: 'settler_m2',
    value,
    low: area(flow_L_h.low),
    high: area(flow_L_h.high),
    unit: 'm2',
    safeSide: 'up',
    confidence: 'estimate',
    steps: [
      byHand(
        quantity('A', 'settlerArea', value, 'm2'),
        'Q ÷ 3600000 ÷ v',
        [
          quantity('Q', 'pumpFlow', flow_L_h.likely, 'L_h'),
          quantity('v', 'overflowRate', overflow_m_s.value, 'm_s'),
        ],
        overflow_m_s.source,
      ),
    ],
    notes: [{ code: 'settlerAcross', level: 'info', numbers: { across_mm }, source: overflow_m_s.source }],
  });
}

/** An aerated barrel that holds what is caught until bacteria have freed its minerals. */
function barrelFigure(feed_g_d: number): Figure {
  const of = (share: number, wet_g_L: number, days_d: number): number =>
    ((feed_g_d * share) / wet_g_L) * days_d;
  const value = of(solids_frac.likely, sludge_g_L.low, mineralising_d.high);
  const note = (code: string): Note => ({ code, level: 'info', numbers: {}, source: sludge_g_L.source });
  return figure({
    key: 'mineralBarrel_L',
    value,
    low: of(solids_frac.low, sludge_g_L.high, mineralising_d.low),
    high: of(solids_frac.high, sludge_g_L.low, mineralising_d.high),
    unit: 'L',
    safeSide: 'up',
    confidence: 'estimate',
    steps: [
      byHand(
        quantity('B', 'mineralBarrel', value, 'L'),
        'f × y ÷ w × d',
        [
          quantity('f', 'feed', feed_g_d, 'g_d'),
          quantity('y', 'solidsShare', solids_frac.likely, 'frac'),
          quantity('w', 'sludge', sludge_g_L.low, 'g_L'),
          quantity('d', 'mineralisingDays', mineralising_d.high, 'd'),
        ],
        sludge_g_L.source,
      ),
    ],
    notes: [note('barrelAired'), note('barrelBack')],
  });
}
