/** @jsxImportSource preact */
import { type Place, textAt } from '../draft.ts';
import { GroupTroubles } from '../fields.tsx';
import { type FieldForm, idOf, useFields } from '../form.ts';
import { troublesAt } from '../troubles.ts';
import { signOf } from '../typedNumber.ts';
import { formWords, labelOf } from '../words.ts';
import { say } from '../../wording/catalogue.ts';

type TableProps = {
  /** Its words under `months`. */
  readonly words: string;
  /** Each a list of twelve figures, January first. */
  readonly columns: readonly Place[];
};

const months = Array.from({ length: 12 }, (_, month) => month);

/** Figures of the twelve months, side by side. */
export function MonthTable({ words, columns }: TableProps) {
  const form = useFields();
  return (
    <>
      {columns.map((column) => (
        <div key={column.join('.')} id={idOf(column)} tabIndex={-1}>
          <GroupTroubles place={column} />
          <Empty column={column} />
        </div>
      ))}
      <table class="months">
        <caption class="how">{formWords(form, `months.${words}`)}</caption>
        <thead>
          <tr>
            <th scope="col">{formWords(form, 'months.month')}</th>
            {columns.map((column) => (
              <th scope="col" key={column.join('.')}>
                {labelOf(column, form)}
                <span class="sign"> {signOf(String(column.at(-1)), form.units)}</span>
              </th>
            ))}
          </tr>
        </thead>
        <tbody>
          {months.map((month) => (
            <MonthRow key={month} month={month} columns={columns} />
          ))}
        </tbody>
      </table>
    </>
  );
}

/** Said once for all that are empty; what is wrong is said beneath its month. */
function Empty({ column }: { readonly column: Place }) {
  const form = useFields();
  const empty = months.filter((month) =>
    troublesAt(form.troubles, [...column, month]).some(({ kind }) => kind === 'empty'),
  );
  if (empty.length === 0) return null;
  const names = empty.map((month) => monthName(month, form)).join(', ');
  return (
    <p class="trouble" id={emptyId(column)}>
      {labelOf(column, form)}. {formWords(form, 'months.empty', { months: names })}
    </p>
  );
}

function emptyId(column: Place): string {
  return `${idOf(column)}-empty`;
}

function monthName(month: number, { catalogue }: FieldForm): string {
  return say(catalogue, `months.${String(month + 1).padStart(2, '0')}`);
}

function MonthRow({ month, columns }: Pick<TableProps, 'columns'> & { readonly month: number }) {
  const form = useFields();
  const wrong = columns.flatMap((column) => {
    const all = troublesAt(form.troubles, [...column, month]).filter(({ kind }) => kind === 'wrong');
    const text = all.map(({ sentence }) => sentence).join(' ');
    return all.length === 0 ? [] : [{ id: `${idOf([...column, month])}-trouble`, text }];
  });
  return (
    <>
      <tr>
        <th scope="row">{monthName(month, form)}</th>
        {columns.map((column) => (
          <td key={column.join('.')}>
            <MonthField column={column} month={month} />
          </td>
        ))}
      </tr>
      {wrong.length === 0 ? null : (
        <tr>
          <td colSpan={columns.length + 1}>
            {wrong.map(({ id, text }) => (
              <p key={id} id={id} class="trouble wrong">
                {text}
              </p>
            ))}
          </td>
        </tr>
      )}
    </>
  );
}

function MonthField({ column, month }: { readonly column: Place; readonly month: number }) {
  const form = useFields();
  const place = [...column, month];
  const id = idOf(place);
  const [trouble] = troublesAt(form.troubles, place);
  const told = trouble?.kind === 'empty' ? emptyId(column) : `${id}-trouble`;
  return (
    <input
      id={id}
      type="text"
      inputMode="text"
      autoComplete="off"
      spellcheck={false}
      aria-label={`${labelOf(place, form)} ${signOf(String(column.at(-1)), form.units)}`}
      aria-invalid={trouble?.kind === 'wrong' ? 'true' : 'false'}
      {...(trouble === undefined ? {} : { 'aria-describedby': told })}
      value={textAt(form.draft, place)}
      onInput={(event) => form.edit(place, event.currentTarget.value)}
    />
  );
}
