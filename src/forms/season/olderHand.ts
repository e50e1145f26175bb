/** A plan that an older page kept on the device, with what later pages ask of it. */
import { dateOf } from '../../core/calendar.ts';
import type { Sowing, TurnoverPlan } from '../../core/turnover/turnover.ts';
import { seasonWeeks } from '../../schemas/seasonWeeks.ts';
import type { Hand, KeptHand } from './hand.ts';
import type { Planned } from './seasonMessages.ts';

type Older = Omit<TurnoverPlan, 'wasSown' | 'sowings'> &
  Partial<Pick<TurnoverPlan, 'wasSown'>> & {
    readonly sowings: readonly (Omit<Sowing, 'ready_d'> & Partial<Pick<Sowing, 'ready_d'>>)[];
  };

export function broughtUp({ hand, before, ...kept }: KeptHand): KeptHand {
  return { ...kept, hand: upToDate(hand), before: before && { ...before, hand: upToDate(before.hand) } };
}

function upToDate({ planned, ...hand }: Hand): Hand {
  const { changed } = planned;
  const plan: Older = planned.plan;
  const sowings = plan.sowings.map((sowing) => ({ ...sowing, ready_d: sowing.ready_d ?? likely_d(sowing) }));
  return {
    ...hand,
    planned: {
      plan: { ...plan, wasSown: plan.wasSown ?? [], sowings },
      file: inWholeWeeks(planned),
      // It knew of no sowings that failed in part.
      changed: changed && { ...none, ...changed },
    },
  };
}

const none = { partly: [] };

/** What puts a picking off makes no crop ready later than it may be. */
function likely_d({ picks, readyFrom_d, readyTo_d }: Omit<Sowing, 'ready_d'>): number {
  return Math.min(picks[0]?.day_d ?? readyFrom_d, readyTo_d);
}

/** It took the whole weeks in which a season begins and ends: the weeks of its plan stay. */
function inWholeWeeks({ plan, file }: Planned): Planned['file'] {
  const { firstMonday_d, weeks } = plan.task;
  const now = seasonWeeks(file);
  if (now.firstMonday_d === firstMonday_d && now.weeks === weeks) return file;
  const season = { from: dateOf(firstMonday_d), to: dateOf(firstMonday_d + 7 * weeks - 1) };
  return { ...file, season };
}
