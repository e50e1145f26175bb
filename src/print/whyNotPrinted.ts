/** Why a sheet could not be printed, for whoever wrote the file of its system. */
import { CoverError, type Uncovered } from '../paper/cover.ts';
import { type Catalogue, say } from '../wording/catalogue.ts';
import { pathOf } from '../wording/problem.ts';
import { fieldWords } from '../wording/problemField.ts';

type Place = readonly (string | number)[];
type Text = { readonly place: Place; readonly text: string };

/** Characters that no font has are told at the fields that hold them; everything else in its own words. */
export function whyNotPrinted(error: unknown, raw: unknown, catalogue: Catalogue): string {
  const message = error instanceof Error ? error.message : String(error);
  if (!(error instanceof CoverError)) return message;
  const told = textsIn(raw, []).flatMap((text) =>
    error.uncovered.flatMap((one) => toldAt(text, one, catalogue)),
  );
  return told.length === 0 ? message : told.join(' ');
}

function toldAt({ place, text }: Text, { character, codePoint }: Uncovered, catalogue: Catalogue): string[] {
  if (!text.normalize('NFC').includes(character)) return [];
  const field = fieldWords(place, catalogue).name;
  const sentence = say(catalogue, 'planner.problems.uncovered', { field, character, code: codePoint });
  return [`${pathOf(place)}: ${sentence}`];
}

/** Every text of a file, with its place. */
function textsIn(value: unknown, place: Place): readonly Text[] {
  if (typeof value === 'string') return [{ place, text: value }];
  if (Array.isArray(value)) return value.flatMap((one: unknown, at) => textsIn(one, [...place, at]));
  if (typeof value !== 'object' || value === null) return [];
  return Object.entries(value).flatMap(([key, one]) => textsIn(one, [...place, key]));
}
