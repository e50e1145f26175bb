/** What a person must know of a season, in lines that job list and page share. */
import { noteSentence } from '../wording/note.ts';
import { feedLines } from './feedWords.ts';
import { relaxedLines } from './relaxedWords.ts';
import type { TurnoverInput } from './turnoverSheet.ts';

/** What feed and plants ask for is told week by week instead. */
const byWeek: ReadonlySet<string> = new Set(['feedMoreThanPlants', 'plantsMoreThanFeed']);

export function mindLines(input: TurnoverInput): readonly string[] {
  const { plan, words, units } = input;
  const notes = plan.notes.filter(({ code }) => !byWeek.has(code));
  return [
    ...notes.map((note) => noteSentence(note, words.catalogue, units)),
    ...feedLines(input),
    ...relaxedLines(input),
  ];
}
