/** @jsxImportSource preact */
/** A container with the levels in it: fields on one side, on the other the drawing that shows what each means. */
import type { ComponentChildren, TargetedFocusEvent } from 'preact';
import { useState } from 'preact/hooks';
import type { Shape } from '../core/system.ts';
import type { StartContainerFile } from '../schemas/starts.ts';
import { type Place, textAt, withTree } from './draft.ts';
import { treeOf } from './draftOf.ts';
import { ChoiceField, GroupTroubles, NumberField } from './fields.tsx';
import { idOf, useForm } from './form.ts';
import { MeasureDrawing } from './MeasureDrawing.tsx';
import { containerLines, type Dimension } from './measureLines.ts';
import { isOptional, measures, shapeNamed, shapes } from './measures.ts';
import { Rows } from './Rows.tsx';
import { StartFrom } from './StartFrom.tsx';
import { planner } from './words.ts';

type PartProps = {
  readonly place: Place;
  /** Levels that are drawn into the container. */
  readonly lines: readonly Dimension[];
  readonly children: (letters: Letters) => ComponentChildren;
};

export type Letters = Readonly<Record<string, string>>;

export function MeasuredPart({ place, lines, children }: PartProps) {
  const { draft } = useForm();
  const [focused, setFocused] = useState<string | null>(null);
  const shape = shapeNamed(textAt(draft, [...place, 'container', 'shape']));
  const dimensions = [...containerLines[shape], ...lines];
  const letters = lettersOf([...measures[shape], ...lines.map(({ key }) => key)]);
  return (
    <div class="measured" onFocusIn={(event) => setFocused(keyOf(event))} onFocusOut={() => setFocused(null)}>
      <div class="drawn">
        <MeasureDrawing shape={shape} dimensions={dimensions} letters={letters} focused={focused} />
      </div>
      <div class="asked">
        <ContainerFields place={[...place, 'container']} shape={shape} letters={letters} />
        {children(letters)}
      </div>
    </div>
  );
}

type ContainerProps = { readonly place: Place; readonly shape: Shape; readonly letters: Letters };

function ContainerFields({ place, shape, letters }: ContainerProps) {
  const { content, draft, units, change } = useForm();
  const fill = (start: StartContainerFile): void => {
    const typed = treeOf(start.container, 'container', units);
    change(withTree(draft, place, typed));
  };
  const choices = shapes.map((value) => ({
    value,
    text: planner(content.catalogue, `choices.shape.${value}`),
  }));
  return (
    <>
      <StartFrom
        id={idOf([...place, 'start'])}
        words="container"
        starts={content.starts.containers}
        fill={fill}
      />
      <ChoiceField place={[...place, 'shape']} choices={choices} />
      <GroupTroubles place={place} />
      {measures[shape].map((key) => (
        <NumberField
          key={key}
          place={[...place, key]}
          letter={letters[key]}
          {...(isOptional(shape, key) ? { need: 'optional' } : {})}
        />
      ))}
      {shape === 'dipTable' ? (
        <Rows place={[...place, 'dips']} words="dips" first="depth_mm">
          {(row) => (
            <>
              <NumberField place={[...row, 'depth_mm']} />
              <NumberField place={[...row, 'volume_L']} />
            </>
          )}
        </Rows>
      ) : null}
    </>
  );
}

function lettersOf(keys: readonly string[]): Letters {
  return Object.fromEntries(keys.map((key, index) => [key, 'abcdefghijkl'[index] ?? '']));
}

function keyOf(event: TargetedFocusEvent<HTMLElement>): string | null {
  return event.target instanceof HTMLElement ? (event.target.dataset['key'] ?? null) : null;
}
