/** @jsxImportSource preact */
import type { ComponentChildren } from 'preact';
import type { Trouble } from './troubles.ts';

export type Described = {
  readonly id: string;
  readonly 'aria-describedby': string;
  readonly 'aria-invalid': 'true' | 'false';
};

type FrameProps = {
  readonly id: string;
  readonly label: ComponentChildren;
  readonly how: string;
  readonly troubles: readonly Pick<Trouble, 'kind' | 'sentence'>[];
  readonly children: (described: Described) => ComponentChildren;
};

/** Label, what to measure and how, the control, and what is wrong with it. */
export function FieldFrame({ id, label, how, troubles, children }: FrameProps) {
  const isWrong = troubles.some(({ kind }) => kind === 'wrong');
  return (
    <div class="field">
      <label for={id}>{label}</label>
      <p class="how" id={`${id}-how`}>
        {how}
      </p>
      {children({
        id,
        'aria-describedby': troubles.length > 0 ? `${id}-how ${id}-trouble` : `${id}-how`,
        'aria-invalid': isWrong ? 'true' : 'false',
      })}
      {troubles.length === 0 ? null : (
        <p class={isWrong ? 'trouble wrong' : 'trouble'} id={`${id}-trouble`}>
          {troubles.map(({ sentence }) => sentence).join(' ')}
        </p>
      )}
    </div>
  );
}
