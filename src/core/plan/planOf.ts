/** A System in, a Plan out. */
import type { System } from '../system.ts';
import { aheadPlan } from './aheadPlan.ts';
import { type BedPlan, bedPlans } from './beds.ts';
import { feedFigures, weighingTables } from './feedPlan.ts';
import type { Figure, Plan } from './figure.ts';
import { fishFigures } from './fishPlan.ts';
import { flowPlan } from './flowPlan.ts';
import { type Levels, levels } from './levels.ts';
import { section } from './section.ts';
import { solidsFigures } from './solidsPlan.ts';
import { waterKeeping } from './waterKeeping.ts';
import { waterFigures } from './waterPlan.ts';
import { weightFigures } from './weightPlan.ts';
import { byHand, figure, quantity } from './write.ts';

/**
 * The whole plan of a system: every figure with its steps and sources, the tables, the section to draw.
 * Beds first, then the levels they leave, then the fish that both allow, then feed and water, then water keeping,
 * then water moving, solids and weight, then what comes next.
 * @param system a system that `schemas` has checked
 * @returns a Plan; a figure that does not exist here has the value null and a note that says why
 * @valid what each figure's own function says
 * @source see the figures
 */
export function planOf(system: System): Plan {
  const { beds, at, figures } = standingPlan(system);
  const first = [...figures, ...feedFigures(system), ...waterFigures(system, at.systemWater_L)];
  const flow = flowPlan(system, beds, at);
  const keeping = waterKeeping(system, beds, at, first, flow.flow_L_h);
  const feed_g_d = first.find((one) => one.key === 'feed_g_d')?.value ?? null;
  const now = [
    ...first,
    ...keeping.figures,
    ...flow.figures,
    ...solidsFigures(system, feed_g_d, flow.flow_L_h, at.systemWater_L),
    ...weightFigures(system),
  ];
  const ahead = aheadPlan(system, beds, at, now);
  return {
    systemId: system.id,
    figures: byKey([...now, ...ahead.figures]),
    tables: [...weighingTables(system), ...keeping.tables, ...ahead.tables],
    traces: flow.traces,
    section: section(system, beds, at),
  };
}

/** What a plan begins with, before anything moves or is fed. */
export type StandingPlan = {
  readonly beds: readonly BedPlan[];
  readonly at: Levels;
  readonly figures: readonly Figure[];
};

/**
 * The beginning of a plan: beds, the levels they leave, and the fish that both allow.
 * As in the whole plan.
 * @param system a system that `schemas` has checked
 * @returns the first figures of the plan, and what the others go on from
 * @valid what each figure's own function says
 * @source see the figures
 */
export function standingPlan(system: System): StandingPlan {
  const beds = bedPlans(system);
  const wetMedia_L = beds.reduce((total, bed) => total + bed.wetMedia_L, 0);
  const at = levels(system, beds);
  const figures = [
    ...beds.flatMap((bed) => bed.figures),
    ...wetMediaFigures(wetMedia_L, beds),
    ...at.figures,
    ...fishFigures(system, wetMedia_L, at),
  ];
  return { beds, at, figures };
}

/** The wet media of all beds together. */
function wetMediaFigures(wetMedia_L: number, beds: readonly BedPlan[]): readonly Figure[] {
  if (beds.length === 0) return [];
  const symbols = beds.map((bed) => quantity(`W${bed.number}`, 'wetMedia', bed.wetMedia_L, 'L'));
  const sum = symbols.map((symbol) => symbol.sign).join(' + ');
  return [
    figure({
      key: 'wetMedia_L',
      value: wetMedia_L,
      unit: 'L',
      safeSide: 'down',
      confidence: 'measured',
      steps: [byHand(quantity('W', 'allWetMedia', wetMedia_L, 'L'), sum, symbols, 'geometry')],
    }),
  ];
}

function byKey(figures: readonly Figure[]): Readonly<Record<string, Figure>> {
  const found: Record<string, Figure> = {};
  for (const one of figures) {
    if (found[one.key] !== undefined) throw new RangeError(`two figures with the key ${one.key}`);
    found[one.key] = one;
  }
  return found;
}
