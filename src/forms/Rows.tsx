/** @jsxImportSource preact */
/** A list of equal rows: the dips of a container, the points of a pump's curve. */
import { listAt, type Place, type Tree, withTree } from './draft.ts';
import { GroupTroubles, NumberField } from './fields.tsx';
import { focusOn } from './focusOn.ts';
import { idOf, useForm } from './form.ts';
import { planner } from './words.ts';

type RowsProps = {
  readonly place: Place;
  readonly keys: readonly string[];
  /** Its words: `intro`, `add` and `remove` under this name. */
  readonly words: 'dips' | 'curve';
};

export function Rows({ place, keys, words }: RowsProps) {
  const { content, draft, change } = useForm();
  const { catalogue } = content;
  const rows = listAt(draft, place);
  const set = (next: readonly Tree[]) => change(withTree(draft, place, next));
  const add = () => {
    set([...rows, {}]);
    focusOn(idOf([...place, rows.length, keys[0] ?? '']));
  };
  const remove = (at: number) => {
    set(rows.filter((_, index) => index !== at));
    focusOn(`${idOf(place)}-add`);
  };
  return (
    <div class="rows" id={idOf(place)} tabIndex={-1}>
      <p class="how">{planner(catalogue, `rows.${words}.intro`)}</p>
      <GroupTroubles place={place} />
      {rows.map((_, index) => (
        <div class="row-of-fields" key={index}>
          {keys.map((key) => (
            <NumberField key={key} place={[...place, index, key]} />
          ))}
          <button type="button" class="plain" onClick={() => remove(index)}>
            {planner(catalogue, `rows.${words}.remove`, { number: String(index + 1) })}
          </button>
        </div>
      ))}
      <button type="button" id={`${idOf(place)}-add`} onClick={add}>
        {planner(catalogue, `rows.${words}.add`)}
      </button>
    </div>
  );
}
