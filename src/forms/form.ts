/** What every field of the form needs to know, handed down once. */
import { createContext } from 'preact';
import { useContext } from 'preact/hooks';
import type { UnitSystem } from '../wording/quantity.ts';
import type { Draft, Place } from './draft.ts';
import type { PlannerContent } from './messages.ts';
import type { Trouble } from './troubles.ts';

export type Form = {
  readonly content: PlannerContent;
  readonly draft: Draft;
  readonly units: UnitSystem;
  readonly troubles: readonly Trouble[];
  readonly edit: (place: Place, text: string) => void;
  /** Any larger change of the draft: a bed more, a part less. */
  readonly change: (next: Draft) => void;
};

const Current = createContext<Form | null>(null);

export const FormProvider = Current.Provider;

export function useForm(): Form {
  const form = useContext(Current);
  if (form === null) throw new Error('a field stands outside the form');
  return form;
}

/** The id of a field or of a group of fields. */
export function idOf(place: Place): string {
  return ['field', ...place].join('-');
}
