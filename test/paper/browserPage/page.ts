import { type Made, run } from './run.ts';

/** For the test: both ways of using the press. */
export type Ways = { inPage: () => Promise<Made>; inWorker: () => Promise<Made> };

function inWorker(): Promise<Made> {
  const worker = new Worker(new URL('./worker.ts', import.meta.url), { type: 'module' });
  return new Promise((resolve, reject) => {
    worker.onmessage = (event: MessageEvent<{ made?: Made; error?: string }>) => {
      const { made, error } = event.data;
      if (made) resolve(made);
      else reject(new Error(error));
      worker.terminate();
    };
    worker.onerror = (event) => reject(new Error(event.message));
    worker.postMessage('run');
  });
}

Object.assign(window, { ways: { inPage: run, inWorker } satisfies Ways });
