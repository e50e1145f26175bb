/** One sentence on how things stand, for those who hear the page. */
import type { Catalogue } from '../wording/catalogue.ts';
import type { Answers } from './answers.ts';
import type { View } from './view.ts';
import { planner } from './words.ts';

export function announcement({ state, card, troubles }: View, catalogue: Catalogue): string {
  if (state === 'stale' || card === null) {
    const count = (kind: string) => String(troubles.filter((trouble) => trouble.kind === kind).length);
    return planner(catalogue, 'told.problems', { wrong: count('wrong'), empty: count('empty') });
  }
  const { answers } = card;
  return planner(catalogue, 'told.result', {
    feed: feedText(answers),
    fish: answers.first.find(({ key }) => key === 'fishPlanned')?.value ?? planner(catalogue, 'told.noFish'),
    cautions: String(answers.stops.length + answers.cautions.length),
  });
}

/** "21 g", or what stands on the card in its place. */
export function feedText({ feed }: Answers): string {
  return feed.number === null ? (feed.second ?? '') : `${feed.number}\u00a0${feed.sign}`;
}
