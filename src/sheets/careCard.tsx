/** The tank care card: front for whoever is there today, back for the keeper, then the worked steps. */
import type { JSXNode } from 'satori/jsx';
import type { Sheet } from '../paper/layOut.ts';
import { mm, paperSizes } from '../paper/measures.ts';
import { amount } from '../wording/quantity.ts';
import { dayText } from '../wording/date.ts';
import { card } from './cardWords.ts';
import { CardBack } from './parts/CardBack.tsx';
import { CardFront } from './parts/CardFront.tsx';
import { CardSteps, stepPages } from './parts/CardSteps.tsx';
import { Leaf } from './parts/blocks.tsx';
import type { SheetInput } from './sheet.ts';

/** All sides of the card, in the order of printing: two sides of one sheet of paper, more only for many steps. */
export function careCard(input: SheetInput): readonly Sheet[] {
  const heads = {
    date: card(input, 'printed', { date: dayText(input.day, input.words.catalogue) }),
    length: (real_mm: number): string => amount(real_mm, 'mm', 'nearest', input.units),
  };
  const [onBack, ...more] = stepPages(input);
  return [
    side(input, <CardFront input={input} printed={heads.date} barLength={heads.length} />),
    side(
      input,
      <CardBack
        input={input}
        printed={heads.date}
        steps={onBack ?? []}
        last={more.length === 0 ? 'last' : 'more'}
      />,
    ),
    ...more.map((steps, i) =>
      side(
        input,
        <CardSteps
          input={input}
          printed={heads.date}
          steps={steps}
          last={i === more.length - 1 ? 'last' : 'more'}
        />,
      ),
    ),
  ];
}

/** The card's title as the PDF shows it. */
export function careCardTitle(input: SheetInput): string {
  return card(input, 'title', { name: input.system.name });
}

function side(input: SheetInput, content: JSXNode): Sheet {
  const paper = paperSizes[input.paper];
  return {
    ...paper,
    title: careCardTitle(input),
    lang: 'en',
    root: <Leaf height={mm(254)}>{content}</Leaf>,
  };
}
