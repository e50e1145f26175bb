/** Everything that the page shows, as one piece of data. */
import type { Card } from './card.ts';
import type { FileKind } from './messages.ts';
import type { Kept } from './store.ts';
import type { Trouble } from './troubles.ts';

export type View = Kept & {
  readonly troubles: readonly Trouble[];
  readonly card: Card | null;
  /** drawing: the card of the latest edit is under way. stale: it cannot be worked out; an older one is shown. */
  readonly state: 'drawing' | 'current' | 'stale';
  /** Said to those who hear the page, and shown. */
  readonly told: string;
  readonly saving: 'saved' | 'soon' | 'refused';
  readonly making: FileKind | null;
};
