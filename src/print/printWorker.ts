/** One of several processes that print at the same time: gets a system, prints it, says so, gets the next. */
import { parentPort, workerData } from 'node:worker_threads';
import { nodePress } from '../paper/node.ts';
import type { ReadSystem } from '../schemas/content.ts';
import { type PrintJob, printSystem } from './printSystem.ts';

/** What comes back for each system: printed, or why it cannot be. */
export type PrintAnswer = { readonly file: string; readonly refused: string | null };

const job: PrintJob = workerData;
const press = nodePress();

parentPort?.on('message', async (system: ReadSystem) => {
  parentPort?.postMessage(await answer(system));
});

async function answer(system: ReadSystem): Promise<PrintAnswer> {
  try {
    await printSystem(system, job, await press);
    return { file: system.file, refused: null };
  } catch (error) {
    return { file: system.file, refused: error instanceof Error ? error.message : String(error) };
  }
}
