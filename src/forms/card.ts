/** The last card that could be worked out: its sides as pictures that the page can show, and its figures in words. */
import type { Answers } from './answers.ts';
import type { Side } from './messages.ts';

export type ShownSide = { readonly url: string; readonly alt: string };
export type Card = { readonly answers: Answers; readonly sides: readonly ShownSide[] };

/** The card with a new side. Older sides stay until theirs comes, so that nothing flickers. */
export function withSide(card: Card | null, answers: Answers, index: number, { svg, alt }: Side): Card {
  const sides = [...(card?.sides ?? [])];
  forget(sides.slice(index, index + 1));
  sides[index] = { url: URL.createObjectURL(new Blob([svg], { type: 'image/svg+xml' })), alt };
  return { answers, sides };
}

/** The card when all its sides are there: what an older one had more of goes. */
export function withSides(card: Card, count: number): Card {
  forget(card.sides.slice(count));
  return { ...card, sides: card.sides.slice(0, count) };
}

function forget(sides: readonly ShownSide[]): void {
  for (const { url } of sides) URL.revokeObjectURL(url);
}
