/** Tank, sump and beds from above, side by side, with their measures. */
import { seenFromAbove } from '../../drawing/seenFromAbove.ts';
import { mm } from '../../paper/measures.ts';
import { amount } from '../../wording/quantity.ts';
import type { SeenFromAbove } from '../../core/plan/figure.ts';
import type { SheetInput } from '../sheet.ts';
import { system, vesselName } from '../systemWords.ts';
import { Heading, Para } from './blocks.tsx';
import { safe, size } from './look.ts';
import { Shapes } from './Shapes.tsx';

const words = { width: mm(44), height: mm(8.6) };

export function FromAbove({ input }: { input: SheetInput }) {
  const { above } = input.plan.section;
  const drawing = seenFromAbove(above, { width: safe.width, height: mm(48), words });
  const texts = above.map((one) => sizeWords(input, one));
  return (
    <div data-entry="" style={{ display: 'flex', flexDirection: 'column' }}>
      <Heading
        level="H2"
        text={system(input, 'above')}
        aside={system(input, 'scale', { oneTo: String(drawing.oneTo) })}
      />
      <div
        data-role="Figure"
        data-alt={system(input, 'aboveAlt', { words: texts.join('; ') })}
        style={{ display: 'flex', position: 'relative', width: drawing.width, height: drawing.height }}
      >
        <Shapes shapes={drawing.shapes} width={drawing.width} height={drawing.height} />
        {drawing.words.map(({ left, top }, i) => (
          <div
            style={{
              display: 'flex',
              position: 'absolute',
              ...{ left, top, ...words },
              fontSize: size.note,
              lineHeight: 1.15,
            }}
          >
            {texts[i] ?? ''}
          </div>
        ))}
      </div>
      <Para text={system(input, 'aboveNote')} fontSize={size.note} />
    </div>
  );
}

function sizeWords(input: SheetInput, one: SeenFromAbove): string {
  const length = (value_mm: number): string => amount(value_mm, 'mm', 'nearest', input.units);
  const round = one.length_mm === one.breadth_mm && one.rim.length > 4;
  const measures = system(input, round ? 'aboveRound' : 'aboveSides', {
    length: length(one.length_mm),
    breadth: length(one.breadth_mm),
  });
  const text = system(input, one.count === 1 ? 'aboveWords' : 'aboveWordsSeveral', {
    of: vesselName(input, one),
    count: String(one.count),
    measures,
  });
  return one.measured === 'outside' ? system(input, 'aboveOutside', { words: text }) : text;
}
