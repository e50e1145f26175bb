/** The back of the care card, for the keeper: readings, water change, weighing, doubts, steps. */
import { mm } from '../../paper/measures.ts';
import { noteSentence } from '../../wording/note.ts';
import { card, figureOf } from '../cardWords.ts';
import { timeInHand } from '../emergencyWords.ts';
import { changeText, doubts, fishCount, readings, weighing } from '../keeperWords.ts';
import { monthHead, monthSentences } from '../monthWords.ts';
import type { SheetInput } from '../sheet.ts';
import { Column, Heading, Para } from './blocks.tsx';
import { CardHead } from './CardHead.tsx';
import { StepColumns } from './CardSteps.tsx';
import { Frame } from './Frame.tsx';
import { safe, weight } from './look.ts';
import { ReadingsTable } from './ReadingsTable.tsx';
import type { StepWords } from './StepList.tsx';

type Props = {
  readonly input: SheetInput;
  readonly printed: string;
  readonly steps: readonly StepWords[];
  readonly last: 'last' | 'more';
};

export function CardBack({ input, printed, steps, last }: Props) {
  return (
    <Frame gap={mm(2.2)}>
      <CardHead
        name={input.system.name}
        place={null}
        subject={fishCount(input)}
        kind={card(input, 'keeperKind')}
        printed={printed}
      />
      <Readings input={input} />
      <Keeping input={input} />
      <Doubts input={input} />
      <StepColumns input={input} steps={steps} last={last} />
    </Frame>
  );
}

/** Water and this month on the left, feed by weight on the right where there is a ration. */
function Keeping({ input }: { input: SheetInput }) {
  const month = monthSentences(input);
  return (
    <div style={{ display: 'flex', justifyContent: 'space-between' }}>
      <div style={{ ...stack, width: weighing(input).length === 0 ? safe.width : mm(92) }}>
        <Said head={card(input, 'keeper.change')} text={changeText(input)} />
        {month.length === 0 ? null : <Said head={monthHead(input)} text={month.join(' ')} />}
      </div>
      <Weighing input={input} />
    </div>
  );
}

const stack = { display: 'flex', flexDirection: 'column', rowGap: mm(2), flexShrink: 0 } as const;

/** A text under a heading. */
function Said({ head, text }: { head: string; text: string }) {
  return (
    <div style={{ display: 'flex', flexDirection: 'column' }}>
      <Heading level="H2" text={head} />
      <Para text={text} />
    </div>
  );
}

function Readings({ input }: { input: SheetInput }) {
  const rows = readings(input);
  if (rows.length === 0) return null;
  const tan = figureOf(input, 'tanMax_mg_L');
  const notes = (tan?.notes ?? []).map((note) => noteSentence(note, input.words.catalogue, input.units));
  return (
    <div style={{ display: 'flex', flexDirection: 'column' }}>
      <ReadingsTable
        head={{
          name: card(input, 'keeper.reading'),
          good: card(input, 'keeper.good'),
          act: card(input, 'keeper.act'),
          marks: card(input, 'keeper.marks'),
        }}
        rows={rows}
      />
      <Para text={[...notes, card(input, 'keeper.form')].join(' ')} />
    </div>
  );
}

function Weighing({ input }: { input: SheetInput }) {
  const rows = weighing(input);
  if (rows.length === 0) return null;
  const count = String(input.system.fish?.present ?? 0);
  // Two columns of pairs, each with its heads; read aloud they are one table.
  const head = {
    left: card(input, 'keeper.weighingMass'),
    right: card(input, 'keeper.weighingFeed', { count }),
  };
  return (
    <Column width={mm(92)}>
      <Heading level="H2" text={card(input, 'keeper.weighing')} />
      <Para text={card(input, 'keeper.weighingText')} />
      <div data-role="Table" style={{ display: 'flex', flexWrap: 'wrap', marginTop: mm(1), lineHeight: 1.3 }}>
        <Pair {...head} as="TR" heavy="heavy" />
        <Pair {...head} as="Artifact" heavy="heavy" />
        {rows.map((row) => (
          <Pair left={row.mass} right={row.feed} as="TR" />
        ))}
      </div>
    </Column>
  );
}

type PairProps = {
  readonly left: string;
  readonly right: string;
  readonly as: 'TR' | 'Artifact';
  readonly heavy?: 'heavy';
};

/** A mass and the feed for it: what stands left heads the row. */
function Pair({ left, right, as, heavy }: PairProps) {
  return (
    <div
      data-role={as}
      style={{ display: 'flex', width: mm(45), fontWeight: heavy ? weight.heavy : weight.text }}
    >
      <div data-role="TH" style={{ display: 'flex', width: mm(18) }}>
        {left}
      </div>
      <div data-role={heavy ? 'TH' : 'TD'} style={{ display: 'flex' }}>
        {right}
      </div>
    </div>
  );
}

function Doubts({ input }: { input: SheetInput }) {
  const sentences = doubts(input);
  const hand = timeInHand(input);
  const planned = input.plan.figures['fishPlanned']?.notes ?? [];
  const info = planned.map((note) => noteSentence(note, input.words.catalogue, input.units));
  return (
    <div style={{ display: 'flex', flexDirection: 'column' }}>
      <Heading level="H2" text={card(input, 'keeper.doubts')} />
      {sentences.map((sentence) => (
        <Para text={sentence} heavy="heavy" />
      ))}
      {hand === null ? null : <Para text={hand} />}
      <Para text={info.join(` `)} />
    </div>
  );
}
