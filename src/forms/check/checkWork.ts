/** Somebody's worksheet once more, from its number or from the containers typed again, and which of their answers agree. */
import { type HandoutFacts, handoutFacts } from '../../core/plan/handoutFacts.ts';
import type { Quantity } from '../../core/plan/figure.ts';
import type { Problem } from '../../core/problem.ts';
import { agrees, type Precision } from '../../core/workshop/agrees.ts';
import type { Asked } from '../../core/workshop/askedSteps.ts';
import { carriedOn, stepName, stepsBefore } from '../../core/workshop/carriedOn.ts';
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

/**
 * carried: worked right from a number before it that differs. rounded: worked right from one that was rounded, and by
 * that it comes to something else.
 */
export type Verdict = 'empty' | 'notNumber' | 'right' | 'wrong' | 'carried' | 'rounded';

/** What is to be said of every answer, by the names of the steps. */
export function verdictsOf(
  asked: readonly Asked[],
  typed: Readonly<Record<string, string>>,
): ReadonlyMap<string, Verdict> {
  const all = asked.flatMap(({ key, steps }) => steps.map((step) => ({ name: stepName(key, step), step })));
  const written = new Map(
    all.flatMap(({ name, step }) => {
      const answer = step.way === 'given' ? null : answerOf(step.gives, typed[name] ?? '');
      return answer === null ? [] : [[name, answer] as const];
    }),
  );
  const carried = carriedOn(asked, written);
  const verdicts = new Map<string, Verdict>();
  /** Steps that come to something else than on the sheet of answers. */
  const off = new Set<string>();
  for (const { name, step } of all) {
    const isAfterOff = stepsBefore(step).some((before) => off.has(before));
    const exact = verdictOf(step.gives, typed[name] ?? '');
    const follows = agreesWith(step.gives, carried.get(name) ?? step.gives.value, written.get(name));
    const verdict = exact === 'wrong' && follows ? (isAfterOff ? 'carried' : 'rounded') : exact;
    verdicts.set(name, verdict);
    if (verdict === 'empty' || verdict === 'notNumber' ? isAfterOff : verdict !== 'right') off.add(name);
  }
  return verdicts;
}

function agreesWith({ unit, term }: Quantity, value: number, answer: number | undefined): boolean {
  return answer !== undefined && agrees(value, answer, precisionOf(unit, term));
}

/** What is to be said of an answer that stands alone. */
function verdictOf(of: Quantity, typed: string): Exclude<Verdict, 'carried' | 'rounded'> {
  if (typed.trim() === '') return 'empty';
  const answer = answerOf(of, typed);
  if (answer === null) return 'notNumber';
  return agreesWith(of, of.value, answer) ? 'right' : 'wrong';
}

/** With or without its unit; of "8,788" what is nearer to the right answer, as only that can be meant. */
function answerOf({ value }: Quantity, typed: string): number | null {
  const text = typed.replace(/[\s\p{L}²³/]+$/u, '');
  const answer = numberOf(text);
  const [, whole = '', rest = ''] = /^\s*(\d{1,3}),(\d{3})$/.exec(text) ?? [];
  if (answer !== null || whole === '') return answer;
  const [decimal, grouped] = [Number(`${whole}.${rest}`), Number(`${whole}${rest}`)];
  return Math.abs(decimal - value) <= Math.abs(grouped - value) ? decimal : grouped;
}

/** Living things are counted; a turnover is printed with two digits. */
function precisionOf(unit: Quantity['unit'], term: string): Precision {
  if (unit === 'fish' || unit === 'plants') return 'whole';
  return term === 'turnover' ? 'rough' : 'measured';
}
