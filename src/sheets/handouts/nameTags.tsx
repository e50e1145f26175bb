/** A tag for everybody, on plain paper to be cut: name, team. */
import { handoutWords } from './handout.ts';
import { labelPages } from '../labelPages.tsx';
import type { ClassSheet } from './classSheet.tsx';

/** Nobody’s name is cut on what they wear, unless it is longer than a tag. */
const wholeName = 9;

/** Names up to so many letters, of which no word has more than so many, in so large a type: to be read across a table. */
const nameSizes = [
  { letters: 24, word: 11, size: 1.8 },
  { letters: 60, word: 15, size: 1.25 },
  { letters: 120, word: 22, size: 0.85 },
] as const;

function sizeOf(name: string): number {
  const longest = Math.max(...name.split(/[\s-]/).map((word) => word.length));
  const fits = nameSizes.find(({ letters, word }) => name.length <= letters && longest <= word);
  return fits?.size ?? 0.7;
}

export const nameTags: ClassSheet = {
  id: 'name-tags',
  fits: () => 'yes',
  pages: (input, layOut) => {
    const texts = input.people.map(({ name, team }) => ({
      title: name,
      heading: { size: sizeOf(name), mostLines: wholeName },
      lines: [
        { kind: 'said' as const, text: team, rank: 1 },
        { kind: 'said' as const, text: input.session.name, rank: 2 },
      ].filter(({ text }) => text !== ''),
    }));
    const title = handoutWords(input, 'sheetTitle', {
      kind: handoutWords(input, 'kinds.nameTags'),
      name: input.session.name,
    });
    return labelPages({ texts, spare: null, title }, { own: null, paper: input.paper }, layOut);
  },
};
