/** The page's side of the worker: hands it the latest edit, takes back what it tells, and waits for files. */
import type { Ask, FileKind, Job, MadeFile, PlannerContent, Told } from './messages.ts';

export type PressRoom = {
  /** Draws this one; what is still being drawn is dropped. Returns the turn that its answers bear. */
  readonly draw: (job: Job) => number;
  readonly make: (job: Job, file: FileKind) => Promise<MadeFile>;
  readonly open: (bytes: Uint8Array) => Promise<Extract<Told, { readonly kind: 'opened' | 'refused' }>>;
};

export function pressRoom(content: PlannerContent, hear: (told: Told) => void): PressRoom {
  const worker = new Worker(new URL('./press.worker.ts', import.meta.url), { type: 'module' });
  const waiting = new Map<number, (told: Told) => void>();
  let turn = 0;
  /** The turn of the latest drawing. */
  let drawn = 0;
  const ask = (message: Ask) => worker.postMessage(message);
  const asked = (make: (turn: number) => Ask): Promise<Told> => {
    turn += 1;
    const mine = turn;
    return new Promise((resolve) => {
      waiting.set(mine, resolve);
      ask(make(mine));
    });
  };
  worker.onmessage = ({ data }: MessageEvent<Told>) => {
    const answer = waiting.get(data.turn);
    waiting.delete(data.turn);
    if (answer) answer(data);
    else hear(data);
  };
  worker.onerror = ({ message }) => {
    for (const [asked, answer] of waiting) answer({ kind: 'failed', turn: asked, message });
    waiting.clear();
    hear({ kind: 'failed', turn: drawn, message });
  };
  ask({ kind: 'start', content });
  return {
    draw: (job) => {
      turn += 1;
      drawn = turn;
      ask({ kind: 'draw', turn, ...job });
      return turn;
    },
    make: async (job, file) => {
      const told = await asked((mine) => ({ kind: 'make', turn: mine, file, ...job }));
      if (told.kind === 'made') return told.made;
      throw new Error(told.kind === 'failed' ? told.message : told.kind);
    },
    open: async (bytes) => {
      const told = await asked((mine) => ({ kind: 'open', turn: mine, bytes }));
      if (told.kind === 'opened' || told.kind === 'refused') return told;
      return { kind: 'refused', turn: told.turn, problems: [{ code: 'notRecord', place: [] }] };
    },
  };
}
