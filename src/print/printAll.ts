/** Prints every system on all cores and tells how far it is. */
import { availableParallelism } from 'node:os';
import { Worker } from 'node:worker_threads';
import type { ReadSystem } from '../schemas/content.ts';
import type { PrintJob } from './printSystem.ts';
import type { PrintAnswer } from './printWorker.ts';

/**
 * Prints all systems; those that cannot be printed come back with the reason, all of them.
 * @param told called after each system with how many are done
 */
export async function printAll(
  systems: readonly ReadSystem[],
  job: PrintJob,
  told: (done: number) => void,
): Promise<readonly PrintAnswer[]> {
  const waiting = [...systems];
  const answers: PrintAnswer[] = [];
  const hands = Math.min(availableParallelism(), systems.length);
  const take = (answer: PrintAnswer): void => {
    answers.push(answer);
    told(answers.length);
  };
  await Promise.all(Array.from({ length: hands }, () => oneHand(waiting, job, take)));
  return answers;
}

/** One worker, kept busy until nothing waits. */
function oneHand(waiting: ReadSystem[], job: PrintJob, take: (answer: PrintAnswer) => void): Promise<void> {
  return new Promise((done, failed) => {
    const worker = new Worker(new URL('./printWorker.ts', import.meta.url), { workerData: job });
    const next = (): void => {
      const system = waiting.shift();
      if (system) worker.postMessage(system);
      else void worker.terminate().then(() => done());
    };
    worker.on('message', (answer: PrintAnswer) => {
      take(answer);
      next();
    });
    worker.on('error', failed);
    next();
  });
}
