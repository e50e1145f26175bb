/** @jsxImportSource preact */

type CheckProps = {
  readonly text: string;
  readonly checked: 'yes' | 'no';
  readonly set: (next: 'yes' | 'no') => void;
  readonly id?: string;
};

/** Something that is so or not, with its words beside it. */
export function CheckBox({ text, checked, set, id }: CheckProps) {
  return (
    <label class="check">
      <input
        {...(id === undefined ? {} : { id })}
        type="checkbox"
        checked={checked === 'yes'}
        onChange={(event) => set(event.currentTarget.checked ? 'yes' : 'no')}
      />
      <span>{text}</span>
    </label>
  );
}
