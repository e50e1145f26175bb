/** The water and feed log: a month of readings to write down with this system's limits, and a graph to draw by hand. */
import type { Page } from '../paper/page.ts';
import { mm } from '../paper/measures.ts';
import { amountParts } from '../wording/quantity.ts';
import { figureOf, shown, shownRange } from './cardWords.ts';
import { Heading, Para } from './parts/blocks.tsx';
import { Grid, type GridColumn } from './parts/Grid.tsx';
import { HandPlot } from './parts/HandPlot.tsx';
import { sideOf } from './parts/Side.tsx';
import type { SheetInput } from './sheet.ts';
import type { LayOut, SheetKind } from './sheetKind.ts';
import { told } from './sheetWords.ts';

const daysOfMonth = 31;

export const waterLog: SheetKind = {
  id: 'water-and-feed-log',
  name: (input) => told(input, 'waterLog', 'kind'),
  title,
  subject: (input) => told(input, 'waterLog', 'pdfSubject'),
  pages,
  fits: (input) => ((input.system.fish?.present ?? 0) > 0 ? 'yes' : 'no'),
  scale: 'fit',
};

function title(input: SheetInput): string {
  return told(input, 'waterLog', 'title', { name: input.system.name });
}

async function* pages(input: SheetInput, layOut: LayOut): AsyncGenerator<Page, void, void> {
  const head = {
    title: title(input),
    kind: told(input, 'waterLog', 'kind'),
    subject: told(input, 'waterLog', 'month'),
  };
  yield layOut(sideOf(input, head, <Month input={input} />));
  yield layOut(sideOf(input, head, <Graphs input={input} />));
}

type Limit = { readonly key: string; readonly good: string };

/** Every reading with what is good for these fish. */
function limits(input: SheetInput): readonly Limit[] {
  const upTo = (key: string): string => told(input, 'waterLog', 'upTo', { value: shown(input, key) });
  return [
    { key: 'water', good: shownRange(input, 'goodFrom_degC', 'goodTo_degC') },
    { key: 'ammonia', good: upTo('tanMax_mg_L') },
    { key: 'nitrite', good: upTo('nitriteMax_mg_L') },
    { key: 'nitrate', good: upTo('nitrateMax_mg_L') },
    { key: 'pH', good: shownRange(input, 'pHMin', 'pHMax') },
    { key: 'oxygen', good: told(input, 'waterLog', 'atLeast', { value: shown(input, 'oxygenMin_mg_L') }) },
  ];
}

function Month({ input }: { input: SheetInput }) {
  const widths = {
    day: 11,
    water: 17,
    ammonia: 19,
    nitrite: 18,
    nitrate: 18,
    pH: 14,
    fed: 17,
    added: 19,
    note: 57,
  };
  const columns: readonly GridColumn[] = Object.entries(widths).map(([key, width]) => ({
    head: told(input, 'waterLog', key),
    width: mm(width),
  }));
  const good = limits(input).map(({ key, good }) => `${told(input, 'waterLog', key)} ${good}`);
  const rows = Array.from({ length: daysOfMonth }, (_, index) => [String(index + 1)]);
  return (
    <div style={{ display: 'flex', flexDirection: 'column', rowGap: mm(2.4) }}>
      <Para text={told(input, 'waterLog', 'limits', { limits: good.join(' · ') })} />
      <Grid columns={columns} rows={rows} rowHeight={mm(5.9)} />
    </div>
  );
}

/** The four readings that drift. The scale of each runs to twice its limit, so that a bad reading still finds a place. */
function Graphs({ input }: { input: SheetInput }) {
  const value = (key: string): number | null => figureOf(input, key)?.value ?? null;
  const plots = [
    {
      key: 'water',
      unit: 'degC',
      from: value('goodFrom_degC'),
      to: value('goodTo_degC'),
      ends: ['aliveFrom_degC', 'aliveTo_degC'],
    },
    { key: 'pH', unit: 'pH', from: value('pHMin'), to: value('pHMax'), ends: null },
    { key: 'ammonia', unit: 'mg_L', from: null, to: value('tanMax_mg_L'), ends: null },
    { key: 'nitrite', unit: 'mg_L', from: null, to: value('nitriteMax_mg_L'), ends: null },
  ] as const;
  return (
    <div style={{ display: 'flex', flexDirection: 'column', rowGap: mm(3) }}>
      <Heading
        level="H2"
        text={told(input, 'waterLog', 'graph')}
        aside={told(input, 'waterLog', 'graphText')}
      />
      {plots.map((plot) => {
        const name = told(input, 'waterLog', plot.key);
        const good = limits(input).find(({ key }) => key === plot.key)?.good ?? '';
        const ends = plot.ends?.map((key) => value(key)) ?? [];
        return (
          <HandPlot
            name={name}
            good={good}
            alt={told(input, 'waterLog', 'graphAlt', { name, good })}
            goodFrom={plot.from}
            goodTo={plot.to}
            low={ends[0] ?? null}
            high={ends[1] ?? null}
            tickText={(tick) => amountParts(tick, plot.unit, 'nearest', input.units).number}
          />
        );
      })}
    </div>
  );
}
