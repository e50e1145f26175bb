/** What can be printed of a workshop: the stack to staple, the answers in the same order, one file for each. */
import type { WorkshopPart } from '../../core/workshop/parts.ts';
import type { Press } from '../../paper/press.ts';
import type { ZipEntry } from '../../paper/zip.ts';
import { type CoreOf, type ClassDesk, classDesk, type WorkshopOf } from './classDesk.ts';
import type { Printing } from '../sheet.ts';
import { workshopStack } from './workshopStack.ts';

/** The names of their files. */
export const partFiles: Readonly<Record<WorkshopPart, string>> = {
  stack: 'stack.pdf',
  answers: 'answers.pdf',
  each: 'each.zip',
};

/** Bytes piece by piece; how many pages, and how many people, have been written so far. */
export type PartPrint = {
  readonly bytes: AsyncGenerator<Uint8Array, void, void>;
  readonly pages: () => number;
};

type Job = Pick<Printing, 'words' | 'day'> & { readonly core: CoreOf };

/** Told after each person's pages. */
type Progress = (done: number, of: number) => void;

/**
 * One part of a workshop.
 * @param rows which people, by their place in the roster
 */
export function workshopPrint(
  of: WorkshopOf,
  part: WorkshopPart,
  job: Job,
  press: Press,
  which: Which = {},
): Promise<PartPrint> {
  return partPrint(classDesk(of, job, press), part, which);
}

type Which = { readonly rows?: readonly number[] | undefined; readonly told?: Progress };

/** The same from a desk, which keeps what was laid out for another part. */
export async function partPrint(
  desk: ClassDesk,
  part: WorkshopPart,
  { rows, told = () => undefined }: Which = {},
): Promise<PartPrint> {
  const wanted = rows ?? [...desk.people.keys()];
  if (part === 'each') return eachPrint(desk, wanted, told);
  const { print, pages } = await workshopStack(
    desk,
    part === 'stack' ? 'everything' : 'answers',
    wanted,
    told,
  );
  return { bytes: desk.press.toStackPdf(print), pages };
}

function eachPrint(desk: ClassDesk, rows: readonly number[], told: Progress): PartPrint {
  let pages = 0;
  async function* files(): AsyncGenerator<ZipEntry, void, void> {
    for (const [at, row] of rows.entries()) {
      const one = await workshopStack(desk, 'one', [row]);
      const number = String(row + 1).padStart(4, '0');
      const name = `${number}-${fileName(desk.people[row]?.name ?? '')}.pdf`;
      yield { name, bytes: desk.press.toStackPdf(one.print) };
      pages += one.pages();
      told(at + 1, rows.length);
    }
  }
  return { bytes: desk.press.toZip(files()), pages: () => pages };
}

/** Letters and figures of any script; nothing that a file system or a shell takes for more than a letter. */
function fileName(name: string): string {
  const plain = name
    .normalize('NFC')
    .replace(/[^\p{L}\p{M}\p{N}]+/gu, '-')
    .replace(/^-|-$/g, '');
  return [...plain].slice(0, 60).join('').toLowerCase() || 'sheet';
}
