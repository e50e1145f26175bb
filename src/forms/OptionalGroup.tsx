/** @jsxImportSource preact */
import type { ComponentChildren } from 'preact';
import { useRef } from 'preact/hooks';
import { anyTyped, type Place } from './draft.ts';
import { GroupTroubles } from './fields.tsx';
import { idOf, useFields } from './form.ts';
import { formWords, planner } from './words.ts';

type GroupProps = {
  readonly place: Place;
  readonly name: string;
  readonly children: ComponentChildren;
};

/** Fields that are filled in together or stay empty together. */
export function OptionalGroup({ place, name, children }: GroupProps) {
  const form = useFields();
  return (
    <fieldset class="inner" id={idOf(place)} tabIndex={-1}>
      <legend>
        {formWords(form, `groups.${name}`)}{' '}
        <span class="optional">({planner(form.catalogue, 'optional')})</span>
      </legend>
      {name === 'curve' ? null : <p class="how">{formWords(form, `intro.${name}`)}</p>}
      <GroupTroubles place={place} />
      {children}
    </fieldset>
  );
}

type MoreProps = {
  readonly name: string;
  /** What is folded away; it stands open where something is typed in it. */
  readonly holds: readonly Place[];
  readonly children: ComponentChildren;
};

/** Measures that only some people have, folded away. */
export function More({ name, holds, children }: MoreProps) {
  const form = useFields();
  // Once open it stays so, for it must not shut on whoever has just emptied a field in it.
  const open = useRef(false);
  open.current ||= holds.some((place) => anyTyped(form.draft, place));
  return (
    <details class="more" open={open.current}>
      <summary>{formWords(form, `more.${name}`)}</summary>
      {children}
    </details>
  );
}
