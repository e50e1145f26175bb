import type { Crop } from '../core/crops/crop.ts';
import type { ClimateFile } from './climate.ts';
import type { FishFile } from './fish.ts';
import type { MediaFile } from './media.ts';

/** What a system file refers to by name, as plain data that can also be handed to a page. */
export type Facts = {
  readonly fish: Readonly<Record<string, FishFile>>;
  readonly climates: Readonly<Record<string, ClimateFile>>;
  readonly media: Readonly<Record<string, MediaFile>>;
};

/** What a season's file refers to by name. */
export type CropFacts = {
  readonly crops: Readonly<Record<string, Crop>>;
  readonly climates: Readonly<Record<string, ClimateFile>>;
};

/** The entry of a name; a name such as `constructor` finds nothing. */
export function entry<T>(of: Readonly<Record<string, T>>, name: string): T | undefined {
  return Object.hasOwn(of, name) ? of[name] : undefined;
}
