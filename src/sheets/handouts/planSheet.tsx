/** What somebody takes home: their containers as one system, drawn, with its figures. A plan, and says so. */
import type { Plan } from '../../core/plan/figure.ts';
import type { Page } from '../../paper/page.ts';
import { mm, paperSizes, pt } from '../../paper/measures.ts';
import { figureName, figureValue } from '../../wording/figure.ts';
import { dayText } from '../../wording/date.ts';
import { amount, lengthUnit_mm } from '../../wording/quantity.ts';
import { card } from '../cardWords.ts';
import { Heading, Leaf, Para, TickList } from '../parts/blocks.tsx';
import { CardHead } from '../parts/CardHead.tsx';
import { Frame } from '../parts/Frame.tsx';
import { Grid } from '../parts/Grid.tsx';
import { rule, safe, weight } from '../parts/look.ts';
import { SectionPicture } from '../parts/SectionPicture.tsx';
import type { LayOut } from '../sheetKind.ts';
import { type HandoutInput, handoutWords } from './handout.ts';
import { numberText } from './handoutTasks.ts';

const figures = [
  ...[
    'wetMedia_L',
    'tankFull_L',
    'tankLow_L',
    'waterMoved_L',
    'fishPlanned',
    'systemWater_L',
    'tankWeight_kg',
  ],
  ...['bed1.bedWeight_kg', 'bed1.placesSquare'],
];

/** Before anything of it is built. */
const before = ['measure', 'ground', 'electric', 'held', 'start', 'supplier'] as const;

/** A plan to take home is always one page. */
export const planPages = 1;

export async function* planSheet(input: HandoutInput, layOut: LayOut): AsyncGenerator<Page, void, void> {
  const { session, words, paper } = input;
  const plan = input.wholePlan();
  yield layOut({
    ...paperSizes[paper],
    title: handoutWords(input, 'title', { name: session.name }),
    lang: 'en',
    root: (
      <Leaf height={mm(254)}>
        <Frame gap={mm(4)}>
          <CardHead
            name={input.name}
            place={input.team === '' ? null : input.team}
            subject={`${session.name} · ${handoutWords(input, 'number')}: ${numberText(input)}`}
            kind={handoutWords(input, 'kinds.plan')}
            printed={dayText(session.date, words.catalogue)}
          />
          <Stamp input={input} />
          <Drawing input={input} plan={plan} />
          <Figures input={input} plan={plan} />
          <div style={{ display: 'flex', flexDirection: 'column' }}>
            <Heading level="H2" text={handoutWords(input, 'plan.before')} />
            <TickList items={before.map((key) => handoutWords(input, `plan.${key}`))} />
          </div>
          <Para text={handoutWords(input, 'plan.defer')} />
        </Frame>
      </Leaf>
    ),
  });
}

/** Nobody shall fill a tank by it as it stands. */
function Stamp({ input }: { input: HandoutInput }) {
  return (
    <div
      data-role="P"
      style={{
        display: 'flex',
        justifyContent: 'center',
        border: `${rule.box}px solid black`,
        padding: mm(2),
        fontSize: pt(16),
        fontWeight: weight.heavy,
        lineHeight: 1.2,
      }}
    >
      {handoutWords(input, 'plan.stamp')}
    </div>
  );
}

type Planned = { readonly input: HandoutInput; readonly plan: Plan };

function Drawing({ input, plan }: Planned) {
  const { words, units } = input;
  const value = (key: string): string => {
    const figure = plan.figures[key];
    return figure ? figureValue(figure, words.catalogue, units) : '';
  };
  const labels = {
    'tank.full': { text: handoutWords(input, 'plan.full', { litres: value('tankFull_L') }), heavy: 'text' },
    'tank.low': { text: handoutWords(input, 'plan.low', { litres: value('tankLow_L') }), heavy: 'text' },
    'bed.0': { text: handoutWords(input, 'plan.media', { litres: value('wetMedia_L') }), heavy: 'heavy' },
  } as const;
  return (
    <SectionPicture
      section={plan.section}
      width={safe.width}
      height={mm(74)}
      labels={labels}
      alt={handoutWords(input, 'plan.alt', {
        words: Object.values(labels)
          .map(({ text }) => text)
          .join('; '),
      })}
      unit_mm={lengthUnit_mm(units)}
      barText={(real_mm) => card(input, 'bar', { length: amount(real_mm, 'mm', 'nearest', units) })}
    />
  );
}

function Figures({ input, plan }: Planned) {
  const { words, units, system } = input;
  const rows = figures.flatMap((key) => {
    const figure = plan.figures[key];
    if (figure === undefined || figure.value === null) return [];
    return [
      [figureName(key, system.beds.length, words.catalogue), figureValue(figure, words.catalogue, units)],
    ];
  });
  const columns = [
    { head: handoutWords(input, 'plan.figure'), width: mm(110) },
    { head: handoutWords(input, 'plan.value'), width: mm(60) },
  ];
  return <Grid columns={columns} rows={rows} rowHeight={mm(5.6)} headHeight={mm(6)} />;
}
