/** Plans to take home: the page is laid out once for all whose plans have the same figures, and filled for each of them. */
import type { JSXNode } from 'satori/jsx';
import { mm, pointsPerUnit } from '../../paper/measures.ts';
import { overflows } from '../../paper/overflows.ts';
import type { Page } from '../../paper/page.ts';
import type { Press } from '../../paper/press.ts';
import type { Filled } from '../../paper/stencil.ts';
import type { HandoutInput } from './handout.ts';
import { numberText, whoseSample } from './handoutTasks.ts';
import { pictureSheet, placeholder, planDrawing } from './planDrawing.tsx';
import { type Planned, planPage, warningSlot } from './planPage.tsx';
import { plannedSample, plannedTables } from './plannedRows.ts';
import { planWarnings } from './planWarnings.ts';
import { type LayoutShelf, sharedLayouts } from './sharedLayouts.ts';

/** A plan to take home is always one page. */
export const planPages = 1;

/** Gives the page of somebody's plan. */
export type PlanDesk = (input: HandoutInput) => Promise<readonly Filled[]>;

/** From large to small, so that long names, many beds and warnings find room. */
const drawings = [68, 54, 40, 30].map(mm);

/** Only the drawing is laid out for everybody. */
export function planDesk(
  press: Pick<Press, 'layOutAnew' | 'stencilOf' | 'fill' | 'asLaidOut'>,
  shelf: LayoutShelf | null = null,
): PlanDesk {
  const shared = sharedLayouts(press, shelf);
  const laidOut = async (
    input: HandoutInput,
    planned: Planned,
    drawing: (height: number) => JSXNode,
  ): Promise<readonly Page[]> => {
    let best: { readonly page: Page; readonly cut: number } | null = null;
    for (const inside of [...drawings.map((height) => () => drawing(height)), () => null]) {
      const page = await press.layOutAnew(planPage(input, planned, inside()));
      const cut = overflows(page).length;
      if (best === null || cut < best.cut) best = { page, cut };
      if (cut === 0) break;
    }
    return best === null ? [] : [best.page];
  };
  return async (input) => {
    const plan = input.wholePlan();
    const planned = { tables: plannedTables(input, plan), warnings: planWarnings(input, plan) };
    return shared({
      shape: shapeOf(input, planned),
      sample: (lines) =>
        laidOut(whoseSample(input, lines), plannedBySample(planned), (height) => placeholder(input, height)),
      values: valuesOf(input, planned),
      pictures: {
        drawing: ({ height_pt }) =>
          press.layOutAnew(pictureSheet({ input, plan, height: height_pt / pointsPerUnit })),
      },
      own: () => laidOut(input, planned, (height) => planDrawing({ input, plan, height })),
    });
  };
}

function shapeOf({ session, paper, units, shared }: HandoutInput, planned: Planned): string {
  return JSON.stringify(['plan', session, paper, units, shared, plannedBySample(planned)]);
}

function plannedBySample({ tables, warnings }: Planned): Planned {
  return {
    tables: tables.map(plannedSample),
    warnings: warnings.map((text) => text.replace(/\d/g, '0')),
  };
}

function valuesOf(input: HandoutInput, { tables, warnings }: Planned): Readonly<Record<string, string>> {
  const figures = tables.flatMap(({ rows }) => rows.flatMap(({ values }) => values));
  return {
    ...{ name: input.name, team: input.team, number: numberText(input) },
    ...Object.fromEntries(figures.map(({ slot, text }) => [slot, text])),
    ...Object.fromEntries(warnings.map((text, at) => [warningSlot(at), text])),
  };
}
