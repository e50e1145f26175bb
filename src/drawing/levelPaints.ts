/** Every kind of water line has a pattern of its own, so that a photocopy still tells them apart. */
import type { SectionLevel } from '../core/plan/figure.ts';
import type { LevelPaint } from './sectionShapes.ts';
import type { Paint } from './shape.ts';

const patterns: Readonly<Record<SectionLevel['key'], Paint>> = {
  full: { stroke: 'black', width: 5 },
  low: { stroke: 'black', width: 5, dash: [22, 12] },
  powerCut: { stroke: 'black', width: 4, dash: [26, 8, 4, 8] },
  blocked: { stroke: 'black', width: 5, dash: [5, 9] },
  waterLine: { stroke: 'black', width: 5, dash: [14, 6] },
  drained: { stroke: 'black', width: 4, dash: [10, 16] },
};

/** How a water line is drawn where all of them are. */
export const patternOf: LevelPaint = ({ key }) => patterns[key];

/** A piece of the pattern, for a list that says what it means. */
export function patternPaint(key: SectionLevel['key']): Paint {
  return patterns[key];
}
