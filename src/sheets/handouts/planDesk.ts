/** Plans to take home: the page is laid out once for all whose plans have the same figures, and filled for each of them. */
import type { JSXNode } from 'satori/jsx';
import type { Plan } from '../../core/plan/figure.ts';
import { extentOf } from '../../drawing/fit.ts';
import { mm, pointsPerUnit } from '../../paper/measures.ts';
import { overflows } from '../../paper/overflows.ts';
import type { Page } from '../../paper/page.ts';
import type { Press } from '../../paper/press.ts';
import type { Filled } from '../../paper/stencil.ts';
import type { HandoutInput } from './handout.ts';
import { numberText, whoseSample } from './handoutTasks.ts';
import { look, pictureSheet, placeholder, planDrawing } from './planDrawing.tsx';
import { bedsPage, type Planned, planPage, warningSlot } from './planPage.tsx';
import { plannedSample, plannedTables } from './plannedRows.ts';
import { planWarnings } from './planWarnings.ts';
import { type LayoutShelf, sharedLayouts } from './sharedLayouts.ts';

/** Gives the pages of somebody's plan. */
export type PlanDesk = (input: HandoutInput) => Promise<readonly Filled[]>;

/** From large to small, so that long names, many beds and warnings find room. */
const drawings = [68, 54, 40, 30].map(mm);

/** What stands on the plan, and which heights are tried for its drawing. */
type Drawn = Planned & { readonly heights: readonly number[] };

/** Only the drawing is laid out for everybody. */
export function planDesk(
  press: Pick<Press, 'layOutAnew' | 'stencilOf' | 'fill' | 'asLaidOut'>,
  shelf: LayoutShelf | null = null,
): PlanDesk {
  const shared = sharedLayouts(press, shelf);
  const laidOut = async (
    input: HandoutInput,
    planned: Drawn,
    drawing: (height: number) => JSXNode,
  ): Promise<readonly Page[]> => {
    let best: { readonly page: Page; readonly cut: number } | null = null;
    for (const inside of [...planned.heights.map((height) => () => drawing(height)), () => null]) {
      const page = await press.layOutAnew(planPage(input, planned, inside()));
      const cut = overflows(page).length;
      if (best === null || cut < best.cut) best = { page, cut };
      if (cut === 0) break;
    }
    const further: Page[] = [];
    for (const table of planned.further) further.push(await press.layOutAnew(bedsPage(input, table)));
    return best === null ? [] : [best.page, ...further];
  };
  return async (input) => {
    const plan = input.wholePlan();
    const tables = plannedTables(input, plan);
    const heights = tables.further.length === 0 ? drawings : lowerOnes(plan);
    const planned = { ...tables, warnings: planWarnings(input, plan), heights };
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

/** A long row of beds fills the width before the height, and more height would stand empty over it. */
function lowerOnes({ section }: Plan): readonly number[] {
  const { left, right, bottom, top } = extentOf(section);
  const filled = (look.width * (top - bottom)) / (right - left);
  const enough = drawings.filter((height) => height >= filled);
  return drawings.slice(Math.max(0, enough.length - 1));
}

function shapeOf({ session, paper, units, shared }: HandoutInput, planned: Drawn): string {
  return JSON.stringify(['plan', session, paper, units, shared, plannedBySample(planned)]);
}

function plannedBySample({ first, further, warnings, heights }: Drawn): Drawn {
  return {
    heights,
    first: first.map(plannedSample),
    further: further.map(plannedSample),
    warnings: warnings.map((text) => text.replace(/\d/g, '0')),
  };
}

function valuesOf(
  input: HandoutInput,
  { first, further, warnings }: Planned,
): Readonly<Record<string, string>> {
  const figures = [...first, ...further].flatMap(({ rows }) => rows.flatMap(({ values }) => values));
  return {
    ...{ name: input.name, team: input.team, number: numberText(input) },
    ...Object.fromEntries(figures.map(({ slot, text }) => [slot, text])),
    ...Object.fromEntries(warnings.map((text, at) => [warningSlot(at), text])),
  };
}
