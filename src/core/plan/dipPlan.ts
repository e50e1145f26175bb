/** A dip strip: at which height each round volume stands in the fish tank, and the lines that matter. */
import type { System } from '../system.ts';
import { gallon_L } from '../units.ts';
import { bedPlans } from './beds.ts';
import type { Table } from './figure.ts';
import { levels } from './levels.ts';
import { fishTank, levelOf_mm, waterBelow_L } from './lowerVessel.ts';

/** Marks stand no closer than this, so that they can be told apart with wet fingers. */
const closest_mm = 4;

/** A level that moves less than this stands still for the eye. */
const finest_mm = 0.5;

/** Round steps between marks. */
const steps = [1, 2, 5, 10, 20, 50, 100, 200, 500, 1000, 2000, 5000] as const;

/**
 * Marks for a strip along the wall of the fish tank.
 * Volumes round in litres and round in US gallons, up to the rim; then full line, low line and the line after a
 * change of a quarter. Apart from the plan: only who prints a strip wants hundreds of marks.
 * @param system a checked system
 * @returns one table: kind, volume, height over the inside floor
 * @valid held upright where the tank is deepest; beds empty, pump off
 * @source geometry
 */
export function dipMarks(system: System): Table {
  const at = levels(system, bedPlans(system));
  const tank = fishTank(system);
  const { full_mm, container } = tank.vessel;
  const rim_mm = container.depth_mm;
  const marks = (kind: 'litres' | 'gallons', unit_L: number) =>
    rounds(waterBelow_L(tank, rim_mm) / unit_L, rim_mm).map((round) => [
      kind,
      round * unit_L,
      levelOf_mm(tank, round * unit_L),
    ]);
  const low_mm = system.sump === null ? at.sourceLow_mm : full_mm;
  const quarter_L = at.tankFull_L - at.systemWater_L / 4;
  return {
    key: 'dipMarks',
    columns: [
      { key: 'mark', unit: 'ratio' },
      { key: 'volume', unit: 'L' },
      { key: 'height', unit: 'mm' },
    ],
    rows: [
      ...marks('litres', 1),
      ...marks('gallons', gallon_L),
      ['fullLine', at.tankFull_L, full_mm],
      ...(low_mm < full_mm - finest_mm ? [['lowLine', at.tankLow_L, low_mm]] : []),
      ...(quarter_L > 0 ? [['quarterLine', quarter_L, levelOf_mm(tank, quarter_L)]] : []),
    ],
  };
}

/** Every round volume up to the rim, as close as marks may stand on the whole. */
function rounds(rim: number, rim_mm: number): readonly number[] {
  const most = rim_mm / closest_mm;
  const step = steps.find((one) => rim / one <= most) ?? 10_000;
  return Array.from({ length: Math.floor(rim / step) }, (_, index) => (index + 1) * step);
}
