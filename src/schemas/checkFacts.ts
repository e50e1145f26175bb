/** Checks on fish, media and terms that need more than one field, or another file. */
import type { Problem } from '../core/problem.ts';
import { checkContainer } from './checkContainer.ts';
import { checkPumpCurve } from './checkPumpCurve.ts';
import type { ClimateFile } from './climate.ts';
import type { FishFile } from './fish.ts';
import type { MediaFile } from './media.ts';
import type { StartContainerFile, StartPumpFile } from './starts.ts';
import type { TermFile } from './term.ts';
import { known, rising } from './sourced.ts';

export function checkFish(fish: FishFile, sources: readonly string[]): readonly Problem[] {
  const { alive_degC, good_degC, limits } = fish;
  return [
    ...rising(alive_degC.min, good_degC.min, ['good_degC', 'min'], 'degC'),
    ...rising(good_degC.min, good_degC.max, ['good_degC', 'max'], 'degC'),
    ...rising(good_degC.max, alive_degC.max, ['alive_degC', 'max'], 'degC'),
    ...rising(fish.noFeedBelow_degC, good_degC.min, ['good_degC', 'min'], 'degC'),
    ...rising(good_degC.max, fish.callAbove_degC, ['callAbove_degC'], 'degC'),
    ...rising(fish.callAbove_degC, alive_degC.max, ['callAbove_degC'], 'degC'),
    ...rising(limits.pHMin, limits.pHMax, ['limits', 'pHMax'], 'pH'),
    ...known(fish.temperatureSource, ['temperatureSource'], sources),
    ...known(fish.noFeedSource, ['noFeedSource'], sources),
    ...known(fish.callAboveSource, ['callAboveSource'], sources),
    ...known(limits.source, ['limits', 'source'], sources),
    ...(fish.growth ? checkGrowth(fish.growth, sources) : []),
    ...known(fish.massAdultSource, ['massAdultSource'], sources),
  ];
}

function checkGrowth(
  growth: NonNullable<FishFile['growth']>,
  sources: readonly string[],
): readonly Problem[] {
  return [
    ...rising(growth.low, growth.high, ['growth', 'high'], ''),
    ...rising(growth.from_degC, growth.to_degC, ['growth', 'to_degC'], 'degC'),
    ...known(growth.source, ['growth', 'source'], sources),
  ];
}

export function checkClimate(climate: ClimateFile, sources: readonly string[]): readonly Problem[] {
  const months = climate.min_degC.flatMap((min, month) =>
    rising(min, climate.max_degC[month] ?? min, ['max_degC', month], 'degC'),
  );
  return [...months, ...known(climate.source, ['source'], sources)];
}

export function checkStartContainer(
  start: StartContainerFile,
  sources: readonly string[],
): readonly Problem[] {
  return [...checkContainer(start.container, ['container']), ...known(start.source, ['source'], sources)];
}

export function checkStartPump(start: StartPumpFile, sources: readonly string[]): readonly Problem[] {
  return [
    ...checkPumpCurve({ curve: start.curve }, []),
    ...rising(start.power_W.low, start.power_W.high, ['power_W', 'high'], 'W'),
    ...known(start.source, ['source'], sources),
  ];
}

export function checkMedia(media: MediaFile, sources: readonly string[]): readonly Problem[] {
  const { void_frac, voidSources } = media;
  return [
    ...rising(void_frac.low, void_frac.likely, ['void_frac', 'likely'], 'frac'),
    ...rising(void_frac.likely, void_frac.high, ['void_frac', 'high'], 'frac'),
    ...known(voidSources.low, ['voidSources', 'low'], sources),
    ...known(voidSources.likely, ['voidSources', 'likely'], sources),
    ...known(voidSources.high, ['voidSources', 'high'], sources),
    ...(media.bulk ? checkBulk(media.bulk, sources) : []),
  ];
}

function checkBulk(bulk: NonNullable<MediaFile['bulk']>, sources: readonly string[]): readonly Problem[] {
  return [
    ...rising(bulk.low_kg_m3, bulk.likely_kg_m3, ['bulk', 'likely_kg_m3'], 'kg_m3'),
    ...rising(bulk.likely_kg_m3, bulk.high_kg_m3, ['bulk', 'high_kg_m3'], 'kg_m3'),
    ...known(bulk.source, ['bulk', 'source'], sources),
  ];
}

export function checkTerm(term: TermFile, sources: readonly string[]): readonly Problem[] {
  return term.source === undefined ? [] : known(term.source, ['source'], sources);
}
