/**
 * One person at the form: what is typed, the last good card, what is in its way. Every edit goes to the worker at
 * once; troubles that are new wait until the person pauses, so that half a number is not called wrong.
 */
import { problemSentence } from '../wording/problem.ts';
import { announcement } from './announcement.ts';
import type { Answers } from './answers.ts';
import { withSide, withSides } from './card.ts';
import { type Draft, unitsOf } from './draft.ts';
import { draftOf } from './draftOf.ts';
import { saveFile } from './saveFile.ts';
import type { FileKind, PlannerContent, Told } from './messages.ts';
import { pressRoom } from './pressRoom.ts';
import { rawOf } from './rawOf.ts';
import { type Kept, putAway } from './store.ts';
import { today } from './today.ts';
import { type Trouble, troubleOf, uncoveredTroubles } from './troubles.ts';
import type { View } from './view.ts';
import { planner } from './words.ts';

export type Session = {
  readonly view: () => View;
  readonly edit: (next: Draft) => void;
  /** Another draft in place of this one, which Undo brings back. */
  readonly replace: (next: Draft, told: string) => void;
  readonly undo: () => void;
  readonly open: (file: File) => Promise<void>;
  readonly download: (kind: FileKind) => Promise<void>;
  readonly tell: (told: string) => void;
  /** Saves what is still waiting: the page may be closed at any time. */
  readonly save: () => Promise<void>;
};

/** A pause this long ends a number; so long after a result it is announced; so long after an edit it is saved. */
const [pause_s, announce_s, save_s] = [0.6, 0.9, 0.4];

/** No card of ours comes near this; a larger file is not read at all. */
const mostBytes = 20_000_000;

export function startSession(content: PlannerContent, kept: Kept, changed: () => void): Session {
  const { catalogue } = content;
  const room = pressRoom(content, hear);
  let view: View = {
    ...kept,
    troubles: [],
    card: null,
    state: 'drawing',
    told: '',
    saving: 'saved',
    making: null,
  };
  let turn = 0;
  let answers: Answers | null = null;
  let edited_s = Number.NEGATIVE_INFINITY;
  const timers = { troubles: 0, announce: 0, save: 0 };
  draw();
  return { view: () => view, edit, replace, undo, open, download, tell, save };

  function set(next: Partial<View>): void {
    view = { ...view, ...next };
    changed();
  }

  function draw(): void {
    clearTimeout(timers.troubles);
    turn = room.draw({ raw: rawOf(view.now), day: today() });
  }

  function edit(next: Draft): void {
    edited_s = now_s();
    keep({ now: next });
  }

  function replace(next: Draft, told: string): void {
    edited_s = Number.NEGATIVE_INFINITY;
    keep({ now: next, before: view.now, told });
  }

  function undo(): void {
    if (view.before === null) return;
    edited_s = Number.NEGATIVE_INFINITY;
    keep({ now: view.before, before: null, told: planner(catalogue, 'told.undone') });
  }

  function keep(next: Partial<View>): void {
    set({ ...next, state: 'drawing', saving: 'soon' });
    draw();
    clearTimeout(timers.save);
    timers.save = after(save_s, save);
  }

  async function save(): Promise<void> {
    clearTimeout(timers.save);
    if (view.saving !== 'soon') return;
    const { now, before } = view;
    const saving = await putAway({ now, before }).then(
      () => 'saved' as const,
      () => 'refused' as const,
    );
    // Typed on meanwhile: the next save is already set.
    if (view.now === now) set({ saving });
  }

  function hear(told: Told): void {
    if (told.turn !== turn) return;
    if (told.kind === 'answers') answers = told.answers;
    else if (told.kind === 'side') side(told);
    else if (told.kind === 'drawn') drawn(told.sides);
    else inTheWay(troublesOf(told));
  }

  function troublesOf(told: Told): readonly Trouble[] {
    const units = unitsOf(view.now);
    if (told.kind === 'problems') return told.problems.map((one) => troubleOf(one, catalogue, units));
    if (told.kind === 'uncovered') return uncoveredTroubles(told.uncovered, view.now, catalogue);
    const message = told.kind === 'failed' ? told.message : told.kind;
    return [{ place: [], kind: 'wrong', sentence: planner(catalogue, 'problems.failed', { message }) }];
  }

  function side({ index, side }: Extract<Told, { readonly kind: 'side' }>): void {
    if (answers === null) return;
    clearTimeout(timers.troubles);
    set({ card: withSide(view.card, answers, index, side), troubles: [] });
  }

  function drawn(sides: number): void {
    if (view.card === null) return;
    set({ card: withSides(view.card, sides), state: 'current' });
    announce();
  }

  /** Troubles that are gone vanish at once, those already shown stay, new ones wait for a pause. */
  function inTheWay(found: readonly Trouble[]): void {
    const shown = new Set(view.troubles.map(({ place }) => place.join('.')));
    const still = found.filter(({ place }) => shown.has(place.join('.')));
    const wait_s = still.length === found.length ? 0 : edited_s + pause_s - now_s();
    set({ troubles: still });
    clearTimeout(timers.troubles);
    timers.troubles = after(Math.max(0, wait_s), () => {
      set({ troubles: found, state: 'stale' });
      announce();
    });
  }

  function announce(): void {
    clearTimeout(timers.announce);
    timers.announce = after(announce_s, () => tell(announcement(view, catalogue)));
  }

  function tell(told: string): void {
    set({ told });
  }

  async function open(file: File): Promise<void> {
    if (file.size > mostBytes) {
      const given = { given: String(file.size), max: mostBytes };
      refuse([problemSentence({ code: 'fileTooLarge', place: [], ...given }, catalogue)]);
      return;
    }
    const told = await room.open(new Uint8Array(await file.arrayBuffer()));
    if (told.kind === 'refused') refuse(told.problems.map((one) => problemSentence(one, catalogue)));
    else replace(draftOf(told.raw), planner(catalogue, 'told.opened', { name: told.raw.name }));
  }

  function refuse(sentences: readonly string[]): void {
    tell(planner(catalogue, 'told.refused', { sentences: sentences.join(' ') }));
  }

  async function download(kind: FileKind): Promise<void> {
    if (view.making !== null || view.state === 'stale') return;
    set({ making: kind });
    try {
      const made = await room.make({ raw: rawOf(view.now), day: today() }, kind);
      saveFile(made);
      set({ making: null, told: planner(catalogue, 'told.downloaded', { file: made.name }) });
    } catch (error) {
      const message = error instanceof Error ? error.message : String(error);
      set({ making: null, told: planner(catalogue, 'files.failed', { message }) });
    }
  }
}

function now_s(): number {
  return performance.now() / 1000;
}

function after(wait_s: number, run: () => void): number {
  return window.setTimeout(run, wait_s * 1000);
}
