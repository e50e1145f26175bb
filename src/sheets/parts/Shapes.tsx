/** Placed shapes of `drawing` as vectors in a sheet. */
import type { Paint, Shape } from '../../drawing/shape.ts';

/** A drawing of the given size, at the top left of the box around it. */
export function Shapes({
  shapes,
  width,
  height,
}: {
  shapes: readonly Shape[];
  width: number;
  height: number;
}) {
  return (
    <svg
      width={width}
      height={height}
      viewBox={`0 0 ${width} ${height}`}
      style={{ position: 'absolute', left: 0, top: 0 }}
    >
      {shapes.map((shape) => (
        <path d={shape.d} {...attributes(shape.paint)} />
      ))}
    </svg>
  );
}

function attributes(paint: Paint): Record<string, string | number> {
  return {
    fill: paint.fill ?? 'none',
    ...(paint.stroke ? { stroke: paint.stroke, 'stroke-width': paint.width ?? 2 } : {}),
    ...(paint.dash ? { 'stroke-dasharray': paint.dash.join(' ') } : {}),
    ...(paint.cap ? { 'stroke-linecap': paint.cap } : {}),
  };
}
