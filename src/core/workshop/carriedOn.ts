/** What the steps of a worksheet come to for somebody who goes on with the numbers that they wrote themselves. */
import type { Asked, AskedStep } from './askedSteps.ts';
import { workedValue } from './workedValue.ts';

/**
 * The name of a step on its worksheet.
 * The figure's key and the number of the step in it.
 * @param key of the figure
 * @param step one of its steps
 * @returns such as bed1.wetMedia_L-1
 * @valid steps of one worksheet
 * @source see the figures
 */
export function stepName(key: string, step: Pick<AskedStep, 'number'>): string {
  return `${key}-${step.number}`;
}

/**
 * The steps whose results go into a step.
 * As the step says where its numbers come from.
 * @param step a step of a worksheet
 * @returns their names
 * @valid steps of one worksheet
 * @source see the figures
 */
export function stepsBefore(step: AskedStep): readonly string[] {
  return Object.values(step.from).flatMap((from) => (from.is === 'result' ? [stepName(from.key, from)] : []));
}

/**
 * What each step comes to from what was written for the steps before it; where nothing was written, from what those
 * come to in their turn. What is given, or looked up, stays as it is.
 * @param asked all that a worksheet asks for
 * @param written numbers by the names of their steps, in the units of the sheet
 * @returns a value for every step, by its name
 * @valid any numbers
 * @source see the figures
 */
export function carriedOn(
  asked: readonly Asked[],
  written: ReadonlyMap<string, number>,
): ReadonlyMap<string, number> {
  const carried = new Map<string, number>();
  for (const { key, steps } of asked)
    for (const step of steps) carried.set(stepName(key, step), resultOf(step, written, carried));
  return carried;
}

function resultOf(
  step: AskedStep,
  written: ReadonlyMap<string, number>,
  carried: ReadonlyMap<string, number>,
): number {
  if (step.way !== 'worked') return step.gives.value;
  const values = step.symbols.map(({ sign, value }): readonly [string, number] => {
    const from = step.from[sign];
    if (from?.is !== 'result') return [sign, value];
    const before = stepName(from.key, from);
    return [sign, written.get(before) ?? carried.get(before) ?? value];
  });
  return workedValue(step.formula, Object.fromEntries(values));
}
