/** @jsxImportSource preact */
/** A list of usual things whose figures fill the fields. What was chosen is not kept: the fields are what counts. */
import { useState } from 'preact/hooks';
import { useForm } from './form.ts';
import { planner } from './words.ts';

type StartProps<T> = {
  readonly id: string;
  /** Its words: `startFrom` and `startFromHow` under this name. */
  readonly words: 'container' | 'pump';
  readonly starts: Readonly<Record<string, T>>;
  readonly fill: (start: T) => void;
};

type Start = { readonly name: string; readonly note?: string };

export function StartFrom<T extends Start>({ id, words, starts, fill }: StartProps<T>) {
  const { catalogue } = useForm().content;
  const [chosen, setChosen] = useState('');
  const start = Object.hasOwn(starts, chosen) ? starts[chosen] : undefined;
  const choose = (key: string): void => {
    setChosen(key);
    const next = Object.hasOwn(starts, key) ? starts[key] : undefined;
    if (next !== undefined) fill(next);
  };
  return (
    <div class="field">
      <label for={id}>
        {planner(catalogue, `startFrom.${words}`)}{' '}
        <span class="optional">({planner(catalogue, 'optional')})</span>
      </label>
      <p class="how" id={`${id}-how`}>
        {planner(catalogue, `startFrom.${words}How`)}
      </p>
      <select
        id={id}
        aria-describedby={`${id}-how`}
        value={chosen}
        onChange={(event) => choose(event.currentTarget.value)}
      >
        <option value="" />
        {Object.entries(starts).map(([key, { name }]) => (
          <option key={key} value={key}>
            {name}
          </option>
        ))}
      </select>
      {start?.note === undefined ? null : <p class="note">{start.note}</p>}
    </div>
  );
}
