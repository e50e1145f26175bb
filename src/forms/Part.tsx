/** @jsxImportSource preact */
import type { ComponentChildren } from 'preact';
import { GroupTroubles } from './fields.tsx';
import { formWords, idOf, useFields } from './form.ts';

export type PartProps = {
  /** Where it stands in the draft, and its words under `groups`. */
  readonly name: string;
  /** Its words under `intro`. */
  readonly intro?: string;
  readonly children: ComponentChildren;
};

/** A large part of a form. */
export function Part({ name, intro, children }: PartProps) {
  const form = useFields();
  return (
    <fieldset class="part" id={idOf([name])} tabIndex={-1}>
      <legend>
        <h2>{formWords(form, `groups.${name}`)}</h2>
      </legend>
      {intro === undefined ? null : <p class="how">{formWords(form, `intro.${intro}`)}</p>}
      <GroupTroubles place={[name]} />
      {children}
    </fieldset>
  );
}
