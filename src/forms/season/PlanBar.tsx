/** @jsxImportSource preact */
import { say } from '../../wording/catalogue.ts';
import type { SeasonContent } from './seasonMessages.ts';
import type { SeasonDesk } from './seasonView.ts';

type BarProps = { readonly content: SeasonContent; readonly desk: SeasonDesk };

/** What is done with a plan as a whole: stop, keep to it, plan anew, go back. */
export function PlanBar({ content: { catalogue }, desk }: BarProps) {
  const { hand, before, state } = desk.view();
  const words = (key: string) => say(catalogue, `crops.act.${key}`);
  const isBusy = state === 'working' || state === 'again';
  const isHeld = hand?.held === 'yes';
  return (
    <>
      <p role="status" class="quiet">
        {say(catalogue, `crops.state.${state}`)}
      </p>
      {isHeld ? <p>{say(catalogue, 'crops.held')}</p> : null}
      <div class="toolbar">
        {isBusy ? (
          <button type="button" onClick={desk.stop}>
            {words('stop')}
          </button>
        ) : null}
        {hand === null || isBusy || isHeld ? null : (
          <button type="button" onClick={desk.hold}>
            {words('hold')}
          </button>
        )}
        {isBusy || !(isHeld || state !== 'current') ? null : (
          <button type="button" onClick={desk.planWhole}>
            {words('whole')}
          </button>
        )}
        {before === null ? null : (
          <button type="button" onClick={desk.back}>
            {words('back')}
          </button>
        )}
      </div>
    </>
  );
}
