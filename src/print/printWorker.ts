/** One of several processes that print at the same time: gets a system, prints it, says so, gets the next. */
import { parentPort, workerData } from 'node:worker_threads';
import { nodePress } from '../paper/node.ts';
import type { ReadSystem } from '../schemas/content.ts';
import type { Words } from '../sheets/sheet.ts';
import { printCard } from './printCard.ts';

export type PrintJob = { readonly words: Words; readonly day: string; readonly folder: string };

/** What comes back for each system: printed, or why it cannot be. */
export type PrintAnswer = { readonly file: string; readonly refused: string | null };

const job: PrintJob = workerData;
const press = nodePress();

parentPort?.on('message', async (system: ReadSystem) => {
  parentPort?.postMessage(await answer(system));
});

async function answer(system: ReadSystem): Promise<PrintAnswer> {
  try {
    await printCard(system, job.words, job.day, job.folder, await press);
    return { file: system.file, refused: null };
  } catch (error) {
    return { file: system.file, refused: error instanceof Error ? error.message : String(error) };
  }
}
