/** What the parts of the season's form need beyond its fields. */
import { createContext } from 'preact';
import { useContext } from 'preact/hooks';
import { say } from '../../wording/catalogue.ts';
import type { FieldForm } from '../form.ts';
import type { Choice } from '../fields.tsx';
import type { SeasonDraft } from './seasonDraft.ts';
import type { SeasonContent } from './seasonMessages.ts';

export type Season = FieldForm & {
  readonly content: SeasonContent;
  readonly draft: SeasonDraft;
  /** Any larger change of the draft: own months, other units. */
  readonly change: (next: SeasonDraft) => void;
};

const Current = createContext<Season | null>(null);

export const SeasonProvider = Current.Provider;

export function useSeason(): Season {
  const season = useContext(Current);
  if (season === null) throw new Error('a part of the season stands outside its form');
  return season;
}

/** The words of a closed list, for a field to choose from. */
export function choicesOf(
  { catalogue }: Season,
  field: string,
  values: readonly string[],
): readonly Choice[] {
  return values.map((value) => ({ value, text: say(catalogue, `crops.choices.${field}.${value}`) }));
}

/** Things that have names, by their names. */
export function named(of: Readonly<Record<string, { readonly name: string }>>): readonly Choice[] {
  const all = Object.entries(of).map(([value, { name }]) => ({ value, text: name }));
  return all.sort((a, b) => (a.text < b.text ? -1 : 1));
}
