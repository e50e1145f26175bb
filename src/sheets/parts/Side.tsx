/** A side of any sheet: the safe box, the head of the house, and what stands under it. */
import type { JSXNode } from 'satori/jsx';
import type { Sheet } from '../../paper/layOut.ts';
import { mm, paperSizes } from '../../paper/measures.ts';
import { dayText } from '../../wording/date.ts';
import { card } from '../cardWords.ts';
import type { SheetInput } from '../sheet.ts';
import { Leaf } from './blocks.tsx';
import { CardHead } from './CardHead.tsx';
import { Frame } from './Frame.tsx';

type Head = {
  readonly title: string;
  /** What the sheet is, at the right of its head. */
  readonly kind: string;
  readonly subject: string;
};

/** A page of a sheet, ready for the press. */
export function sideOf(input: SheetInput, head: Head, content: JSXNode): Sheet {
  return {
    ...paperSizes[input.paper],
    title: head.title,
    lang: 'en',
    root: (
      <Leaf height={mm(254)}>
        <Frame>
          <CardHead
            name={input.system.name}
            place={input.system.place}
            subject={head.subject}
            kind={head.kind}
            printed={card(input, 'printed', { date: dayText(input.day, input.words.catalogue) })}
          />
          {content}
        </Frame>
      </Leaf>
    ),
  };
}
