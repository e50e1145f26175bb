/** @jsxImportSource preact */
import type { ComponentChildren } from 'preact';
import { useRef } from 'preact/hooks';
import { anyTyped, type Place } from './draft.ts';
import { GroupTroubles } from './fields.tsx';
import { idOf, useForm } from './form.ts';
import { planner } from './words.ts';

type GroupProps = {
  readonly place: Place;
  readonly name: 'bucketTest' | 'pipe' | 'timer' | 'curve' | 'air' | 'tap' | 'absence' | 'labels';
  readonly children: ComponentChildren;
};

/** Fields that are filled in together or stay empty together. */
export function OptionalGroup({ place, name, children }: GroupProps) {
  const { content } = useForm();
  return (
    <fieldset class="inner" id={idOf(place)} tabIndex={-1}>
      <legend>
        {planner(content.catalogue, `groups.${name}`)}{' '}
        <span class="optional">({planner(content.catalogue, 'optional')})</span>
      </legend>
      {name === 'curve' ? null : <p class="how">{planner(content.catalogue, `intro.${name}`)}</p>}
      <GroupTroubles place={place} />
      {children}
    </fieldset>
  );
}

type MoreProps = {
  readonly name: 'pump' | 'water' | 'labels';
  /** What is folded away; it stands open where something is typed in it. */
  readonly holds: readonly Place[];
  readonly children: ComponentChildren;
};

/** Measures that only some people have, folded away. */
export function More({ name, holds, children }: MoreProps) {
  const { content, draft } = useForm();
  // Once open it stays so, for it must not shut on whoever has just emptied a field in it.
  const open = useRef(false);
  open.current ||= holds.some((place) => anyTyped(draft, place));
  return (
    <details class="more" open={open.current}>
      <summary>{planner(content.catalogue, `more.${name}`)}</summary>
      {children}
    </details>
  );
}
