/** @jsxImportSource preact */
/** What a season comes to: the calendar as a picture, what it gives, what falls short, and its files. */
import { useState } from 'preact/hooks';
import type { Stage } from '../../core/turnover/turnover.ts';
import { type Catalogue, say } from '../../wording/catalogue.ts';
import { amount } from '../../wording/quantity.ts';
import { SidePicture } from '../SidePicture.tsx';
import { PlanAgain } from './PlanAgain.tsx';
import { PlanBar } from './PlanBar.tsx';
import type { SeasonDesk } from './seasonView.ts';
import type { SeasonContent, SeasonShown } from './seasonMessages.ts';

type ResultProps = { readonly content: SeasonContent; readonly desk: SeasonDesk };

export function SeasonResult({ content, desk }: ResultProps) {
  const { catalogue } = content;
  const { shown, state } = desk.view();
  return (
    <section class="output" aria-labelledby="season-result">
      <h2 id="season-result">{say(catalogue, 'crops.result')}</h2>
      <PlanBar content={content} desk={desk} />
      {shown === null ? null : (
        <>
          {shown.stages.length === 0 ? (
            <p class="draft">{say(catalogue, `crops.draft.${state === 'working' ? 'working' : 'left'}`)}</p>
          ) : null}
          <List title={say(catalogue, 'crops.changed')} lines={shown.changes} />
          <Calendar {...{ catalogue, shown, desk }} />
          <List
            title={say(catalogue, 'crops.stages')}
            lines={shown.stages.map((stage) => stageText(stage, catalogue))}
          />
          <List title={say(catalogue, 'crops.gives')} lines={shown.crops} />
          <List title={say(catalogue, 'crops.short')} lines={shown.short} />
          <List title={say(catalogue, 'crops.mind')} lines={shown.notes} />
          <List title={say(catalogue, 'crops.light')} lines={shown.light} />
          <Files {...{ catalogue, shown, desk }} />
          <PlanAgain
            sowings={shown.sowings}
            busy={state === 'working' || state === 'again' ? 'yes' : 'no'}
            plan={desk.planAgain}
          />
        </>
      )}
    </section>
  );
}

function Calendar({ catalogue, shown, desk }: OfShown) {
  const [chosen, setChosen] = useState(0);
  const choose = (at: number): void => {
    setChosen(at);
    desk.look(at);
  };
  const index = Math.min(chosen, shown.sides.length - 1);
  const side = shown.sides[index];
  if (side === undefined) return <p>{say(catalogue, 'crops.nothing')}</p>;
  return (
    <div class="sheet">
      <fieldset class="sides">
        <legend class="unseen">{say(catalogue, 'crops.pages')}</legend>
        {shown.sides.map((_, at) => (
          <button key={at} type="button" aria-pressed={at === index} onClick={() => choose(at)}>
            {say(catalogue, 'crops.page', { number: String(at + 1) })}
          </button>
        ))}
      </fieldset>
      <SidePicture side={side} alt={side.alt} />
    </div>
  );
}

function List({ title, lines }: { readonly title: string; readonly lines: readonly string[] }) {
  if (lines.length === 0) return null;
  return (
    <>
      <h3>{title}</h3>
      <ul>
        {lines.map((line) => (
          <li key={line}>{line}</li>
        ))}
      </ul>
    </>
  );
}

function stageText({ name, state, gap_frac }: Stage, catalogue: Catalogue): string {
  const gap = amount(gap_frac, 'frac', 'up', 'metric');
  const known = state === 'gap' && gap_frac >= 1 ? 'unknown' : state;
  return say(catalogue, `crops.stage.${name}.${known}`, { gap });
}

type OfShown = {
  readonly catalogue: Catalogue;
  readonly shown: SeasonShown;
  readonly desk: SeasonDesk;
};

/** Of a plan that is worked on, or that is not that of the form, nothing is taken away, unless somebody keeps to it. */
function Files({ catalogue, shown, desk }: OfShown) {
  const { state, making, hand } = desk.view();
  const isOther = state === 'stale' && hand?.held !== 'yes';
  const isClosed = state === 'working' || state === 'again' || isOther || making !== null;
  return (
    <div class="files">
      <h3>{say(catalogue, 'crops.files')}</h3>
      <div class="row">
        {shown.files.map(({ id, name }) => (
          <button key={id} type="button" disabled={isClosed} onClick={() => desk.download(id)}>
            {making === id ? say(catalogue, 'crops.making') : name}
          </button>
        ))}
      </div>
      {shown.files.some(({ id }) => id === 'ics') ? <p class="how">{say(catalogue, 'crops.phone')}</p> : null}
    </div>
  );
}
