/**
 * What a person wrote, from a file or from the fields of a form, into the core's System; or every problem that
 * stands in the way, at once.
 */
import type { Problem } from '../core/problem.ts';
import type { FishStock, Species } from '../core/fish.ts';
import type { Bed, Climate, Media, System } from '../core/system.ts';
import type { BedFile } from './bed.ts';
import { checkBaskets } from './baskets.ts';
import { checkAbsence } from './checkAbsence.ts';
import { checkBed } from './checkBed.ts';
import { checkIntake, checkPumpThere } from './checkLevels.ts';
import { checkPumpCurve } from './checkPumpCurve.ts';
import { checkVessel } from './checkVessel.ts';
import { toContainer } from './container.ts';
import { entry, type Facts } from './facts.ts';
import type { FishFile } from './fish.ts';
import { checkLabels } from './labels.ts';
import { readBySchema } from './issues.ts';
import { nearest } from './nearest.ts';
import { type Parts, partsOf, partsOfSound } from './parts.ts';
import { type Path, valueAt } from './schemaAt.ts';
import { type SystemFile, systemFile, type VesselFile } from './systemFile.ts';
import { voidOf } from './voidOf.ts';
import { weakest } from './weakest.ts';
import { withoutNulls } from './withoutNulls.ts';

export type ToSystem =
  /** `raw` is what was written, with everything left out filled in: the thing to keep and to attach. */
  { readonly system: System; readonly raw: SystemFile } | { readonly problems: readonly Problem[] };

/**
 * Checks a system and turns it into the core's System.
 * @param raw plain data: from YAML, from a record, from a form; numbers as numbers
 * @param facts the kinds of fish and media that it may name
 * @param place where the system stands in the whole, in front of every problem's place
 */
export function toSystem(raw: unknown, facts: Facts, place: Path = []): ToSystem {
  const given = withoutNulls(raw);
  const read = readBySchema(systemFile, given, place);
  const across = crossProblems(
    'value' in read ? partsOfSound(given, read.value) : partsOf(given),
    facts,
    place,
  );
  if ('problems' in read) return { problems: [...read.problems, ...across] };
  if (across.length > 0) return { problems: across };
  const file = filled(read.value, facts);
  return { system: systemOf(file, facts), raw: file };
}

function crossProblems(parts: Parts, facts: Facts, place: Path): readonly Problem[] {
  const lower = parts.has.sump ? parts.sump : parts.tank;
  return [
    ...(parts.tank ? checkVessel(parts.tank, [...place, 'tank']) : []),
    ...(parts.sump ? checkVessel(parts.sump, [...place, 'sump']) : []),
    ...parts.beds.flatMap((bed, index) =>
      bed ? checkBed(bed, parts.tank, lower, [...place, 'beds', index]) : [],
    ),
    ...checkBaskets(parts, facts, place),
    ...checkPumpThere(parts, place),
    ...checkPumpCurve(parts.pump, [...place, 'pump']),
    ...checkIntake(parts, facts, place),
    ...checkAbsence(parts.raw, [...place, 'absence']),
    ...checkLabels(parts.raw, [...place, 'labels']),
    ...referenceProblems(parts, facts, place),
  ];
}

function referenceProblems(parts: Parts, facts: Facts, place: Path): readonly Problem[] {
  return [
    ...parts.beds.flatMap((_, index) => reference(parts.raw, ['beds', index, 'media'], facts.media, place)),
    ...reference(parts.raw, ['fish', 'kind'], facts.fish, place),
    ...reference(parts.raw, ['climate'], facts.climates, place),
  ];
}

function reference(
  raw: unknown,
  path: Path,
  known: Readonly<Record<string, unknown>>,
  place: Path,
): readonly Problem[] {
  const name = valueAt(raw, path);
  if (typeof name !== 'string' || name.trim() === '' || entry(known, name) !== undefined) return [];
  return [referenceProblem(name, [...place, ...path], Object.keys(known))];
}

/** A name that no file bears. */
export function referenceProblem(name: string, place: Path, known: readonly string[]): Problem {
  const meant = nearest(name, known);
  return {
    code: 'reference',
    place,
    given: name,
    allowed: [...known].sort(),
    ...(meant === null ? {} : { meant }),
  };
}

function filled(file: SystemFile, facts: Facts): SystemFile {
  const fish = file.fish && {
    ...file.fish,
    massAdult_g: file.fish.massAdult_g ?? adult_g(file.fish.kind, facts),
  };
  return {
    ...file,
    tank: withContainer(file.tank),
    ...(file.sump ? { sump: withContainer(file.sump) } : {}),
    beds: file.beds.map(withContainer),
    ...(fish ? { fish } : {}),
  };
}

function withContainer<T extends VesselFile | BedFile>(part: T): T {
  return { ...part, container: toContainer(part.container) };
}

function adult_g(kind: string, facts: Facts): number | undefined {
  return entry(facts.fish, kind)?.massAdult_g;
}

function systemOf(file: SystemFile, facts: Facts): System {
  return {
    id: file.id,
    name: file.name,
    place: file.place,
    tank: vesselOf(file.tank),
    sump: file.sump ? vesselOf(file.sump) : null,
    beds: file.beds.map((bed) => bedOf(bed, file.tank, facts)),
    pump: file.pump ? pumpOf(file.pump) : null,
    fish: file.fish ? fishOf(file.fish, facts) : null,
    spoon_g: file.spoon_g ?? null,
    water: waterOf(file.water),
    altitude_m: file.altitude_m ?? null,
    air: file.air ?? null,
    tap: file.tap ? { ...file.tap, chlorine_mg_L: file.tap.chlorine_mg_L ?? null } : null,
    feedProtein_frac: file.feedProtein_frac ?? null,
    pricePerKWh: file.pricePerKWh ?? null,
    absence: file.absence ?? null,
    labels: file.labels ?? null,
    climate: file.climate === undefined ? null : climateOf(file.climate, facts),
  };
}

function waterOf(file: SystemFile['water']): System['water'] {
  return {
    pH: file?.pH ?? null,
    now_degC: file?.now_degC ?? null,
    alkalinity_mg_L: file?.alkalinity_mg_L ?? null,
    tan_mg_L: file?.tan_mg_L ?? null,
    chloride_mg_L: file?.chloride_mg_L ?? null,
    green: file?.green ?? 'clear',
  };
}

function pumpOf(file: NonNullable<SystemFile['pump']>): NonNullable<System['pump']> {
  return {
    flow_L_h: file.flow_L_h,
    intake_mm: file.intake_mm,
    curve: file.curve ?? null,
    power_W: file.power_W ?? null,
    pipe: file.pipe ?? null,
    timer: file.timer ?? null,
  };
}

function vesselOf(file: VesselFile): System['tank'] {
  return { ...file, container: toContainer(file.container) };
}

function bedOf(file: BedFile, tank: VesselFile, facts: Facts): Bed {
  const { name, count, mode, mediaDepth_mm, drained_mm, above_mm } = file;
  return {
    name,
    container: toContainer(file.container),
    count,
    mode,
    media: mediaOf(file, facts),
    mediaDepth_mm,
    waterLine_mm: file.waterLine_mm ?? tank.full_mm - above_mm,
    drained_mm,
    standpipeBore_mm: file.standpipeBore_mm ?? null,
    drainHole_mm: file.drainHole_mm ?? null,
    above_mm,
  };
}

function mediaOf(bed: BedFile, facts: Facts): Media {
  const file = entry(facts.media, bed.media);
  const void_frac = voidOf(bed, facts);
  if (!file || !void_frac) throw new Error(`media ${bed.media} was checked but is not there`);
  const { low, likely, high } = file.voidSources;
  const measured = bed.bucketTest !== undefined;
  return {
    id: bed.media,
    name: file.name,
    void_frac,
    voidFrom: measured ? 'bucketTest' : 'file',
    source: measured ? 'keeper' : weakest([low, likely, high]),
    bulk: file.bulk ?? null,
  };
}

function fishOf(file: NonNullable<SystemFile['fish']>, facts: Facts): FishStock {
  const kind = entry(facts.fish, file.kind);
  if (!kind) throw new Error(`fish ${file.kind} was checked but is not there`);
  return {
    species: speciesOf(file.kind, kind),
    present: file.present,
    massNow_g: file.massNow_g,
    massAdult_g: file.massAdult_g ?? kind.massAdult_g,
    weighed: file.weighed ?? null,
    keeperRation_frac: file.keeperRation_frac ?? null,
  };
}

/** The facts of a kind that the core works with; what else its file tells is for readers. */
function speciesOf(id: string, kind: FishFile): Species {
  const { name, use, good_degC, alive_degC, noFeedBelow_degC, callAbove_degC, limits } = kind;
  const { temperatureSource, noFeedSource, callAboveSource } = kind;
  return {
    id,
    name,
    use,
    good_degC,
    alive_degC,
    noFeedBelow_degC,
    callAbove_degC,
    temperatureSource,
    noFeedSource,
    callAboveSource,
    limits,
    growth: kind.growth ?? null,
  };
}

/** The mean of a month is the middle of its lowest and highest; stations rarely tell it apart. */
function climateOf(id: string, facts: Facts): Climate {
  const file = entry(facts.climates, id);
  if (!file) throw new Error(`climate ${id} was checked but is not there`);
  const { name, min_degC, max_degC, source } = file;
  const mean_degC = min_degC.map((min, month) => (min + (max_degC[month] ?? min)) / 2);
  return { id, name, mean_degC, min_degC, max_degC, source };
}
