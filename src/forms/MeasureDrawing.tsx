/** @jsxImportSource preact */
/** Which length is meant: a container from the side and from above, with a letter at every measure. Not to scale. */
import type { Shape } from '../core/system.ts';
import { type Dimension, outlines } from './measureLines.ts';

type DrawingProps = {
  readonly shape: Shape;
  readonly dimensions: readonly Dimension[];
  readonly letters: Readonly<Record<string, string>>;
  /** The measure whose field is being filled in. */
  readonly focused: string | null;
};

/** The words beside it say the same, so that it can stay silent for those who hear the page. */
export function MeasureDrawing({ shape, dimensions, letters, focused }: DrawingProps) {
  return (
    <svg class="measures" viewBox="0 0 260 216" aria-hidden="true" focusable="false">
      {outlines[shape].map(({ d, line }) => (
        <path key={d} d={d} fill="none" class={line} />
      ))}
      {dimensions
        .filter(({ key }) => letters[key] !== undefined)
        .map((one) => (
          <DimensionLine
            key={one.key}
            dimension={one}
            letter={letters[one.key] ?? ''}
            state={one.key === focused ? 'focused' : 'resting'}
          />
        ))}
    </svg>
  );
}

type LineProps = {
  readonly dimension: Dimension;
  readonly letter: string;
  readonly state: 'focused' | 'resting';
};

function DimensionLine({ dimension, letter, state }: LineProps) {
  const { from, to, level } = dimension;
  const [x1, y1] = from;
  const [x2, y2] = to;
  // Beside a line that is too short to carry its letter.
  const aside = Math.abs(y2 - y1) + Math.abs(x2 - x1) < 30 ? 14 : 0;
  const [x, y] = [(x1 + x2) / 2 + aside, (y1 + y2) / 2];
  const upright = x1 === x2;
  const tick = ([cx, cy]: readonly [number, number]) =>
    upright ? `M${cx - 4},${cy}h8` : `M${cx},${cy - 4}v8`;
  return (
    <g class={`dimension ${state}`}>
      {level ? <path class="level" d={`M${level[0]},${y2}H${level[1]}`} fill="none" /> : null}
      <path d={`M${x1},${y1}L${x2},${y2}${tick(from)}${tick(to)}`} fill="none" />
      <circle cx={x} cy={y} r="8.5" />
      <text x={x} y={y + 4} text-anchor="middle" font-size="12">
        {letter}
      </text>
    </g>
  );
}
