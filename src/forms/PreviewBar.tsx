/** @jsxImportSource preact */
/** On a phone there is room for one thing: this bar keeps the feed figure in sight and turns form and sheet over. */
import { feedText } from './announcement.ts';
import { useEffect, useState } from 'preact/hooks';
import { useForm } from './form.ts';
import type { Side } from './messages.ts';
import { SidePicture } from './SidePicture.tsx';
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
      {front ? <Thumbnail side={front} /> : null}
      <p class="figure">
        <span>{planner(catalogue, 'feed')}</span> <Feed view={view} />
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

/** Long enough that a thumbnail never delays what is being typed. */
const calm_s = 0.4;

function Thumbnail({ side }: { readonly side: Side }) {
  const [drawn, draw] = useState<Side | null>(null);
  useEffect(() => {
    const timer = setTimeout(() => draw(side), calm_s * 1000);
    return () => clearTimeout(timer);
  }, [side]);
  return <span class="thumbnail">{drawn ? <SidePicture side={drawn} alt={null} /> : null}</span>;
}

/** A figure is large; words in its place have to share the bar with the button. */
function Feed({ view }: Pick<BarProps, 'view'>) {
  if (view.card === null) return <strong>…</strong>;
  const look = view.card.answers.feed.number === null ? 'words' : 'number';
  return <strong class={look}>{feedText(view.card.answers)}</strong>;
}
