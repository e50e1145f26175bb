import type { Sowing, TurnoverTask, WasSown } from './turnover.ts';

/** What planning again needs to know of a sowing. */
export type Sown = Pick<
  Sowing,
  | 'id'
  | 'crop'
  | 'bed'
  | 'sow_d'
  | 'plantOut_d'
  | 'ready_d'
  | 'readyFrom_d'
  | 'readyTo_d'
  | 'mayBolt'
  | 'strips'
> & { readonly picks: readonly Pick<Sowing['picks'][number], 'week' | 'day_d'>[] };

/** A plan that somebody works by, as far as it matters for planning again. */
export type SownPlan = {
  readonly task: TurnoverTask;
  readonly sowings: readonly Sown[];
  readonly wasSown: readonly WasSown[];
};
