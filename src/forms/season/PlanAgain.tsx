/** @jsxImportSource preact */
/** What came differently in a season, so that the rest of it is planned again. */
import { CheckBox } from '../CheckBox.tsx';
import { DayField, GroupTroubles } from '../fields.tsx';
import { idOf } from '../form.ts';
import { More } from '../OptionalGroup.tsx';
import { Rows } from '../Rows.tsx';
import { today } from '../today.ts';
import { useSeason } from './seasonContext.ts';
import { againFrom, failedIn, withFailed } from './seasonDraft.ts';
import type { SowingShown } from './seasonMessages.ts';
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
      <fieldset class="inner">
        <legend>{words('missed')}</legend>
        <Rows place={['again', 'missed']} words="missed" first="on">
          {(row) => <DayField place={[...row, 'on']} />}
        </Rows>
      </fieldset>
      <p class="plan-again">
        <button type="button" disabled={busy === 'yes'} onClick={plan}>
          {words('plan')}
        </button>
      </p>
    </More>
  );
}

/** Those that were sown by then and are not lifted yet, for no other can fail; the latest first. */
function Sowings({ sowings }: Pick<AgainProps, 'sowings'>) {
  const season = useSeason();
  const { draft, change } = season;
  const from = againFrom(draft, today());
  const failed = new Set(failedIn(draft));
  const isOpen = (one: SowingShown) => failed.has(one.id) || (one.from < from && from <= one.until);
  const open = sowings.filter(isOpen).reverse();
  return (
    <fieldset class="inner" id={idOf(['again', 'failed'])} tabIndex={-1}>
      <legend>{formWords(season, 'again.failed')}</legend>
      <p class="how">{formWords(season, open.length === 0 ? 'again.none' : 'again.failedHow')}</p>
      <GroupTroubles place={['again', 'failed']} />
      {open.map(({ id, text }) => (
        <CheckBox
          key={id}
          text={text}
          checked={failed.has(id) ? 'yes' : 'no'}
          set={(next) => change(withFailed(draft, id, next))}
        />
      ))}
    </fieldset>
  );
}
