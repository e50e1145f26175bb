/** Keeps a drawing on the page up to date: only marks that changed are made anew. */
import type { Side } from './messages.ts';

type Shown = { definitions: readonly string[]; marks: readonly string[] };

const shownIn = new WeakMap<SVGSVGElement, Shown>();

/** Shows the side in this element, which holds nothing else. */
export function paint(picture: SVGSVGElement, side: Side): void {
  const shown = shownIn.get(picture);
  const [defs, group] = shown ? [picture.children[0], picture.children[1]] : [null, null];
  if (!shown || !defs || !group)
    picture.replaceChildren(groupOf('defs', side.definitions), groupOf('g', side.marks));
  else {
    exchange(defs, shown.definitions, side.definitions);
    exchange(group, shown.marks, side.marks);
  }
  shownIn.set(picture, { definitions: side.definitions, marks: side.marks });
}

const svgNames = 'http://www.w3.org/2000/svg';

function groupOf(name: 'defs' | 'g', marks: readonly string[]): Element {
  const group = document.createElementNS(svgNames, name);
  group.innerHTML = marks.join('');
  return group;
}

/** What is the same at the start, at the end and in the same place between stays as it is. */
function exchange(group: Element, olds: readonly string[], nows: readonly string[]): void {
  const [from, fromEnd] = alikeEnds(olds, nows);
  if (olds.length === nows.length) {
    const changed = nows.flatMap((now, at) => (from <= at && now !== olds[at] ? [at] : []));
    const fresh = groupOf(
      'g',
      changed.map((at) => nows[at] ?? ''),
    );
    const places = changed.map((at) => group.children[at]);
    for (const place of places) if (fresh.firstElementChild) place?.replaceWith(fresh.firstElementChild);
    return;
  }
  for (let at = olds.length - fromEnd - 1; at >= from; at -= 1) group.children[at]?.remove();
  const fresh = groupOf('g', nows.slice(from, nows.length - fromEnd));
  const after = group.children[from] ?? null;
  for (const mark of [...fresh.children]) group.insertBefore(mark, after);
}

/** How many are alike at the start, and how many of the others at the end. */
function alikeEnds(olds: readonly string[], nows: readonly string[]): readonly [number, number] {
  const most = Math.min(olds.length, nows.length);
  let from = 0;
  while (from < most && olds[from] === nows[from]) from += 1;
  let fromEnd = 0;
  while (fromEnd < most - from && olds.at(-1 - fromEnd) === nows.at(-1 - fromEnd)) fromEnd += 1;
  return [from, fromEnd];
}
