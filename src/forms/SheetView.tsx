/** @jsxImportSource preact */
/** The card itself, side by side, as the printer will get it; large on request. */
import { useRef, useState } from 'preact/hooks';
import type { Catalogue } from '../wording/catalogue.ts';
import { useForm } from './form.ts';
import type { Side } from './messages.ts';
import { SidePicture } from './SidePicture.tsx';
import type { View } from './view.ts';
import { planner } from './words.ts';

export function SheetView({ view }: { readonly view: View }) {
  const { catalogue } = useForm().content;
  const [chosen, choose] = useState(0);
  const large = useRef<HTMLDialogElement>(null);
  const [isLarge, setLarge] = useState(false);
  const enlarge = () => {
    setLarge(true);
    large.current?.showModal();
  };
  const sides = view.card?.sides ?? [];
  const index = Math.min(chosen, Math.max(0, sides.length - 1));
  const side = sides[index];
  if (side === undefined) {
    const waits = view.state === 'stale' ? 'sides.none' : 'sides.drawing';
    return <p class="sheet waits">{planner(catalogue, waits)}</p>;
  }
  const name = sideName(index, catalogue);
  const alt = planner(catalogue, 'sides.alt', { side: name, words: side.alt });
  return (
    <div class={`sheet ${view.state}`} aria-busy={view.state === 'drawing'} data-state={view.state}>
      {view.state === 'stale' ? <p class="stale-mark">{planner(catalogue, 'stale')}</p> : null}
      <Sides sides={sides} chosen={index} onChoose={choose} />
      <button type="button" class="picture" onClick={enlarge}>
        <SidePicture side={side} alt={alt} />
        <span class="hint">{planner(catalogue, 'act.enlarge')}</span>
      </button>
      <dialog ref={large} class="large" aria-label={name} onClose={() => setLarge(false)}>
        <button type="button" class="main" onClick={() => large.current?.close()}>
          {planner(catalogue, 'act.close')}
        </button>
        {isLarge ? <SidePicture side={side} alt={alt} /> : null}
      </dialog>
    </div>
  );
}

type SidesProps = {
  readonly sides: readonly Side[];
  readonly chosen: number;
  readonly onChoose: (index: number) => void;
};

function Sides({ sides, chosen, onChoose }: SidesProps) {
  const { catalogue } = useForm().content;
  return (
    <fieldset class="sides">
      <legend class="unseen">{planner(catalogue, 'sides.title')}</legend>
      {sides.map((_, index) => (
        <button key={index} type="button" aria-pressed={index === chosen} onClick={() => onChoose(index)}>
          {sideName(index, catalogue)}
        </button>
      ))}
    </fieldset>
  );
}

function sideName(index: number, catalogue: Catalogue): string {
  if (index < 2) return planner(catalogue, index === 0 ? 'sides.front' : 'sides.back');
  return planner(catalogue, 'sides.steps', { number: String(index - 1) });
}
