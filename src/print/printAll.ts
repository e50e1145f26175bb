/** Prints every sheet of every system on all cores and tells how far it is. */
import { availableParallelism } from 'node:os';
import { Worker } from 'node:worker_threads';
import type { Content } from '../schemas/content.ts';
import { allSheets } from '../sheets/allSheets.ts';
import type { PrintJob } from './printSystem.ts';
import { partsOf } from '../core/workshop/parts.ts';
import { type Order, type PrintAnswer, seasonSheets } from './order.ts';

export type Progress = { readonly done: number; readonly of: number; readonly pages: number };

/** How many threads print that many sheets. */
export function handsFor(sheets: number): number {
  return Math.min(availableParallelism(), sheets);
}

/**
 * Prints all systems, seasons and workshops, what takes longest first; sheets that cannot be printed come back with the reason, all of them.
 * @param told called after each sheet with how far it is
 * @param stop ends the work at once; what was asked for then throws its reason
 */
export async function printAll(
  { systems, turnovers, workshops }: Pick<Content, 'systems' | 'turnovers' | 'workshops'>,
  job: PrintJob,
  told: (progress: Progress) => void,
  stop: AbortSignal,
): Promise<readonly PrintAnswer[]> {
  const seasons = turnovers.map((of): Order => ({ of, sheet: seasonSheets }));
  const sheets = systems.flatMap((of) => allSheets.map(({ id }): Order => ({ of, sheet: id })));
  const handouts = workshops.flatMap((of) =>
    partsOf(of.raw.sheets, of.raw.rota ? 'rota' : 'none').map((part): Order => {
      return { of, sheet: `workshop-${part}` };
    }),
  );
  const waiting = [...seasons, ...handouts, ...sheets];
  const count = waiting.length;
  const answers: PrintAnswer[] = [];
  let pages = 0;
  const take = (answer: PrintAnswer): void => {
    answers.push(answer);
    pages += answer.pages;
    told({ done: answers.length, of: count, pages });
  };
  const hands = Array.from({ length: handsFor(count) }, () => oneHand(waiting, job, take, stop));
  await Promise.all(hands);
  return answers;
}

/** One worker, kept busy until nothing waits. */
function oneHand(
  waiting: Order[],
  job: PrintJob,
  take: (answer: PrintAnswer) => void,
  stop: AbortSignal,
): Promise<void> {
  return new Promise((done, failed) => {
    const worker = new Worker(new URL('./printWorker.ts', import.meta.url), { workerData: job });
    const next = (): void => {
      const order = waiting.shift();
      if (order) worker.postMessage(order);
      else void worker.terminate().then(() => done());
    };
    stop.addEventListener('abort', () => void worker.terminate().then(() => failed(stop.reason)));
    worker.on('message', (answer: PrintAnswer) => {
      take(answer);
      next();
    });
    worker.on('error', failed);
    next();
  });
}
