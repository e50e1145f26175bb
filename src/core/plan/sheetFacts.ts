/** All that the core says about a system on paper. */
import { type CareTask, careFor } from '../care/routine.ts';
import type { System } from '../system.ts';
import { dipMarks } from './dipPlan.ts';
import type { BedTemplate, Plan, Table } from './figure.ts';
import { bedTemplates } from './plantingTemplate.ts';
import { planOf } from './planOf.ts';

export type SheetFacts = {
  readonly system: System;
  readonly plan: Plan;
  /** Marks of a dip strip: by kind, volume and height. */
  readonly dip: Table;
  /** Of the beds whose form from above is known. */
  readonly templates: readonly BedTemplate[];
  /** The tasks of the care routine that fit this system. */
  readonly care: readonly CareTask[];
};

/**
 * The plan, and what only sheets need beside it.
 * @param system a checked system
 * @param routine the whole care routine
 * @returns what every sheet is made from
 * @valid what planOf says
 * @source see the figures
 */
export function sheetFacts(system: System, routine: readonly CareTask[]): SheetFacts {
  return {
    system,
    plan: planOf(system),
    dip: dipMarks(system),
    templates: bedTemplates(system),
    care: careFor(system, routine),
  };
}
