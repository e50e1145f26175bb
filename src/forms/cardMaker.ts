/** Makes the card of a system in the browser: checked, planned, laid out, and written as files. */
import type { Problem } from '../core/problem.ts';
import { sheetFacts } from '../core/plan/sheetFacts.ts';
import type { Page } from '../paper/page.ts';
import type { Press } from '../paper/press.ts';
import type { SystemFile } from '../schemas/systemFile.ts';
import { writeRecord } from '../schemas/systemRecord.ts';
import { toSystem } from '../schemas/toSystem.ts';
import { careCard, careCardKind } from '../sheets/careCard.tsx';
import { allSheets } from '../sheets/allSheets.ts';
import type { SheetInput } from '../sheets/sheet.ts';
import type { SheetId } from '../sheets/sheetKind.ts';
import { carriedRecord, sheetPrint } from '../sheets/sheetPrint.ts';
import type { Job, MadeFile, PlannerContent } from './messages.ts';

/** Fine enough for a laser printer; the build prints its pictures alike. */
const dpi = 300;

type Checked =
  | { readonly input: SheetInput; readonly raw: SystemFile }
  | { readonly problems: readonly Problem[] };

export function checkedInput(job: Job, content: PlannerContent): Checked {
  const { facts, catalogue, terms, sources, care } = content;
  const checked = toSystem(job.raw, facts);
  if ('problems' in checked) return checked;
  const { system, raw } = checked;
  const { paper, units } = raw.sheet;
  const words = { catalogue, terms, sources };
  return { input: { ...sheetFacts(system, care), words, paper, units, day: job.day }, raw };
}

export type CardMaker = {
  /** The sides one by one. `mayGoOn` is asked before each layout, and may throw to drop the rest. */
  readonly sides: (job: Job, input: SheetInput, mayGoOn: () => Promise<void>) => AsyncGenerator<Page>;
};

/** Remembers the card that it laid out last, so that nothing is drawn twice. */
export function cardMaker(press: () => Promise<Press>): CardMaker {
  let last: { readonly job: string; readonly pages: readonly Page[] } | null = null;
  return { sides };

  async function* sides(job: Job, input: SheetInput, mayGoOn: () => Promise<void>): AsyncGenerator<Page> {
    const key = JSON.stringify(job);
    if (last?.job === key) return yield* last.pages;
    const pages: Page[] = [];
    const { layOut } = await press();
    const card = careCard(input, async (sheet) => {
      await mayGoOn();
      return layOut(sheet);
    });
    for await (const page of card) {
      pages.push(page);
      yield page;
    }
    last = { job: key, pages };
  }
}

/** Another sheet of the same system as PDF. `mayGoOn` is asked before each layout. */
export async function sheetFile(
  id: SheetId,
  { input, raw }: Extract<Checked, { readonly input: SheetInput }>,
  press: Press,
  mayGoOn: () => Promise<void>,
): Promise<MadeFile> {
  const kind = allSheets.find((one) => one.id === id);
  if (kind === undefined) throw new RangeError(`there is no sheet ${id}`);
  const pages: Page[] = [];
  const sheets = kind.pages(input, async (sheet) => {
    await mayGoOn();
    return press.layOutAnew(sheet);
  });
  for await (const page of sheets) pages.push(page);
  const bytes = await press.toPdf(sheetPrint(kind, input, pages, writeRecord(raw)));
  return { name: `${raw.id}-${id}.pdf`, mime: 'application/pdf', bytes: new Uint8Array(bytes) };
}

/** The card for a file: laid out anew, so that it is the one that the build makes of the same system. */
export async function cardForFile(
  { input }: Extract<Checked, { readonly input: SheetInput }>,
  press: Press,
  mayGoOn: () => Promise<void>,
): Promise<readonly Page[]> {
  const pages: Page[] = [];
  const card = careCard(input, async (sheet) => {
    await mayGoOn();
    return press.layOutAnew(sheet);
  });
  for await (const page of card) pages.push(page);
  return pages;
}

export async function fileOf(
  file: 'pdf' | 'png' | 'svg' | 'json',
  pages: readonly Page[],
  { input, raw }: Extract<Checked, { readonly input: SheetInput }>,
  press: Press,
): Promise<MadeFile> {
  const record = writeRecord(raw);
  const carries = carriedRecord(input, record);
  const [front] = pages;
  if (front === undefined) throw new RangeError('the card has no side');
  switch (file) {
    case 'pdf':
      return named('application/pdf', await press.toPdf(sheetPrint(careCardKind, input, pages, record)));
    case 'png':
      return named('image/png', await press.toPng(front, { dpi, carries }));
    case 'svg':
      return named('image/svg+xml', new TextEncoder().encode(press.toSvg(front, carries)));
    case 'json':
      return named('application/json', new TextEncoder().encode(record));
  }

  /** With a copy of the bytes in memory of their own, which a Blob may hold. */
  function named(mime: string, bytes: Uint8Array): MadeFile {
    return { name: `${raw.id}.${file}`, mime, bytes: new Uint8Array(bytes) };
  }
}
