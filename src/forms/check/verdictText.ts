/** What is said of somebody's answer, in words that name the step and tell no result. */
import type { AskedStep } from '../../core/workshop/askedSteps.ts';
import { ruleText } from '../../sheets/handouts/handoutLine.ts';
import { say } from '../../wording/catalogue.ts';
import { stepParts } from '../../wording/step.ts';
import type { CheckContent } from './checkContent.ts';
import type { Verdict } from './checkWork.ts';

type Words = Pick<CheckContent, 'catalogue' | 'terms'>;

export function verdictText(verdict: Verdict, step: AskedStep, words: Words): string {
  if (verdict === 'empty') return '';
  return say(words.catalogue, `check.verdict.${verdict}`, { step: stepInWords(step, words) });
}

/** Which numbers go into it, and how; or the rule that it goes by. */
function stepInWords(step: AskedStep, { catalogue, terms }: Words): string {
  if (step.way === 'rule') return ruleText(step, catalogue);
  const words = stepParts(step, catalogue, terms).parts.map((part) => {
    if (part.kind === 'word') return part.text;
    return part.name === '' ? '…' : part.name;
  });
  return words.join('').replace(/\s+/g, ' ').trim();
}
