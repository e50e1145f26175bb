/** A side of a sheet of a season, with the head of the house. */
import type { JSXNode } from 'satori/jsx';
import type { Sheet } from '../../paper/layOut.ts';
import { mm, paperSizes } from '../../paper/measures.ts';
import { dayText } from '../../wording/date.ts';
import { season, type TurnoverInput, type TurnoverKind } from '../turnoverSheet.ts';
import { Leaf } from './blocks.tsx';
import { CardHead } from './CardHead.tsx';
import { Frame } from './Frame.tsx';

/** What the sheet is, and a line under the name of the season. */
type Head = { readonly kind: string; readonly subject: string };

/** Kind and subject, or the group under `turnover.` in which both stand. */
export function seasonSide(
  input: TurnoverInput,
  kind: TurnoverKind,
  of: string | Head,
  content: JSXNode,
): Sheet {
  const head = typeof of === 'string' ? headOf(input, of) : of;
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
            subject={head.subject}
            kind={head.kind}
            printed={season(input, 'printed', { date: dayText(input.day, input.words.catalogue) })}
          />
          {content}
        </Frame>
      </Leaf>
    ),
  };
}

function headOf(input: TurnoverInput, group: string): Head {
  return { kind: season(input, `${group}.kind`), subject: season(input, `${group}.subject`) };
}

/** What `packed` measures. */
export function SeasonBlock({ content }: { content: JSXNode }) {
  return (
    <div data-role="Sect" style={{ display: 'flex', flexDirection: 'column', flexShrink: 0 }}>
      {content}
    </div>
  );
}
