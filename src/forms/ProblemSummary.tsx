/** @jsxImportSource preact */
/** Everything that is in the way of a card, each a way to its field. Never takes the focus by itself. */
import { idOf, useFields } from './form.ts';
import type { Trouble } from './troubles.ts';
import { labelOf, planner } from './words.ts';

export function ProblemSummary() {
  const { troubles } = useFields();
  const wrong = troubles.filter(({ kind }) => kind === 'wrong');
  const empty = troubles.filter(({ kind }) => kind === 'empty');
  return (
    <>
      {wrong.length > 0 ? <WrongList troubles={wrong} /> : null}
      {empty.length > 0 ? <EmptyList troubles={empty} /> : null}
    </>
  );
}

type ListProps = { readonly troubles: readonly Trouble[] };

function WrongList({ troubles }: ListProps) {
  const { catalogue } = useFields();
  return (
    <section class="summary wrong" aria-labelledby="wrong-title">
      <h2 id="wrong-title">{planner(catalogue, 'problems.title', { count: String(troubles.length) })}</h2>
      <ul>
        {troubles.map(({ place, sentence }) => (
          <li key={`${place.join('.')} ${sentence}`}>
            <FieldLink place={place} text={sentence} />
          </li>
        ))}
      </ul>
    </section>
  );
}

/** Closed at first: whoever starts with empty fields knows that they are empty. */
function EmptyList({ troubles }: ListProps) {
  const form = useFields();
  return (
    <details class="summary">
      <summary>{planner(form.catalogue, 'problems.empty', { count: String(troubles.length) })}</summary>
      <ul>
        {troubles.map(({ place }) => (
          <li key={place.join('.')}>
            <FieldLink place={place} text={labelOf(place, form)} />
          </li>
        ))}
      </ul>
    </details>
  );
}

type LinkProps = { readonly place: Trouble['place']; readonly text: string };

function FieldLink({ place, text }: LinkProps) {
  const follow = (event: Event) => {
    event.preventDefault();
    const field = fieldFor(place);
    unfold(field);
    field?.focus();
  };
  return (
    <a href={`#${idOf(place)}`} onClick={follow}>
      {text}
    </a>
  );
}

/** The field itself, or the nearest group around it. */
function fieldFor(place: Trouble['place']): HTMLElement | null {
  const ids = place.map((_, cut) => idOf(place.slice(0, place.length - cut)));
  return ids.map((id) => document.getElementById(id)).find((found) => found !== null) ?? null;
}

/** What is folded away cannot take the focus. */
function unfold(field: HTMLElement | null): void {
  const folded = field?.closest('details');
  if (folded) folded.open = true;
}
