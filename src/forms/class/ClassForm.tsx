/** @jsxImportSource preact */
/** The session, the roster, and what to print of it. */
import { levels } from '../../core/workshop/exercise.ts';
import { type WorkshopPart, workshopParts } from '../../sheets/handouts/workshopPrint.ts';
import { type Catalogue, say } from '../../wording/catalogue.ts';
import { FieldFrame } from '../FieldFrame.tsx';
import { type ClassDraft, type FieldName, fieldNames } from './classDraft.ts';

const choices: Partial<Readonly<Record<FieldName, readonly string[]>>> = {
  level: levels,
  worksheets: ['participants', 'teams'],
  badRows: ['stop', 'skip'],
  paper: ['A4', 'Letter'],
  units: ['metric', 'us'],
};

export type FormProps = {
  readonly catalogue: Catalogue;
  readonly draft: ClassDraft;
  /** What the roster is called; empty where none was chosen. */
  readonly roster: string;
  readonly people: number;
  readonly wrong: readonly string[];
  readonly making: { readonly part: WorkshopPart; readonly done: number; readonly of: number } | null;
  readonly change: (draft: ClassDraft) => void;
  readonly take: (file: File) => void;
  readonly giveTemplate: () => void;
  readonly make: (part: WorkshopPart) => void;
  readonly stop: () => void;
};

export function ClassForm(props: FormProps) {
  const { catalogue, draft, change } = props;
  return (
    <form onSubmit={(event) => event.preventDefault()}>
      {fieldNames.map((name) => (
        <Field
          key={name}
          {...{ catalogue, name }}
          value={draft[name]}
          edit={(value) => change({ ...draft, [name]: value })}
        />
      ))}
      <Roster {...props} />
      <Output {...props} />
    </form>
  );
}

type FieldProps = {
  readonly catalogue: Catalogue;
  readonly name: FieldName;
  readonly value: string;
  readonly edit: (value: string) => void;
};

function Field({ catalogue, name, value, edit }: FieldProps) {
  const words = (key: string) => say(catalogue, `class.fields.${name}.${key}`);
  const own = choices[name];
  return (
    <FieldFrame id={`class-${name}`} label={words('label')} how={words('how')} troubles={[]}>
      {(described) =>
        own === undefined ? (
          <input
            {...described}
            class="line"
            type={name === 'date' ? 'date' : 'text'}
            autoComplete="off"
            value={value}
            onInput={({ currentTarget }) => edit(currentTarget.value)}
          />
        ) : (
          <select {...described} value={value} onChange={({ currentTarget }) => edit(currentTarget.value)}>
            {own.map((choice) => (
              <option key={choice} value={choice}>
                {say(catalogue, `class.choices.${name}.${choice}`)}
              </option>
            ))}
          </select>
        )
      }
    </FieldFrame>
  );
}

function Roster({ catalogue, roster, people, wrong, take, giveTemplate }: FormProps) {
  const words = (key: string, values = {}) => say(catalogue, `class.roster.${key}`, values);
  return (
    <div class="field">
      <label for="class-roster">{words('label')}</label>
      <p class="how" id="class-roster-how">
        {words('how')}
      </p>
      <input
        id="class-roster"
        type="file"
        accept=".csv,.tsv,.txt,text/csv"
        aria-describedby="class-roster-how"
        onChange={({ currentTarget: { files } }) => {
          const [file] = files ?? [];
          if (file) take(file);
        }}
      />
      <p>
        <button type="button" onClick={giveTemplate}>
          {words('template')}
        </button>
      </p>
      <p role="status">{roster === '' ? '' : words('found', { count: String(people), name: roster })}</p>
      {wrong.length === 0 ? null : (
        <div role="alert" class="summary wrong">
          <p>{words('wrong')}</p>
          <ul>
            {wrong.map((line) => (
              <li key={line}>{line}</li>
            ))}
          </ul>
        </div>
      )}
    </div>
  );
}

function Output({ catalogue, people, making, make, stop }: FormProps) {
  const words = (key: string, values = {}) => say(catalogue, `class.${key}`, values);
  return (
    <section aria-labelledby="class-output">
      <h2 id="class-output">{words('output')}</h2>
      <div class="toolbar">
        {workshopParts.map((part) => (
          <button
            key={part}
            type="button"
            disabled={people === 0 || making !== null}
            onClick={() => make(part)}
          >
            {words(`parts.${part}`)}
          </button>
        ))}
      </div>
      {making === null ? null : (
        <p>
          <progress
            value={making.done}
            max={Math.max(1, making.of)}
            aria-label={words(`parts.${making.part}`)}
          />{' '}
          <span role="status">{words('progress', { done: String(making.done), of: String(making.of) })}</span>{' '}
          <button type="button" onClick={stop}>
            {words('stop')}
          </button>
        </p>
      )}
    </section>
  );
}
