/** The whole template made small, with the sheets that it is glued from. */
import type { BedLines } from '../../drawing/bedLines.ts';
import { path, type Shape } from '../../drawing/shape.ts';
import type { Tiling } from '../../drawing/tiles.ts';
import { mm } from '../../paper/measures.ts';
import { safe, size } from './look.ts';
import { Shapes } from './Shapes.tsx';

const room = { width: safe.width, height: mm(110) };
const nameHeight = mm(5);

type Props = { readonly drawn: BedLines; readonly tiling: Tiling | null; readonly alt: string };

export function TileMap({ drawn, tiling, alt }: Props) {
  const end = tiling?.tiles.at(-1);
  const whole = {
    width: Math.max(drawn.width, (end?.left ?? 0) + (tiling?.tile.width ?? 0)),
    height: Math.max(drawn.height, (end?.top ?? 0) + (tiling?.tile.height ?? 0)),
  };
  const scale = Math.min(room.width / whole.width, room.height / whole.height);
  const [width, height] = [whole.width * scale, whole.height * scale];
  return (
    <div data-role="Figure" data-alt={alt} style={{ display: 'flex', position: 'relative', width, height }}>
      <Shapes
        shapes={[...bedShapes(drawn, scale), ...(tiling === null ? [] : frames(tiling, scale))]}
        width={width}
        height={height}
      />
      {(tiling?.tiles ?? []).map(({ name, left, top }) => (
        <div style={{ ...nameLook, left: left * scale + mm(1.4), top: top * scale + mm(1.2) }}>{name}</div>
      ))}
    </div>
  );
}

const nameLook = {
  display: 'flex',
  position: 'absolute',
  width: mm(9),
  height: nameHeight,
  fontSize: size.note,
  lineHeight: 1.2,
} as const;

function bedShapes({ lines }: BedLines, scale: number): readonly Shape[] {
  return lines.map(({ spots, end }) => ({
    d: path(
      spots.map(([x, y]) => [x * scale, y * scale] as const),
      end,
    ),
    paint: { stroke: 'black', width: 2 },
  }));
}

/** From the middle of one overlap to the middle of the next, so that sheets share their lines. */
function frames({ tile, step, columns, rows }: Tiling, scale: number): readonly Shape[] {
  const overlap = tile.width - step.x;
  const right = (columns - 1) * step.x + tile.width;
  const bottom = (rows - 1) * step.y + tile.height;
  const cuts = (count: number, by: number, end: number): readonly number[] => [
    0,
    ...Array.from({ length: count - 1 }, (_, index) => (index + 1) * by + overlap / 2),
    end,
  ];
  const small = (from: readonly [number, number], until: readonly [number, number]): Shape => ({
    d: path(
      [from, until].map(([x, y]) => [x * scale, y * scale] as const),
      'open',
    ),
    paint: { stroke: 'black', width: 2, dash: [10, 8] },
  });
  return [
    ...cuts(columns, step.x, right).map((x) => small([x, 0], [x, bottom])),
    ...cuts(rows, step.y, bottom).map((y) => small([0, y], [right, y])),
  ];
}
