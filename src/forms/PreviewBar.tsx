/** @jsxImportSource preact */
/** On a phone there is room for one thing: this bar keeps the feed figure in sight and turns form and sheet over. */
import { feedText } from './announcement.ts';
import { useForm } from './form.ts';
import type { View } from './view.ts';
import { planner } from './words.ts';

type BarProps = {
  readonly view: View;
  readonly shown: 'form' | 'sheet';
  readonly onShow: (next: 'form' | 'sheet') => void;
};

export function PreviewBar({ view, shown, onShow }: BarProps) {
  const { catalogue } = useForm().content;
  const [front] = view.card?.sides ?? [];
  const other = shown === 'form' ? 'sheet' : 'form';
  return (
    <div class={view.state === 'stale' ? 'preview stale' : 'preview'}>
      {front ? <img src={front.url} alt="" width="42" height="59" /> : null}
      <p class="figure">
        <span>{planner(catalogue, 'feed')}</span>{' '}
        <strong>{view.card ? feedText(view.card.answers) : '…'}</strong>
        {view.state === 'stale' ? <small>{planner(catalogue, 'staleShort')}</small> : null}
      </p>
      <button
        type="button"
        class="main"
        onClick={() => {
          onShow(other);
          scrollTo({ top: 0 });
        }}
      >
        {planner(catalogue, shown === 'form' ? 'act.seeSheet' : 'act.hideSheet')}
      </button>
    </div>
  );
}
