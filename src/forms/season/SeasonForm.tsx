/** @jsxImportSource preact */
/** The form of a season: where, when, in which beds, and what to pick each week. */
import { say } from '../../wording/catalogue.ts';
import { signOf } from '../typedNumber.ts';
import { type ListName, type Row, rowKeys, type SeasonDraft, unitsOf } from './seasonDraft.ts';
import { type Choice, SeasonField } from './SeasonFields.tsx';
import type { SeasonContent } from './seasonMessages.ts';

export type FormProps = {
  readonly content: SeasonContent;
  readonly draft: SeasonDraft;
  /** Sentences by field. */
  readonly wrong: ReadonlyMap<string, readonly string[]>;
  readonly change: (next: SeasonDraft) => void;
};

const groups: readonly (readonly [string, readonly string[]])[] = [
  ['where', ['name', 'climate', 'even_degC', 'cells', 'shortDays']],
  ['when', ['from', 'to', 'workday']],
  ['how', ['place_mm', 'rest_d', 'rotation', 'feed_g_d', 'paper', 'units']],
];

export function SeasonForm(props: FormProps) {
  const [where, when, how] = groups;
  return (
    <form onSubmit={(event) => event.preventDefault()}>
      {where ? <Group {...props} of={where} /> : null}
      {when ? <Group {...props} of={when} /> : null}
      <Lines {...props} list="beds" />
      <Lines {...props} list="wishes" />
      <Lines {...props} list="holidays" />
      {how ? <Group {...props} of={how} /> : null}
    </form>
  );
}

function Group({
  of: [name, keys],
  ...props
}: FormProps & { readonly of: readonly [string, readonly string[]] }) {
  const { draft, change } = props;
  return (
    <fieldset class="part">
      <legend>
        <h2>{say(props.content.catalogue, `crops.groups.${name}`)}</h2>
      </legend>
      {keys.map((key) => (
        <OneField
          key={key}
          {...props}
          id={key}
          field={key}
          words={key}
          value={draft.fields[key] ?? ''}
          edit={(value) => change({ ...draft, fields: { ...draft.fields, [key]: value } })}
        />
      ))}
    </fieldset>
  );
}

type OneProps = FormProps & {
  readonly id: string;
  readonly field: string;
  readonly words: string;
  readonly value: string;
  readonly edit: (value: string) => void;
};

function OneField({ content, draft, wrong, id, field, words, value, edit }: OneProps) {
  const kind = kindOf(field, content);
  const sign = signOf(field, unitsOf(draft));
  return (
    <SeasonField
      id={`season-${id}`}
      {...{ words, value, edit, kind, catalogue: content.catalogue, wrong: wrong.get(id) ?? [] }}
      {...(sign === '' ? {} : { sign })}
    />
  );
}

const closed: Readonly<Record<string, readonly string[]>> = {
  shortDays: ['slow', 'ignored'],
  workday: ['monday', 'tuesday', 'wednesday', 'thursday', 'friday', 'saturday', 'sunday'],
  rotation: ['wanted', 'ignored'],
  paper: ['A4', 'Letter'],
  units: ['metric', 'us'],
  mode: ['siphon', 'timer', 'constantFlood', 'inTank'],
  unit: ['head', 'bunch', 'kg'],
};

function kindOf(
  field: string,
  { catalogue, crops, climates }: SeasonContent,
): 'text' | 'number' | 'date' | readonly Choice[] {
  const known = closed[field];
  if (known)
    return known.map((value) => ({ value, text: say(catalogue, `crops.choices.${field}.${value}`) }));
  if (field === 'crop') return named(crops);
  if (field === 'climate') return named(climates);
  if (field === 'from' || field === 'to') return 'date';
  return field === 'name' ? 'text' : 'number';
}

function named(of: Readonly<Record<string, { readonly name: string }>>): readonly Choice[] {
  const all = Object.entries(of).map(([value, { name }]) => ({ value, text: name }));
  return [{ value: '', text: '' }, ...all.sort((a, b) => (a.text < b.text ? -1 : 1))];
}

/** What a new row begins with. */
const fresh: Readonly<Record<ListName, Row>> = {
  beds: { name: '', mode: 'siphon', length_mm: '', width_mm: '' },
  wishes: { crop: '', perWeek: '', unit: 'head' },
  holidays: { name: '', from: '', to: '' },
};

function Lines({ list, ...props }: FormProps & { readonly list: ListName }) {
  const { content, draft, change } = props;
  const { catalogue } = content;
  const rows = draft.lists[list];
  const set = (next: readonly Row[]) => change({ ...draft, lists: { ...draft.lists, [list]: next } });
  return (
    <fieldset class="part">
      <legend>
        <h2>{say(catalogue, `crops.groups.${list}`)}</h2>
      </legend>
      {rows.map((row, index) => (
        <div class="row-of-fields" key={index}>
          {rowKeys[list].map((key) => (
            <OneField
              key={key}
              {...props}
              id={`${list}-${index}-${key}`}
              field={key}
              words={`${list}.${key}`}
              value={row[key] ?? ''}
              edit={(value) => set(rows.map((one, at) => (at === index ? { ...one, [key]: value } : one)))}
            />
          ))}
          <button type="button" class="plain" onClick={() => set(rows.filter((_, at) => at !== index))}>
            {say(catalogue, `crops.remove.${list}`, { number: String(index + 1) })}
          </button>
        </div>
      ))}
      <button type="button" onClick={() => set([...rows, fresh[list]])}>
        {say(catalogue, `crops.add.${list}`)}
      </button>
    </fieldset>
  );
}
