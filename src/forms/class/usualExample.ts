/** Which system a class is offered first to work through: one that shows all that worksheets ask for, in few steps. */
import { handoutFacts } from '../../core/plan/handoutFacts.ts';
import type { System } from '../../core/system.ts';

type Known = { readonly id: string; readonly system: System };

/** The one with the most figures that a pencil can follow; of several the one with the fewest steps. */
export function usualExample(systems: readonly Known[]): string {
  const [best] = systems
    .filter(({ system }) => system.beds.length === 1)
    .map(({ id, system }) => ({ id, ...worth(system) }))
    .sort((a, b) => b.figures - a.figures || a.steps - b.steps);
  return best?.id ?? systems[0]?.id ?? '';
}

function worth(system: System): { readonly figures: number; readonly steps: number } {
  const { asked } = handoutFacts(system, 'adults');
  const byHand = asked.filter(({ steps }) => steps.every((step) => step.byHand === 'yes'));
  return { figures: byHand.length, steps: byHand.flatMap(({ steps }) => steps).length };
}
