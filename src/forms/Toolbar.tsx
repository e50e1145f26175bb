/** @jsxImportSource preact */
/** What is done to the form as a whole. */
import { useRef } from 'preact/hooks';
import { textAt, unitsOf } from './draft.ts';
import { emptyDraft, exampleDraft } from './firstDrafts.ts';
import { useForm } from './form.ts';
import type { Session } from './session.ts';
import type { View } from './view.ts';
import { planner } from './words.ts';

type ToolbarProps = { readonly view: View; readonly session: Session };

export function Toolbar({ view, session }: ToolbarProps) {
  const { content } = useForm();
  const file = useRef<HTMLInputElement>(null);
  const words = (key: string) => planner(content.catalogue, `act.${key}`);
  const open = async (input: HTMLInputElement) => {
    const [chosen] = input.files ?? [];
    // So that the same file can be chosen again.
    input.value = '';
    if (chosen) await session.open(chosen);
  };
  return (
    <div class="toolbar">
      <StartOver session={session} />
      <button type="button" onClick={() => file.current?.click()}>
        {words('open')}
      </button>
      <input
        ref={file}
        type="file"
        accept=".pdf,.svg,.png,.json,application/pdf,image/svg+xml,image/png,application/json"
        hidden
        aria-label={words('open')}
        onChange={(event) => open(event.currentTarget)}
      />
      {view.before === null ? null : (
        <button type="button" onClick={session.undo}>
          {words('undo')}
        </button>
      )}
    </div>
  );
}

/** Asks before anything is put aside; Escape and the last button keep everything. */
function StartOver({ session }: { readonly session: Session }) {
  const { content, draft } = useForm();
  const { catalogue } = content;
  const dialog = useRef<HTMLDialogElement>(null);
  const words = (key: string) => planner(catalogue, `startOver.${key}`);
  const with_ = (from: 'example' | 'empty') => {
    const empty = () => emptyDraft(unitsOf(draft), textAt(draft, ['sheet', 'paper']));
    session.replace(from === 'example' ? exampleDraft : empty(), planner(catalogue, 'told.startedOver'));
    dialog.current?.close();
  };
  return (
    <>
      <button type="button" onClick={() => dialog.current?.showModal()}>
        {planner(catalogue, 'act.startOver')}
      </button>
      <dialog ref={dialog} class="ask" aria-labelledby="start-over-title">
        <h2 id="start-over-title">{words('title')}</h2>
        <p>{words('text')}</p>
        <div class="stack">
          <button type="button" onClick={() => with_('example')}>
            {words('example')}
          </button>
          <button type="button" onClick={() => with_('empty')}>
            {words('empty')}
          </button>
          <button type="button" class="main" onClick={() => dialog.current?.close()}>
            {words('keep')}
          </button>
        </div>
      </dialog>
    </>
  );
}
