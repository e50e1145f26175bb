/** What the crops page shows of one person's season, and what they can do with it. */
import type { Trouble } from '../troubles.ts';
import type { Aside, Hand } from './hand.ts';
import type { SeasonDraft } from './seasonDraft.ts';
import type { SeasonFile, SeasonShown } from './seasonMessages.ts';

export type SeasonView = {
  readonly draft: SeasonDraft;
  readonly troubles: readonly Trouble[];
  /** What the worker could not do, in its own words; empty where it could. */
  readonly failure: string;
  readonly hand: Hand | null;
  readonly before: Aside | null;
  readonly shown: SeasonShown | null;
  /** `apart`: the plan is kept to, and the form says something else by now. `halted`: stopped before there was a plan. */
  readonly state: 'working' | 'again' | 'current' | 'stopped' | 'halted' | 'stale' | 'apart';
  readonly making: SeasonFile | null;
};

export type SeasonDesk = {
  readonly view: () => SeasonView;
  readonly change: (next: SeasonDraft) => void;
  /** A shared season in place of this one. */
  readonly open: (id: string) => void;
  readonly stop: () => void;
  /** This page of the calendar is on the screen, from 0. */
  readonly look: (index: number) => void;
  /** From now on typing does not replace the plan. */
  readonly hold: () => void;
  readonly planWhole: () => void;
  readonly planAgain: () => void;
  /** What the last larger step put aside; what is there now is put aside in its turn. */
  readonly back: () => void;
  readonly download: (file: SeasonFile) => void;
};
