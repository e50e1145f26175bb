/** What no single measure of a container shows, but several together do. */
import type { Problem } from '../core/problem.ts';
import type { Container } from '../core/system.ts';
import { type ContainerFile, toContainer } from './container.ts';
import type { Path } from './schemaAt.ts';

/** A floor wider than this many times the rim is a slip of the pen, not a tub. */
const widestFloor = 3;

/** Litres that fill a box to the last drop are not too many because a product was rounded. */
const roundingError = 1e-9;

/** Measures of one container that cannot be true together. */
export function checkContainer(file: ContainerFile, place: Path): readonly Problem[] {
  const container = toContainer(file);
  switch (container.shape) {
    case 'lyingCylinder':
      return atMost('cutAboveDiameter', container.depth_mm, container.diameter_mm, [...place, 'depth_mm']);
    case 'taperedBox':
      return [
        ...floor(container.floorLength_mm, container.topLength_mm, [...place, 'floorLength_mm']),
        ...floor(container.floorWidth_mm, container.topWidth_mm, [...place, 'floorWidth_mm']),
      ];
    case 'taperedRound':
      return floor(container.floorDiameter_mm, container.topDiameter_mm, [...place, 'floorDiameter_mm']);
    case 'obround':
    case 'ellipse':
      return [
        ...floor(container.floorLength_mm, container.length_mm, [...place, 'floorLength_mm']),
        ...floor(container.floorWidth_mm, container.width_mm, [...place, 'floorWidth_mm']),
        ...(container.shape === 'obround' ? obroundEnds(container, place) : []),
      ];
    case 'dipTable':
      return [...risingDips(container.dips, place), ...dipsFit(container, place)];
    default:
      return [];
  }
}

function atMost(code: Problem['code'], value: number, max: number, place: Path): readonly Problem[] {
  return value > max ? [{ code, place, given: String(value), max, unit: 'mm' }] : [];
}

function floor(floor_mm: number, top_mm: number, place: Path): readonly Problem[] {
  return atMost('wallTaper', floor_mm, top_mm * widestFloor, place);
}

type RoundEnded = Extract<ReturnType<typeof toContainer>, { readonly shape: 'obround' | 'ellipse' }>;

/** Half-round ends need at least a full circle of length, at the rim and at the floor. */
function obroundEnds(container: RoundEnded, place: Path): readonly Problem[] {
  const ends = [
    [container.length_mm, container.width_mm, 'length_mm'],
    [container.floorLength_mm, container.floorWidth_mm, 'floorLength_mm'],
  ] as const;
  return ends
    .filter(([length_mm, width_mm]) => length_mm < width_mm)
    .map(([length_mm, width_mm, key]) => ({
      code: 'tooLongForShape',
      place: [...place, key],
      given: String(length_mm),
      min: width_mm,
      unit: 'mm',
    }));
}

type DipTable = Extract<Container, { readonly shape: 'dipTable' }>;

function risingDips(dips: DipTable['dips'], place: Path): readonly Problem[] {
  return dips.flatMap((dip, index) => {
    const before = dips[index - 1];
    if (!before) return [];
    const keys = (['depth_mm', 'volume_L'] as const).filter((key) => dip[key] <= before[key]);
    return keys.map(
      (key): Problem => ({
        code: 'dipTableOrder',
        place: [...place, 'dips', index, key],
        given: String(dip[key]),
        min: before[key],
        unit: key === 'depth_mm' ? 'mm' : 'L',
      }),
    );
  });
}

/** No dip above the rim, and no more water than the outside measures could ever hold. */
function dipsFit(table: DipTable, place: Path): readonly Problem[] {
  const most_L = (depth_mm: number) => (table.outsideLength_mm * table.outsideWidth_mm * depth_mm) / 1e6;
  return table.dips.flatMap((dip, index) => {
    const at = [...place, 'dips', index];
    const tooMuch: Problem = {
      code: 'dipTableTooMuch',
      place: [...at, 'volume_L'],
      given: String(dip.volume_L),
      max: most_L(dip.depth_mm),
      unit: 'L',
    };
    return [
      ...atMost('dipTableAboveRim', dip.depth_mm, table.depth_mm, [...at, 'depth_mm']),
      ...(dip.volume_L > most_L(dip.depth_mm) * (1 + roundingError) ? [tooMuch] : []),
    ];
  });
}
