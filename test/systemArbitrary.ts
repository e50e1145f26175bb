/**
 * Random systems of every shape and mode, for laws that hold for all of them. They are made as a person would write
 * them and go through `toSystem`, so what it refuses cannot come out here.
 */
import fc from 'fast-check';
import { area_m2, volume_L } from '../src/core/geometry/container.ts';
import { rim_mm } from '../src/core/geometry/rim.ts';
import { levelOf_mm, waterBelow_L } from '../src/core/plan/lowerVessel.ts';
import type { BedMode, Container, Shape, System } from '../src/core/system.ts';
import type { SystemFile } from '../src/schemas/systemFile.ts';
import { toSystem } from '../src/schemas/toSystem.ts';
import { content } from './demoSystems.ts';

type RawVessel = { container: Container; count: number; full_mm: number; above_mm: number };

type RawBed = {
  name: string;
  container: Container;
  count: number;
  mode: BedMode;
  media: string;
  bucketTest?: { media_L: number; water_L: number };
  mediaDepth_mm: number;
  waterLine_mm?: number;
  drained_mm: number;
  standpipeBore_mm?: number;
  drainHole_mm?: number;
  above_mm: number;
};

/** Nobody writes a number with a dozen noughts behind its point; what is so small that its digits run out is nothing. */
const between = (min: number, max: number) =>
  fc.double({ min, max, noNaN: true }).map((one) => (Math.abs(one) < 1e-12 ? 0 : one));
const maybe = <T>(of: fc.Arbitrary<T>): fc.Arbitrary<T | undefined> =>
  fc.option(of, { nil: undefined, freq: 3 });

/** Whole millimetres, as a tape is read. */
const side = fc.integer({ min: 400, max: 1600 });
const deep = fc.integer({ min: 250, max: 1000 });
const taper = between(0.5, 1.6);

const shapes: { readonly [S in Shape]: fc.Arbitrary<Container> } = {
  box: fc.record({ shape: fc.constant('box'), length_mm: side, width_mm: side, depth_mm: deep }),
  taperedBox: fc
    .tuple(side, side, taper, taper, deep)
    .map(([topLength_mm, topWidth_mm, alongBy, acrossBy, depth_mm]) => ({
      shape: 'taperedBox' as const,
      topLength_mm,
      topWidth_mm,
      floorLength_mm: Math.round(topLength_mm * alongBy),
      floorWidth_mm: Math.round(topWidth_mm * acrossBy),
      depth_mm,
    })),
  cylinder: fc.record({ shape: fc.constant('cylinder'), diameter_mm: side, depth_mm: deep }),
  taperedRound: fc.tuple(side, taper, deep).map(([topDiameter_mm, by, depth_mm]) => ({
    shape: 'taperedRound' as const,
    topDiameter_mm,
    floorDiameter_mm: Math.round(topDiameter_mm * by),
    depth_mm,
  })),
  lyingCylinder: fc.tuple(side, side, between(0.4, 1)).map(([diameter_mm, length_mm, cut]) => ({
    shape: 'lyingCylinder' as const,
    diameter_mm,
    length_mm,
    depth_mm: Math.round(diameter_mm * cut),
  })),
  obround: fc
    .tuple(side, fc.integer({ min: 0, max: 900 }), taper, fc.integer({ min: 0, max: 900 }), deep)
    .map(([width_mm, straight_mm, by, floorStraight_mm, depth_mm]) => ({
      shape: 'obround' as const,
      length_mm: width_mm + straight_mm,
      width_mm,
      floorLength_mm: Math.round(Math.min(width_mm * by + floorStraight_mm, 2.9 * (width_mm + straight_mm))),
      floorWidth_mm: Math.round(width_mm * by),
      depth_mm,
    })),
  ellipse: fc
    .tuple(side, side, taper, taper, deep)
    .map(([length_mm, width_mm, alongBy, acrossBy, depth_mm]) => ({
      shape: 'ellipse' as const,
      length_mm,
      width_mm,
      floorLength_mm: Math.round(length_mm * alongBy),
      floorWidth_mm: Math.round(width_mm * acrossBy),
      depth_mm,
    })),
  dipTable: fc
    .tuple(
      fc.array(fc.tuple(fc.integer({ min: 60, max: 160 }), between(0.2, 1)), { minLength: 2, maxLength: 8 }),
      between(1, 1.1),
    )
    .map(([rises, above]) => dipTable(rises, above)),
};

function dipTable(
  rises: readonly (readonly [deeper_mm: number, fullness: number])[],
  above: number,
): Container {
  const outside = { outsideLength_mm: 1100, outsideWidth_mm: 700 };
  let depth_mm = 0;
  let volume_L = 0;
  const dips = rises.map(([deeper_mm, fullness]) => {
    depth_mm += deeper_mm;
    volume_L += (deeper_mm * fullness * outside.outsideLength_mm * outside.outsideWidth_mm) / 1e6;
    return { depth_mm, volume_L };
  });
  return { shape: 'dipTable', dips, ...outside, depth_mm: Math.round(depth_mm * above) };
}

const container = fc.oneof(...Object.values(shapes));

const vessel: fc.Arbitrary<RawVessel> = fc
  .record({
    container,
    count: fc.integer({ min: 1, max: 3 }),
    fullShare: between(0.4, 1),
    above_mm: fc.oneof(fc.constant(0), fc.integer({ min: -600, max: 400 })),
  })
  .map(({ fullShare, ...rest }) => ({ ...rest, full_mm: Math.floor(rim_mm(rest.container) * fullShare) }));

/** A bed by shares; what they become in millimetres depends on the tank below. */
const bedSeed = fc.record({
  mode: fc.constantFrom<BedMode>('siphon', 'timer', 'constantFlood', 'inTank'),
  container,
  count: fc.integer({ min: 1, max: 3 }),
  media: fc.constantFrom(...Object.keys(content.media)),
  bucketShare: maybe(between(0.1, 0.9)),
  mediaShare: between(0.6, 1),
  lineShare: between(0.5, 1),
  drainedShare: fc.oneof(fc.constant(0), between(0, 0.8)),
  standpipeBore_mm: maybe(fc.integer({ min: 15, max: 110 })),
  drainHole_mm: maybe(fc.integer({ min: 3, max: 30 })),
  higher_mm: fc.integer({ min: 0, max: 900 }),
});

type BedSeed = typeof bedSeed extends fc.Arbitrary<infer T> ? T : never;

/** What a pump may tell besides its flow: a curve that falls, a pipe, a timer, its watts. */
const pumpFacts = fc.record(
  {
    curve: fc
      .tuple(
        fc.array(fc.tuple(fc.integer({ min: 50, max: 2500 }), between(0.05, 1)), {
          minLength: 1,
          maxLength: 5,
        }),
        between(0.2, 8),
        fc.constantFrom('fromNothing', 'fromSome'),
      )
      .map(([steps, top_m, begins]) => fallingCurve(steps, top_m, begins)),
    power_W: between(1, 200),
    pipe: fc.record({
      bore_mm: between(8, 60),
      length_m: between(0.5, 20),
      bends: fc.integer({ min: 0, max: 10 }),
    }),
    timer: fc.record({ on_min: fc.integer({ min: 1, max: 90 }), off_min: fc.integer({ min: 1, max: 90 }) }),
  },
  { requiredKeys: [] },
);

function fallingCurve(
  steps: readonly (readonly [more_L_h: number, left: number])[],
  top_m: number,
  begins: 'fromNothing' | 'fromSome',
): readonly { readonly flow_L_h: number; readonly head_m: number }[] {
  let flow_L_h = 0;
  let head_m = top_m;
  const later = steps.map(([more_L_h, left]) => {
    flow_L_h += more_L_h;
    head_m *= left * 0.98;
    return { flow_L_h, head_m };
  });
  return begins === 'fromNothing' ? [{ flow_L_h: 0, head_m: top_m }, ...later] : later;
}

const stock = fc.record(
  {
    kind: fc.constantFrom(...Object.keys(content.fish)),
    present: fc.integer({ min: 0, max: 120 }),
    massNow_g: fc.oneof(fc.integer({ min: 1, max: 900 }), between(0.1, 60)),
    massAdult_g: fc.oneof(fc.constant(500), fc.integer({ min: 2, max: 3000 })),
    keeperRation_frac: between(0, 0.1),
  },
  { requiredKeys: ['kind', 'present', 'massNow_g'] },
);

/** Readings of tank and tap, air and place: what a keeper may add later. */
const keeping = fc.record(
  {
    alkalinity_mg_L: between(0, 400),
    tan_mg_L: between(0, 5),
    green: fc.constantFrom('green', 'clear'),
    altitude_m: fc.integer({ min: 0, max: 3500 }),
    air: fc.record({ flow_L_min: between(0.5, 60), stones: fc.integer({ min: 1, max: 8 }), depth_mm: deep }),
    tap: fc.record(
      {
        pH: between(5, 10),
        alkalinity_mg_L: between(0, 400),
        water_degC: between(2, 30),
        chlorine_mg_L: between(0, 3),
        disinfectant: fc.constantFrom('none', 'chlorine', 'chloramine', 'unknown'),
      },
      { requiredKeys: ['pH', 'alkalinity_mg_L', 'water_degC', 'disinfectant'] },
    ),
    feedProtein_frac: between(0.2, 0.5),
  },
  { requiredKeys: [] },
);

/** What a system is made of, while every bed can still be shrunk to what the pump's vessel can fill. */
const parts = fc
  .record({
    tank: vessel,
    sump: maybe(vessel),
    seeds: fc.array(bedSeed, { minLength: 1, maxLength: 4 }),
    flow_L_h: fc.integer({ min: 50, max: 6000 }),
    pumpMore: pumpFacts,
    intakeShare: between(0, 0.95),
    fish: maybe(stock),
    spoon_g: maybe(between(0.5, 20)),
    pH: maybe(between(4, 11)),
    now_degC: maybe(between(-2, 40)),
    keeping,
  })
  .filter(({ tank, sump, seeds }) => smallestScale <= shrunk(seeds, lowerOf(tank, sump, seeds)).by)
  .filter(({ tank, seeds }) =>
    basketsOf(seeds).every((seed) => slimmest_mm <= basketWidth_mm(seed, tank, seeds)),
  );

/** A system as a file holds it. */
export const systemFiles: fc.Arbitrary<object> = parts.map(
  ({ tank, sump, seeds, flow_L_h, pumpMore, intakeShare, fish, spoon_g, pH, now_degC, keeping }) => {
    const { alkalinity_mg_L, tan_mg_L, green, ...later } = keeping;
    const read = Object.fromEntries(
      Object.entries({ alkalinity_mg_L, tan_mg_L, green }).filter(([, one]) => one !== undefined),
    );
    const pumped = seeds.some((seed) => seed.mode !== 'inTank');
    const lower = lowerOf(tank, sump, seeds);
    const { beds, taken_L } = bedsOver(seeds, tank, lower);
    const low_mm = low(lower, lower === tank ? beds : [], taken_L);
    return {
      id: 'any-system',
      name: 'Any system',
      tank,
      ...(pumped && sump ? { sump } : {}),
      beds,
      ...(pumped ? { pump: { flow_L_h, intake_mm: Math.floor(low_mm * intakeShare), ...pumpMore } } : {}),
      ...(fish ? { fish } : {}),
      ...(spoon_g === undefined ? {} : { spoon_g }),
      ...later,
      water: {
        ...read,
        ...(pH === undefined ? {} : { pH }),
        ...(now_degC === undefined ? {} : { now_degC }),
      },
    };
  },
);

function full_L(of: RawVessel): number {
  return volume_L(of.container, of.full_mm) * of.count;
}

/** Lowest level in the pump's vessel; its intake must lie below. */
function low(of: RawVessel, beds: readonly RawBed[], taken_L: number): number {
  const baskets = beds
    .filter((bed) => bed.mode === 'inTank')
    .map((bed) => ({ ...bed, media: { void_frac: { low: void_fracOf(bed) } } }));
  const lower = { name: 'tank' as const, vessel: of, baskets };
  return levelOf_mm(lower, waterBelow_L(lower, of.full_mm) - taken_L);
}

function void_fracOf({ media, bucketTest }: RawBed): number {
  return bucketTest ? bucketTest.water_L / bucketTest.media_L : (content.media[media]?.void_frac.low ?? 0);
}

function bedsOver(
  seeds: readonly BedSeed[],
  tank: RawVessel,
  lower: RawVessel,
): { readonly beds: readonly RawBed[]; readonly taken_L: number } {
  const { by, taken_L } = shrunk(seeds, lower);
  const beds = seeds.map((seed, i) =>
    seed.mode === 'inTank' ? basket(seed, i, tank, seeds) : pumpedBed(seed, i, lower, by),
  );
  return { beds, taken_L };
}

/** Smaller than this share of its size no bed is a bed any more. */
const smallestScale = 0.3;

function lowerOf(tank: RawVessel, sump: RawVessel | undefined, seeds: readonly BedSeed[]): RawVessel {
  return sump && seeds.some((seed) => seed.mode !== 'inTank') ? sump : tank;
}

/** How much smaller the pumped beds are made, so that they take at most half of the water below. */
function shrunk(
  seeds: readonly BedSeed[],
  lower: RawVessel,
): { readonly by: number; readonly taken_L: number } {
  const room_L = full_L(lower) * 0.45;
  const wanted_L = seeds.reduce((sum, seed) => sum + (seed.mode === 'inTank' ? 0 : moved_L(seed, 1)), 0);
  return { by: wanted_L > room_L ? Math.cbrt(room_L / wanted_L) : 1, taken_L: Math.min(wanted_L, room_L) };
}

function moved_L(seed: BedSeed, by: number): number {
  if (seed.mode === 'constantFlood') return 0;
  const { line_mm, drained_mm, within } = measures(seed, by);
  const void_frac = seed.bucketShare ?? content.media[seed.media]?.void_frac.high ?? 1;
  return (volume_L(within, line_mm) - volume_L(within, drained_mm)) * seed.count * void_frac;
}

function measures(seed: BedSeed, by: number) {
  const within = scaled(seed.container, by);
  const media_mm = rim_mm(within) * seed.mediaShare;
  const line_mm = media_mm * seed.lineShare;
  return { within, media_mm, line_mm, drained_mm: line_mm * seed.drainedShare };
}

function common(seed: BedSeed, index: number) {
  return {
    name: `Bed ${index + 1}`,
    count: seed.count,
    mode: seed.mode,
    media: seed.media,
    ...(seed.bucketShare === undefined
      ? {}
      : { bucketTest: { media_L: 10, water_L: 10 * seed.bucketShare } }),
  };
}

function pumpedBed(seed: BedSeed, index: number, lower: RawVessel, by: number): RawBed {
  const { within, media_mm, line_mm, drained_mm } = measures(seed, by);
  const lowest_mm = seed.mode === 'constantFlood' ? line_mm : drained_mm;
  return {
    ...common(seed, index),
    container: within,
    mediaDepth_mm: media_mm,
    waterLine_mm: line_mm,
    drained_mm,
    ...(seed.standpipeBore_mm === undefined ? {} : { standpipeBore_mm: seed.standpipeBore_mm }),
    ...(seed.drainHole_mm === undefined ? {} : { drainHole_mm: seed.drainHole_mm }),
    above_mm: Math.max(0, Math.ceil(lower.above_mm + lower.full_mm - lowest_mm)) + seed.higher_mm,
  };
}

/** A slimmer basket holds no plant. */
const slimmest_mm = 40;

function basketsOf(seeds: readonly BedSeed[]): readonly BedSeed[] {
  return seeds.filter((seed) => seed.mode === 'inTank');
}

/** Where a basket stands and how high it reaches: out of the water, and in a drum on its side off the narrow floor. */
function reach(
  seed: BedSeed,
  tank: RawVessel,
): { readonly above_mm: number; readonly mediaDepth_mm: number } {
  const floor_mm = tank.container.shape === 'lyingCylinder' ? 0.1 * tank.full_mm : 0;
  const above_mm = Math.floor(Math.max(floor_mm, tank.full_mm * seed.drainedShare));
  const top_mm = tank.full_mm + (rim_mm(tank.container) - tank.full_mm) * seed.mediaShare;
  return { above_mm, mediaDepth_mm: top_mm - above_mm };
}

/** Slim enough that all baskets together take at most a third of the tank where it is narrowest beside them. */
function basketWidth_mm(seed: BedSeed, tank: RawVessel, seeds: readonly BedSeed[]): number {
  const all = basketsOf(seeds);
  const { above_mm, mediaDepth_mm } = reach(seed, tank);
  const heights = Array.from({ length: 9 }, (_, i) => above_mm + (mediaDepth_mm * i) / 8);
  const dips = tank.container.shape === 'dipTable' ? tank.container.dips.map((dip) => dip.depth_mm - 1) : [];
  const narrowest_m2 = Math.min(...[...heights, ...dips].map((height) => area_m2(tank.container, height)));
  return Math.sqrt((narrowest_m2 * tank.count * 1e6) / 3 / (all.length * seed.count));
}

/** A box of media in the tank, high enough to reach out of its water. */
function basket(seed: BedSeed, index: number, tank: RawVessel, seeds: readonly BedSeed[]): RawBed {
  const width_mm = basketWidth_mm(seed, tank, seeds);
  const { above_mm, mediaDepth_mm } = reach(seed, tank);
  return {
    ...common(seed, index),
    container: { shape: 'box', length_mm: width_mm, width_mm, depth_mm: mediaDepth_mm },
    mediaDepth_mm,
    drained_mm: 0,
    above_mm,
  };
}

/** The same container with every length so many times as long. */
export function scaled<T extends Container>(of: T, by: number): T {
  const measures = Object.entries(of).map(([key, value]) => {
    if (key !== 'dips') return [key, key.endsWith('_mm') ? Number(value) * by : value];
    const dips = value as readonly { readonly depth_mm: number; readonly volume_L: number }[];
    return [key, dips.map((dip) => ({ depth_mm: dip.depth_mm * by, volume_L: dip.volume_L * by ** 3 }))];
  });
  return Object.fromEntries(measures) as T;
}

/** A system and how it was written down; of one without beds only the tank was. */
export type Written = { readonly system: System; readonly raw: SystemFile };

/** Valid systems, one in eight of them without any bed, as a keeper has it on the first day. */
export function written(): fc.Arbitrary<Written> {
  const eighth = fc.integer({ min: 0, max: 7 });
  const any = fc.tuple(systemFiles, eighth).map(([file, bare]): Written => {
    const { system, raw } = checked(file);
    return bare === 0 ? { system: { ...system, beds: [] }, raw: { ...raw, beds: [] } } : { system, raw };
  });
  // Half of them spread evenly, half of them near the ends of every range.
  return fc.oneof(fc.noBias(any), any);
}

export function systems(): fc.Arbitrary<System> {
  return written().map(({ system }) => system);
}

/** The system of a file that has no problem; one that has is a mistake of this generator. */
export function checked(file: object): Written {
  const result = toSystem(file, content);
  if ('system' in result) return result;
  throw new Error(
    `made a system that is refused: ${JSON.stringify(result.problems)} ${JSON.stringify(file)}`,
  );
}
