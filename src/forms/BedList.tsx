/** @jsxImportSource preact */
import { BedFields } from './BedFields.tsx';
import { listAt, textAt, type Tree } from './draft.ts';
import { GroupTroubles } from './fields.tsx';
import { emptyBed } from './firstDrafts.ts';
import { focusOn } from './focusOn.ts';
import { idOf, useForm } from './form.ts';
import { planner } from './words.ts';

/** All beds, in the order in which the water reaches them. */
export function BedList() {
  const { content, draft, put } = useForm();
  const { catalogue } = content;
  const beds = listAt(draft, ['beds']);
  const set = (next: readonly Tree[]) => put(['beds'], next);
  const add = () => {
    set([...beds, emptyBed]);
    focusOn(idOf(['beds', beds.length, 'name']));
  };
  const remove = (at: number) => {
    set(beds.filter((_, index) => index !== at));
    focusOn('add-bed');
  };
  return (
    <section class="part" id={idOf(['beds'])} tabIndex={-1} aria-labelledby="beds-title">
      <h2 id="beds-title">{planner(catalogue, 'groups.beds')}</h2>
      <p class="how">{planner(catalogue, 'intro.beds')}</p>
      <GroupTroubles place={['beds']} />
      {beds.map((_, index) => (
        <fieldset class="bed" key={index} id={idOf(['beds', index])} tabIndex={-1}>
          <legend>{bedName(index)}</legend>
          <GroupTroubles place={['beds', index]} />
          <BedFields index={index} />
          {beds.length > 1 ? (
            <button type="button" class="plain" onClick={() => remove(index)}>
              {planner(catalogue, 'act.removeBed', { bed: bedName(index) })}
            </button>
          ) : null}
        </fieldset>
      ))}
      <button type="button" id="add-bed" onClick={add}>
        {planner(catalogue, 'act.addBed')}
      </button>
    </section>
  );

  function bedName(index: number): string {
    const numbered = planner(catalogue, 'groups.bed', { number: String(index + 1) });
    const name = textAt(draft, ['beds', index, 'name']).trim();
    return name === '' ? numbered : `${numbered}: ${name}`;
  }
}
