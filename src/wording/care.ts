/** The words round a task of the care routine: its heading, who does it, and for which systems it is. */
import type { CareFlag, CareHand, CarePart } from '../core/care/routine.ts';
import { type Catalogue, say } from './catalogue.ts';

/** What a part stands under: how often for the routine, else what it is about. */
export function careHeading({ topic, rhythm }: CarePart, catalogue: Catalogue): string {
  return rhythm === 'event'
    ? say(catalogue, `care.topics.${topic}`)
    : say(catalogue, `care.rhythms.${rhythm}`);
}

export function handName(who: CareHand, catalogue: Catalogue): string {
  return say(catalogue, `care.who.${who}`);
}

/** For which systems a task is; empty where it is for every one. */
export function onlyWords(only: readonly CareFlag[], catalogue: Catalogue): string {
  if (only.length === 0) return '';
  const flags = only.map((flag) => say(catalogue, `care.flags.${flag}`)).join(', ');
  return say(catalogue, 'care.only', { flags });
}
