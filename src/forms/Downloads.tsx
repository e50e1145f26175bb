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
  const button = (kind: FileKind, look: string) => (
    <button
      key={kind}
      type="button"
      class={look}
      aria-disabled={closed || view.making !== null}
      aria-describedby="files-note"
      onClick={() => session.download(kind)}
    >
      {view.making === kind ? planner(catalogue, 'files.making') : planner(catalogue, `act.${kind}`)}
    </button>
  );
  return (
    <section class="files" aria-labelledby="files-title">
      <h2 id="files-title">{planner(catalogue, 'files.title')}</h2>
      <div class="row">
        {button('pdf', 'main')}
        {others.map((kind) => button(kind, ''))}
      </div>
      <p class="quiet" id="files-note">
        {planner(catalogue, closed ? 'files.inTheWay' : 'files.drop')}
      </p>
    </section>
  );
}
