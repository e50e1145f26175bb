/** A class of the demo workshop with people of the test's own, and what stands on their answer keys. */
import { expect } from 'vitest';
import { classFacts, handoutFacts } from '../../src/core/plan/handoutFacts.ts';
import type { Words } from '../../src/paper/page.ts';
import { readContainers } from '../../src/schemas/containersText.ts';
import { peopleOf } from '../../src/schemas/people.ts';
import type { RosterRow } from '../../src/schemas/readRoster.ts';
import { workshopFile } from '../../src/schemas/workshopFile.ts';
import { classDesk } from '../../src/sheets/handouts/classDesk.ts';
import { content, press, words } from './laidOut.ts';

const core = { classFacts, handoutFacts };
const facts = { ...content, bedName: 'Bed' };
const [demo] = content.workshops;
if (demo === undefined) throw new Error('no workshop in content');

/** Of every kind that a roster may hold, the first an exercise. */
export const cells = [
  '',
  'tank box 100 x 90 x 80 cm + bed box 100 x 60 x 30 cm',
  'tank drum 105 x 80 cm + bed box 90 x 60 x 35 cm',
  'tank trough 180 x 90 x 60 cm + bed lying drum 58 x 88 x 29 cm',
  'tank oval 150 x 100 x 70 cm + bed bucket 60 x 50 x 40 cm',
  'room-seven-totes',
];

function rowOf(name: string, at: number): RosterRow {
  const cell = cells[at % cells.length] ?? '';
  const read =
    cell === ''
      ? null
      : readContainers(
          cell,
          content.systems.map(({ id }) => id),
        );
  if (read !== null && 'problems' in read) throw new Error(JSON.stringify(read.problems));
  return { line: at + 2, name, team: `Team ${at % 4}`, containers: read, notes: '' };
}

export function deskFor(names: readonly string[], more: object = {}) {
  const raw = workshopFile.parse({ ...demo?.raw, ...more });
  const { people, problems } = peopleOf(raw, names.map(rowOf), facts, () => undefined);
  expect(problems).toEqual([]);
  const example = demo?.example ?? { name: '', system: facts.systems[0]?.system };
  return classDesk({ raw, people, example } as never, { words, day: '2031-05-04', core }, press);
}

/** The results on somebody's answer key, as printed, by figure and step. */
export async function printedResults(
  desk: ReturnType<typeof deskFor>,
  at: number,
): Promise<readonly Result[]> {
  const results: Result[] = [];
  for (const { stencil, words: own } of await desk.handouts(desk.handoutOf(at), 'key'))
    for (const [slot, places] of stencil.slots) {
      const named = /^(.+)-(\d+)-result$/.exec(slot);
      if (named === null) continue;
      const text = textAt(own, places[0]?.node);
      results.push({ key: named[1] ?? '', step: Number(named[2]), text });
    }
  return results;
}

type Result = { readonly key: string; readonly step: number; readonly text: string };

export function textAt(own: readonly Words[], node: number | undefined): string {
  return own
    .filter((one) => one.node === node)
    .map((one) => one.text)
    .join('');
}

/** Whether a printed number is this one; five digits are printed. */
export function isPrinted(text: string, exact: number): boolean {
  const shown = Number.parseFloat(text.replace('−', '-').replaceAll('\u00a0', ''));
  return Math.abs(shown - exact) <= Math.abs(exact) * 5e-5 + 1e-9;
}
