/** @jsxImportSource preact */
import type { ComponentChildren } from 'preact';
import type { Place } from './draft.ts';
import { GroupTroubles } from './fields.tsx';
import { idOf, useFields } from './form.ts';
import { formWords } from './words.ts';

export type PartProps = {
  /** Its words under `groups`, and its place in the draft where none is told. */
  readonly name: string;
  /** Its words under `intro`. */
  readonly intro?: string;
  /** null where what is in it stands for itself, as rows do. */
  readonly place?: Place | null;
  readonly children: ComponentChildren;
};

/** A large part of a form. */
export function Part({ name, intro, place = [name], children }: PartProps) {
  const form = useFields();
  return (
    <fieldset class="part" {...(place === null ? {} : { id: idOf(place), tabIndex: -1 })}>
      <legend>
        <h2>{formWords(form, `groups.${name}`)}</h2>
      </legend>
      {intro === undefined ? null : <p class="how">{formWords(form, `intro.${intro}`)}</p>}
      {place === null ? null : <GroupTroubles place={place} />}
      {children}
    </fieldset>
  );
}
