/** What the measures of one bed, or of a bed and the tank below it, cannot be together. */
import type { Problem } from '../core/problem.ts';
import type { BedFile } from './bed.ts';
import { checkContainer } from './checkContainer.ts';
import { knownTo_mm } from './container.ts';
import type { Path } from './schemaAt.ts';
import type { VesselFile } from './systemFile.ts';

/** Everything wrong with one bed; `lower` is the vessel its water returns to, where that one can be read. */
export function checkBed(
  bed: BedFile,
  tank: VesselFile | null,
  lower: VesselFile | null,
  place: Path,
): readonly Problem[] {
  return [
    ...checkContainer(bed.container, [...place, 'container']),
    ...mediaProblems(bed, place),
    ...bucketProblems(bed, place),
    ...(bed.mode === 'inTank' ? basketProblems(bed, tank, place) : lineProblems(bed, lower, place)),
  ];
}

function over(code: Problem['code'], value: number, max: number, place: Path): readonly Problem[] {
  return value > max ? [{ code, place, given: String(value), max, unit: 'mm' }] : [];
}

function under(code: Problem['code'], value: number, min: number, place: Path): readonly Problem[] {
  return value < min ? [{ code, place, given: String(value), min, unit: 'mm' }] : [];
}

function mediaProblems(bed: BedFile, place: Path): readonly Problem[] {
  const at = [...place, 'mediaDepth_mm'];
  const aboveRim = over('mediaAboveRim', bed.mediaDepth_mm, bed.container.depth_mm, at);
  if (aboveRim.length > 0) return aboveRim;
  return over('dipTableShort', bed.mediaDepth_mm, knownTo_mm(bed.container), at);
}

function bucketProblems(bed: BedFile, place: Path): readonly Problem[] {
  const { bucketTest } = bed;
  if (!bucketTest || bucketTest.water_L < bucketTest.media_L) return [];
  const at = [...place, 'bucketTest', 'water_L'];
  return [
    { code: 'bucketTest', place: at, given: String(bucketTest.water_L), max: bucketTest.media_L, unit: 'L' },
  ];
}

function lineProblems(bed: BedFile, lower: VesselFile | null, place: Path): readonly Problem[] {
  const at = [...place, 'waterLine_mm'];
  if (bed.waterLine_mm === undefined) {
    return [{ code: 'missing', place: at, min: 10, max: bed.mediaDepth_mm, unit: 'mm' }];
  }
  return [
    ...over('waterAboveMedia', bed.waterLine_mm, bed.mediaDepth_mm, at),
    ...drainProblems(bed, bed.waterLine_mm, place),
    ...(lower ? returnProblems(bed, bed.waterLine_mm, lower, place) : []),
  ];
}

function drainProblems(bed: BedFile, line_mm: number, place: Path): readonly Problem[] {
  if (bed.drained_mm < line_mm) return [];
  const at = [...place, 'drained_mm'];
  return [{ code: 'drainAboveLine', place: at, given: String(bed.drained_mm), max: line_mm, unit: 'mm' }];
}

/** Water runs back by its weight alone, so what is left in the bed stands above the full line below. */
function returnProblems(bed: BedFile, line_mm: number, lower: VesselFile, place: Path): readonly Problem[] {
  const lowest_mm = bed.mode === 'constantFlood' ? line_mm : bed.drained_mm;
  const least_mm = lower.above_mm + lower.full_mm - lowest_mm;
  return under('bedBelowReturn', bed.above_mm, least_mm, [...place, 'above_mm']);
}

/** A basket stands on the tank's floor or hangs in it: its foot in the water, its media not above the rim. */
function basketProblems(bed: BedFile, tank: VesselFile | null, place: Path): readonly Problem[] {
  const lineGiven: Problem = {
    code: 'lineSetByTank',
    place: [...place, 'waterLine_mm'],
    given: String(bed.waterLine_mm),
  };
  const line = bed.waterLine_mm === undefined ? [] : [lineGiven];
  if (!tank) return line;
  const above = [...place, 'above_mm'];
  const dry = over('basketAboveWater', bed.above_mm, tank.full_mm, above);
  if (dry.length > 0) return [...line, ...dry];
  const media_mm = bed.above_mm + bed.mediaDepth_mm;
  return [
    ...line,
    ...over('basketAboveRim', media_mm, tank.container.depth_mm, [...place, 'mediaDepth_mm']),
    ...under('waterAboveMedia', media_mm, tank.full_mm, [...place, 'mediaDepth_mm']),
  ];
}
