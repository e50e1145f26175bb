/** The drawing on a plan to take home. */
import type { Plan } from '../../core/plan/figure.ts';
import type { Sheet } from '../../paper/layOut.ts';
import { mm } from '../../paper/measures.ts';
import { figureValue } from '../../wording/figure.ts';
import { amount, lengthUnit_mm } from '../../wording/quantity.ts';
import { card } from '../cardWords.ts';
import { rule, safe } from '../parts/look.ts';
import { type LabelWords, SectionPicture } from '../parts/SectionPicture.tsx';
import { type HandoutInput, handoutWords } from './handout.ts';

type Drawn = { readonly input: HandoutInput; readonly plan: Plan; readonly height: number };

/** As wide as the paper has room. */
export const look = { width: safe.width } as const;

/** The drawing by itself, to be set into the page. */
export function pictureSheet(drawn: Drawn): Sheet {
  const { input, height } = drawn;
  return {
    width_mm: look.width / mm(1),
    height_mm: height / mm(1),
    title: handoutWords(input, 'kinds.plan'),
    lang: 'en',
    root: <div style={{ display: 'flex', ...look, height }}>{planDrawing(drawn)}</div>,
  };
}

/** A line as a sample, where everybody's own drawing will be. */
export function placeholder(input: HandoutInput, height: number) {
  return (
    <div
      data-role="Figure"
      data-alt={handoutWords(input, 'plan.alt')}
      data-slot="drawing"
      style={{ display: 'flex', ...look, height, borderBottom: `${rule.thin}px solid black` }}
    />
  );
}

export function planDrawing({ input, plan, height }: Drawn) {
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
      width={look.width}
      height={height}
      labels={labels}
      alt={handoutWords(input, 'plan.alt')}
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
