/**
 * Works beside the crops page. It hears at once, while all that it works with is still on its way: what is asked of a worker
 * that has not run yet waits at the page, which is busy showing itself.
 */
import type { SeasonAsk, SeasonTold } from './seasonMessages.ts';

void import('./seasonPress.ts').catch(() => undefined);
const theDrawing = import('./drawing.ts');
// Whoever asks hears of it.
theDrawing.catch(() => undefined);

self.onmessage = ({ data: ask }: MessageEvent<SeasonAsk>) => {
  theDrawing
    .then(({ answer }) => answer(ask))
    .catch((error: unknown) => {
      if (ask.kind !== 'start') tellFailed(ask.turn, error);
    });
};

// Only that it hears, before anything that it tells.
self.postMessage(null);

function tellFailed(turn: number, error: unknown): void {
  const told: SeasonTold = {
    ...{ kind: 'failed', turn },
    message: error instanceof Error ? error.message : String(error),
  };
  self.postMessage(told);
}
