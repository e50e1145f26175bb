/** @jsxImportSource preact */
/** Which sheet it is: by its number, or by the containers that were measured. */
import { levels } from '../../core/workshop/exercise.ts';
import { type Catalogue, say } from '../../wording/catalogue.ts';
import { FieldFrame } from '../FieldFrame.tsx';

export type CheckDraft = {
  readonly number: string;
  readonly containers: string;
  readonly level: (typeof levels)[number];
};

type Props = {
  readonly catalogue: Catalogue;
  readonly draft: CheckDraft;
  readonly wrong: Readonly<Record<'number' | 'containers', readonly string[]>>;
  readonly change: (draft: CheckDraft) => void;
};

export function CheckForm({ catalogue, draft, wrong, change }: Props) {
  const words = (key: string) => say(catalogue, `check.${key}`);
  return (
    <form onSubmit={(event) => event.preventDefault()}>
      <Text {...{ catalogue, draft, wrong, change }} name="number" inputMode="numeric" />
      <p>{words('or')}</p>
      <Text {...{ catalogue, draft, wrong, change }} name="containers" inputMode="text" />
      <div class="field">
        <label for="check-level">{words('level.label')}</label>
        <select
          id="check-level"
          value={draft.level}
          onChange={({ currentTarget: { value } }) => {
            const level = levels.find((one) => one === value);
            if (level) change({ ...draft, level });
          }}
        >
          {levels.map((level) => (
            <option key={level} value={level}>
              {words(`levels.${level}`)}
            </option>
          ))}
        </select>
      </div>
    </form>
  );
}

type TextProps = Props & { readonly name: 'number' | 'containers'; readonly inputMode: 'numeric' | 'text' };

function Text({ catalogue, draft, wrong, change, name, inputMode }: TextProps) {
  const words = (key: string) => say(catalogue, `check.${name}.${key}`);
  return (
    <FieldFrame
      id={`check-${name}`}
      label={words('label')}
      how={words('how')}
      troubles={wrong[name].map((sentence) => ({ kind: 'wrong', sentence }))}
    >
      {(described) => (
        <input
          {...described}
          type="text"
          inputMode={inputMode}
          autoComplete="off"
          spellcheck={false}
          class="line"
          value={draft[name]}
          onInput={({ currentTarget: { value } }) => change({ ...draft, [name]: value })}
        />
      )}
    </FieldFrame>
  );
}
