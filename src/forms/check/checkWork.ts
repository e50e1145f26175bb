/** Somebody's worksheet once more, from its number or from the containers typed again, and which of their answers agree. */
import { type HandoutFacts, handoutFacts } from '../../core/plan/handoutFacts.ts';
import type { Quantity } from '../../core/plan/figure.ts';
import type { Problem } from '../../core/problem.ts';
import { agrees, type Precision } from '../../core/workshop/agrees.ts';
import type { Level } from '../../core/workshop/exercise.ts';
import { readSheetNumber } from '../../core/workshop/sheetNumber.ts';
import { readCheckLine } from '../../schemas/checkLine.ts';
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

/** The sheet of somebody's own containers, or of a system by its name, written as their sheet has it. */
export function sheetOfContainers(text: string, level: Level, facts: PeopleFacts): Sheet {
  if (text.trim() === '') return { kind: 'none' };
  const ids = facts.systems.map(({ id }) => id);
  const known = { media: Object.keys(facts.media), pump: Object.keys(facts.starts.pumps) };
  const { containers, equipment } = readCheckLine(text, ids, known);
  if ('problems' in containers) return { kind: 'problems', problems: containers.problems };
  const own =
    'system' in containers
      ? facts.systems.find(({ id }) => id === containers.system)
      : ownSystem(containers.containers, facts, equipment);
  if (own === undefined) return { kind: 'none' };
  if ('problems' in own) return { kind: 'problems', problems: own.problems };
  return { kind: 'facts', facts: handoutFacts(own.system, level) };
}

export type Verdict = 'empty' | 'notNumber' | 'right' | 'wrong';

/** What is to be said of an answer. */
export function verdictOf({ value, unit, term }: Quantity, typed: string): Verdict {
  if (typed.trim() === '') return 'empty';
  const answer = numberOf(typed.replace(/\s*[\p{L}²³/]+$/u, ''));
  if (answer === null) return 'notNumber';
  return agrees(value, answer, precisionOf(unit, term)) ? 'right' : 'wrong';
}

/** Living things are counted; a turnover is printed with two digits. */
function precisionOf(unit: Quantity['unit'], term: string): Precision {
  if (unit === 'fish' || unit === 'plants') return 'whole';
  return term === 'turnover' ? 'rough' : 'measured';
}
