/** The stacks of a workshop, set by set: each set begins on a front side. */
import type { Page } from '../../paper/page.ts';
import type { Filled } from '../../paper/stencil.ts';
import type { Stack, StackSet } from '../../paper/toStackPdf.ts';
import type { ClassDesk } from './classDesk.ts';
import { type ContentsLine, contentsSheet } from './contentsSheet.tsx';
import { handoutWords } from './handout.ts';
import { planPages } from './plannedRows.ts';

/** everything: the class's sheets, then everybody's; answers: the keys in the same order; one: one person's sheets. */
export type StackKind = 'everything' | 'answers' | 'one';

/** A stack, and how many pages it has once it was written. */
export type Stacked = { readonly print: Stack; readonly pages: () => number };

/**
 * A stack of a workshop.
 * @param rows which people, by their place in the roster; all where it is left out
 * @param told called after each person's pages with how far it is
 */
export async function workshopStack(
  desk: ClassDesk,
  kind: StackKind,
  rows: readonly number[] = [...desk.people.keys()],
  told: (done: number, of: number) => void = () => undefined,
): Promise<Stacked> {
  const { input } = desk;
  const { name, date } = input.session;
  let pages = 0;
  const [only] = rows;
  const person = kind === 'one' && rows.length === 1 && only !== undefined ? desk.people[only] : undefined;
  const title = person === undefined ? handoutWords(input, 'title', { name }) : `${person.name}: ${name}`;
  async function* sets(): AsyncGenerator<StackSet, void, void> {
    for await (const set of setsOf(desk, kind, rows, told)) {
      pages += set.pages.length;
      yield set;
    }
  }
  return { print: { title, lang: 'en', date, sets: sets() }, pages: () => pages };
}

async function* setsOf(
  desk: ClassDesk,
  kind: StackKind,
  rows: readonly number[],
  told: (done: number, of: number) => void,
): AsyncGenerator<StackSet, void, void> {
  if (kind === 'everything') yield* classSets(desk, rows);
  for (const [at, row] of rows.entries()) {
    const pages = await pagesOf(desk, row, kind);
    told(at + 1, rows.length);
    if (pages.length > 0) yield { title: desk.people[row]?.name ?? '', pages: await evened(desk, pages) };
  }
}

async function pagesOf(desk: ClassDesk, row: number, kind: StackKind): Promise<readonly Filled[]> {
  const input = desk.handoutOf(row);
  if (kind === 'answers') return desk.wanted.has('key') ? desk.handouts(input, 'key') : [];
  const pages = desk.wanted.has('worksheet') ? [...(await desk.handouts(input, 'blank'))] : [];
  return desk.wanted.has('plan') ? [...pages, ...(await desk.plans(input))] : pages;
}

/** How many pages somebody's set has, without laying out what is drawn for them alone. */
async function lengthOf(desk: ClassDesk, row: number): Promise<number> {
  const input = desk.handoutOf(row);
  const worksheet = desk.wanted.has('worksheet') ? (await desk.handouts(input, 'blank')).length : 0;
  return worksheet + (desk.wanted.has('plan') ? planPages(input.system.beds.length) : 0);
}

/** Pages of the contents of a class. */
const usualContents = 2;

/** The contents, then the sheets of the whole class. */
async function* classSets(desk: ClassDesk, rows: readonly number[]): AsyncGenerator<StackSet, void, void> {
  const { input, press } = desk;
  const ofClass = await desk.ofClass();
  const asSet = async (title: string, pages: readonly Page[]): Promise<StackSet> => ({
    title,
    pages: await evened(desk, pages.map(press.asLaidOut)),
  });
  const sets = await Promise.all(
    ofClass.map(({ sheet, pages }) => asSet(handoutWords(input, `kinds.${keyOf(sheet.id)}`), pages)),
  );
  if (desk.wanted.has('contents')) {
    const lengths: number[] = [];
    for (const row of rows) lengths.push(even(await lengthOf(desk, row)));
    const title = handoutWords(input, 'kinds.contents');
    // The contents tell their own length too. Most have one leaf; others are laid out again with the pages right.
    const first = await contentsPages(desk, sets, { rows, lengths, before: usualContents });
    const before = even(first.length);
    const right = before === usualContents ? first : contentsPages(desk, sets, { rows, lengths, before });
    yield asSet(title, await right);
  }
  yield* sets;
}

type Counted = {
  readonly rows: readonly number[];
  readonly lengths: readonly number[];
  readonly before: number;
};

async function contentsPages(
  desk: ClassDesk,
  sets: readonly StackSet[],
  { rows, lengths, before }: Counted,
): Promise<readonly Page[]> {
  const { input, people } = desk;
  const lines: ContentsLine[] = [];
  let page = before + 1;
  for (const { title, pages } of sets) {
    lines.push({ what: title, team: '', number: '', page });
    page += pages.length;
  }
  for (const [at, row] of rows.entries()) {
    // Who gets nothing of this stack has no page in it.
    if ((lengths[at] ?? 0) === 0) continue;
    const person = people[row];
    const number = person?.number ?? handoutWords(input, 'ownContainers');
    // A team is called so already.
    const team = person?.members.length === 0 ? person.team : '';
    lines.push({ what: person?.name ?? '', team, number, page });
    page += lengths[at] ?? 0;
  }
  const pages: Page[] = [];
  for await (const one of contentsSheet(input, lines, desk.press.layOutAnew)) pages.push(one);
  return pages;
}

/** `sign-in` is `signIn` among the words. */
function keyOf(id: string): string {
  return id.replace(/-(\w)/g, (_, letter: string) => letter.toUpperCase());
}

function even(pages: number): number {
  return pages + (pages % 2);
}

/** With an empty back where the last page is a front, so that whatever comes next begins on a front. */
async function evened(desk: ClassDesk, pages: readonly Filled[]): Promise<readonly Filled[]> {
  return pages.length % 2 === 0 ? pages : [...pages, await desk.emptyBack()];
}
