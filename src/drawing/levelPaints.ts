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

/** Only lines that have a label are drawn, and those of the beds: a line that nobody names says nothing. */
export function patternsFor(labels: Readonly<Record<string, number>>): LevelPaint {
  const named = new Set(['waterLine', ...Object.keys(labels).map((key) => key.split('.').at(-1))]);
  return ({ key }) => (named.has(key) ? patterns[key] : null);
}

/** A piece of the pattern, for a list that says what it means. */
export function patternPaint(key: SectionLevel['key']): Paint {
  return patterns[key];
}
