/** A sound system as plain data, for tests that change one thing in it and read what is said about it. */
import type { Problem } from '../../src/core/problem.ts';
import { readContent } from '../../src/schemas/readContent.ts';
import { toSystem } from '../../src/schemas/toSystem.ts';
import { pathOf, problemSentence } from '../../src/wording/problem.ts';
import { english, realContent } from './contentFolder.ts';

export const { content } = await readContent(realContent);

export const box = { shape: 'box', length_mm: 1000, width_mm: 1000, depth_mm: 360 };
export const bed = {
  name: 'Bed',
  container: box,
  mode: 'siphon',
  media: 'coarseGravel',
  mediaDepth_mm: 330,
  waterLine_mm: 300,
  above_mm: 900,
};
export const tank = { container: { ...box, depth_mm: 800 }, full_mm: 700 };
export const pump = { flow_L_h: 900, intake_mm: 100 };
export const sound = { id: 'sound', name: 'Sound', tank, beds: [bed], pump };
export const basket = { ...bed, mode: 'inTank', waterLine_mm: undefined, above_mm: 400 };

export function problemsOf(raw: unknown): readonly Problem[] {
  const result = toSystem(raw, content);
  return 'problems' in result ? result.problems : [];
}

export function said(raw: unknown): readonly string[] {
  return problemsOf(raw).map((problem) => `${pathOf(problem.place)}: ${sentence(problem)}`);
}

function sentence(problem: Problem): string {
  return problemSentence(problem, english(content));
}

export const withBed = (change: object) => ({ ...sound, beds: [{ ...bed, ...change }] });
export const withTank = (change: object) => ({ ...sound, tank: { ...tank, ...change } });
export const withTankShape = (container: object) => withTank({ container, full_mm: 300 });
