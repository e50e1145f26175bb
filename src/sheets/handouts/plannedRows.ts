/** What a plan comes to, number by number: of the whole system, and of each bed. */
import type { Figure, Plan } from '../../core/plan/figure.ts';
import { figureName, figureValue } from '../../wording/figure.ts';
import { type HandoutInput, handoutWords } from './handout.ts';
import { sample } from './handoutTasks.ts';

/** A number of somebody's plan, and where it stands. */
export type PlannedValue = { readonly slot: string; readonly text: string };

export type PlannedTable = {
  readonly heads: readonly string[];
  readonly widths_mm: readonly number[];
  readonly rows: readonly { readonly name: string; readonly values: readonly PlannedValue[] }[];
};

const ofAll = [
  ...['wetMedia_L', 'tankFull_L', 'tankLow_L', 'waterMoved_L', 'fishPlanned', 'systemWater_L'],
  'tankWeight_kg',
];
const ofBed = ['bedWeight_kg', 'placesSquare'];

/** More beds than this leave too little room for their drawing: they are listed on pages of their own. */
const mostBeside = 6;
/** So many stand on a page, also where a name above them takes many lines. */
const mostOnPage = 25;

export type PlannedTables = {
  /** What stands beside the drawing. */
  readonly first: readonly PlannedTable[];
  /** Beds that have no room there: a page for each of these. */
  readonly further: readonly PlannedTable[];
};

/** How many pages a plan takes that many beds. */
export function planPages(beds: number): number {
  return beds > mostBeside ? 1 + Math.ceil(beds / mostOnPage) : 1;
}

/** One table, and of several beds further ones with a row for each. */
export function plannedTables(input: HandoutInput, plan: Plan): PlannedTables {
  const beds = input.system.beds.length;
  const single = beds === 1 ? ofBed.map((name) => `bed1.${name}`) : [];
  const rows = [...ofAll, ...single].flatMap((key) => {
    const value = plannedValue(input, plan, key);
    return value === null ? [] : [{ name: figureName(key, 1, input.words.catalogue), values: [value] }];
  });
  const heads = [handoutWords(input, 'plan.figure'), handoutWords(input, 'plan.value')];
  const whole = { heads, widths_mm: [120, 70], rows };
  const ofBeds = beds > 1 ? bedTable(input, plan) : null;
  const pages = planPages(beds) - 1;
  if (ofBeds === null || pages === 0)
    return { first: ofBeds === null ? [whole] : [whole, ofBeds], further: [] };
  const further = Array.from({ length: pages }, (_, at) => {
    return { ...ofBeds, rows: ofBeds.rows.slice(at * mostOnPage, (at + 1) * mostOnPage) };
  });
  return { first: [whole], further };
}

function bedTable(input: HandoutInput, plan: Plan): PlannedTable {
  const keys = ['wetMedia_L', ...ofBed];
  const rows = input.system.beds.map((_, at) => {
    const bed = String(at + 1);
    const values = keys.map((key) => {
      return plannedValue(input, plan, `bed${bed}.${key}`) ?? { slot: `plan-bed${bed}.${key}`, text: '' };
    });
    return { name: handoutWords(input, 'bedNumber', { bed }), values };
  });
  const names = keys.map((key) => figureName(`bed1.${key}`, 1, input.words.catalogue));
  return { heads: [handoutWords(input, 'bed'), ...names], widths_mm: [24, 44, 76, 46], rows };
}

function plannedValue(input: HandoutInput, plan: Plan, key: string): PlannedValue | null {
  const figure = plan.figures[key];
  if (figure === undefined || figure.value === null) return null;
  return { slot: `plan-${key}`, text: shownValue(input, figure) };
}

/** The worksheet is worked in litres, so they stand beside gallons. */
function shownValue({ words: { catalogue }, units }: HandoutInput, figure: Figure): string {
  const value = figureValue(figure, catalogue, units);
  if (units === 'metric' || figure.unit !== 'L') return value;
  return `${value} (${figureValue(figure, catalogue, 'metric')})`;
}

/** The same with nobody's numbers in them. */
export function plannedSample(table: PlannedTable): PlannedTable {
  const rows = table.rows.map(({ name, values }) => {
    return { name, values: values.map(({ slot }) => ({ slot, text: sample })) };
  });
  return { ...table, rows };
}
