import type { System } from '../system.ts';

/** Somebody who belongs to a team that shares one worksheet. */
export type Member = { readonly line: number; readonly name: string; readonly notes: string };

/** Somebody who gets a worksheet: a participant, or a team with all who belong to it. */
export type Person = {
  /** Where they stand in the roster; of a team its first one. */
  readonly line: number;
  readonly name: string;
  readonly team: string;
  /** Of a team its members, in the order of the roster; of a participant nobody. */
  readonly members: readonly Member[];
  /** Of a participant; what is noted of a team is noted of its members. */
  readonly notes: string;
  /** The number of an exercise; null for containers of one's own. */
  readonly number: string | null;
  /** Containers of one's own as they can be typed to have the work checked; null for an exercise. */
  readonly typed: string | null;
  readonly system: System;
};
