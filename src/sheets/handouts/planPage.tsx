/** What somebody takes home: their containers as one system, drawn, with its figures. A plan, and says so. */
import type { JSXNode } from 'satori/jsx';
import type { Sheet } from '../../paper/layOut.ts';
import { mm, paperSizes, pt } from '../../paper/measures.ts';
import { Heading, Leaf, Para, TickList } from '../parts/blocks.tsx';
import { Frame } from '../parts/Frame.tsx';
import { rule, weight } from '../parts/look.ts';
import { type HandoutInput, handoutWords } from './handout.ts';
import { HandoutHead } from './HandoutHead.tsx';
import { PlannedFigures } from './PlannedFigures.tsx';
import type { PlannedTable, PlannedTables } from './plannedRows.ts';

/** Before anything of it is built. */
const before = ['measure', 'ground', 'electric', 'held', 'start', 'supplier'] as const;

/** What stands on it beside the drawing. */
export type Planned = PlannedTables & {
  /** What the plan lacks, before anybody buys a thing for it. */
  readonly warnings: readonly string[];
};

export function planPage(input: HandoutInput, planned: Planned, drawing: JSXNode): Sheet {
  const { first, further, warnings } = planned;
  return side(
    input,
    <>
      {drawing}
      <PlannedFigures tables={first} />
      {further.length === 0 ? null : <Para text={handoutWords(input, 'plan.bedsApart')} />}
      {warnings.length === 0 ? null : <Warnings warnings={warnings} />}
      <div style={{ display: 'flex', flexDirection: 'column' }}>
        <Heading level="H2" text={handoutWords(input, 'plan.before')} />
        <TickList items={before.map((key) => handoutWords(input, `plan.${key}`))} />
      </div>
      <Para text={handoutWords(input, 'plan.defer')} />
    </>,
  );
}

/** A further page: beds that have no room beside the drawing. */
export function bedsPage(input: HandoutInput, table: PlannedTable): Sheet {
  return side(input, <PlannedFigures tables={[table]} />);
}

/** A page that says whose it is and that it is a plan, also when it comes apart from the others. */
function side(input: HandoutInput, content: JSXNode): Sheet {
  const { session, paper } = input;
  return {
    ...paperSizes[paper],
    title: handoutWords(input, 'title', { name: session.name }),
    lang: 'en',
    root: (
      <Leaf height={mm(254)}>
        <Frame>
          <div style={{ display: 'flex', flexDirection: 'column', rowGap: mm(3), ...asLargeAsItIs }}>
            <HandoutHead input={input} kind="plan" subject={handoutWords(input, 'views.plan')} />
            <Stamp input={input} />
            {content}
          </div>
        </Frame>
      </Leaf>
    ),
  };
}

/** What has no room is to stick out and be seen, and not to be pressed together. */
const asLargeAsItIs = { flexShrink: 0 } as const;

function Warnings({ warnings }: Pick<Planned, 'warnings'>) {
  return (
    <div style={{ display: 'flex', flexDirection: 'column', rowGap: mm(1) }}>
      {warnings.map((text, at) => (
        <div
          data-role="P"
          data-slot={warningSlot(at)}
          style={{ display: 'block', lineHeight: 1.3, fontWeight: weight.heavy }}
        >
          {text}
        </div>
      ))}
    </div>
  );
}

export function warningSlot(at: number): string {
  return `warning-${at}`;
}

/** Nobody shall fill a tank by it as it stands. */
function Stamp({ input }: { input: HandoutInput }) {
  return (
    <div
      data-role="P"
      style={{
        display: 'flex',
        justifyContent: 'center',
        border: `${rule.box}px solid black`,
        padding: mm(2),
        fontSize: pt(16),
        fontWeight: weight.heavy,
        lineHeight: 1.2,
      }}
    >
      {handoutWords(input, 'plan.stamp')}
    </div>
  );
}
