/** @jsxImportSource preact */
/** The planner: form on one side, card on the other. */
import { useState } from 'preact/hooks';
import { Downloads } from './Downloads.tsx';
import { unitsOf, withText, withTree } from './draft.ts';
import { Figures } from './Figures.tsx';
import { FieldsProvider, type Form, FormProvider } from './form.ts';
import type { PlannerContent } from './messages.ts';
import { PlannerForm } from './PlannerForm.tsx';
import { PreviewBar } from './PreviewBar.tsx';
import { ProblemSummary } from './ProblemSummary.tsx';
import type { Session } from './session.ts';
import { SheetView } from './SheetView.tsx';
import { StatusLine } from './StatusLine.tsx';
import { Toolbar } from './Toolbar.tsx';
import { planner } from './words.ts';

type PlannerProps = {
  readonly content: PlannerContent;
  readonly session: Session;
  readonly offline: 'ready' | 'not yet';
};

export function Planner({ content, session, offline }: PlannerProps) {
  const view = session.view();
  /** Where there is room for one only. */
  const [shown, show] = useState<'form' | 'sheet'>('form');
  const { catalogue } = content;
  const form: Form = {
    content,
    catalogue,
    block: 'planner',
    draft: view.now,
    units: unitsOf(view.now),
    troubles: view.troubles,
    edit: (place, text) => session.edit(withText(session.view().now, place, text)),
    put: (place, tree) => session.edit(withTree(session.view().now, place, tree)),
    change: session.edit,
  };
  return (
    <FieldsProvider value={form}>
      <FormProvider value={form}>
        <PreviewBar view={view} shown={shown} onShow={show} />
        <div class={`desk shows-${shown}`}>
          <div class="form">
            <Toolbar view={view} session={session} />
            <ProblemSummary />
            <form aria-label={planner(catalogue, 'form')} onSubmit={(event) => event.preventDefault()}>
              <PlannerForm />
            </form>
            <p class="quiet">{planner(catalogue, 'kept')}</p>
          </div>
          <section class="output" id="output" aria-label={planner(catalogue, 'output')} tabIndex={-1}>
            <SheetView view={view} />
            <Downloads view={view} session={session} />
            <Figures view={view} />
          </section>
        </div>
        <StatusLine view={view} offline={offline} />
      </FormProvider>
    </FieldsProvider>
  );
}
