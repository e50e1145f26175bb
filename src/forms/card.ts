/** The last card that could be worked out: its sides as drawings that the page shows, and its figures in words. */
import type { Answers } from './answers.ts';
import type { Side } from './messages.ts';

export type Card = { readonly answers: Answers; readonly sides: readonly Side[] };

/** The card with a new side. Older sides stay until theirs comes, so that nothing flickers. */
export function withSide(card: Card | null, answers: Answers, index: number, side: Side): Card {
  const sides = [...(card?.sides ?? [])];
  sides[index] = side;
  return { answers, sides };
}

/** The card when all its sides are there: what an older one had more of goes. */
export function withSides(card: Card, count: number): Card {
  return { ...card, sides: card.sides.slice(0, count) };
}
