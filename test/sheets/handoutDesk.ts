/** A class of the demo workshop with people of the test's own, and what stands on their answer keys. */
import { expect } from 'vitest';
import { classFacts, handoutFacts } from '../../src/core/plan/handoutFacts.ts';
import type { Page } from '../../src/paper/page.ts';
import type { Filled } from '../../src/paper/stencil.ts';
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

/** An exercise, containers of every shape, and a system by its name, in turn. */
export const cells = [
  '',
  'tank box 100 x 90 x 80 cm + bed box 100 x 60 x 30 cm',
  'tank drum 105 x 80 cm + bed box 90 x 60 x 35 cm',
  'tank trough 180 x 90 x 60 cm + bed lying drum 58 x 88 x 29 cm',
  'tank oval 150 x 100 x 70 cm + bed bucket 60 x 50 x 40 cm',
  'room-seven-totes',
];

/** Every system of the handbook. */
export const systemIds = content.systems.map(({ id }) => id);

function rowOf(name: string, at: number, cell: string): RosterRow {
  const read = cell === '' ? null : readContainers(cell, systemIds);
  if (read !== null && 'problems' in read) throw new Error(JSON.stringify(read.problems));
  return { line: at + 2, name, team: `Team ${at % 4}`, containers: read, notes: '' };
}

export function deskFor(names: readonly string[], more: object = {}, own: readonly string[] = cells) {
  const raw = workshopFile.parse({ ...demo?.raw, ...more });
  const rows = names.map((name, at) => rowOf(name, at, own[at % own.length] ?? ''));
  const { people, problems } = peopleOf(raw, rows, facts, () => undefined);
  expect(problems).toEqual([]);
  const example = demo?.example ?? { name: '', system: facts.systems[0]?.system };
  return classDesk({ raw, people, example } as never, { words, day: '2031-05-04', core }, press);
}

/** The page as it is printed: what everybody has, and this person's words. */
export function printed({ stencil, items: own }: Filled): Page {
  const pictures = new Set([...stencil.pictures.values()].map(({ node }) => node));
  const slots = new Set([...stencil.slots.values()].flat().map(({ node }) => node));
  const shared = stencil.page.items.filter(
    ({ kind, node }) => !pictures.has(node) && !(kind === 'words' && slots.has(node)),
  );
  // In the order in which it is read.
  const items = [...shared, ...own].sort((one, other) => one.node - other.node);
  return { ...stencil.page, items };
}

type Desk = ReturnType<typeof deskFor>;

/** What stands in the slots of somebody's sheet, by their names, in the order of the sheet; also where it was laid out for them alone. */
export async function printedSlots(
  desk: Desk,
  at: number,
  view: 'blank' | 'key',
): Promise<ReadonlyMap<string, string>> {
  const found = new Map<string, string>();
  for (const page of (await desk.handouts(desk.handoutOf(at), view)).map(printed))
    for (const [node, { slot }] of page.nodes.entries())
      if (slot !== null) found.set(slot, textAt(page, node));
  return found;
}

/** The results on somebody's answer key, as printed, by figure and step. */
export async function printedResults(desk: Desk, at: number): Promise<readonly Result[]> {
  return [...(await printedSlots(desk, at, 'key'))].flatMap(([slot, text]) => {
    const [, key, step] = /^(.+)-(\d+)-result$/.exec(slot) ?? [];
    return key === undefined ? [] : [{ key, step: Number(step), text }];
  });
}

type Result = { readonly key: string; readonly step: number; readonly text: string };

function textAt({ items }: Page, node: number): string {
  return items.flatMap((item) => (item.kind === 'words' && item.node === node ? [item.text] : [])).join('');
}

/** Whether a printed number is this one, rounded to four digits or to as many more as show a count; of a turnover to two. */
export function isPrinted(text: string, exact: number, key = ''): boolean {
  const shown = Number.parseFloat(text.replace('−', '-').replaceAll('\u00a0', ''));
  if (key === 'turnover') return shown === Number(exact.toPrecision(2));
  const size = Math.floor(Math.log10(Math.abs(exact)));
  return exact === 0
    ? shown === 0
    : [4, 5, 6, 7, 8, 9, 10, 11].some((digits) => {
        const last = 10 ** (size - digits + 1);
        const isWritten = Math.abs(shown / last - Math.round(shown / last)) < 1e-6;
        return isWritten && Math.abs(shown - exact) <= (last / 2) * (1 + 1e-6);
      });
}
