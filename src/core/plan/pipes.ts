/** The pipe run of the section: riser, drops into the beds, standpipes, and the way back. */
import type { System } from '../system.ts';
import type { Point, Section, SectionPipe, SectionVessel } from './figure.ts';
import { bedHoles, overflowHoles } from './sectionHoles.ts';

/** Room that pipes keep in the drawing. Ours, for legibility; nothing is built by it. */
const clear_mm = 60;

/**
 * Where the supply pipe rises: just inside the left wall of the pump's vessel.
 * Left wall plus 18 per cent of the floor's width, at most 150 mm.
 * @param system a checked system with a pump
 * @param low tank and sump, placed
 * @returns mm from the drawing's origin
 * @valid a place in the drawing only; nothing is built by it
 * @source geometry
 * @example riserX_mm({ sump: null }, [{ role: 'tank', outline: [[0, 700], [0, 0], [500, 0], [500, 700]] }]) // 90
 */
export function riserX_mm(system: System, low: readonly SectionVessel[]): number {
  const vessel = pumpVessel(system, low);
  const [left, right] = floorSpan(vessel);
  return left + Math.min(0.18 * (right - left), 150);
}

/** What of a section is made of pipe. */
export type PipeRun = Pick<Section, 'pipes' | 'holes' | 'pump'>;

/**
 * Pipes and pump of a placed section.
 * @param system a checked system
 * @param vessels all vessels, placed
 * @returns the pipes in the order of the water, the holes they need, and the pump
 * @source geometry
 */
export function pipes(system: System, vessels: readonly SectionVessel[]): PipeRun {
  const low = vessels.filter((vessel) => vessel.role !== 'bed');
  const fed = vessels.filter(
    (vessel) => vessel.role === 'bed' && system.beds[vessel.index]?.mode !== 'inTank',
  );
  if (system.pump === null) return { pipes: [], holes: [], pump: null };
  const from = pumpVessel(system, low);
  const x_mm = riserX_mm(system, low);
  const floor = floorY(from);
  const pump = { x_mm, y_mm: floor, intakeY_mm: floor + system.pump.intake_mm };
  const ways = fed.map((bed, i) => wayBack(system, bed, from, vessels, i));
  const over = overflow(system, low);
  return {
    pump,
    pipes: [...supply(system, pump, fed, low), ...ways.flat(), ...over],
    holes: [
      ...fed.flatMap((bed, i) => bedHoles(bed, ways[i] ?? [], drainHole_mm(system, bed))),
      ...low
        .filter((vessel) => vessel.role === 'tank')
        .slice(-1)
        .flatMap((tank) => overflowHoles(tank, over)),
    ],
  };
}

/** What a timer bed drains through; null for others and where it was not measured. */
function drainHole_mm(system: System, { index, mode }: SectionVessel): number | null {
  return mode === 'timer' ? (system.beds[index]?.drainHole_mm ?? null) : null;
}

function pumpVessel(system: System, low: readonly SectionVessel[]): SectionVessel {
  const vessel = low.find((one) => one.role === (system.sump ? 'sump' : 'tank'));
  if (vessel === undefined) throw new RangeError('a section without a tank');
  return vessel;
}

function xs(vessel: SectionVessel): readonly number[] {
  return vessel.outline.map(([x]) => x);
}

function ys(vessel: SectionVessel): readonly number[] {
  return vessel.outline.map(([, y]) => y);
}

function floorY(vessel: SectionVessel): number {
  return Math.min(...ys(vessel));
}

function rimY(vessel: SectionVessel): number {
  return Math.max(...ys(vessel));
}

/** Inside walls at the floor; for a round floor, where it has half its width. */
function floorSpan(vessel: SectionVessel): readonly [number, number] {
  const limit = floorY(vessel) + 0.15 * (rimY(vessel) - floorY(vessel));
  const low = vessel.outline.filter(([, y]) => y <= limit).map(([x]) => x);
  return [Math.min(...low), Math.max(...low)];
}

/** Up from the pump, across above the highest bed, down onto each bed near its left end. */
function supply(
  system: System,
  pump: { readonly x_mm: number; readonly intakeY_mm: number },
  fed: readonly SectionVessel[],
  low: readonly SectionVessel[],
): readonly SectionPipe[] {
  const targets = system.sump ? [...fed, ...low.filter((one) => one.role === 'tank')] : fed;
  return targets.map((bed) => {
    const x = Math.min(...xs(bed)) + 0.14 * (Math.max(...xs(bed)) - Math.min(...xs(bed)));
    const top = rimY(bed) + clear_mm;
    const points: Point[] = [
      [pump.x_mm, pump.intakeY_mm],
      [pump.x_mm, top],
      [x, top],
      [x, rimY(bed) - 0.2 * clear_mm],
    ];
    return { role: 'supply', points, bore_mm: null };
  });
}

/** Standpipe through the bed's floor, then straight down, or round everything that stands in the way. */
function wayBack(
  system: System,
  bed: SectionVessel,
  into: SectionVessel,
  vessels: readonly SectionVessel[],
  order: number,
): readonly SectionPipe[] {
  const left = Math.min(...xs(bed));
  const width = Math.max(...xs(bed)) - left;
  const wish = left + 0.8 * width;
  const [tankLeft, tankRight] = [Math.min(...xs(into)), Math.max(...xs(into))];
  const middle = (Math.max(tankLeft, left) + Math.min(tankRight, left + width)) / 2;
  const over = wish > tankLeft + clear_mm && wish < tankRight - clear_mm;
  const canReach = Math.min(tankRight, left + width) - Math.max(tankLeft, left) > 3 * clear_mm;
  const x = over ? wish : canReach ? Math.max(middle, left + 0.4 * width) : wish;
  const line = bed.levels.find((one) => one.key === 'waterLine')?.y_mm ?? floorY(bed);
  const bore_mm = system.beds[bed.index]?.standpipeBore_mm ?? null;
  const inBed: SectionPipe = {
    role: 'standpipe',
    points: [
      [x, line],
      [x, floorY(bed)],
    ],
    bore_mm,
  };
  return [inBed, { role: 'return', points: returnPath(bed, into, vessels, x, order), bore_mm }];
}

function returnPath(
  bed: SectionVessel,
  into: SectionVessel,
  vessels: readonly SectionVessel[],
  x: number,
  order: number,
): readonly Point[] {
  const [tankLeft, tankRight] = [Math.min(...xs(into)), Math.max(...xs(into))];
  const start: Point = [x, floorY(bed)];
  const end_mm = Math.min(rimY(into) + 0.3 * clear_mm, floorY(bed) - 0.5 * clear_mm);
  const between = vessels.filter(
    (one) =>
      one.role === 'bed' &&
      one !== bed &&
      rimY(one) <= floorY(bed) &&
      Math.min(...xs(one)) < x &&
      x < Math.max(...xs(one)),
  );
  const inside = x > tankLeft && x < tankRight;
  if (between.length === 0 && inside) return [start, [x, end_mm]];
  const below = floorY(bed) - 0.6 * clear_mm;
  const out = Math.max(x, ...between.map((one) => Math.max(...xs(one)) + clear_mm * (0.8 + 0.6 * order)));
  if (between.length > 0 && out < tankRight - clear_mm) {
    return [start, [x, below], [out, below], [out, end_mm]];
  }
  const across = rimY(into) + 0.6 * clear_mm + 0.5 * clear_mm * order;
  const low = Math.min(across, below);
  const target = x < tankLeft ? tankLeft + clear_mm : tankRight - clear_mm * (1 + 0.6 * order);
  if (between.length === 0) return [start, [x, low], [target, low], [target, end_mm]];
  return [start, [x, below], [out, below], [out, across], [target, across], [target, end_mm]];
}

/** With a sump the tank overflows into it at its full line. */
function overflow(system: System, low: readonly SectionVessel[]): readonly SectionPipe[] {
  const tank = low.filter((one) => one.role === 'tank').at(-1);
  const sump = low.find((one) => one.role === 'sump');
  if (system.sump === null || tank === undefined || sump === undefined) return [];
  const full = tank.levels.find((one) => one.key === 'full');
  if (full === undefined) return [];
  const x = Math.min(...xs(sump)) + clear_mm;
  const y = Math.max(full.y_mm, rimY(sump) + 0.4 * clear_mm);
  const points: Point[] = [
    [full.right_mm, full.y_mm],
    ...(y > full.y_mm ? [[full.right_mm + 0.5 * clear_mm, full.y_mm] as const] : []),
    [x, full.y_mm],
    [x, Math.min(full.y_mm, rimY(sump)) - 0.3 * clear_mm],
  ];
  return [{ role: 'overflow', points, bore_mm: null }];
}
