import type { Direction } from './direction.ts';
import type { Weight } from './page.ts';

/**
 * Fonts of scripts that few sheets need, read only when one does. A pack is a small file for each weight: a whole
 * script, or, where a script has thousands of signs, one of its slices.
 */
export type Pack = {
  /** Name of its font, for the layout engine and for a page that is set with it. */
  readonly name: string;
  /** Package of its files. */
  readonly family: string;
  readonly postScriptName: string;
  /** Which way its letters run. */
  readonly direction: Direction;
  /** Place among all faces of the press, the same in every print. */
  readonly index: number;
};

const scripts = [
  ['arabic', 'Arabic', 'rtl', ''],
  ['hebrew', 'Hebrew', 'rtl', ''],
  ['devanagari', 'Devanagari', 'ltr', ''],
  ['bengali', 'Bengali', 'ltr', ''],
  ['tamil', 'Tamil', 'ltr', ''],
  ['thai', 'Thai', 'ltr', '฿'],
] as const;

/** Scripts with a file of their own, in the order of fallback: their own letters, and all signs that they use. */
const wholeScripts = scripts.map(([part, name, direction, more], at) => {
  const family = `noto-sans-${part}`;
  const postScriptName = `NotoSans${name}`;
  const pack: Pack = { name: `${family}-${part}`, family, postScriptName, direction, index: 100 + at * 2 };
  return {
    pack,
    own: new RegExp(`\\p{Script=${name}}`, 'u'),
    uses: new RegExp(`[\\p{scx=${name}}${more}]`, 'u'),
  };
});

/** Families of Chinese, Japanese and Korean, whose files are numbered slices. */
export type SlicedFamily = 'noto-sans-sc' | 'noto-sans-jp' | 'noto-sans-kr';

const sliced: Readonly<Record<SlicedFamily, { readonly name: string; readonly index: number }>> = {
  'noto-sans-sc': { name: 'NotoSansSC', index: 1000 },
  'noto-sans-jp': { name: 'NotoSansJP', index: 2000 },
  'noto-sans-kr': { name: 'NotoSansKR', index: 3000 },
};

/** Letters, marks and wide forms that belong to these three. */
const eastAsian = /[\p{scx=Han}\p{scx=Hiragana}\p{scx=Katakana}\p{scx=Hangul}\u3000-\u303f\uff00-\uffef]/u;
const kana = /[\p{Script=Hiragana}\p{Script=Katakana}]/u;
const hangul = /\p{Script=Hangul}/u;

/** Which code points each slice of a family has, as its package tells: `{"[4]": "U+2e80-2e99,U+2e9b"}`. */
export type Slices = Readonly<Record<string, string>>;

/**
 * The packs with a file of their own that these characters need. A sign that several scripts use comes with a pack that
 * is needed anyhow, if there is one.
 */
export function wholePacks(characters: readonly string[]): readonly Pack[] {
  const needed = new Set(
    wholeScripts.filter(({ own }) => characters.some((character) => own.test(character))),
  );
  for (const character of characters) {
    const having = wholeScripts.filter(({ uses }) => uses.test(character));
    const [first] = having;
    if (first && !having.some((script) => needed.has(script))) needed.add(first);
  }
  return wholeScripts.filter((script) => needed.has(script)).map(({ pack }) => pack);
}

/**
 * The families to look in for Chinese, Japanese and Korean, the likeliest first: the same sign is drawn otherwise in
 * each, and kana or hangul anywhere on the sheet tell whose signs they are. Empty if there are no such characters.
 */
export function eastAsianFamilies(characters: readonly string[]): readonly SlicedFamily[] {
  if (!characters.some((character) => eastAsian.test(character))) return [];
  const japanese = characters.some((character) => kana.test(character));
  const korean = characters.some((character) => hangul.test(character));
  const first: readonly SlicedFamily[] = [
    ...(japanese ? (['noto-sans-jp'] as const) : []),
    ...(korean ? (['noto-sans-kr'] as const) : []),
  ];
  return [...new Set<SlicedFamily>([...first, 'noto-sans-sc', 'noto-sans-jp', 'noto-sans-kr'])];
}

export function isEastAsian(character: string): boolean {
  return eastAsian.test(character);
}

/** The slices of a family that have any of these characters, and the characters that none has. */
export function slicePacks(
  family: SlicedFamily,
  slices: Slices,
  characters: readonly string[],
): { readonly packs: readonly Pack[]; readonly rest: readonly string[] } {
  const open = new Set(characters);
  const packs: Pack[] = [];
  for (const [key, ranges] of Object.entries(slices)) {
    const [, number] = /^\[(\d+)\]$/.exec(key) ?? [];
    if (number === undefined) continue;
    const own = [...open].filter((character) => inRanges(character, ranges));
    for (const character of own) open.delete(character);
    if (own.length > 0) packs.push(slicePack(family, Number(number)));
  }
  return { packs: packs.sort((a, b) => a.index - b.index), rest: [...open] };
}

function slicePack(family: SlicedFamily, number: number): Pack {
  const { name, index } = sliced[family];
  return {
    name: `${family}-${number}`,
    family,
    postScriptName: name,
    direction: 'ltr',
    index: index + number * 2,
  };
}

/** `U+ff03-ff04,U+ff07` */
function inRanges(character: string, ranges: string): boolean {
  const value = character.codePointAt(0) ?? 0;
  return ranges.split(',').some((range) => {
    const [from = '', to = from] = range.replace('U+', '').split('-');
    return Number.parseInt(from, 16) <= value && value <= Number.parseInt(to, 16);
  });
}

/** The pack of this name, as a page keeps it. */
export function packNamed(name: string): Pack {
  const whole = wholeScripts.find(({ pack }) => pack.name === name);
  if (whole) return whole.pack;
  const [, family = '', number] = /^(.+)-(\d+)$/.exec(name) ?? [];
  if (!isSliced(family)) throw new Error(`There is no pack of fonts named "${name}".`);
  return slicePack(family, Number(number));
}

function isSliced(family: string): family is SlicedFamily {
  return Object.hasOwn(sliced, family);
}

const cuts: Readonly<Record<Weight, { readonly number: number; readonly name: string }>> = {
  text: { number: 400, name: 'Regular' },
  heavy: { number: 800, name: 'ExtraBold' },
};

/** The file of a pack in a weight, by its place in its package. */
export function packFile(pack: Pack, weight: Weight): string {
  return `@fontsource/${pack.family}/files/${pack.name}-${cuts[weight].number}-normal.woff`;
}

export function packPostScriptName(pack: Pack, weight: Weight): string {
  return `${pack.postScriptName}-${cuts[weight].name}`;
}
