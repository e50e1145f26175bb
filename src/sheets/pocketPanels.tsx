/** What stands on each panel of the pocket card: the words of the card's front, the emergencies outside. */
import type { JSXNode } from 'satori/jsx';
import { mm } from '../paper/measures.ts';
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
} from './cardWords.ts';
import { emergencies } from './emergencyWords.ts';
import { cautions } from './parts/Emergencies.tsx';
import { rule, weight } from './parts/look.ts';
import {
  pocket,
  PocketLine,
  PocketList,
  PocketPair,
  PocketPanel,
  PocketText,
} from './parts/pocketBlocks.tsx';
import type { PanelName } from './pocketFold.ts';
import type { SheetInput } from './sheet.ts';
import { told } from './sheetWords.ts';

export function panelContent(name: PanelName, input: SheetInput): JSXNode {
  switch (name) {
    case 'back':
      return <Back input={input} />;
    case 'cover':
      return <Cover input={input} />;
    case 'insideLeft':
      return listPanel(card(input, 'everyDay'), everyDay(input));
    case 'insideRight':
      return listPanel(card(input, 'lookFor'), lookFor(input));
    case 'behind1':
      return <Temperature input={input} />;
    case 'behind2':
      return listPanel(card(input, 'everyWeek'), weekly(input));
    case 'behind3':
      return <Levels input={input} />;
    case 'behind4':
      return (
        <PocketPanel heading={told(input, 'pocket', 'always')}>
          {cautions(input).map((text) => (
            <PocketText text={text} fontSize={pocket.roomy} />
          ))}
        </PocketPanel>
      );
  }
}

function listPanel(heading: string, items: readonly string[]): JSXNode {
  return (
    <PocketPanel heading={heading}>
      <PocketList items={items} />
    </PocketPanel>
  );
}

/** The tests are on the card, not on the other side of this one. */
function weekly(input: SheetInput): readonly string[] {
  const test = card(input, 'week.test');
  return everyWeek(input).map((item) => (item === test ? told(input, 'pocket', 'test') : item));
}

/** Whose card it is, how much to feed, whom to call. */
function Back({ input }: { input: SheetInput }) {
  const feed = feedWords(input);
  return (
    <div style={{ display: 'flex', flexDirection: 'column', width: '100%', rowGap: mm(1.4) }}>
      <div data-role="H1" style={{ ...nameLines, fontSize: pocket.heading }}>
        {input.system.name}
      </div>
      <div
        style={{
          display: 'flex',
          flexDirection: 'column',
          border: `${rule.thinBox}px solid black`,
          padding: mm(2),
          rowGap: mm(0.8),
        }}
      >
        <PocketText text={feed.head} heavy="heavy" />
        {feed.number === null ? null : (
          <div data-role="P" style={{ display: 'flex', alignItems: 'flex-end', fontWeight: weight.heavy }}>
            <div style={{ display: 'flex', fontSize: pocket.figure, lineHeight: 1 }}>{feed.number}</div>
            <div
              style={{ display: 'flex', fontSize: pocket.heading, lineHeight: 1.7 }}
            >{`\u00a0${feed.sign}`}</div>
          </div>
        )}
        {feed.second === null ? null : <PocketText text={feed.second} heavy="heavy" />}
        {feed.number === null && feed.sign !== '' ? <PocketLine text={feed.sign} /> : null}
        {feed.lines.map((line) => (
          <PocketText text={line} />
        ))}
      </div>
      <PocketLine text={card(input, 'call')} />
      <PocketLine text={card(input, 'or')} />
    </div>
  );
}

const nameLines = {
  display: 'block',
  boxSizing: 'border-box',
  // The layout lets a word without spaces reach a little over its line.
  paddingRight: mm(2),
  lineClamp: 2,
  fontWeight: weight.heavy,
  lineHeight: 1.15,
  wordBreak: 'break-word',
} as const;

function Cover({ input }: { input: SheetInput }) {
  return (
    <div
      style={{
        display: 'flex',
        flexDirection: 'column',
        width: '100%',
        boxSizing: 'border-box',
        border: `${rule.box}px solid black`,
        padding: mm(2),
        rowGap: mm(1),
      }}
    >
      <div
        data-role="H2"
        style={{ display: 'flex', fontSize: pocket.heading, fontWeight: weight.heavy, lineHeight: 1.15 }}
      >
        {card(input, 'wrong')}
      </div>
      <PocketText text={card(input, 'wrongFirst')} heavy="heavy" />
      {emergencies(input).map(({ sign, act }) => (
        <PocketPair head={`${sign}:`} text={act} />
      ))}
      <PocketText text={card(input, 'never')} heavy="heavy" />
    </div>
  );
}

/** The bar of the card in words. */
function Temperature({ input }: { input: SheetInput }) {
  const keys = ['noFeedBelow_degC', 'goodFrom_degC', 'goodTo_degC', 'callAbove_degC'];
  if (keys.some((key) => figureOf(input, key) === null))
    return <PocketPanel heading={told(input, 'pocket', 'notes')}>{null}</PocketPanel>;
  const range = shownRange(input, 'goodFrom_degC', 'goodTo_degC');
  const words = { range, low: shown(input, 'noFeedBelow_degC'), high: shown(input, 'callAbove_degC') };
  return (
    <PocketPanel heading={card(input, 'temperature', words)}>
      <PocketText text={card(input, 'temperatureAlt', words)} fontSize={pocket.roomy} />
    </PocketPanel>
  );
}

/** More lines than these find no room in a pocket: the card has them all. */
const mostLevels = 9;

function Levels({ input }: { input: SheetInput }) {
  const all = Object.values(sectionLabels(input)).map(({ text }) => text);
  const some = all.slice(0, mostLevels);
  const items = some.length < all.length ? [...some, told(input, 'pocket', 'more')] : some;
  return (
    <PocketPanel heading={told(input, 'pocket', 'levels')}>
      <PocketText text={subject(input)} fontSize={pocket.roomy} />
      <PocketList items={items} />
    </PocketPanel>
  );
}
