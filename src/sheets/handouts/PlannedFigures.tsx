/** What a plan comes to, in a table; of several beds each has a row in a table of its own. */
import type { Figure, Plan } from '../../core/plan/figure.ts';
import { mm } from '../../paper/measures.ts';
import { figureName, figureValue } from '../../wording/figure.ts';
import { Grid } from '../parts/Grid.tsx';
import { type HandoutInput, handoutWords } from './handout.ts';

const ofAll = [
  ...['wetMedia_L', 'tankFull_L', 'tankLow_L', 'waterMoved_L', 'fishPlanned', 'systemWater_L'],
  'tankWeight_kg',
];
const ofBed = ['bedWeight_kg', 'placesSquare'];

/** More beds than this have no room on the page beside their drawing. */
const mostBeds = 8;

type Props = { readonly input: HandoutInput; readonly plan: Plan };

export function PlannedFigures({ input, plan }: Props) {
  const beds = input.system.beds.length;
  const single = beds === 1 ? ofBed.map((name) => `bed1.${name}`) : [];
  const rows = [...ofAll, ...single].flatMap((key) => {
    const figure = plan.figures[key];
    if (figure === undefined || figure.value === null) return [];
    return [[figureName(key, 1, input.words.catalogue), shownValue(input, figure)]];
  });
  const heads = [handoutWords(input, 'plan.figure'), handoutWords(input, 'plan.value')];
  return (
    <div style={{ display: 'flex', flexDirection: 'column', rowGap: mm(3) }}>
      <Rows heads={heads} widths={[120, 70]} rows={rows} />
      {beds > 1 ? <Beds input={input} plan={plan} /> : null}
    </div>
  );
}

function Beds({ input, plan }: Props) {
  const { catalogue } = input.words;
  const count = Math.min(input.system.beds.length, mostBeds);
  const rows = Array.from({ length: count }, (_, at) => [
    handoutWords(input, 'bedNumber', { bed: String(at + 1) }),
    ...ofBed.map((name) => {
      const figure = plan.figures[`bed${at + 1}.${name}`];
      return figure === undefined ? '' : shownValue(input, figure);
    }),
  ]);
  const names = ofBed.map((name) => figureName(`bed1.${name}`, 1, catalogue));
  return <Rows heads={[handoutWords(input, 'bed'), ...names]} widths={[30, 90, 70]} rows={rows} />;
}

type RowsProps = {
  readonly heads: readonly string[];
  readonly widths: readonly number[];
  readonly rows: readonly (readonly string[])[];
};

function Rows({ heads, widths, rows }: RowsProps) {
  const columns = heads.map((head, at) => ({ head, width: mm(widths[at] ?? 0) }));
  return <Grid columns={columns} rows={rows} rowHeight={mm(5.6)} headHeight={mm(6)} />;
}

/** The worksheet is worked in litres, so they stand beside gallons. */
function shownValue({ words: { catalogue }, units }: HandoutInput, figure: Figure): string {
  const value = figureValue(figure, catalogue, units);
  if (units === 'metric' || figure.unit !== 'L') return value;
  return `${value} (${figureValue(figure, catalogue, 'metric')})`;
}
