/** @jsxImportSource preact */
/** The kinds of field of which the form is made. Each says what to measure, and carries its own problems. */
import type { ComponentChildren } from 'preact';
import { type Place, textAt } from './draft.ts';
import { type Described, FieldFrame } from './FieldFrame.tsx';
import { idOf, useFields } from './form.ts';
import { troublesAt } from './troubles.ts';
import { signOf } from './typedNumber.ts';
import { howOf, labelOf, planner } from './words.ts';

type FieldProps = {
  readonly place: Place;
  /** A field that has to be filled in is the rule. */
  readonly need?: 'optional';
  /** Its letter in the measure drawing beside it. */
  readonly letter?: string | undefined;
  /** Where the same field is measured in another way. */
  readonly variant?: string | undefined;
};

export function NumberField(props: FieldProps) {
  const { draft, units, edit } = useFields();
  const { place } = props;
  const key = String(place.at(-1));
  const sign = signOf(key, units);
  const id = idOf(place);
  return (
    <Field {...props}>
      {(described) => (
        <span class="typed">
          <input
            {...described}
            data-key={key}
            type="text"
            inputMode={needsLetters(place, units) ? 'text' : 'decimal'}
            autoComplete="off"
            spellcheck={false}
            value={textAt(draft, place)}
            aria-describedby={`${described['aria-describedby']} ${id}-sign`}
            onInput={(event) => edit(place, event.currentTarget.value)}
          />
          <span class="sign" id={`${id}-sign`}>
            {sign}
          </span>
        </span>
      )}
    </Field>
  );
}

/** The number pad of a phone has neither a minus nor a stroke for fractions. */
function needsLetters(place: Place, units: string): boolean {
  const key = String(place.at(-1));
  return (units === 'us' && key.endsWith('_mm')) || (key === 'above_mm' && place.length === 2);
}

export function TextField(props: FieldProps) {
  return <LineField {...props} kind="text" />;
}

/** The browser's own way to choose a day; it gives the ISO form whatever the reader sees. */
export function DayField(props: FieldProps) {
  return <LineField {...props} kind="date" />;
}

function LineField({ kind, ...props }: FieldProps & { readonly kind: 'text' | 'date' }) {
  const { draft, edit } = useFields();
  return (
    <Field {...props}>
      {(described) => (
        <input
          {...described}
          class="line"
          type={kind}
          dir="auto"
          autoComplete="off"
          value={textAt(draft, props.place)}
          onInput={(event) => edit(props.place, event.currentTarget.value)}
        />
      )}
    </Field>
  );
}

export type Choice = { readonly value: string; readonly text: string };

type ChoiceProps = FieldProps & {
  readonly choices: readonly Choice[];
  readonly onChoose?: (value: string) => void;
};

export function ChoiceField({ choices, onChoose, ...props }: ChoiceProps) {
  const { draft, edit, catalogue } = useFields();
  const chosen = textAt(draft, props.place);
  const known = choices.some(({ value }) => value === chosen);
  return (
    <Field {...props}>
      {(described) => (
        <select
          {...described}
          value={chosen}
          onChange={({ currentTarget: { value } }) => (onChoose ? onChoose(value) : edit(props.place, value))}
        >
          {known ? null : <option value={chosen}>{chosen || planner(catalogue, 'choices.choose')}</option>}
          {choices.map(({ value, text }) => (
            <option key={value} value={value}>
              {text}
            </option>
          ))}
        </select>
      )}
    </Field>
  );
}

type FrameProps = FieldProps & { readonly children: (described: Described) => ComponentChildren };

/** A field by its place: words and troubles are looked up for it. */
function Field({ place, need, letter, variant, children }: FrameProps) {
  const form = useFields();
  const label = (
    <>
      {letter === undefined ? null : <span class="letter">{letter}</span>}
      {labelOf(place, form)}
      {need === 'optional' ? <span class="optional"> ({planner(form.catalogue, 'optional')})</span> : null}
    </>
  );
  return (
    <FieldFrame
      id={idOf(place)}
      label={label}
      how={howOf(place, form, variant)}
      troubles={troublesAt(form.troubles, place)}
    >
      {children}
    </FieldFrame>
  );
}

/** What is wrong with a group as a whole. */
export function GroupTroubles({ place }: { readonly place: Place }) {
  const { troubles } = useFields();
  return (
    <>
      {troublesAt(troubles, place).map(({ kind, sentence }) => (
        <p class={kind === 'wrong' ? 'trouble wrong' : 'trouble'} key={sentence}>
          {sentence}
        </p>
      ))}
    </>
  );
}
