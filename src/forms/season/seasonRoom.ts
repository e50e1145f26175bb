/**
 * The page's side of its workers. One draws, and shows a first draft before the other solves; whoever solves is stopped
 * with its worker, and another one stands ready at once.
 */
import { compiledSolver } from '../../solver/compiled.ts';
import { loaded } from '../loaded.ts';
import type { MadeFile } from '../messages.ts';
import { drawer, onTrouble } from './drawer.ts';
import type { Hand } from './hand.ts';
import type {
  Job,
  Planned,
  SeasonAsk,
  SeasonContent,
  SeasonFile,
  SeasonTold,
  SolvingAsk,
  SolvingTold,
} from './seasonMessages.ts';

export type SeasonRoom = {
  /** Who hears from now on what comes of it. */
  readonly listen: (hear: (told: SeasonTold) => void) => void;
  readonly plan: (raw: unknown, day: string) => void;
  readonly again: (planned: Planned, change: unknown, day: string) => void;
  readonly show: (of: Pick<Hand, 'planned' | 'held'>, raw: unknown, day: string) => void;
  /** Stops what is worked out; what is shown stays. */
  readonly stop: () => void;
  /** Somebody looks at this page of the calendar, from 0. */
  readonly look: (index: number) => void;
  readonly make: (planned: Planned, file: SeasonFile, day: string) => Promise<MadeFile>;
};

/** Seconds from asking to the last plan, the first draft included; and those that solving has in any case. */
const whole_s = 8.5;
const least_s = 3;

const now_s = () => performance.now() / 1000;

export function seasonRoom(content: SeasonContent): SeasonRoom {
  let hear: (told: SeasonTold) => void = () => undefined;
  let turn = 0;
  /** Files are counted below zero, so that they are no plan's turn. */
  let made = 0;
  /** drafting: something is shown before; `job` is what waits for it. */
  let state: 'idle' | 'drafting' | 'solving' | 'solved' = 'idle';
  let job: Job | null = null;
  /** Whether anything of this turn is on the screen. */
  let isShown: 'yes' | 'no' = 'no';
  let asked_s = 0;
  /** How many plans of this turn were handed to whoever draws, after the draft. */
  let plans = 0;
  let drawn = 0;
  let waiting: { readonly turn: number; readonly told: (told: SeasonTold) => void } | null = null;
  /** no: the solver is fetched once more when it is needed. */
  let didLoad: 'yes' | 'no' = 'yes';
  const theCode = loaded(compiledSolver);
  drawer.onmessage = ({ data }: MessageEvent<SeasonTold>) => {
    if (waiting?.turn === data.turn) waiting.told(data);
    else if (data.turn === turn) hearDrawer(data);
  };
  onTrouble(fail);
  askDrawer({ kind: 'start', content });
  /** Not before there is something to solve, or nothing else to do: the draft comes first. */
  let solver: Worker | null = null;

  function askDrawer(ask: SeasonAsk): void {
    drawer.postMessage(ask);
  }

  function askSolver(worker: Worker, ask: SolvingAsk): void {
    worker.postMessage(ask);
  }

  function hired(): Worker {
    const fresh = new Worker(new URL('./solving.worker.ts', import.meta.url), { type: 'module' });
    fresh.onmessage = ({ data }: MessageEvent<SolvingTold>) => {
      // One that was ended may have said something before.
      if (fresh === solver && data.turn === turn) hearSolver(data);
    };
    fresh.onerror = ({ message }) => fail(message);
    didLoad = 'yes';
    theCode().then(
      (compiled) => askSolver(fresh, { kind: 'start', compiled }),
      (error: unknown) => {
        didLoad = 'no';
        askSolver(fresh, { kind: 'fail', message: messageOf(error) });
      },
    );
    return fresh;
  }

  function hearDrawer(told: SeasonTold): void {
    if (told.kind === 'failed') {
      fail(told.message);
      return;
    }
    if (told.kind === 'shown') isShown = 'yes';
    if (told.kind === 'problems' || told.kind === 'done') state = 'idle';
    if (told.kind === 'job') job = told.job;
    else hear(told);
    if (told.kind === 'drawn') solver ??= hired();
    // Planning again has no draft to wait for.
    if (state === 'drafting' && (told.kind === 'shown' || job?.kind === 'rest')) solve();
    if (told.kind === 'drawn') {
      drawn = told.number;
      tellDone();
    }
  }

  /** Not before the draft is on the screen: on a small machine one would keep the other from it. */
  function solve(): void {
    if (job === null) return;
    if (didLoad === 'no') hireAnew();
    solver ??= hired();
    state = 'solving';
    const most_s = Math.max(least_s, asked_s + whole_s - now_s());
    askSolver(solver, { kind: 'solve', turn, job, most_s });
  }

  function hearSolver(told: SolvingTold): void {
    if (told.kind === 'failed') fail(told.message);
    else if (told.kind === 'solved') {
      plans += 1;
      askDrawer({ kind: 'draw', turn, number: plans, plan: told.plan });
    } else {
      state = 'solved';
      settle();
      tellDone();
    }
  }

  function tellDone(): void {
    if (state === 'solved' && drawn === plans) hear({ kind: 'done', turn });
  }

  function settle(): void {
    askDrawer({ kind: 'settled', turn });
  }

  function hireAnew(): void {
    solver?.terminate();
    solver = hired();
  }

  function fail(message: string): void {
    stop();
    hear({ kind: 'failed', turn, message });
  }

  /** What is on the screen is drawn to its end, so that all pages are of one plan; what is not there yet never comes. */
  function stop(): void {
    if (state === 'solving') {
      hireAnew();
      settle();
    }
    if (state !== 'idle' && isShown === 'no') turn += 1;
    state = 'idle';
  }

  function ask(of: (turn: number) => SeasonAsk): void {
    stop();
    turn += 1;
    state = 'drafting';
    asked_s = now_s();
    [job, isShown, plans, drawn] = [null, 'no', 0, 0];
    askDrawer(of(turn));
  }

  function make(planned: Planned, file: SeasonFile, day: string): Promise<MadeFile> {
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
      askDrawer({ kind: 'make', turn: mine, planned, file, day });
    });
  }

  return {
    ...{ stop, make },
    look: (index) => askDrawer({ kind: 'look', turn, index }),
    listen: (next) => {
      hear = next;
    },
    plan: (raw, day) => ask((mine) => ({ kind: 'plan', turn: mine, raw, day })),
    again: (planned, change, day) => ask((mine) => ({ kind: 'again', turn: mine, planned, change, day })),
    show: (of, raw, day) => ask((mine) => ({ kind: 'show', turn: mine, ...of, raw, day })),
  };
}

function messageOf(error: unknown): string {
  return error instanceof Error ? error.message : String(error);
}
