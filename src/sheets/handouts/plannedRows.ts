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

/** More beds than this have no room on the page beside their drawing; that there are more is said. */
const mostBeds = 8;

/** One table, and of several beds another one with a row for each. */
export function plannedTables(input: HandoutInput, plan: Plan): readonly PlannedTable[] {
  const beds = input.system.beds.length;
  const single = beds === 1 ? ofBed.map((name) => `bed1.${name}`) : [];
  const rows = [...ofAll, ...single].flatMap((key) => {
    const value = plannedValue(input, plan, key);
    return value === null ? [] : [{ name: figureName(key, 1, input.words.catalogue), values: [value] }];
  });
  const heads = [handoutWords(input, 'plan.figure'), handoutWords(input, 'plan.value')];
  const whole = { heads, widths_mm: [120, 70], rows };
  return beds > 1 ? [whole, bedTable(input, plan)] : [whole];
}

function bedTable(input: HandoutInput, plan: Plan): PlannedTable {
  const keys = ['wetMedia_L', ...ofBed];
  const { length } = input.system.beds;
  const rows = Array.from({ length: Math.min(length, mostBeds) }, (_, at) => {
    const bed = String(at + 1);
    const values = keys.map((key) => {
      return plannedValue(input, plan, `bed${bed}.${key}`) ?? { slot: `plan-bed${bed}.${key}`, text: '' };
    });
    return { name: handoutWords(input, 'bedNumber', { bed }), values };
  });
  const names = keys.map((key) => figureName(`bed1.${key}`, 1, input.words.catalogue));
  const all = length > mostBeds ? [...rows, moreBeds(input, length)] : rows;
  return { heads: [handoutWords(input, 'bed'), ...names], widths_mm: [24, 44, 76, 46], rows: all };
}

function moreBeds(input: HandoutInput, last: number): PlannedTable['rows'][number] {
  const beds = { first: String(mostBeds + 1), last: String(last) };
  const isOne = last === mostBeds + 1;
  return {
    name: isOne
      ? handoutWords(input, 'bedNumber', { bed: beds.last })
      : handoutWords(input, 'plan.bedsTo', beds),
    values: [{ slot: 'more-beds', text: handoutWords(input, 'plan.notListed') }],
  };
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
