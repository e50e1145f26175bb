/** @jsxImportSource preact */
/** Fields of the crops page, each with its label, its hint and what is wrong with it. */
import type { Catalogue } from '../../wording/catalogue.ts';
import { say } from '../../wording/catalogue.ts';

export type Choice = { readonly value: string; readonly text: string };

type FieldProps = {
  readonly id: string;
  /** Its words under `crops.fields`. */
  readonly words: string;
  readonly catalogue: Catalogue;
  readonly value: string;
  readonly wrong: readonly string[];
  readonly edit: (value: string) => void;
  readonly kind: 'text' | 'number' | 'date' | readonly Choice[];
  readonly sign?: string;
};

export function SeasonField({ id, words, catalogue, value, wrong, edit, kind, sign }: FieldProps) {
  const described = {
    id,
    'aria-describedby': wrong.length > 0 ? `${id}-how ${id}-trouble` : `${id}-how`,
    'aria-invalid': wrong.length > 0 ? ('true' as const) : ('false' as const),
  };
  return (
    <div class="field">
      <label for={id}>{say(catalogue, `crops.fields.${words}.label`)}</label>
      <p class="how" id={`${id}-how`}>
        {say(catalogue, `crops.fields.${words}.how`)}
      </p>
      {kind === 'number' ? (
        <span class="typed">
          <input
            {...described}
            type="text"
            inputMode="decimal"
            autoComplete="off"
            value={value}
            onInput={(event) => edit(event.currentTarget.value)}
          />
          {sign === undefined ? null : <span class="sign">{sign}</span>}
        </span>
      ) : typeof kind === 'string' ? (
        <input
          {...described}
          class="line"
          type={kind}
          autoComplete="off"
          dir="auto"
          value={value}
          onInput={(event) => edit(event.currentTarget.value)}
        />
      ) : (
        <select {...described} value={value} onChange={(event) => edit(event.currentTarget.value)}>
          {kind.map((choice) => (
            <option key={choice.value} value={choice.value}>
              {choice.text}
            </option>
          ))}
        </select>
      )}
      {wrong.length === 0 ? null : (
        <p class="trouble wrong" id={`${id}-trouble`}>
          {wrong.join(' ')}
        </p>
      )}
    </div>
  );
}
