/** The weeks of a season as day numbers. */
import type { TurnoverTask } from './turnover.ts';

const week_d = 7;

/**
 * The day of a week on which the person works.
 * @param task the season
 * @param week counted from the first of the season; may lie before it
 * @returns a day number
 * @valid every week
 * @source geometry
 * @example workday_d({ firstMonday_d: 4, workday: 5 }, 2) // 23
 */
export function workday_d(task: TurnoverTask, week: number): number {
  return task.firstMonday_d + week * week_d + task.workday;
}

/**
 * The first week whose workday is not before a day.
 * @param task the season
 * @param day_d a day number
 * @returns a week, below 0 before the season
 * @valid every day
 * @source geometry
 * @example weekFrom({ firstMonday_d: 4, workday: 5 }, 10) // 1
 */
export function weekFrom(task: TurnoverTask, day_d: number): number {
  return Math.ceil((day_d - task.firstMonday_d - task.workday) / week_d);
}

/**
 * Whether nobody is there.
 * @param task the season
 * @param week any week
 * @returns yes in a week of holidays
 * @valid every week
 * @source commonPractice
 */
export function isHoliday(task: TurnoverTask, week: number): boolean {
  return task.holidays.some(({ from_week, to_week }) => from_week <= week && week <= to_week);
}

/**
 * Weeks in which a place stays empty after its crop was lifted.
 * Whole weeks, as everything is done on one day of the week.
 * @param task the season
 * @returns 0 or more
 * @valid every rest
 * @source geometry
 * @example restWeeks({ rest_d: 8 }) // 2
 */
export function restWeeks(task: TurnoverTask): number {
  return Math.ceil(task.rest_d / week_d);
}

/**
 * The first week in which a place is free again.
 * @param task the season
 * @param to_week the week in which its crop is lifted
 * @returns a week of the season, or the one after its last
 * @valid every week of the season
 * @source geometry
 * @example free_week({ rest_d: 8, weeks: 20 }, 10) // 12
 */
export function free_week(task: TurnoverTask, to_week: number): number {
  return Math.min(task.weeks, to_week + restWeeks(task));
}

/**
 * The week in which a day lies.
 * @param task the season
 * @param day_d a day number
 * @returns a week, below 0 before the season
 * @valid every day
 * @source geometry
 * @example weekWith({ firstMonday_d: 4 }, 17) // 1
 */
export function weekWith(task: TurnoverTask, day_d: number): number {
  return Math.floor((day_d - task.firstMonday_d) / week_d);
}
