/** @jsxImportSource preact */
/** A container of any form: litres poured in so far, and the depth at which they stand. */
import { listAt, type Place, type Tree, withTree } from './draft.ts';
import { GroupTroubles, NumberField } from './fields.tsx';
import { idOf, useForm } from './form.ts';
import { focusOn } from './focusOn.ts';
import { planner } from './words.ts';

export function DipRows({ place }: { readonly place: Place }) {
  const { content, draft, change } = useForm();
  const { catalogue } = content;
  const rows = listAt(draft, place);
  const set = (next: readonly Tree[]) => change(withTree(draft, place, next));
  const add = () => {
    set([...rows, {}]);
    focusOn(idOf([...place, rows.length, 'depth_mm']));
  };
  const remove = (at: number) => {
    set(rows.filter((_, index) => index !== at));
    focusOn(`${idOf(place)}-add`);
  };
  return (
    <div class="dips" id={idOf(place)} tabIndex={-1}>
      <p class="how">{planner(catalogue, 'intro.dips')}</p>
      <GroupTroubles place={place} />
      {rows.map((_, index) => (
        <div class="dip" key={index}>
          <NumberField place={[...place, index, 'depth_mm']} />
          <NumberField place={[...place, index, 'volume_L']} />
          <button type="button" class="plain" onClick={() => remove(index)}>
            {planner(catalogue, 'act.removeDip', { number: String(index + 1) })}
          </button>
        </div>
      ))}
      <button type="button" id={`${idOf(place)}-add`} onClick={add}>
        {planner(catalogue, 'act.addDip')}
      </button>
    </div>
  );
}
