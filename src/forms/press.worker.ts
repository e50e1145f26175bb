/**
 * Works beside the page, so that typing never waits: checks, plans, lays out, prints and opens files. It is told to
 * draw after every edit; only the latest matters, so an older drawing is dropped between two layouts.
 */
import { browserPress } from '../paper/browser.ts';
import { CoverError } from '../paper/cover.ts';
import type { Page } from '../paper/page.ts';
import type { Press } from '../paper/press.ts';
import { answersOf } from './answers.ts';
import { cardForFile, cardMaker, checkedInput, fileOf, sheetFile } from './cardMaker.ts';
import type { Ask, FileKind, PlannerContent, Side, Told } from './messages.ts';
import { loaded } from './loaded.ts';
import { openRecord } from './openRecord.ts';

type Asked<Kind extends Ask['kind']> = Extract<Ask, { readonly kind: Kind }>;

/** Thrown out of a drawing that nobody waits for any more. */
const dropped = Symbol('a newer edit came');

const thePress = loaded(browserPress);
let content: PlannerContent | undefined;
let wanted: Asked<'draw'> | null = null;
let queue: Promise<void> = Promise.resolve();
const { sides } = cardMaker(thePress);

self.onmessage = ({ data: ask }: MessageEvent<Ask>) => {
  if (ask.kind === 'start') {
    content = ask.content;
    // Fetched while nobody waits for it yet.
    thePress().catch(() => undefined);
    return;
  }
  if (ask.kind === 'draw') wanted = ask;
  queue = queue.then(() => answer(ask).catch((error: unknown) => tellError(ask.turn, error)));
};

function tell(told: Told): void {
  self.postMessage(told);
}

function tellError(turn: number, error: unknown): void {
  if (error === dropped) return;
  if (error instanceof CoverError) tell({ kind: 'uncovered', turn, uncovered: error.uncovered });
  else tell({ kind: 'failed', turn, message: error instanceof Error ? error.message : String(error) });
}

function answer(ask: Exclude<Ask, Asked<'start'>>): Promise<void> {
  switch (ask.kind) {
    case 'draw':
      return draw(ask);
    case 'make':
      return make(ask);
    case 'open':
      return open(ask);
  }
}

async function draw(ask: Asked<'draw'>): Promise<void> {
  if (wanted !== ask) return;
  const { turn, raw, day } = ask;
  const checked = checkedInput({ raw, day }, started());
  if ('problems' in checked) return tell({ kind: 'problems', turn, problems: checked.problems });
  tell({ kind: 'answers', turn, answers: answersOf(checked.input) });
  const press = await thePress();
  let index = 0;
  for await (const page of sides({ raw, day }, checked.input, mayGoOn)) {
    tell({ kind: 'side', turn, index, side: sideOf(page, press) });
    index += 1;
  }
  tell({ kind: 'drawn', turn, sides: index });

  async function mayGoOn(): Promise<void> {
    await messagesRead();
    if (wanted !== ask) throw dropped;
  }
}

async function make({ turn, raw, day, file }: Asked<'make'>): Promise<void> {
  const checked = checkedInput({ raw, day }, started());
  if ('problems' in checked) return tell({ kind: 'problems', turn, problems: checked.problems });
  if (!isCard(file)) {
    const made = await sheetFile(file, checked, await thePress(), messagesRead);
    return tell({ kind: 'made', turn, made });
  }
  const pages = await cardForFile(checked, await thePress(), messagesRead);
  tell({ kind: 'made', turn, made: await fileOf(file, pages, checked, await thePress()) });
}

/** The forms of the card; everything else is another sheet. */
function isCard(file: FileKind): file is 'pdf' | 'png' | 'svg' | 'json' {
  return ['pdf', 'png', 'svg', 'json'].includes(file);
}

async function open({ turn, bytes }: Asked<'open'>): Promise<void> {
  const opened = await openRecord(bytes, started().facts);
  if ('problems' in opened) tell({ kind: 'refused', turn, problems: opened.problems });
  else tell({ kind: 'opened', turn, raw: opened.raw });
}

function sideOf(page: Page, press: Press): Side {
  const { width_pt, height_pt } = page;
  return { width_pt, height_pt, ...press.draw(page), alt: altOf(page) };
}

/** What the drawings of a side say. */
function altOf(page: Page): string {
  return page.nodes.flatMap(({ alt }) => (alt === null ? [] : [alt])).join(' ');
}

function started(): PlannerContent {
  if (content === undefined) throw new Error('the worker was not started');
  return content;
}

/** Lets newer edits arrive. */
function messagesRead(): Promise<void> {
  return new Promise((resolve) => setTimeout(resolve, 0));
}
