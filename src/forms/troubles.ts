/** What stands between the form and a card: each with its field and its sentence. */
import type { Problem } from '../core/problem.ts';
import type { Uncovered } from '../paper/cover.ts';
import type { Catalogue } from '../wording/catalogue.ts';
import { say } from '../wording/catalogue.ts';
import { problemSentence } from '../wording/problem.ts';
import { fieldWords } from '../wording/problemField.ts';
import type { UnitSystem } from '../wording/quantity.ts';
import { type Draft, listAt, type Place, textAt } from './draft.ts';
import { planner } from './words.ts';

export type Trouble = {
  readonly place: Place;
  /** Nothing was typed yet, or something that cannot be. */
  readonly kind: 'empty' | 'wrong';
  readonly sentence: string;
};

export function troubleOf(problem: Problem, catalogue: Catalogue, units: UnitSystem): Trouble {
  const sentence = problemSentence(problem, catalogue, units);
  const empty = problem.code === 'missing' && problem.place.at(-1) !== 'name';
  return {
    place: problem.place,
    kind: empty ? 'empty' : 'wrong',
    sentence: problem.code === 'notNumber' ? `${sentence}${eitherOr(problem, catalogue)}` : sentence,
  };
}

/** "1,200" may mean two things. */
function eitherOr(problem: Problem, catalogue: Catalogue): string {
  const [one, other] = problem.allowed ?? [];
  if (one === undefined || other === undefined) return '';
  const some = say(catalogue, 'problems.hints.or', { some: one, last: other });
  return ` ${say(catalogue, 'problems.hints.commaUnclear', { some })}`;
}

/** Characters that cannot be printed, told at the fields in which they were typed. */
export function uncoveredTroubles(
  uncovered: readonly Uncovered[],
  draft: Draft,
  catalogue: Catalogue,
): readonly Trouble[] {
  const places: readonly Place[] = [
    ['name'],
    ['place'],
    ...listAt(draft, ['beds']).map((_, index) => ['beds', index, 'name']),
  ];
  return places.flatMap((place) => {
    const text = textAt(draft, place);
    const found = uncovered.find(({ character }) => text.includes(character));
    if (found === undefined) return [];
    const field = fieldWords(place, catalogue).name;
    const values = { field, character: found.character, code: found.codePoint };
    return [{ place, kind: 'wrong', sentence: planner(catalogue, 'problems.uncovered', values) }];
  });
}

/** Those of one field. */
export function troublesAt(troubles: readonly Trouble[], place: Place): readonly Trouble[] {
  const key = place.join('.');
  return troubles.filter((trouble) => trouble.place.join('.') === key);
}
