import type { System } from '../system.ts';

/** Somebody who gets a worksheet: a participant, or a team with all who belong to it. */
export type Person = {
  /** Where they stand in the roster. */
  readonly line: number;
  readonly name: string;
  readonly team: string;
  /** Of a team its members, in the order of the roster. */
  readonly members: readonly string[];
  readonly notes: string;
  /** The number of an exercise; null for containers of one's own. */
  readonly number: string | null;
  /** Containers of one's own as they can be typed to have the work checked; null for an exercise. */
  readonly typed: string | null;
  readonly system: System;
};
