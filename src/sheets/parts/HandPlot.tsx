/** One empty graph with its name, what is good, and numbers at its lines. */
import { plotGrid } from '../../drawing/plotGrid.ts';
import { plotRange } from '../../drawing/plotRange.ts';
import { mm } from '../../paper/measures.ts';
import { safe, size, weight } from './look.ts';
import { Shapes } from './Shapes.tsx';

type Props = {
  readonly name: string;
  readonly good: string;
  readonly alt: string;
  readonly goodFrom: number | null;
  readonly goodTo: number | null;
  /** Ends of the scale where the plan knows them. */
  readonly low: number | null;
  readonly high: number | null;
  readonly tickText: (value: number) => string;
};

const left = mm(13);
const plotHeight = mm(38);
const numberHeight = mm(4.2);

export function HandPlot({ name, good, alt, goodFrom, goodTo, low, high, tickText }: Props) {
  const ends = plotRange({ goodFrom, goodTo, low, high });
  const grid = plotGrid(
    { ...ends, goodFrom, goodTo },
    { left, width: safe.width - left, height: plotHeight },
  );
  return (
    <div style={{ display: 'flex', flexDirection: 'column' }}>
      <div data-role="P" style={{ display: 'flex', fontSize: size.text, lineHeight: 1.3 }}>
        <div style={{ display: 'flex', fontWeight: weight.heavy, marginRight: mm(2) }}>{name}</div>
        <div style={{ display: 'flex' }}>{good}</div>
      </div>
      <div
        data-role="Figure"
        data-alt={alt}
        style={{ display: 'flex', position: 'relative', width: safe.width, height: plotHeight + mm(5) }}
      >
        <Shapes shapes={grid.shapes} width={safe.width} height={plotHeight + mm(5)} />
        {grid.ticks.map((tick) => (
          <div
            style={{
              display: 'flex',
              position: 'absolute',
              justifyContent: 'flex-end',
              left: 0,
              top: Math.min(Math.max(tick.y - numberHeight / 2, 0), plotHeight - numberHeight),
              width: left - mm(1.5),
              fontSize: size.note,
              lineHeight: 1.2,
            }}
          >
            {tickText(tick.value)}
          </div>
        ))}
        {grid.columns.map((x, index) =>
          index % 2 === 0 ? (
            <div
              style={{
                display: 'flex',
                position: 'absolute',
                justifyContent: 'center',
                left: x - mm(3),
                top: plotHeight + mm(0.6),
                width: mm(6),
                fontSize: size.source,
                lineHeight: 1.2,
              }}
            >
              {String(index + 1)}
            </div>
          ) : null,
        )}
      </div>
    </div>
  );
}
