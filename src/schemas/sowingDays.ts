/** Days and weeks of a kept sowing. They tell the same in two ways: whoever puts one of them right has to put right both. */
import { dateOf, dayNumber_d } from '../core/calendar.ts';
import type { Problem } from '../core/problem.ts';
import type { TurnoverTask } from '../core/turnover/turnover.ts';
import { weekWith, workday_d } from '../core/turnover/weeks.ts';
import type { SowingFile } from './planFile.ts';

/** What of the days of a sowing does not go together, with its weeks or with the season. */
export function sowingDays(sowing: SowingFile, task: TurnoverTask): readonly Problem[] {
  const { sown, planted, readyFrom, readyTo, strips, picks } = sowing;
  const week = weekWith(task, dayNumber_d(sown));
  const weeks = [...new Set(strips.map(({ from_week }) => from_week))];
  // What is sown into a bed may have waited for its place, but stands nowhere before it is sown.
  const planting = planted === undefined ? weeks.filter((from_week) => from_week < week) : weeks;
  return [
    ...(0 <= week && week < task.weeks
      ? []
      : [{ code: 'outsideSeason' as const, place: ['sown'], given: sown }]),
    ...inOrder('planted', sown, planted ?? sown),
    ...inOrder('readyTo', readyFrom, readyTo),
    ...planting.flatMap((from_week) =>
      planted === undefined
        ? inWeek(task, from_week, sown, ['sown'])
        : inWeek(task, from_week, planted, ['planted']),
    ),
    ...picks.flatMap((pick, at) => inWeek(task, pick.week, pick.on, ['picks', at, 'on'])),
  ];
}

function inOrder(key: string, first: string, last: string): readonly Problem[] {
  return first <= last ? [] : [{ code: 'dayOrder', place: [key], given: last, other: first }];
}

function inWeek(task: TurnoverTask, week: number, on: string, place: Problem['place']): readonly Problem[] {
  if (weekWith(task, dayNumber_d(on)) === week) return [];
  return [{ code: 'planWeek', place, given: on, other: dateOf(workday_d(task, week)) }];
}
