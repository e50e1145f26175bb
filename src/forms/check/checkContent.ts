import type { PeopleFacts } from '../../schemas/people.ts';
import type { Catalogue } from '../../wording/catalogue.ts';
import type { Terms } from '../../wording/step.ts';

/** What the page brings along: the words, and what an exercise is made from. */
export type CheckContent = {
  readonly catalogue: Catalogue;
  readonly terms: Terms;
  readonly facts: PeopleFacts;
};
