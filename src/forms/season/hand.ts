/** The plan that the page shows, with the form that it came of, and what was there before it. */
import { type SeasonDraft, wishedBy } from './seasonDraft.ts';
import type { Planned } from './seasonMessages.ts';

export type Hand = {
  readonly planned: Planned;
  readonly draft: SeasonDraft;
  /** A plan that somebody works by is not replaced by typing. */
  readonly held: 'yes' | 'no';
  /** Whether it was worked out to the end. */
  readonly worked: 'whole' | 'stopped';
};

/** What a larger step put aside, to go back to: the plan, and the form as it was typed by then. */
export type Aside = { readonly hand: Hand; readonly typed: SeasonDraft };

/** As it is kept on the device. */
export type KeptHand = {
  /** Raised when an older page could no longer read what a newer one keeps. */
  readonly version: 1;
  readonly hand: Hand;
  readonly before: Aside | null;
};

/** Whether the plan is still what the form asks for. */
export function isOf({ draft }: Hand, typed: SeasonDraft): boolean {
  return wishedBy(draft) === wishedBy(typed);
}
