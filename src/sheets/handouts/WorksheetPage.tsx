/** One page of somebody's worksheet: whose it is, what is given, and the steps to fill in or filled in. */
import type { Sheet } from '../../paper/layOut.ts';
import { mm, paperSizes } from '../../paper/measures.ts';
import { usInMetric } from '../../wording/quantity.ts';
import { Leaf } from '../parts/blocks.tsx';
import { Frame } from '../parts/Frame.tsx';
import { rule, size, weight } from '../parts/look.ts';
import { type HandoutInput, type HandoutView, handoutWords } from './handout.ts';
import { HandoutHead } from './HandoutHead.tsx';
import { type GivenContainer, givenContainers } from './handoutTasks.ts';
import { Measuring, Roles } from './TeamWork.tsx';
import { type Numbered, type Spacing, TaskBox } from './TaskBox.tsx';
import { CheckLine } from './Whose.tsx';

export type WorksheetPart = {
  readonly view: HandoutView;
  readonly tasks: readonly Numbered[];
  readonly at: 'first' | 'later';
  readonly rest: 'none' | 'more';
  /** Whether the last page has blanks for a container of the class too. */
  readonly measuring: 'with' | 'without';
  readonly spacing: Spacing;
};

export function worksheetPage(input: HandoutInput, part: WorksheetPart): Sheet {
  const { session, paper } = input;
  const { view, tasks, at, rest, measuring, spacing } = part;
  const isEnd = rest === 'none' && view === 'blank';
  return {
    ...paperSizes[paper],
    title: handoutWords(input, 'title', { name: session.name }),
    lang: 'en',
    root: (
      <Leaf height={mm(254)}>
        <Frame gap={gaps[spacing]}>
          <HandoutHead input={input} kind={view} subject={subjectOf(input, view)} />
          {at === 'first' && view === 'blank' && input.shared === 'team' ? <Roles input={input} /> : null}
          {at === 'first' ? <Measures input={input} /> : null}
          {at === 'first' ? <CheckLine input={input} /> : null}
          {tasks.map((numbered) => (
            <TaskBox numbered={numbered} view={view} spacing={spacing} />
          ))}
          {isEnd && measuring === 'with' ? <Measuring input={input} /> : null}
          {isEnd ? <Supplier input={input} /> : null}
        </Frame>
      </Leaf>
    ),
  };
}

/** Between the blocks of a page. */
const gaps: Readonly<Record<Spacing, number>> = { roomy: mm(3), usual: mm(2.1), tight: mm(1.3) };

/** How it is worked, in words that need no other sheet; whoever has a tape in inches is told what they are here. */
function subjectOf(input: HandoutInput, view: HandoutView): string {
  if (view === 'key') return handoutWords(input, 'views.key');
  const [how, lengths] = input.session.level === 'primary' ? ['primary', 'dm'] : ['older', 'mm'];
  const views = handoutWords(input, `views.${how}`);
  if (input.units === 'metric') return views;
  return `${views} ${handoutWords(input, `views.us.${lengths}`, usInMetric())}`;
}

/** What the tasks start from, container by container. */
function Measures({ input }: { input: HandoutInput }) {
  return (
    <div style={{ display: 'flex', flexDirection: 'column', rowGap: mm(1) }}>
      <div data-role="H2" style={{ display: 'flex', fontSize: size.heading, fontWeight: weight.heavy }}>
        {handoutWords(input, 'measured')}
      </div>
      {givenContainers(input).map((container) => (
        <Container container={container} />
      ))}
    </div>
  );
}

function Container({ container: { of, measures } }: { container: GivenContainer }) {
  return (
    <div data-role="P" style={{ display: 'flex', lineHeight: 1.3 }}>
      <div style={{ display: 'flex', width: mm(22), fontWeight: weight.heavy }}>{of}</div>
      <div style={{ display: 'flex', flexWrap: 'wrap', flex: 1 }}>
        {measures.map(({ slot, name, text }) => (
          <div style={{ display: 'flex', marginRight: mm(3) }}>
            <div style={{ display: 'flex', marginRight: mm(1.4) }}>{name}</div>
            <div data-slot={slot} style={{ display: 'flex', minWidth: mm(22), fontWeight: weight.heavy }}>
              {text}
            </div>
          </div>
        ))}
      </div>
    </div>
  );
}

/** The supplier's word has the last box. */
function Supplier({ input }: { input: HandoutInput }) {
  return (
    <div
      data-role="P"
      style={{ display: 'flex', border: `${rule.thinBox}px solid black`, padding: mm(3), lineHeight: 1.3 }}
    >
      {handoutWords(input, 'supplier')}
    </div>
  );
}
