/** @jsxImportSource preact */
/** The last thing that happened, at the foot of the window; read aloud when it changes. */
import { useForm } from './form.ts';
import type { View } from './view.ts';
import { planner } from './words.ts';

type StatusProps = { readonly view: View; readonly offline: 'ready' | 'not yet' };

export function StatusLine({ view, offline }: StatusProps) {
  const { catalogue } = useForm().content;
  const saving = { saved: 'told.saved', refused: 'told.notSaved', soon: null }[view.saving];
  return (
    <div class="status">
      <p role="status" class="told">
        {view.told}
      </p>
      <p class="quiet" data-saving={view.saving} data-offline={offline}>
        {[saving, offline === 'ready' ? 'told.offline' : null]
          .filter((key) => key !== null)
          .map((key) => planner(catalogue, key))
          .join(' · ')}
      </p>
    </div>
  );
}
