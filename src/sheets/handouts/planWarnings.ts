/** What stands in the way of a plan, in sentences: whatever would end badly, and why there are no fish in it or too little water. */
import type { Figure, Plan } from '../../core/plan/figure.ts';
import { noteSentence } from '../../wording/note.ts';
import type { HandoutInput } from './handout.ts';

/** Figures whose cautions belong on a plan that is made of nothing but containers. */
const ofContainers = ['tankWanted_L', 'fishByTank'];

export function planWarnings({ words, units }: HandoutInput, { figures }: Plan): readonly string[] {
  const noted = Object.values(figures).flatMap((figure) => figure.notes.map((note) => ({ figure, note })));
  const kept = noted.filter(
    ({ figure, note }) =>
      note.level === 'stop' ||
      (note.level === 'caution' && ofContainers.includes(figure.key)) ||
      isWithoutFish(figure),
  );
  return [...new Set(kept.map(({ note }) => noteSentence(note, words.catalogue, units)))];
}

/** Where no number of fish is planned, its notes say why. */
function isWithoutFish({ key, value }: Figure): boolean {
  return key === 'fishPlanned' && value === null;
}
