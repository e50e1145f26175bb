/** Water temperature as a bar with words: white good, slanted lines watch, crossed lines act now. */
import { band, type BandLimits } from '../../drawing/band.ts';
import { mm } from '../../paper/measures.ts';
import { size } from './look.ts';
import { Shapes } from './Shapes.tsx';

type Props = {
  readonly limits: BandLimits;
  readonly width: number;
  readonly alt: string;
  /** What stands under a limit, by its place from cold to hot, from 0. */
  readonly tickText: (limit: number) => string;
};

const barHeight = mm(4.6);
const tickWidth = mm(16);

export function TemperatureBar({ limits, width, alt, tickText }: Props) {
  const drawn = band(limits, width, barHeight);
  const height = barHeight + mm(6);
  return (
    <div data-role="Figure" data-alt={alt} style={{ display: 'flex', position: 'relative', width, height }}>
      <Shapes shapes={drawn.shapes} width={width} height={height} />
      {drawn.ticks.map((tick) => (
        <div
          style={{
            display: 'flex',
            position: 'absolute',
            justifyContent: 'center',
            left: tick.x - tickWidth / 2,
            top: barHeight + mm(1),
            width: tickWidth,
            fontSize: size.text,
            lineHeight: 1.2,
          }}
        >
          {tickText(tick.limit)}
        </div>
      ))}
    </div>
  );
}
