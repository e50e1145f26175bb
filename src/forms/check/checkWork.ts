/** Somebody's worksheet once more, from its number or from the containers typed again, and which of their answers agree. */
import { type HandoutFacts, handoutFacts } from '../../core/plan/handoutFacts.ts';
import type { Quantity } from '../../core/plan/figure.ts';
import type { Problem } from '../../core/problem.ts';
import { agrees } from '../../core/workshop/agrees.ts';
import type { Level } from '../../core/workshop/exercise.ts';
import { readSheetNumber } from '../../core/workshop/sheetNumber.ts';
import { readContainers } from '../../schemas/containersText.ts';
import type { PeopleFacts } from '../../schemas/people.ts';
import { exerciseSystem, ownSystem } from '../../schemas/people.ts';
import { numberOf } from '../typedNumber.ts';

export type Sheet =
  | { readonly kind: 'none' }
  | { readonly kind: 'wrongNumber' }
  | { readonly kind: 'problems'; readonly problems: readonly Problem[] }
  | { readonly kind: 'facts'; readonly facts: HandoutFacts };

/** The sheet with this number; none where nothing is typed. */
export function sheetOfNumber(text: string, facts: PeopleFacts): Sheet {
  if (text.trim() === '') return { kind: 'none' };
  const number = readSheetNumber(text);
  if (number === null) return { kind: 'wrongNumber' };
  return { kind: 'facts', facts: handoutFacts(exerciseSystem(number, facts), number.level) };
}

/** The sheet of somebody's own containers, written as in a roster. */
export function sheetOfContainers(text: string, level: Level, facts: PeopleFacts): Sheet {
  if (text.trim() === '') return { kind: 'none' };
  const read = readContainers(text, []);
  if ('problems' in read)
    return { kind: 'problems', problems: read.problems.map((one) => ({ ...one, place: [] })) };
  if ('system' in read) return { kind: 'none' };
  const own = ownSystem(read.containers, facts);
  if ('problems' in own) return { kind: 'problems', problems: own.problems };
  return { kind: 'facts', facts: handoutFacts(own.system, level) };
}

export type Verdict = 'empty' | 'notNumber' | 'right' | 'wrong';

/** What is to be said of an answer. */
export function verdictOf({ value, unit }: Quantity, typed: string): Verdict {
  if (typed.trim() === '') return 'empty';
  const answer = numberOf(typed.replace(/\s*[\p{L}²³/]+$/u, ''));
  if (answer === null) return 'notNumber';
  return agrees(value, answer, unit === 'fish' || unit === 'plants' ? 'whole' : 'measured')
    ? 'right'
    : 'wrong';
}
