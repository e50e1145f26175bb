/** @jsxImportSource preact */
/** The crops page: form on one side, the season on the other. */
import { say } from '../../wording/catalogue.ts';
import { unitsOf, withTree } from '../draft.ts';
import { FieldsProvider } from '../form.ts';
import { ProblemSummary } from '../ProblemSummary.tsx';
import { type Season, SeasonProvider } from './seasonContext.ts';
import type { SeasonDesk } from './seasonView.ts';
import { SeasonForm } from './SeasonForm.tsx';
import type { SeasonContent } from './seasonMessages.ts';
import { SeasonResult } from './SeasonResult.tsx';

type PageProps = { readonly content: SeasonContent; readonly desk: SeasonDesk };

export function SeasonPage({ content, desk }: PageProps) {
  const { catalogue } = content;
  const { draft, troubles } = desk.view();
  const season: Season = {
    ...{ content, catalogue, block: 'crops', draft, troubles, units: unitsOf(draft), change: desk.change },
    edit: (place, text) => desk.change(withTree(desk.view().draft, place, { text })),
    put: (place, tree) => desk.change(withTree(desk.view().draft, place, tree)),
  };
  return (
    <FieldsProvider value={season}>
      <SeasonProvider value={season}>
        <div class="desk">
          <div class="form">
            <Examples content={content} desk={desk} />
            <InTheWay content={content} desk={desk} />
            <SeasonForm />
            <p class="quiet">{say(catalogue, 'crops.kept')}</p>
          </div>
          <SeasonResult content={content} desk={desk} />
        </div>
      </SeasonProvider>
    </FieldsProvider>
  );
}

function Examples({ content: { catalogue, seasons }, desk }: PageProps) {
  return (
    <div class="toolbar">
      {Object.entries(seasons).map(([id, { name }]) => (
        <button key={id} type="button" onClick={() => desk.open(id)}>
          {say(catalogue, 'crops.example', { name })}
        </button>
      ))}
    </div>
  );
}

/** Spoken at once, as the plan beside it is no longer that of the form. */
function InTheWay({ content: { catalogue }, desk }: PageProps) {
  const { troubles, failure } = desk.view();
  if (troubles.length === 0 && failure === '') return null;
  return (
    <div role="alert">
      <p>{say(catalogue, 'crops.wrong')}</p>
      {failure === '' ? null : (
        <p class="trouble wrong">{say(catalogue, 'crops.failed', { message: failure })}</p>
      )}
      <ProblemSummary />
    </div>
  );
}
