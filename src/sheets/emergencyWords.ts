/** What to do when something is wrong, and how long the fish have. Every number comes from the plan. */
import { noteSentence } from '../wording/note.ts';
import { amountParts } from '../wording/quantity.ts';
import { card, figureOf, shown } from './cardWords.ts';
import type { SheetInput } from './sheet.ts';

export function emergencies(input: SheetInput): readonly { readonly sign: string; readonly act: string }[] {
  const level = input.system.pump === null ? 'levelActNoPump' : 'levelAct';
  const within = airWithin(input);
  const one = (key: string, act: string) => ({ sign: card(input, `case.${key}`), act });
  const power = card(input, 'case.powerAct');
  return [
    one('level', card(input, `case.${level}`)),
    one('gasping', card(input, 'case.gaspingAct')),
    one('power', within === null ? power : `${power}. ${within}`),
    one('dead', card(input, 'case.deadAct')),
  ];
}

/** How soon air must be back, for whoever is there; null where no fish breathe. */
function airWithin(input: SheetInput): string | null {
  const { fish, water } = input.system;
  if (fish === null || fish.present === 0) return null;
  const figure = input.plan.figures['timeInHand_min'];
  const reason = figure?.notes[0]?.code;
  if (water.green === 'green') return card(input, 'hand.green');
  if (reason === 'noTimeInHand') return card(input, 'hand.none');
  if (figure === undefined || figure.value === null) return card(input, 'hand.unknown');
  return isUnderOne(figure.value, input)
    ? card(input, 'hand.atOnce')
    : card(input, 'hand.within', { time: shown(input, 'timeInHand_min') });
}

/** Minutes that would be printed as 0. */
export function isUnderOne(minutes: number, input: SheetInput): boolean {
  return amountParts(minutes, 'min', 'down', input.units).number === '0';
}

/** The same for the keeper: what it holds for, or why there is no figure; null where no fish breathe. */
export function timeInHand(input: SheetInput): string | null {
  const short = airWithin(input);
  if (short === null) return null;
  const notes = input.plan.figures['timeInHand_min']?.notes ?? [];
  // Fish that would have less than a minute once they are grown: no sentence may tell it as 0 minutes.
  const isTold = notes.every(({ numbers }) => !isUnderOne(numbers['grown_min'] ?? 1, input));
  const text = notes.map((note) => noteSentence(note, input.words.catalogue, input.units)).join(' ');
  if (!isTold || text === '') return card(input, 'keeper.hand', { text: short });
  if (figureOf(input, 'timeInHand_min') === null)
    return card(input, 'keeper.hand', { text: `${short} ${text}` });
  return card(input, 'keeper.handTime', { time: shown(input, 'timeInHand_min'), text });
}
