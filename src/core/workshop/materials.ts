/** What has to lie ready before a workshop begins. */
import type { Level } from './exercise.ts';

export type Material = { readonly key: string; readonly count: number };

/** How many people share one; a number below one means more than one each. */
const shared: Readonly<
  Record<Level, Readonly<Record<string, { readonly by: 'person' | 'team'; readonly each: number }>>>
> = {
  primary: {
    pencil: { by: 'person', each: 1 },
    tape: { by: 'team', each: 1 },
    container: { by: 'team', each: 1 },
    towel: { by: 'team', each: 1 },
  },
  secondary: {
    pencil: { by: 'person', each: 1 },
    tape: { by: 'team', each: 1 },
    calculator: { by: 'team', each: 1 },
    container: { by: 'team', each: 2 },
    towel: { by: 'team', each: 1 },
  },
  adults: {
    pencil: { by: 'person', each: 1 },
    tape: { by: 'team', each: 1 },
    calculator: { by: 'team', each: 1 },
    container: { by: 'team', each: 2 },
    bucket: { by: 'team', each: 0.5 },
  },
};

/**
 * Materials with their counts.
 * So many for each person or team, rounded up.
 * @param level for whom
 * @param people everybody in the roster
 * @param teams tables to work at: teams, and people in none
 * @returns what to lay ready; paper is counted elsewhere
 * @valid classes of any size
 * @source commonPractice
 * @example materials('primary', 24, 8).length // 4
 */
export function materials(level: Level, people: number, teams: number): readonly Material[] {
  return Object.entries(shared[level]).map(([key, { by, each }]) => ({
    key,
    count: Math.ceil((by === 'person' ? people : teams) * each),
  }));
}
