/** A side of a sheet of a season, with the head of the house. */
import type { JSXNode } from 'satori/jsx';
import type { Sheet } from '../../paper/layOut.ts';
import { mm, paperSizes } from '../../paper/measures.ts';
import { dayText } from '../../wording/date.ts';
import { season, type TurnoverInput, type TurnoverKind } from '../turnoverSheet.ts';
import { Leaf } from './blocks.tsx';
import { CardHead } from './CardHead.tsx';
import { Frame } from './Frame.tsx';

/** Kind and subject stand under `turnover.` and the group of the sheet. */
export function seasonSide(input: TurnoverInput, kind: TurnoverKind, group: string, content: JSXNode): Sheet {
  const { task } = input.plan;
  return {
    ...paperSizes[input.paper],
    title: kind.title(input),
    lang: 'en',
    root: (
      <Leaf height={mm(254)}>
        <Frame>
          <CardHead
            name={task.name}
            place={task.placeName}
            subject={season(input, `${group}.subject`)}
            kind={season(input, `${group}.kind`)}
            printed={season(input, 'printed', { date: dayText(input.day, input.words.catalogue) })}
          />
          {content}
        </Frame>
      </Leaf>
    ),
  };
}

/** What `packed` measures. */
export function SeasonBlock({ content }: { content: JSXNode }) {
  return (
    <div data-role="Sect" style={{ display: 'flex', flexDirection: 'column', flexShrink: 0 }}>
      {content}
    </div>
  );
}
