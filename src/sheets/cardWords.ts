/** The words of a care card, chosen by what the system is. Every number comes from the plan. */
import type { Figure } from '../core/plan/figure.ts';
import type { BedMode } from '../core/system.ts';
import { say } from '../wording/catalogue.ts';
import { amount, amountParts, range, spoonfuls } from '../wording/quantity.ts';
import type { LabelWords } from './parts/SectionPicture.tsx';
import type { SheetInput } from './sheet.ts';

type Values = Readonly<Record<string, string>>;

/** A sentence of the card. */
export function card(input: Pick<SheetInput, 'words'>, key: string, values: Values = {}): string {
  return say(input.words.catalogue, `card.${key}`, values);
}

/** A figure that the plan has, or null where it has no value here. */
export function figureOf(input: SheetInput, key: string): (Figure & { readonly value: number }) | null {
  const found = input.plan.figures[key];
  return found === undefined || found.value === null ? null : { ...found, value: found.value };
}

/** A figure in the reader's units, rounded to its safe side. */
export function shown(input: SheetInput, key: string): string {
  const found = figureOf(input, key);
  if (found === null) return say(input.words.catalogue, 'words.unknown');
  return amount(found.value, found.unit, found.safeSide, input.units);
}

/** Two figures as a range, each end rounded to the side that is safe for it. */
export function shownRange(input: SheetInput, from: string, until: string): string {
  const low = figureOf(input, from);
  const high = figureOf(input, until);
  if (low === null || high === null) return say(input.words.catalogue, 'words.unknown');
  const ends = { low: low.value, high: high.value };
  const sides = { low: low.safeSide, high: high.safeSide };
  return range(ends, low.unit, sides, input.units, say(input.words.catalogue, 'words.to'));
}

/** The line under the title: fish, beds, tank. */
export function subject(input: SheetInput): string {
  return [
    fishWords(input),
    bedWords(input),
    card(input, 'subjectTank', { tank: shown(input, 'tankFull_L') }),
  ].join(' · ');
}

function fishWords(input: SheetInput): string {
  const { fish } = input.system;
  if (fish === null || fish.present === 0) return card(input, 'subjectNoFish');
  return card(input, 'subjectFish', {
    count: String(fish.present),
    mass: amount(fish.massNow_g, 'g', 'nearest', input.units),
    kind: fish.species.name,
  });
}

function bedWords(input: SheetInput): string {
  const { beds } = input.system;
  const count = beds.reduce((total, bed) => total + bed.count, 0);
  const modes = new Set(beds.map((bed) => bed.mode));
  const [only] = modes;
  if (modes.size !== 1 || only === undefined) return card(input, 'subjectMixed', { count: String(count) });
  const mode = say(input.words.catalogue, `modes.${only}`);
  return card(input, count === 1 ? 'subjectBed' : 'subjectBeds', { count: String(count), mode });
}

/** The figure that can be read from a metre away, and the lines under it. */
export type FeedWords = {
  readonly head: string;
  readonly number: string | null;
  readonly sign: string;
  readonly second: string | null;
  readonly lines: readonly string[];
};

export function feedWords(input: SheetInput): FeedWords {
  const { fish } = input.system;
  const head = card(input, 'feed');
  if (fish === null || fish.present === 0) {
    return {
      head,
      number: null,
      sign: '',
      second: card(input, 'feedNoFish'),
      lines: [card(input, 'feedNoFishWhy')],
    };
  }
  const lines = [
    card(input, 'feedWhen', { range: shownRange(input, 'goodFrom_degC', 'goodTo_degC') }),
    card(input, 'feedNever'),
  ];
  const feed = figureOf(input, 'feed_g_d');
  if (feed === null)
    return { head, number: null, sign: card(input, 'feedAskGrams'), second: card(input, 'feedAsk'), lines };
  const parts = amountParts(feed.value, feed.unit, feed.safeSide, input.units);
  return { head, number: parts.number, sign: parts.sign, second: spoonWords(input), lines };
}

function spoonWords(input: SheetInput): string {
  const spoons = figureOf(input, 'feedSpoons');
  if (spoons === null) return card(input, 'feedNoSpoon');
  const text = spoonfuls(spoons.value);
  if (text === null) return card(input, 'feedWeigh');
  return card(input, spoons.value < 1.25 ? 'feedSpoon' : 'feedSpoons', { spoons: text });
}

function has(input: SheetInput, ...modes: readonly BedMode[]): boolean {
  return input.system.beds.some((bed) => modes.includes(bed.mode));
}

export function everyDay(input: SheetInput): readonly string[] {
  const fish = input.system.fish !== null && input.system.fish.present > 0;
  const drains = has(input, 'siphon', 'timer');
  const runs = input.system.pump === null ? 'runsNone' : drains ? 'runsDraining' : 'runsStill';
  const limit = shown(input, 'topUpLimit_L_d');
  return [
    card(input, fish ? 'day.fish' : 'day.noFish'),
    card(input, `day.${runs}`),
    card(input, drains ? 'day.topUpDraining' : 'day.topUpStill', { limit }),
    card(input, fish ? 'day.feed' : 'day.write'),
  ];
}

export function everyWeek(input: SheetInput): readonly string[] {
  return ['solids', 'barrel', 'pick', 'test'].map((key) => card(input, `week.${key}`));
}

export function lookFor(input: SheetInput): readonly string[] {
  const fish = input.system.fish !== null && input.system.fish.present > 0;
  const keys = [
    ...(input.system.pump ? ['leads'] : []),
    ...(has(input, 'siphon', 'timer', 'constantFlood') ? ['legs', 'screen'] : ['baskets']),
    ...(fish ? ['fish'] : []),
  ];
  return keys.map((key) => card(input, `look.${key}`));
}

/** Labels of the section, by the keys that `drawing` gives its anchors. */
export function sectionLabels(input: SheetInput): Readonly<Record<string, LabelWords>> {
  const several = input.system.beds.reduce((total, bed) => total + bed.count, 0) > 1 ? 's' : '';
  const moves = has(input, 'siphon', 'timer');
  const labels: Record<string, LabelWords> = {};
  const tankFull = moves && input.system.sump === null ? `tankFullBed${several}Empty` : 'tankFull';
  labels['tank.full'] = label(input, tankFull, 'tankFull_L', 'heavy');
  if (figureOf(input, 'tankLow_L'))
    labels['tank.low'] = label(input, `tankLowBed${several}`, 'tankLow_L', 'heavy');
  if (figureOf(input, 'blockedReturn_L')) {
    labels[`${input.system.sump ? 'sump' : 'tank'}.blocked`] = label(
      input,
      'tankBlocked',
      'blockedReturn_L',
      'text',
    );
  }
  if (figureOf(input, 'sumpFull_L')) {
    labels['sump.full'] = label(input, 'sumpFull', 'sumpFull_L', 'text');
    labels['sump.low'] = label(input, 'sumpLow', 'sumpLow_L', 'text');
  }
  input.system.beds.forEach((bed, index) => {
    labels[`bed.${index}`] = { text: bedLabel(input, bed.count, index), heavy: 'text' };
  });
  return labels;
}

/** "bed 2: 110 L wet", or for equal beds "3 beds, 285 L wet media in all". */
function bedLabel(input: SheetInput, count: number, index: number): string {
  const volume = shown(input, `bed${index + 1}.wetMedia_L`);
  const several = count > 1 ? 'Several' : '';
  const key = input.system.beds.length > 1 ? 'bedNumbered' : 'bed';
  return card(input, `label.${key}${several}`, { number: String(index + 1), count: String(count), volume });
}

function label(input: SheetInput, key: string, figure: string, heavy: LabelWords['heavy']): LabelWords {
  return { text: card(input, `label.${key}`, { volume: shown(input, figure) }), heavy };
}
