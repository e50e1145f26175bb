/** The blocks of the large print, front and back, from the words of the card. */
import type { JSXNode } from 'satori/jsx';
import { mm } from '../paper/measures.ts';
import { noteSentence } from '../wording/note.ts';
import { card, everyDay, everyWeek, feedWords, figureOf, lookFor, shown, shownRange } from './cardWords.ts';
import { emergencies, timeInHand } from './emergencyWords.ts';
import { cardSteps, changeText, citations, doubts, fishCount, readings, weighing } from './keeperWords.ts';
import { monthHead, monthSentences } from './monthWords.ts';
import type { Packable } from './packed.ts';
import { large, LargeHeading, LargeLine, LargePair, LargeText, LargeTicks } from './parts/largeBlocks.tsx';
import { cautions } from './parts/Emergencies.tsx';
import { LargePicture, withoutLetter } from './parts/LargePicture.tsx';
import { rule, safe, weight } from './parts/look.ts';
import { headOf, tailOf } from './parts/StepList.tsx';
import type { SheetInput } from './sheet.ts';
import { told } from './sheetWords.ts';

export function largeFront(input: SheetInput): readonly Packable[] {
  return [
    one(<Feed input={input} />),
    one(<LargePicture input={input} />),
    ...withoutLetter(input).map((text) => one(<LargeText text={text} />)),
    ...under(card(input, 'everyDay'), [<LargeTicks items={everyDay(input)} />]),
    ...under(card(input, 'everyWeek'), [<LargeTicks items={weekly(input)} />]),
    ...under(card(input, 'lookFor'), [<LargeTicks items={lookFor(input)} />]),
    ...temperature(input),
    one(<Wrong input={input} />),
    one(cautions(input).map((text) => <LargeText text={text} heavy="heavy" />)),
  ];
}

export function largeBack(input: SheetInput): readonly Packable[] {
  const tan = input.plan.figures['tanMax_mg_L']?.notes ?? [];
  const planned = input.plan.figures['fishPlanned']?.notes ?? [];
  const said = [...tan, ...planned].map((note) => noteSentence(note, input.words.catalogue, input.units));
  const hand = timeInHand(input);
  const month = monthSentences(input);
  return [
    one(<LargeText text={fishCount(input)} />),
    ...readingBlocks(input),
    ...under(card(input, 'keeper.change'), [<LargeText text={changeText(input)} />]),
    ...(month.length === 0 ? [] : under(monthHead(input), [<LargeText text={month.join(' ')} />])),
    ...weighingBlocks(input),
    ...under(card(input, 'keeper.doubts'), [
      ...doubts(input).map((text) => <LargeText text={text} heavy="heavy" />),
      ...[...(hand === null ? [] : [hand]), ...said].map((text) => <LargeText text={text} />),
    ]),
    ...under(card(input, 'keeper.steps'), [
      <LargeText text={card(input, 'keeper.stepsText')} />,
      ...cardSteps(input).map((step) => <LargePair head={headOf(step)} text={tailOf(step)} />),
      <LargeText text={citations(input)} />,
    ]),
  ];
}

/** The tests stand on later pages here, not on the other side. */
function weekly(input: SheetInput): readonly string[] {
  const test = card(input, 'week.test');
  return everyWeek(input).map((item) => (item === test ? told(input, 'large', 'test') : item));
}

/** As on the card, but without the temperature, which the front has told in words. */
function readingBlocks(input: SheetInput): readonly Packable[] {
  const rows = readings(input).filter(({ name }) => name !== card(input, 'keeper.temperature'));
  if (rows.length === 0) return [];
  const told = rows.map(({ name, good, act }) => (
    <LargePair head={`${name}: ${good}.`} text={card(input, 'keeper.otherwise', { act })} />
  ));
  return under(card(input, 'keeper.reading'), [...told, <LargeText text={card(input, 'keeper.form')} />]);
}

function weighingBlocks(input: SheetInput): readonly Packable[] {
  const rows = weighing(input);
  if (rows.length === 0) return [];
  const count = String(input.system.fish?.present ?? 0);
  const feeds = rows.map(({ mass, feed }) => (
    <LargePair head={`${card(input, 'keeper.weighingMass')} ${mass}:`} text={feed} />
  ));
  const [first, ...others] = feeds;
  return under(card(input, 'keeper.weighing'), [
    <LargeText text={card(input, 'keeper.weighingText')} />,
    [<LargeText text={card(input, 'keeper.weighingFeed', { count })} heavy="heavy" />, first],
    ...others,
  ]);
}

function one(content: JSXNode): Packable {
  return { content, keep: 'alone' };
}

/** A heading, which goes with the first thing under it. */
function under(head: string, things: readonly JSXNode[]): readonly Packable[] {
  if (things.length === 0) return [];
  return [{ content: <LargeHeading text={head} />, keep: 'withNext' }, ...things.map(one)];
}

function Feed({ input }: { input: SheetInput }) {
  const feed = feedWords(input);
  return (
    <div style={{ ...box, border: `${rule.thinBox}px solid black`, rowGap: mm(1) }}>
      <div data-role="H2" style={{ display: 'flex', fontSize: large.heading, fontWeight: weight.heavy }}>
        {feed.head}
      </div>
      {feed.number === null ? null : (
        <div data-role="P" style={{ display: 'flex', alignItems: 'flex-end', fontWeight: weight.heavy }}>
          <div style={{ display: 'flex', fontSize: large.figure, lineHeight: 1.05 }}>{feed.number}</div>
          <div
            style={{ display: 'flex', fontSize: large.title, lineHeight: 1.7 }}
          >{`\u00a0${feed.sign}`}</div>
        </div>
      )}
      {[...(feed.second === null ? [] : [feed.second]), ...feed.lines].map((line, index) => (
        <div
          data-role="P"
          style={{
            display: 'flex',
            fontSize: large.text,
            lineHeight: 1.25,
            fontWeight: index === 0 ? weight.heavy : weight.text,
          }}
        >
          {line}
        </div>
      ))}
      {feed.number === null && feed.sign !== '' ? <LargeBlank unit={feed.sign} /> : null}
    </div>
  );
}

/** Where no source carries a figure, a line for the keeper's own hand. */
function LargeBlank({ unit }: { unit: string }) {
  return (
    <div data-role="P" style={{ display: 'flex', alignItems: 'flex-end', fontSize: large.text }}>
      <div
        style={{
          display: 'flex',
          width: mm(50),
          height: mm(14),
          borderBottom: `${rule.thinBox}px solid black`,
        }}
      />
      <div style={{ display: 'flex', marginLeft: mm(3) }}>{unit}</div>
    </div>
  );
}

const box = {
  display: 'flex',
  flexDirection: 'column',
  boxSizing: 'border-box',
  width: safe.width,
  padding: mm(5),
} as const;

/** The bar of the card in words: its numbers would not stand beside each other in this size. */
function temperature(input: SheetInput): readonly Packable[] {
  const keys = ['noFeedBelow_degC', 'goodFrom_degC', 'goodTo_degC', 'callAbove_degC'];
  if (keys.some((key) => figureOf(input, key) === null)) return [];
  const range = shownRange(input, 'goodFrom_degC', 'goodTo_degC');
  const words = { range, low: shown(input, 'noFeedBelow_degC'), high: shown(input, 'callAbove_degC') };
  return under(card(input, 'temperature', words), [
    <LargeText text={card(input, 'temperatureAlt', words)} />,
  ]);
}

function Wrong({ input }: { input: SheetInput }) {
  return (
    <div style={{ ...box, border: `${rule.box}px solid black`, rowGap: mm(2) }}>
      <div data-role="H2" style={{ display: 'flex', fontSize: large.heading, fontWeight: weight.heavy }}>
        {card(input, 'wrong')}
      </div>
      <LargeText text={card(input, 'wrongFirst')} heavy="heavy" />
      {emergencies(input).map(({ sign, act }) => (
        <LargePair head={`${sign}:`} text={act} />
      ))}
      <LargeText text={card(input, 'never')} heavy="heavy" />
      <LargeLine text={card(input, 'call')} />
      <LargeLine text={card(input, 'or')} />
    </div>
  );
}
