/** One of several threads that print at the same time: gets a sheet, prints it, says so, gets the next. */
import { parentPort, workerData } from 'node:worker_threads';
import { nodePress } from '../paper/node.ts';
import type { ReadSystem } from '../schemas/content.ts';
import { allSheets } from '../sheets/allSheets.ts';
import type { SheetId } from '../sheets/sheetKind.ts';
import { type PrintJob, printSheet } from './printSystem.ts';
import { whyNotPrinted } from './whyNotPrinted.ts';

export type Order = { readonly of: ReadSystem; readonly sheet: SheetId };

/** What comes back for each sheet: its pages, none where the system has nothing for it, or why it cannot be printed. */
export type PrintAnswer = {
  readonly file: string;
  readonly sheet: SheetId;
  readonly pages: number;
  readonly refused: string | null;
};

const job: PrintJob = workerData;
const press = nodePress();

parentPort?.on('message', async (order: Order) => {
  parentPort?.postMessage(await answer(order));
});

async function answer({ of, sheet }: Order): Promise<PrintAnswer> {
  const told = { file: of.file, sheet, pages: 0, refused: null };
  try {
    const kind = allSheets.find(({ id }) => id === sheet);
    if (kind === undefined) throw new RangeError(`there is no sheet ${sheet}`);
    return { ...told, pages: await printSheet(kind, of, job, await press) };
  } catch (error) {
    return { ...told, refused: whyNotPrinted(error, of.raw, job.words.catalogue) };
  }
}
