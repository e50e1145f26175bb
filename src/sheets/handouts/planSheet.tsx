/** What somebody takes home: their containers as one system, drawn, with its figures. A plan, and says so. */
import type { Plan } from '../../core/plan/figure.ts';
import type { Sheet } from '../../paper/layOut.ts';
import type { Page } from '../../paper/page.ts';
import { mm, paperSizes, pt } from '../../paper/measures.ts';
import { overflows } from '../../paper/overflows.ts';
import { figureValue } from '../../wording/figure.ts';
import { dayText } from '../../wording/date.ts';
import { amount, lengthUnit_mm } from '../../wording/quantity.ts';
import { card } from '../cardWords.ts';
import { Heading, Leaf, Para, TickList } from '../parts/blocks.tsx';
import { CardHead } from '../parts/CardHead.tsx';
import { Frame } from '../parts/Frame.tsx';
import { rule, safe, weight } from '../parts/look.ts';
import { type LabelWords, SectionPicture } from '../parts/SectionPicture.tsx';
import type { LayOut } from '../sheetKind.ts';
import { type HandoutInput, handoutWords } from './handout.ts';
import { numberText } from './handoutTasks.ts';
import { PlannedFigures } from './PlannedFigures.tsx';
import { planWarnings } from './planWarnings.ts';

/** Before anything of it is built. */
const before = ['measure', 'ground', 'electric', 'held', 'start', 'supplier'] as const;

/** A plan to take home is always one page. */
export const planPages = 1;

/** From large to small, so that many beds and warnings find room. */
const drawings = [74, 60, 46].map(mm);

export async function* planSheet(input: HandoutInput, layOut: LayOut): AsyncGenerator<Page, void, void> {
  const plan = input.wholePlan();
  let page: Page | null = null;
  for (const height of drawings) {
    page = await layOut(side({ input, plan, height }));
    if (overflows(page).length === 0) break;
  }
  if (page !== null) yield page;
}

type Planned = { readonly input: HandoutInput; readonly plan: Plan };
type Drawn = Planned & { readonly height: number };

function side({ input, plan, height }: Drawn): Sheet {
  const { session, words, paper } = input;
  return {
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
          <Drawing input={input} plan={plan} height={height} />
          <PlannedFigures input={input} plan={plan} />
          <Warnings input={input} plan={plan} />
          <div style={{ display: 'flex', flexDirection: 'column' }}>
            <Heading level="H2" text={handoutWords(input, 'plan.before')} />
            <TickList items={before.map((key) => handoutWords(input, `plan.${key}`))} />
          </div>
          <Para text={handoutWords(input, 'plan.defer')} />
        </Frame>
      </Leaf>
    ),
  };
}

/** What this plan lacks, before anybody buys a thing for it. */
function Warnings({ input, plan }: Planned) {
  const warnings = planWarnings(input, plan);
  if (warnings.length === 0) return null;
  return (
    <div style={{ display: 'flex', flexDirection: 'column', rowGap: mm(1) }}>
      {warnings.map((text) => (
        <Para text={text} heavy="heavy" />
      ))}
    </div>
  );
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

function Drawing({ input, plan, height }: Drawn) {
  const { words, units } = input;
  const value = (key: string): string => {
    const figure = plan.figures[key];
    return figure ? figureValue(figure, words.catalogue, units) : '';
  };
  const labels: Readonly<Record<string, LabelWords>> = {
    'tank.full': { text: handoutWords(input, 'plan.full', { litres: value('tankFull_L') }), heavy: 'text' },
    'tank.low': { text: handoutWords(input, 'plan.low', { litres: value('tankLow_L') }), heavy: 'text' },
    ...bedLabels(input, value),
  };
  return (
    <SectionPicture
      section={plan.section}
      width={safe.width}
      height={height}
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

/** More labels than this have no room beside a small drawing; the table has their litres. */
const mostLabelled = 4;

function bedLabels(input: HandoutInput, value: (key: string) => string): Record<string, LabelWords> {
  const { length } = input.system.beds;
  if (length > mostLabelled) return {};
  const labels = Array.from({ length }, (_, at) => {
    const [bed, litres] = [String(at + 1), value(`bed${at + 1}.wetMedia_L`)];
    const text = handoutWords(input, length === 1 ? 'plan.media' : 'plan.mediaOf', { bed, litres });
    return [`bed.${at}`, { text, heavy: 'heavy' }] as const;
  });
  return Object.fromEntries(labels);
}
