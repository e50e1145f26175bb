/** @jsxImportSource preact */
import { useForm } from './form.ts';
import type { FileKind } from './messages.ts';
import type { Session } from './session.ts';
import type { View } from './view.ts';
import { planner } from './words.ts';

const others: readonly FileKind[] = ['png', 'svg', 'json'];

/** The card as files. Only a card that is current can be taken away. */
export function Downloads({ view, session }: { readonly view: View; readonly session: Session }) {
  const { catalogue } = useForm().content;
  const closed = view.state === 'stale';
  const sheets = view.card?.answers.sheets ?? [];
  const button = (kind: FileKind, look: string, text: string) => (
    <button
      key={kind}
      type="button"
      class={look}
      aria-disabled={closed || view.making !== null}
      aria-describedby="files-note"
      onClick={() => session.download(kind)}
    >
      {view.making === kind ? planner(catalogue, 'files.making') : text}
    </button>
  );
  return (
    <section class="files" aria-labelledby="files-title">
      <h2 id="files-title">{planner(catalogue, 'files.title')}</h2>
      <div class="row">
        {button('pdf', 'main', planner(catalogue, 'act.pdf'))}
        {others.map((kind) => button(kind, '', planner(catalogue, `act.${kind}`)))}
      </div>
      <h3>{planner(catalogue, 'files.sheets')}</h3>
      <div class="row">
        {sheets.map(({ id, name }) => button(id, '', planner(catalogue, 'act.sheet', { name })))}
      </div>
      <p class="quiet" id="files-note">
        {planner(catalogue, closed ? 'files.inTheWay' : 'files.drop')}
      </p>
    </section>
  );
}
