/** One person at the crops page: what is typed, the plan in hand, what is in its way, and what was there before. */
import type { Problem } from '../../core/problem.ts';
import { unitsOf } from '../draft.ts';
import { saveFile } from '../saveFile.ts';
import { today } from '../today.ts';
import { troubleOf } from '../troubles.ts';
import { type Aside, type Hand, isOf, type KeptHand } from './hand.ts';
import {
  changeOf,
  draftOf,
  hasOthers,
  rawOf,
  type SeasonDraft,
  withChangeOf,
  withoutChange,
  withWishes,
} from './seasonDraft.ts';
import type { SeasonContent, SeasonFile, SeasonTold, Told } from './seasonMessages.ts';
import { withFirstPage, withPage } from './shownPages.ts';
import type { SeasonRoom } from './seasonRoom.ts';
import { keepHand, keepSeason } from './seasonStore.ts';
import type { SeasonDesk, SeasonView } from './seasonView.ts';

/** Milliseconds after the last key: typing goes on while nobody waits for a plan. */
const pause = 500;

/** What comes from the worker: a plan of which form, whether somebody works by it, and whether any of it came yet. */
type Coming = Pick<Hand, 'draft' | 'held'> & {
  readonly as: 'new' | 'known';
  readonly came: 'yes' | 'no';
};

export function startDesk(
  content: SeasonContent,
  room: SeasonRoom,
  { draft: first, kept }: { readonly draft: SeasonDraft; readonly kept: KeptHand | null },
  changed: () => void,
): SeasonDesk {
  let view: SeasonView = {
    ...{ draft: first, hand: kept?.hand ?? null, before: kept?.before ?? null },
    ...{ troubles: [], failure: '', shown: null, state: 'working', making: null },
  };
  let coming: Coming = { draft: first, held: 'no', as: 'new', came: 'no' };
  /** Where planning again began: all of it comes back where that fails. */
  let origin: SeasonView | null = null;
  let timer: ReturnType<typeof setTimeout> | undefined;
  room.listen(hear);
  work();
  const { look } = room;
  return { view: () => view, change, open, stop, look, hold, planWhole, planAgain, back, download };

  function set(next: Partial<SeasonView>): void {
    view = { ...view, ...next };
    changed();
  }

  function type(draft: SeasonDraft): void {
    keepSeason(draft).catch(() => undefined);
    set({ draft });
  }

  function change(next: SeasonDraft): void {
    const isSame = JSON.stringify(rawOf(next)) === JSON.stringify(rawOf(view.draft));
    type(next);
    if (isSame || origin !== null) return;
    set({ state: 'working', failure: '' });
    clearTimeout(timer);
    timer = setTimeout(work, pause);
  }

  /** A plan that is kept to, or that is of this very form, is only shown. */
  function work(): void {
    const { hand, draft } = view;
    if (hand !== null && (hand.held === 'yes' || isOf(hand, draft))) show(hand);
    else plan();
  }

  function waitNoMore(): void {
    clearTimeout(timer);
    timer = undefined;
  }

  function show({ planned, draft, held }: Hand): void {
    coming = { draft, held, as: 'known', came: 'no' };
    waitNoMore();
    room.show({ planned, held }, rawOf(view.draft), today());
  }

  function plan(): void {
    coming = { draft: view.draft, held: 'no', as: 'new', came: 'no' };
    waitNoMore();
    room.plan(rawOf(view.draft), today());
  }

  function aside(): Aside | null {
    return view.hand && { hand: view.hand, typed: view.draft };
  }

  function open(id: string): void {
    const file = Object.hasOwn(content.seasons, id) ? content.seasons[id] : undefined;
    if (file) replace(draftOf(file));
  }

  function planWhole(): void {
    replace(view.draft);
  }

  function replace(draft: SeasonDraft): void {
    origin = null;
    const hand = view.hand && { ...view.hand, held: 'no' as const };
    set({ before: aside() ?? view.before, hand, state: 'working', troubles: [], failure: '' });
    type(draft);
    plan();
  }

  function planAgain(): void {
    const { hand } = view;
    if (hand === null) return;
    waitNoMore();
    origin = view;
    coming = { draft: hand.draft, held: 'yes', as: 'new', came: 'no' };
    set({ state: 'again', troubles: [], failure: '' });
    const sowings = hand.planned.plan.sowings.map(({ id }) => id);
    room.again(hand.planned, changeOf(view.draft, today(), sowings), today());
  }

  function hear(told: SeasonTold): void {
    if (told.kind === 'shown') taken(told);
    if (told.kind === 'side' || told.kind === 'drawn') drawn(told);
    if (told.kind === 'done') done('whole');
    if (told.kind === 'problems') inTheWay(told.problems);
    if (told.kind === 'failed') inTheWay([], told.message);
  }

  function taken({ shown, side, planned }: Told<'shown'>): void {
    if (origin !== null && coming.came === 'no') {
      set({ before: aside() });
      const { wishes } = planned.file;
      const wanted = (of: SeasonDraft) => (hasOthers(view.draft) ? withWishes(of, wishes) : of);
      coming = { ...coming, draft: wanted(coming.draft) };
      type(withoutChange(wanted(view.draft)));
    }
    // A draft begins a new plan, also where one that was known was to be shown.
    if (shown.stages.length === 0) coming = { ...coming, as: 'new' };
    const { draft, held } = coming;
    const worked = coming.as === 'known' ? (view.hand?.worked ?? 'whole') : 'stopped';
    coming = { ...coming, came: 'yes' };
    set({
      shown: withFirstPage(shown, side, view.shown),
      hand: { planned, draft, held, worked },
      troubles: [],
    });
  }

  function drawn(told: Told<'side' | 'drawn'>): void {
    const { shown, state } = view;
    if (shown === null) return;
    set({ shown: withPage(shown, told) });
    // The last plan before it was stopped may still have been drawn.
    if (told.kind === 'drawn' && state === 'stopped') keep();
  }

  function done(worked: Hand['worked']): void {
    const { hand } = view;
    const wasAgain = origin !== null;
    origin = null;
    if (hand === null) return;
    const next = coming.as === 'known' ? hand : { ...hand, worked };
    set({ hand: next, state: timer === undefined ? stateOf(next) : 'working' });
    keep();
    // What was typed meanwhile, or stood in the way before, is looked at now.
    if (wasAgain) work();
  }

  function stateOf(hand: Hand): SeasonView['state'] {
    if (!isOf(hand, view.draft)) return 'apart';
    return hand.worked === 'whole' ? 'current' : 'stopped';
  }

  function keep(): void {
    const { hand, before } = view;
    if (hand) keepHand({ version: 1, hand, before }).catch(() => undefined);
  }

  /** Of planning again nothing is kept that did not come to its end: the plan from before is there as it was. */
  function inTheWay(problems: readonly Problem[], failure = ''): void {
    const units = unitsOf(view.draft);
    const troubles = problems.map((one) => troubleOf(one, content.catalogue, units));
    if (origin === null) set({ troubles, failure, state: 'stale' });
    else restore(origin, { troubles, failure });
  }

  function restore(was: SeasonView, more: Pick<SeasonView, 'troubles' | 'failure'>): void {
    const typed = coming.came === 'yes' ? withChangeOf(view.draft, was.draft) : view.draft;
    const ofForm = was.troubles.filter(({ place }) => place[0] !== 'again');
    origin = null;
    set({ ...was, ...more, troubles: [...ofForm, ...more.troubles] });
    type(typed);
  }

  function stop(): void {
    room.stop();
    if (coming.came === 'yes') done('stopped');
    else if (origin !== null) inTheWay([]);
    else set({ state: 'halted' });
  }

  function hold(): void {
    if (view.hand === null) return;
    set({ hand: { ...view.hand, held: 'yes' } });
    keep();
  }

  function back(): void {
    const { before } = view;
    if (before === null) return;
    origin = null;
    set({ hand: before.hand, before: aside(), state: 'working', troubles: [], failure: '' });
    type(before.typed);
    keep();
    work();
  }

  function download(file: SeasonFile): void {
    if (view.hand === null) return;
    set({ making: file });
    room
      .make(view.hand.planned, file, today())
      .then(saveFile)
      .catch((error: unknown) => {
        set({ failure: error instanceof Error ? error.message : String(error) });
      })
      .finally(() => set({ making: null }));
  }
}
