import type { Weight } from './page.ts';

/**
 * The fonts of every sheet, in the order of fallback. Atkinson Hyperlegible Next: its zeros, ones and letters cannot
 * be taken for one another. Noto Sans has the scripts and accents that it lacks.
 */
export type FontSource = {
  readonly name: string;
  readonly weight: Weight;
  readonly postScriptName: string;
  /** Place of the file in the installed packages. */
  readonly file: string;
};

const families = [
  { id: 'atkinson-hyperlegible-next', name: 'AtkinsonHyperlegibleNext', subsets: ['latin', 'latin-ext'] },
  {
    id: 'noto-sans',
    name: 'NotoSans',
    subsets: ['latin', 'latin-ext', 'greek', 'greek-ext', 'cyrillic', 'cyrillic-ext', 'vietnamese'],
  },
] as const;

const cuts = [
  { weight: 'text', number: 400, name: 'Regular' },
  { weight: 'heavy', number: 800, name: 'ExtraBold' },
] as const;

export const fontSources: readonly FontSource[] = families.flatMap((family) =>
  family.subsets.flatMap((subset) =>
    cuts.map((cut) => ({
      name: `${family.id}-${subset}`,
      weight: cut.weight,
      postScriptName: `${family.name}-${cut.name}`,
      file: `@fontsource/${family.id}/files/${family.id}-${subset}-${cut.number}-normal.woff`,
    })),
  ),
);
