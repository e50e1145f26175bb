/** Growing on: the system of today beside its next stages, what changes, what to get, which limit moves. */
import type { Note } from '../note.ts';
import { volume_L } from '../geometry/container.ts';
import type { Bed, System, Vessel } from '../system.ts';
import { bedPlans } from './beds.ts';
import type { Figure, Table } from './figure.ts';
import { fishFigures } from './fishPlan.ts';
import { levels } from './levels.ts';
import { lowerVessel, waterBelow_L } from './lowerVessel.ts';
import { figure, noFigure, quantity } from './write.ts';

/** What a stage is told by; a figure that a stage does not have is left empty. */
const told = [
  'wetMedia_L',
  'waterMoved_L',
  'tankFull_L',
  'tankWanted_L',
  'sumpFull_L',
  'tankLow_L',
  'sumpLow_mm',
  'intakeCover_mm',
  'systemWater_L',
  'fishByBed',
  'fishByTank',
  'fishByDensity',
  'fishPlanned',
] as const;

type StageKey = 'anotherFloodBed' | 'anotherStillBed' | 'biggerTank';

type Stage = {
  readonly key: StageKey;
  readonly system: System;
  /** null where its beds would drink the vessel dry. */
  readonly figures: readonly Figure[] | null;
};

type Unplanned = Omit<Stage, 'figures'>;

/**
 * The next stages of a system: one more bed like the largest, the same at constant flood, and a fish tank of twice the
 * water with the old one as the sump.
 * @param system a checked system
 * @returns the stages that this system can grow into
 * @source commonPractice
 */
function stagesOf(system: System): readonly Unplanned[] {
  const largest = largestBed(system);
  if (system.pump === null || largest === null) return [];
  const more = (mode: 'constantFlood' | null): System => ({
    ...system,
    beds: [...system.beds, mode === null ? largest : { ...largest, mode, drained_mm: 0 }],
  });
  const still: Unplanned = { key: 'anotherStillBed', system: more('constantFlood') };
  const floods: Unplanned = { key: 'anotherFloodBed', system: more(null) };
  const beds = largest.mode === 'constantFlood' ? [still] : [floods, still];
  if (system.sump !== null) return beds;
  const bigger: Vessel = { ...system.tank, count: system.tank.count * 2 };
  return [...beds, { key: 'biggerTank', system: { ...system, tank: bigger, sump: system.tank } }];
}

/** Of the pumped beds the one with most wet media. */
function largestBed(system: System): Bed | null {
  const pumped = system.beds.filter((bed) => bed.mode !== 'inTank');
  const wet_L = (bed: Bed): number => volume_L(bed.container, bed.waterLine_mm) * bed.count;
  const first = pumped[0];
  return first === undefined ? null : pumped.reduce((a, b) => (wet_L(b) > wet_L(a) ? b : a), first);
}

/**
 * Fish that each next stage carries, with what it asks for, and today beside the stages.
 * @param system a checked system
 * @param today the figures of today's plan
 * @returns a figure a stage: anotherFloodBedFish, anotherStillBedFish, biggerTankFish; and one table
 * @valid the count of today stays until everything was measured and worked out again
 * @source commonPractice
 */
export function stagePlan(
  system: System,
  today: readonly Figure[],
): { readonly figures: readonly Figure[]; readonly tables: readonly Table[] } {
  const stages = stagesOf(system).map((stage) => ({ ...stage, figures: shortPlan(stage.system) }));
  const fishPlanned = today.find((one) => one.key === 'fishPlanned')?.value ?? null;
  return {
    figures: stages.map((stage) => stageFigure(stage, fishPlanned)),
    tables: stageTables(stages, today),
  };
}

function stageTables(stages: readonly Stage[], today: readonly Figure[]): readonly Table[] {
  if (stages.length === 0) return [];
  const next = stages.map((stage) => stage.figures);
  const value = (figures: readonly Figure[] | null, key: string): number | null =>
    figures?.find((one) => one.key === key)?.value ?? null;
  return [
    {
      key: 'nextStages',
      columns: [
        { key: 'figure', unit: 'ratio' },
        { key: 'today', unit: 'ratio' },
        ...stages.map((stage) => ({ key: stage.key, unit: 'ratio' as const })),
      ],
      rows: told
        .map((key) => [key, value(today, key), ...next.map((one) => value(one, key))])
        .filter((row) => row.some((cell) => typeof cell === 'number')),
    },
  ];
}

/** Only what a stage is told by: no air, no doses, no flow. null where the beds would drink the vessel dry. */
function shortPlan(system: System): readonly Figure[] | null {
  const beds = bedPlans(system);
  const source = lowerVessel(system);
  const moved_L = beds.reduce((total, bed) => total + bed.moved_L.high, 0);
  if (waterBelow_L(source, source.vessel.full_mm) <= moved_L) return null;
  const wetMedia_L = beds.reduce((total, bed) => total + bed.wetMedia_L, 0);
  const at = levels(system, beds);
  const media = figure({
    key: 'wetMedia_L',
    value: wetMedia_L,
    unit: 'L',
    safeSide: 'down',
    confidence: 'measured',
    steps: [],
  });
  return [media, ...at.figures, ...fishFigures(system, wetMedia_L, at)];
}

function stageFigure(stage: Stage, fishPlanned: number | null): Figure {
  const key = `${stage.key}Fish`;
  if (fishPlanned === null) {
    return noFigure(key, 'fish', {
      code: 'supplierWord',
      level: 'info',
      numbers: {},
      source: 'commonPractice',
    });
  }
  const { figures } = stage;
  if (figures === null) {
    return noFigure(key, 'fish', {
      code: 'stageDrinksDry',
      level: 'info',
      numbers: {},
      source: 'commonPractice',
    });
  }
  const planned = figures.find((one) => one.key === 'fishPlanned');
  const value = planned?.value ?? 0;
  const binds = planned?.notes.filter((note) => note.code.startsWith('binds.')) ?? [];
  return figure({
    key,
    value,
    unit: 'fish',
    safeSide: 'down',
    confidence: 'rule',
    steps: [
      {
        kind: 'lookup',
        gives: quantity('n', 'fishPlanned', value, 'fish'),
        formula: '',
        symbols: [],
        byHand: 'no',
        source: 'commonPractice',
      },
    ],
    notes: [...binds, ...troubles(figures), buy(stage)],
  });
}

/** What the stage would break, told softly, since nobody runs it yet: the pump bared, or the tank too small for its flood beds. */
function troubles(figures: readonly Figure[]): readonly Note[] {
  const of = (key: string): number | null => figures.find((one) => one.key === key)?.value ?? null;
  const cover_mm = of('intakeCover_mm');
  const wanted_L = of('tankWanted_L');
  const full_L = (of('tankFull_L') ?? 0) + (of('sumpFull_L') ?? 0);
  const bares = cover_mm !== null && cover_mm < 0;
  const note = (code: string, numbers: Note['numbers'] = {}): Note => ({
    code,
    level: 'info',
    numbers,
    source: 'commonPractice',
  });
  return [
    ...(bares ? [note('stageBaresPump')] : []),
    ...(wanted_L !== null && full_L * (1 + 1e-9) < wanted_L
      ? [note('stageTankTooSmall', { tankFull_L: full_L, wanted_L })]
      : []),
  ];
}

/** Of the bed that was added, which stands last. */
function addedMedia_L(system: System): number {
  return bedPlans(system).at(-1)?.wetMedia_L ?? 0;
}

function buy(stage: Stage): Note {
  const numbers: Note['numbers'] = stage.key === 'biggerTank' ? {} : { media_L: addedMedia_L(stage.system) };
  return { code: `buy.${stage.key}`, level: 'info', numbers, source: 'commonPractice' };
}
