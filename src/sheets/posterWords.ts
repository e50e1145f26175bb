/** The words of the wall poster: few and large, then what whoever comes nearer can read. */
import type { SectionVessel } from '../core/plan/figure.ts';
import { amount, amountParts } from '../wording/quantity.ts';
import { card, everyDay, feedWords, figureOf, lookFor } from './cardWords.ts';
import type { SheetInput } from './sheet.ts';
import { told } from './sheetWords.ts';

type Values = Readonly<Record<string, string>>;

export function poster(input: SheetInput, key: string, values: Values = {}): string {
  return told(input, 'poster', key, values);
}

/** A word for the far reader, a line for the near one. */
export type Told = { readonly word: string; readonly why: string };

export function stations(input: SheetInput): readonly Told[] {
  const { sump } = input.system;
  const of = poster(input, sump ? 'of.sump' : 'of.tank');
  return input.plan.section.way.map(({ key }) => ({
    word: poster(input, `way.${key}.word`),
    why: poster(input, `way.${key}.${sump && key === 'supply' ? 'whySump' : 'why'}`, { of }),
  }));
}

const storyKeys = ['fish', 'waste', 'stones', 'plants'] as const;

export function story(input: SheetInput): readonly (Told & { readonly key: (typeof storyKeys)[number] })[] {
  return storyKeys.map((key) => ({
    key,
    word: poster(input, `story.${key}.word`),
    why: poster(input, `story.${key}.why`),
  }));
}

/** A limit with its figure; a sign behind the number, words under it. */
export type Limit = {
  readonly head: string;
  readonly number: string;
  readonly sign: string;
  readonly under: string;
};

export function limits(input: SheetInput): readonly Limit[] {
  return [fishLimit(input), feedLimit(input), waterLimit(input)];
}

function fishLimit(input: SheetInput): Limit {
  const planned = figureOf(input, 'fishPlanned');
  const { fish } = input.system;
  if (fish === null) return { ...blank(input, 'fish'), under: poster(input, 'limit.noFish') };
  const here = poster(input, 'limit.here', { count: String(fish.present) });
  if (planned === null) return { ...blank(input, 'fish'), under: poster(input, 'limit.supplier', { here }) };
  const number = amountParts(planned.value, planned.unit, planned.safeSide, input.units).number;
  return { head: poster(input, 'limit.fish'), number, sign: '', under: here };
}

function blank(input: SheetInput, key: string): Omit<Limit, 'under'> {
  return { head: poster(input, `limit.${key}`), number: '', sign: '' };
}

function feedLimit(input: SheetInput): Limit {
  const feed = feedWords(input);
  if (feed.number === null) return { head: feed.head, number: '', sign: '', under: feed.second ?? '' };
  return { head: feed.head, number: feed.number, sign: feed.sign, under: feed.second ?? '' };
}

/** The lowest line of normal running where the water moves, else the full line. */
function waterLimit(input: SheetInput): Limit {
  const vessel = lowerVessel(input);
  const low = vessel?.levels.find(({ key }) => key === 'low');
  const line = low ?? vessel?.levels.find(({ key }) => key === 'full');
  if (line === undefined) return { ...blank(input, 'water'), under: '' };
  const shown = amountParts(line.height_mm, 'mm', low === undefined ? 'nearest' : 'down', input.units);
  const of = poster(input, input.system.sump ? 'of.sump' : 'of.tank');
  const head = poster(input, low === undefined ? 'limit.waterFull' : 'limit.water');
  return { head, ...shown, under: poster(input, 'limit.over', { of }) };
}

function lowerVessel(input: SheetInput): SectionVessel | undefined {
  const role = input.system.sump ? 'sump' : 'tank';
  return input.plan.section.vessels.find((one) => one.role === role);
}

/** What to look at when passing by, as the care card words it. */
export function looks(input: SheetInput): readonly string[] {
  const [fish, runs] = everyDay(input);
  return [fish, runs, ...lookFor(input)].flatMap((one) => (one === undefined ? [] : [one])).slice(0, 5);
}

/** Labels beside the section, by the keys of `drawing`. */
export function lineLabels(input: SheetInput): Readonly<Record<string, string>> {
  const role = input.system.sump ? 'sump' : 'tank';
  return Object.fromEntries(
    (lowerVessel(input)?.levels ?? [])
      .filter(({ key }) => key === 'full' || key === 'low')
      .map((level) => [
        `${role}.${level.key}`,
        poster(input, `line.${level.key}`, {
          height: amount(level.height_mm, 'mm', level.key === 'low' ? 'down' : 'nearest', input.units),
        }),
      ]),
  );
}

export function emergency(input: SheetInput): { readonly head: string; readonly first: string } {
  return { head: card(input, 'wrong'), first: card(input, 'wrongFirst') };
}
