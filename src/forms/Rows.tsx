/** @jsxImportSource preact */
/** A list of equal rows: the dips of a container, the points of a pump's curve, the beds of a season. */
import type { ComponentChildren } from 'preact';
import { listAt, type Place, type Tree } from './draft.ts';
import { GroupTroubles } from './fields.tsx';
import { focusOn } from './focusOn.ts';
import { idOf, useFields } from './form.ts';
import { formWords } from './words.ts';

type RowsProps = {
  readonly place: Place;
  /** Its words under `rows`: `intro`, `row`, `add` and `remove`. */
  readonly words: string;
  /** The field of a new row in which typing goes on. */
  readonly first: string;
  /** What a new row begins with. */
  readonly fresh?: Tree;
  readonly children: (row: Place) => ComponentChildren;
};

export function Rows({ place, words, first, fresh = {}, children }: RowsProps) {
  const form = useFields();
  const rows = listAt(form.draft, place);
  const said = (key: string, index = 0) =>
    formWords(form, `rows.${words}.${key}`, { number: `${index + 1}` });
  const add = () => {
    form.put(place, [...rows, fresh]);
    focusOn(idOf([...place, rows.length, first]));
  };
  const remove = (at: number) => {
    form.put(
      place,
      rows.filter((_, index) => index !== at),
    );
    focusOn(`${idOf(place)}-add`);
  };
  return (
    <div class="rows" id={idOf(place)} tabIndex={-1}>
      <p class="how">{said('intro')}</p>
      <GroupTroubles place={place} />
      {rows.map((_, index) => (
        <fieldset class="row-of-fields" key={index} id={idOf([...place, index])} tabIndex={-1}>
          <legend class="unseen">{said('row', index)}</legend>
          {children([...place, index])}
          <button type="button" class="plain" onClick={() => remove(index)}>
            {said('remove', index)}
          </button>
        </fieldset>
      ))}
      <button type="button" id={`${idOf(place)}-add`} onClick={add}>
        {said('add')}
      </button>
    </div>
  );
}
