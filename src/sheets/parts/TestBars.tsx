/** The bars of every sheet at true scale. */
import { path } from '../../drawing/shape.ts';
import { mm } from '../../paper/measures.ts';
import type { Printing } from '../sheet.ts';
import { told } from '../sheetWords.ts';
import { Para } from './blocks.tsx';
import { safe, size } from './look.ts';
import { Shapes } from './Shapes.tsx';

/** Two bars to measure before anything is cut. */
export function TestBars({ input }: { input: Pick<Printing, 'words'> }) {
  const bars = [
    { length: mm(100), text: told(input, 'dipStrip', 'bar_mm') },
    { length: mm(101.6), text: told(input, 'dipStrip', 'bar_in') },
  ];
  return (
    <div style={{ display: 'flex', flexDirection: 'column', width: safe.width }}>
      <Para text={told(input, 'dipStrip', 'measure')} heavy="heavy" fontSize={size.note} />
      {bars.map((bar) => (
        <div style={{ display: 'flex', alignItems: 'center', height: mm(6) }}>
          <div style={{ display: 'flex', position: 'relative', width: mm(104), height: mm(5) }}>
            <Shapes shapes={[barShape(bar.length)]} width={mm(104)} height={mm(5)} />
          </div>
          <div data-role="P" style={{ display: 'flex', fontSize: size.note }}>
            {bar.text}
          </div>
        </div>
      ))}
    </div>
  );
}

function barShape(length: number) {
  const ends = [0, length].map((x) =>
    path(
      [
        [x, 0],
        [x, mm(5)],
      ],
      'open',
    ),
  );
  const rule = path(
    [
      [0, mm(2.5)],
      [length, mm(2.5)],
    ],
    'open',
  );
  return { d: [...ends, rule].join(''), paint: { stroke: 'black', width: 3 } } as const;
}
