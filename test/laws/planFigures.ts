/** Laws of whole plans: what every figure of every system is. */
import { draftOf, inUnits } from '../../src/forms/draftOf.ts';
import { rawOf } from '../../src/forms/rawOf.ts';
import { planOf } from '../../src/core/plan/planOf.ts';
import { toSystem } from '../../src/schemas/toSystem.ts';
import { workedOut } from '../core/workedOut.ts';
import { content } from '../demoSystems.ts';
import { atMost, equal, finite, near } from './claims.ts';
import type { PlanLaw } from './law.ts';

/** Every number in a record, however deep, with the way to it. */
function everyNumber(of: unknown, way: string, look: (value: number, way: string) => void): void {
  if (typeof of === 'number') look(of, way);
  else if (typeof of === 'object' && of !== null) {
    for (const [key, one] of Object.entries(of)) everyNumber(one, `${way}.${key}`, look);
  }
}

const counted = ['fish', 'spoons', 'weeks', 'months', 'plants', 'money', 'ratio', 'pH'];

/** Levels that are searched for: their steps end in the water below them. */
const searched = ['tankLow_mm', 'sumpLow_mm'];

/** Laws of figures. */
export const planFigureLaws: readonly PlanLaw[] = [
  {
    // Most of it is done before: the plan was worked out without a throw.
    name: 'every system that its checks let through has a plan',
    holds: ({ system, plan }) => equal(plan.systemId, system.id),
  },
  {
    name: 'no number anywhere in a plan is endless or none at all',
    holds: ({ plan }) => everyNumber(plan, 'plan', finite),
  },
  {
    name: 'a figure without a value says why',
    holds: ({ plan }) => {
      for (const figure of Object.values(plan.figures)) {
        if (figure.value === null) equal(figure.notes.length > 0, true, figure.key);
      }
    },
  },
  {
    name: 'a figure lies within its own range',
    holds: ({ plan }) => {
      for (const { key, value: of, low, high } of Object.values(plan.figures)) {
        if (of === null) continue;
        if (low !== undefined) atMost(low, of, key);
        if (high !== undefined) atMost(of, high, key);
      }
    },
  },
  {
    name: 'no figure is below nothing, but for temperatures',
    holds: ({ plan }) => {
      for (const { key, value: of, unit } of Object.values(plan.figures)) {
        if (unit !== 'degC' && of !== null) atMost(-1e-9, of, key);
      }
    },
  },
  {
    name: 'a figure bears its unit in its key, and a source for every step',
    holds: ({ plan }) => {
      for (const [key, figure] of Object.entries(plan.figures)) {
        equal(key, figure.key);
        if (!counted.includes(figure.unit)) equal(key.endsWith(`_${figure.unit}`), true, key);
        for (const { source } of figure.steps) equal(figure.sources.includes(source), true, key);
      }
    },
  },
  {
    name: 'the steps of a figure end in its value',
    holds: ({ plan }) => {
      for (const { key, value: of, steps } of Object.values(plan.figures)) {
        const last = steps.at(-1)?.gives;
        if (last === undefined || of === null || searched.includes(key)) continue;
        near(last.value, of, 1e-9 * Math.max(1, Math.abs(of)), key);
      }
    },
  },
  {
    name: 'a formula for the computer, worked out from its symbols, gives its result',
    holds: ({ plan }) => {
      for (const { key, steps } of Object.values(plan.figures)) {
        for (const step of steps) {
          // What a person can follow is read back from its printed line, in test/core/planSteps.test.ts.
          if (step.kind !== 'formula' || step.byHand === 'yes') continue;
          const { value: of } = step.gives;
          near(workedOut(step), of, 1e-8 * Math.abs(of) + 1e-9, `${key}: ${step.formula}`);
        }
      }
    },
  },
  {
    name: 'a plan comes out the same a second time, and leaves its system as it was',
    holds: ({ system, plan }) => {
      const before = structuredClone(system);
      equal(planOf(system), plan);
      equal(system, before);
    },
  },
  {
    name: 'a system opened in the form in US units and kept is the same system, and so has the same plan',
    holds: ({ system, raw }) => {
      // A system without beds is only the tank of the first day; no file says that.
      if (system.beds.length === 0) return;
      const again = toSystem(rawOf(inUnits(draftOf(raw), 'us')), content);
      if (!('system' in again)) throw new Error(JSON.stringify(again));
      equal(again.system, system);
    },
  },
];
