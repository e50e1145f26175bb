/** The page's side of the worker. A plan that is still worked out when another is wanted is stopped with its worker. */
import type { MadeFile } from '../messages.ts';
import type { Hand } from './hand.ts';
import type { Planned, SeasonAsk, SeasonContent, SeasonFile, SeasonTold } from './seasonMessages.ts';

export type SeasonRoom = {
  readonly plan: (raw: unknown, day: string) => void;
  readonly again: (planned: Planned, change: unknown, day: string) => void;
  readonly show: (of: Pick<Hand, 'planned' | 'held'>, raw: unknown, day: string) => void;
  /** Stops what is worked out; what is shown stays. */
  readonly stop: () => void;
  readonly make: (planned: Planned, file: SeasonFile, day: string) => Promise<MadeFile>;
};

export function seasonRoom(content: SeasonContent, hear: (told: SeasonTold) => void): SeasonRoom {
  let turn = 0;
  /** Files are counted below zero, so that they are no plan's turn. */
  let made = 0;
  let busy: 'yes' | 'no' = 'no';
  let waiting: { readonly turn: number; readonly told: (told: SeasonTold) => void } | null = null;
  let worker = hired();

  function hired(): Worker {
    const fresh = new Worker(new URL('./season.worker.ts', import.meta.url), { type: 'module' });
    fresh.onmessage = ({ data }: MessageEvent<SeasonTold>) => {
      if (waiting?.turn === data.turn) waiting.told(data);
      else if (data.turn === turn) {
        if (data.kind !== 'shown') busy = 'no';
        hear(data);
      }
    };
    fresh.onerror = ({ message }) => hear({ kind: 'failed', turn, message });
    fresh.postMessage({ kind: 'start', content });
    return fresh;
  }

  function stop(): void {
    if (busy === 'no') return;
    worker.terminate();
    worker = hired();
    busy = 'no';
    turn += 1;
  }

  function ask(of: (turn: number) => SeasonAsk): void {
    stop();
    turn += 1;
    busy = 'yes';
    worker.postMessage(of(turn));
  }

  return {
    stop,
    plan: (raw, day) => ask((mine) => ({ kind: 'plan', turn: mine, raw, day })),
    again: (planned, change, day) => ask((mine) => ({ kind: 'again', turn: mine, planned, change, day })),
    show: (of, raw, day) => ask((mine) => ({ kind: 'show', turn: mine, ...of, raw, day })),
    make: (planned, file, day) => {
      made -= 1;
      const mine = made;
      return new Promise((resolve, refuse) => {
        waiting = {
          turn: mine,
          told: (told) => {
            waiting = null;
            if (told.kind === 'made') resolve(told.made);
            else refuse(new Error(told.kind === 'failed' ? told.message : told.kind));
          },
        };
        const asked: SeasonAsk = { kind: 'make', turn: mine, planned, file, day };
        worker.postMessage(asked);
      });
    },
  };
}
