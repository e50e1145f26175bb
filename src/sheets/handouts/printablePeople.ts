/** Names and notes that no font has a letter for, told before anything is made of them. */
import type { Problem } from '../../core/problem.ts';
import type { Person } from '../../core/workshop/person.ts';
import type { Press } from '../../paper/press.ts';

/** Where people are written: the file, and for each column its place, from 1. */
type Roster = {
  readonly file: string;
  readonly columns: Readonly<Record<'name' | 'team' | 'notes', number>>;
};

type Written = {
  readonly text: string;
  readonly line: number;
  readonly column: 'name' | 'team' | 'notes';
};

/** Everybody whose names can be printed, and for all others which letter of which cell cannot. */
export async function printablePeople(
  people: readonly Person[],
  { file, columns }: Roster,
  press: Pick<Press, 'uncovered'>,
): Promise<{ readonly fine: readonly Person[]; readonly wrong: readonly Problem[] }> {
  const fine: Person[] = [];
  const wrong: Problem[] = [];
  for (const person of people) {
    const written = writtenOf(person);
    if ((await press.uncovered(written.map(({ text }) => text))).length === 0) fine.push(person);
    else
      for (const { text, line, column } of written)
        for (const { character: given, codePoint: other } of await press.uncovered([text]))
          wrong.push({
            ...{ code: 'rosterUncovered', place: [], given, other },
            at: { file, line, column: Math.max(1, columns[column]) },
          });
  }
  return { fine, wrong };
}

/** All that is printed of somebody's row, or of the rows of a team. */
function writtenOf({ line, name, team, notes, members }: Person): readonly Written[] {
  const own = members.length === 0 ? [{ line, name, notes }] : members;
  return [
    { text: team, line, column: 'team' },
    ...own.flatMap((one): readonly Written[] => [
      { text: one.name, line: one.line, column: 'name' },
      { text: one.notes, line: one.line, column: 'notes' },
    ]),
  ];
}
