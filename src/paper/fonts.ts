import type { Weight } from './page.ts';

/**
 * The fonts of every sheet, in the order of fallback. Atkinson Hyperlegible Next comes first: its zeros, ones and
 * letters cannot be taken for one another. Noto Sans has the scripts and accents that it lacks, and Open Sans the small
 * figures of H₂O and the signs of formulas: ≤ ≥ √ ≈.
 */
const subsets = [
  ['atkinson-hyperlegible-next', 'latin'],
  ['atkinson-hyperlegible-next', 'latin-ext'],
  ['noto-sans', 'latin'],
  ['noto-sans', 'latin-ext'],
  ['noto-sans', 'greek'],
  ['noto-sans', 'greek-ext'],
  ['noto-sans', 'cyrillic'],
  ['noto-sans', 'cyrillic-ext'],
  ['noto-sans', 'vietnamese'],
  ['open-sans', 'math'],
] as const;

type Subset = (typeof subsets)[number];
type NameOf<Pair> = Pair extends readonly [infer Family extends string, infer Part extends string]
  ? `${Family}-${Part}`
  : never;
/** One name for each subset of a family: the layout engine knows one font by a name and a weight. */
export type FontName = NameOf<Subset>;

/** What a letter's place hangs on: on the next letter and no other, or on whatever stands around it. */
export type Kerning = 'pairs' | 'all around';

export type FontSource = {
  readonly name: FontName;
  readonly weight: Weight;
  readonly postScriptName: string;
  readonly kerning: Kerning;
  /** Place of the file in the installed packages. */
  readonly file: string;
};

const cuts = [
  { weight: 'text', number: 400, name: 'Regular' },
  { weight: 'heavy', number: 800, name: 'ExtraBold' },
] as const;

const postScript = {
  'atkinson-hyperlegible-next': 'AtkinsonHyperlegibleNext',
  'noto-sans': 'NotoSans',
  'open-sans': 'OpenSans',
};

/** A test looks at every pair of their letters. */
const byPairs: readonly string[] = ['atkinson-hyperlegible-next'];

export const fontSources: readonly FontSource[] = subsets.flatMap(([family, subset]) =>
  cuts.map((cut) => ({
    name: `${family}-${subset}` as FontName,
    weight: cut.weight,
    postScriptName: `${postScript[family]}-${cut.name}`,
    kerning: byPairs.includes(family) ? 'pairs' : 'all around',
    file: `@fontsource/${family}/files/${family}-${subset}-${cut.number}-normal.woff`,
  })),
);
