/** Names and notes that no font has a letter for, told before anything is made of them. */
import type { Problem } from '../../core/problem.ts';
import type { Member, Person } from '../../core/workshop/person.ts';
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

/** Everybody whose names can be printed, and for all others which letter of which cell cannot; a team goes on with the rest. */
export async function printablePeople(
  people: readonly Person[],
  { file, columns }: Roster,
  press: Pick<Press, 'uncovered'>,
): Promise<{ readonly fine: readonly Person[]; readonly wrong: readonly Problem[] }> {
  const wrong: Problem[] = [];
  const isFine = async (written: readonly Written[]): Promise<boolean> =>
    (await press.uncovered(written.map(({ text }) => text))).length === 0;
  const tell = async ({ text, line, column }: Written): Promise<void> => {
    for (const { character: given, codePoint: other } of await press.uncovered([text]))
      wrong.push({
        ...{ code: 'rosterUncovered', place: [], given, other },
        at: { file, line, column: Math.max(1, columns[column]) },
      });
  };
  const fine: Person[] = [];
  for (const person of people) {
    const rows = person.members.length === 0 ? [person] : person.members;
    if (await isFine(rows.flatMap((row) => writtenOf(row, person)))) {
      fine.push(person);
      continue;
    }
    const members: Member[] = [];
    for (const row of rows) {
      const written = writtenOf(row, person);
      if (await isFine(written)) members.push(row);
      else for (const one of written) await tell(one);
    }
    const [first] = members;
    if (first !== undefined) fine.push({ ...person, line: first.line, members });
  }
  return { fine, wrong };
}

/** All that is printed of a row. */
function writtenOf({ line, name, notes }: Member, { team }: Person): readonly Written[] {
  return [
    { text: team, line, column: 'team' },
    { text: name, line, column: 'name' },
    { text: notes, line, column: 'notes' },
  ];
}
