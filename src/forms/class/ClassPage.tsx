/** @jsxImportSource preact */
/** The class page: the fields, the roster, and what to print of them. */
import { type WorkshopPart, workshopParts } from '../../core/workshop/parts.ts';
import { type Catalogue, say } from '../../wording/catalogue.ts';
import type { Choice } from '../fields.tsx';
import { type FieldForm, FieldsProvider } from '../form.ts';
import { ProblemSummary } from '../ProblemSummary.tsx';
import { ClassForm } from './ClassForm.tsx';
import type { ClassDraft } from './classDraft.ts';

export type PageProps = {
  readonly form: FieldForm;
  readonly examples: readonly Choice[];
  /** What the roster is called; empty where none was chosen. */
  readonly roster: string;
  readonly people: number;
  /** Those that the ticked sheets make. */
  readonly parts: readonly WorkshopPart[];
  /** What is wrong with the roster, or with making a file. */
  readonly wrong: readonly string[];
  readonly making: { readonly part: WorkshopPart; readonly done: number; readonly of: number } | null;
  readonly change: (draft: ClassDraft) => void;
  readonly take: (file: File) => void;
  readonly giveTemplate: () => void;
  readonly make: (part: WorkshopPart) => void;
  readonly stop: () => void;
};

export function ClassPage(props: PageProps) {
  const { form, examples, change } = props;
  return (
    <FieldsProvider value={form}>
      <form onSubmit={(event) => event.preventDefault()}>
        <InTheWay form={form} />
        <ClassForm examples={examples} change={change} />
        <Roster {...props} catalogue={form.catalogue} />
        <Output {...props} catalogue={form.catalogue} />
      </form>
    </FieldsProvider>
  );
}

/** Spoken at once, as nothing can be printed until it is mended. */
function InTheWay({ form: { troubles, catalogue } }: Pick<PageProps, 'form'>) {
  if (troubles.length === 0) return null;
  return (
    <div role="alert">
      <p>{say(catalogue, 'class.wrong')}</p>
      <ProblemSummary />
    </div>
  );
}

type WithWords = PageProps & { readonly catalogue: Catalogue };

function Roster({ catalogue, roster, people, wrong, take, giveTemplate }: WithWords) {
  const words = (key: string, values = {}) => say(catalogue, `class.roster.${key}`, values);
  return (
    <fieldset class="part">
      <legend>
        <h2>{words('title')}</h2>
      </legend>
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
          // So that the same file can be chosen again once it is mended.
          onClick={({ currentTarget }) => {
            currentTarget.value = '';
          }}
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
        <p role="status">
          {roster === ''
            ? ''
            : words(people === 1 ? 'found.one' : 'found.many', { count: String(people), name: roster })}
        </p>
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
    </fieldset>
  );
}

function Output({ catalogue, people, parts, making, make, stop }: WithWords) {
  const words = (key: string, values = {}) => say(catalogue, `class.${key}`, values);
  return (
    <section aria-labelledby="class-output">
      <h2 id="class-output">{words('output')}</h2>
      <div class="toolbar">
        {workshopParts.map((part) => (
          <button
            key={part}
            type="button"
            disabled={people === 0 || making !== null || !parts.includes(part)}
            aria-describedby={parts.includes(part) ? undefined : `class-no-${part}`}
            onClick={() => make(part)}
          >
            {words(`parts.${part}`)}
          </button>
        ))}
      </div>
      {workshopParts
        .filter((part) => !parts.includes(part))
        .map((part) => (
          <p key={part} id={`class-no-${part}`} class="how">
            {words(`noPages.${part}`)}
          </p>
        ))}
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
