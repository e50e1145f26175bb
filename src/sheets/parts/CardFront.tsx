/** The front of the care card: today's feed, the drawing, what to do, what to do when something is wrong. */
import { mm } from '../../paper/measures.ts';
import { amount, lengthUnit_mm } from '../../wording/quantity.ts';
import {
  card,
  everyDay,
  everyWeek,
  feedWords,
  figureOf,
  lookFor,
  sectionLabels,
  shown,
  shownRange,
  subject,
} from '../cardWords.ts';
import type { SheetInput } from '../sheet.ts';
import { Column, Heading, Para, TickList } from './blocks.tsx';
import { CardHead } from './CardHead.tsx';
import { Emergencies } from './Emergencies.tsx';
import { rule, safe, size, weight } from './look.ts';
import { SectionPicture } from './SectionPicture.tsx';
import { TemperatureBar } from './TemperatureBar.tsx';

type Props = {
  readonly input: SheetInput;
  readonly printed: string;
};

const feedWidth = mm(64);
const gutter = mm(6);
const pictureHeight = mm(70);

export function CardFront({ input, printed }: Props) {
  const labels = sectionLabels(input);
  return (
    <div
      style={{
        display: 'flex',
        flexDirection: 'column',
        width: safe.width,
        height: safe.height,
        justifyContent: 'space-between',
      }}
    >
      <CardHead
        name={input.system.name}
        place={input.system.place}
        subject={subject(input)}
        kind={card(input, 'kind')}
        printed={printed}
      />
      <div style={{ display: 'flex', height: pictureHeight }}>
        <FeedBox input={input} />
        <div style={{ display: 'flex', marginLeft: gutter }}>
          <SectionPicture
            section={input.plan.section}
            width={safe.width - feedWidth - gutter}
            height={pictureHeight}
            labels={labels}
            alt={card(input, 'drawing', {
              words: Object.values(labels)
                .map((one) => one.text)
                .join('; '),
            })}
            unit_mm={lengthUnit_mm(input.units)}
            barText={(real_mm) =>
              card(input, 'bar', { length: amount(real_mm, 'mm', 'nearest', input.units) })
            }
          />
        </div>
      </div>
      <div style={{ display: 'flex', justifyContent: 'space-between' }}>
        <Tasks heading={card(input, 'everyDay')} items={everyDay(input)} />
        <Tasks heading={card(input, 'everyWeek')} items={everyWeek(input)} />
        <Tasks heading={card(input, 'lookFor')} items={lookFor(input)} />
      </div>
      <Temperature input={input} />
      <Emergencies input={input} />
      <div style={{ display: 'flex', flexDirection: 'column' }}>
        <Para text={card(input, 'cautions')} heavy="heavy" />
        <Para text={card(input, 'defer')} />
      </div>
    </div>
  );
}

function Tasks({ heading, items }: { heading: string; items: readonly string[] }) {
  return (
    <Column width={mm(60)}>
      <Heading level="H2" text={heading} />
      <TickList items={items} />
    </Column>
  );
}

/** The one figure that can be read from a metre, in grams and in the person's own spoon. */
function FeedBox({ input }: { input: SheetInput }) {
  const feed = feedWords(input);
  return (
    <div
      style={{
        display: 'flex',
        flexDirection: 'column',
        width: feedWidth,
        height: pictureHeight,
        boxSizing: 'border-box',
        border: `${rule.thinBox}px solid black`,
        padding: mm(4),
      }}
    >
      <div data-role="H2" style={{ display: 'flex', fontSize: size.heading, fontWeight: weight.heavy }}>
        {feed.head}
      </div>
      {feed.number === null ? (
        <Handwritten text={feed.second ?? ''} unit={feed.sign} />
      ) : (
        <BigFigure number={feed.number} sign={feed.sign} second={feed.second ?? ''} />
      )}
      {feed.lines.map((line) => (
        <div data-role="P" style={{ display: 'flex', lineHeight: 1.25, marginTop: mm(1) }}>
          {line}
        </div>
      ))}
    </div>
  );
}

/** So many digits have room in the full size; longer figures are set as much smaller. */
const roomyDigits = 3;

function BigFigure({ number, sign, second }: { number: string; sign: string; second: string }) {
  const fontSize = size.figure * Math.min(1, roomyDigits / number.length);
  return (
    <div style={{ display: 'flex', flexDirection: 'column' }}>
      <div
        data-role="P"
        data-slot="feed"
        style={{ display: 'flex', alignItems: 'flex-end', fontWeight: weight.heavy }}
      >
        <div style={{ display: 'flex', fontSize, lineHeight: 1.05 }}>{number}</div>
        <div style={{ display: 'flex', fontSize: size.second, lineHeight: 1.6 }}>{`\u00a0${sign}`}</div>
      </div>
      <div
        data-role="P"
        style={{
          display: 'flex',
          fontSize: size.heading,
          fontWeight: weight.heavy,
          lineHeight: 1.2,
          marginBottom: mm(1),
        }}
      >
        {second}
      </div>
    </div>
  );
}

/** Where no source carries a figure, a line for the keeper's own hand. */
function Handwritten({ text, unit }: { text: string; unit: string }) {
  return (
    <div style={{ display: 'flex', flexDirection: 'column', marginTop: mm(2), marginBottom: mm(3) }}>
      <div data-role="P" style={{ display: 'flex', fontSize: size.heading, fontWeight: weight.heavy }}>
        {text}
      </div>
      {unit === '' ? null : (
        <div style={{ display: 'flex', alignItems: 'flex-end', marginTop: mm(4) }}>
          <div
            style={{
              display: 'flex',
              width: mm(24),
              height: mm(9),
              borderBottom: `${rule.thinBox}px solid black`,
            }}
          />
          <div style={{ display: 'flex', marginLeft: mm(2) }}>{unit}</div>
        </div>
      )}
    </div>
  );
}

/** Where the bar changes, from cold to hot. */
const limitKeys = ['noFeedBelow_degC', 'goodFrom_degC', 'goodTo_degC', 'callAbove_degC'] as const;

/** Only with fish: a range of theirs. */
function Temperature({ input }: { input: SheetInput }) {
  const [low, from, until, high] = limitKeys.map((key) => figureOf(input, key));
  if (!low || !from || !until || !high) return null;
  const words = {
    range: shownRange(input, 'goodFrom_degC', 'goodTo_degC'),
    low: shown(input, 'noFeedBelow_degC'),
    high: shown(input, 'callAbove_degC'),
  };
  return (
    <div style={{ display: 'flex', flexDirection: 'column' }}>
      <Heading level="H2" text={card(input, 'temperature', words)} />
      <TemperatureBar
        limits={{ actBelow: low.value, goodFrom: from.value, goodTo: until.value, actAbove: high.value }}
        width={safe.width}
        alt={card(input, 'temperatureAlt', words)}
        tickText={(at) => shown(input, limitKeys[at] ?? '')}
      />
      <Para text={card(input, 'temperatureKey')} />
    </div>
  );
}
