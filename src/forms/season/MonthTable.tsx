/** @jsxImportSource preact */
import { type Place, textAt } from '../draft.ts';
import { GroupTroubles } from '../fields.tsx';
import { idOf, useFields } from '../form.ts';
import { troublesAt } from '../troubles.ts';
import { signOf } from '../typedNumber.ts';
import { labelOf } from '../words.ts';
import { formWords } from '../form.ts';
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

function MonthRow({ month, columns }: Pick<TableProps, 'columns'> & { readonly month: number }) {
  const form = useFields();
  const wrong = columns.map((column) => ({
    id: `${idOf([...column, month])}-trouble`,
    troubles: troublesAt(form.troubles, [...column, month]),
  }));
  return (
    <>
      <tr>
        <th scope="row">{say(form.catalogue, `months.${String(month + 1).padStart(2, '0')}`)}</th>
        {columns.map((column) => (
          <td key={column.join('.')}>
            <MonthField place={[...column, month]} sign={signOf(String(column.at(-1)), form.units)} />
          </td>
        ))}
      </tr>
      {wrong.every(({ troubles }) => troubles.length === 0) ? null : (
        <tr>
          <td colSpan={columns.length + 1}>
            {wrong.map(({ id, troubles }) => (
              <p key={id} id={id} class="trouble wrong">
                {troubles.map(({ sentence }) => sentence).join(' ')}
              </p>
            ))}
          </td>
        </tr>
      )}
    </>
  );
}

function MonthField({ place, sign }: { readonly place: Place; readonly sign: string }) {
  const form = useFields();
  const id = idOf(place);
  const wrong = troublesAt(form.troubles, place);
  return (
    <input
      id={id}
      type="text"
      inputMode="text"
      autoComplete="off"
      spellcheck={false}
      aria-label={`${labelOf(place, form)} ${sign}`}
      aria-invalid={wrong.some(({ kind }) => kind === 'wrong') ? 'true' : 'false'}
      {...(wrong.length === 0 ? {} : { 'aria-describedby': `${id}-trouble` })}
      value={textAt(form.draft, place)}
      onInput={(event) => form.edit(place, event.currentTarget.value)}
    />
  );
}
