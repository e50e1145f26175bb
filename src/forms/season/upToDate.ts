/** A plan that an older page kept on the device, with what newer ones know beside it. */
import { dayNumber_d } from '../../core/calendar.ts';
import type { Sowing, TurnoverPlan } from '../../core/turnover/turnover.ts';
import type { Hand, KeptHand } from './hand.ts';

/** What a kept plan may lack; all else has always been there. */
type Lacking<Whole, Key extends keyof Whole> = Omit<Whole, Key> & Partial<Pick<Whole, Key>>;
type OldPlan = Omit<Lacking<TurnoverPlan, 'wasSown'>, 'sowings'> & {
  readonly sowings: readonly Lacking<Sowing, 'ready_d'>[];
};

/** The same hand, which every part of the page can work with. */
export function upToDate({ hand, before, ...kept }: KeptHand): KeptHand {
  return { ...kept, hand: ofHand(hand), before: before && { ...before, hand: ofHand(before.hand) } };
}

function ofHand({ planned, ...hand }: Hand): Hand {
  const { plan, changed, ...rest } = planned;
  return { ...hand, planned: { ...rest, plan: ofPlan(plan), changed: changed && { ...none, ...changed } } };
}

/** No sowing had failed in part. */
const none = { partly: [] };

function ofPlan({ sowings, ...plan }: OldPlan): TurnoverPlan {
  return {
    ...{ ...plan, wasSown: plan.wasSown ?? [] },
    sowings: sowings.map((one) => ({ ...one, ready_d: one.ready_d ?? dayNumber_d(one.first.date) })),
  };
}
