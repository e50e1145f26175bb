/** A tag for everybody, on plain paper to be cut: name, team. */
import { handoutWords } from './handout.ts';
import { labelPages } from '../labelPages.tsx';
import type { ClassSheet } from './classSheet.tsx';

export const nameTags: ClassSheet = {
  id: 'name-tags',
  fits: () => 'yes',
  pages: (input, layOut) => {
    const texts = input.people.map(({ name, team }) => ({
      title: name,
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
