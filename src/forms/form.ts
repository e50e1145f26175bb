/** What every field of a form needs to know, handed down once. */
import { createContext } from 'preact';
import { useContext } from 'preact/hooks';
import type { UnitSystem } from '../wording/quantity.ts';
import type { Draft, Fields, Place, Tree } from './draft.ts';
import type { PlannerContent } from './messages.ts';
import type { Trouble } from './troubles.ts';
import type { Words } from './words.ts';

/** What the fields of any form have in common. */
export type FieldForm = Words & {
  readonly draft: Fields;
  readonly units: UnitSystem;
  readonly troubles: readonly Trouble[];
  readonly edit: (place: Place, text: string) => void;
  /** Another tree at a place: a row more, a row less. */
  readonly put: (place: Place, tree: Tree) => void;
};

/** The form of the planner. */
export type Form = FieldForm & {
  readonly content: PlannerContent;
  readonly draft: Draft;
  /** Any larger change of the draft: a part less, other units. */
  readonly change: (next: Draft) => void;
};

const CurrentFields = createContext<FieldForm | null>(null);
const Current = createContext<Form | null>(null);

export const FieldsProvider = CurrentFields.Provider;
export const FormProvider = Current.Provider;

export function useFields(): FieldForm {
  const form = useContext(CurrentFields);
  if (form === null) throw new Error('a field stands outside the form');
  return form;
}

export function useForm(): Form {
  const form = useContext(Current);
  if (form === null) throw new Error('a field stands outside the form');
  return form;
}

/** The id of a field or of a group of fields. */
export function idOf(place: Place): string {
  return ['field', ...place].join('-');
}
