/** @jsxImportSource preact */
/** What came differently in a season, so that the rest of it is planned again. */
import { CheckBox } from '../CheckBox.tsx';
import { ChoiceField, DayField, GroupTroubles, NumberField, TextField } from '../fields.tsx';
import { idOf } from '../form.ts';
import { More } from '../OptionalGroup.tsx';
import { Rows } from '../Rows.tsx';
import { today } from '../today.ts';
import { useSeason } from './seasonContext.ts';
import { againFrom, failedIn, hasOthers, type SeasonDraft, withFailed, withOthers } from './seasonDraft.ts';
import type { SowingShown } from './seasonMessages.ts';
import { WishFields } from './WishFields.tsx';
import { formWords } from '../words.ts';

type AgainProps = {
  readonly sowings: readonly SowingShown[];
  readonly busy: 'yes' | 'no';
  readonly plan: () => void;
};

export function PlanAgain({ sowings, busy, plan }: AgainProps) {
  const season = useSeason();
  const words = (key: string) => formWords(season, `again.${key}`);
  return (
    <More name="again" holds={[['again']]}>
      <p class="how">{words('intro')}</p>
      <GroupTroubles place={['again']} />
      <DayField place={['again', 'from']} need="optional" />
      <Sowings sowings={sowings} />
      <Parts sowings={sowings} />
      <fieldset class="inner">
        <legend>{words('missed')}</legend>
        <Rows place={['again', 'missed']} words="missed" first="on">
          {(row) => <DayField place={[...row, 'on']} />}
        </Rows>
      </fieldset>
      <Others />
      <p class="plan-again">
        <button type="button" disabled={busy === 'yes'} onClick={plan}>
          {words('plan')}
        </button>
      </p>
    </More>
  );
}

/** Those that were sown by then and are not lifted yet, for no other can fail; the latest first. */
function openOf(sowings: readonly SowingShown[], draft: SeasonDraft): readonly SowingShown[] {
  const from = againFrom(draft, today());
  return sowings.filter((one) => one.from < from && from <= one.until).reverse();
}

function Sowings({ sowings }: Pick<AgainProps, 'sowings'>) {
  const season = useSeason();
  const { draft, change } = season;
  const failed = failedIn(draft);
  const open = openOf(sowings, draft);
  const others = sowings.filter((one) => failed.includes(one.id) && !open.includes(one));
  const shown = [...open, ...others];
  return (
    <fieldset class="inner" id={idOf(['again', 'failed'])} tabIndex={-1}>
      <legend>{formWords(season, 'again.failed')}</legend>
      <p class="how">{formWords(season, shown.length === 0 ? 'again.none' : 'again.failedHow')}</p>
      {failed.map((id, at) => (
        <GroupTroubles key={id} place={['again', 'failed', at]} />
      ))}
      {shown.map(({ id, text }) => (
        <CheckBox
          key={id}
          text={text}
          checked={failed.includes(id) ? 'yes' : 'no'}
          set={(next) => change(withFailed(draft, id, next))}
        />
      ))}
    </fieldset>
  );
}

function Parts({ sowings }: Pick<AgainProps, 'sowings'>) {
  const season = useSeason();
  const choices = openOf(sowings, season.draft).map(({ id, text }) => ({ value: id, text }));
  return (
    <fieldset class="inner">
      <legend>{formWords(season, 'again.partly')}</legend>
      <Rows place={['again', 'partly']} words="partly" first="sowing">
        {(row) => (
          <>
            <div class="wide">
              <ChoiceField place={[...row, 'sowing']} choices={choices} />
            </div>
            <NumberField place={[...row, 'plants']} need="optional" />
            <TextField place={[...row, 'empty']} need="optional" />
          </>
        )}
      </Rows>
    </fieldset>
  );
}

/** What is wanted from then on, which begins as what is wanted now. */
function Others() {
  const season = useSeason();
  const { draft, change } = season;
  const words = (key: string) => formWords(season, `again.${key}`);
  const is = hasOthers(draft) ? 'yes' : 'no';
  return (
    <>
      <CheckBox text={words('others')} checked={is} set={(next) => change(withOthers(draft, next))} />
      {is === 'no' ? null : (
        <fieldset class="inner">
          <legend>{words('othersTitle')}</legend>
          <p class="how">{words('othersHow')}</p>
          <DayField place={['again', 'wishesFrom']} need="optional" />
          <Rows place={['again', 'wishes']} words="others" first="crop" fresh={{ unit: { text: 'head' } }}>
            {(row) => <WishFields row={row} />}
          </Rows>
        </fieldset>
      )}
    </>
  );
}
