/** A poster in tiles: a page that shows how they lie, then every tile with crosses to lay it by. */
import type { Sheet } from '../paper/layOut.ts';
import { mm, paperSizes, pointsPerUnit } from '../paper/measures.ts';
import type { Box, Page } from '../paper/page.ts';
import { inlaid, type Tile, type TileGrid, tileGrid } from '../paper/tiles.ts';
import { shorten } from '../wording/shorten.ts';
import { Leaf, Para } from './parts/blocks.tsx';
import { safe, size, weight } from './parts/look.ts';
import { posterInk, posterPaper } from './parts/posterLook.ts';
import { Shapes } from './parts/Shapes.tsx';
import { sideOf } from './parts/Side.tsx';
import { poster } from './posterWords.ts';
import type { SheetInput } from './sheet.ts';
import type { LayOut } from './sheetKind.ts';
import { TestBar } from './parts/TestBar.tsx';

/** Under each tile its name. */
const nameHeight = mm(7);
const window = { width: safe.width, height: safe.height - nameHeight };
const overlap = mm(10);
const slot = 'poster';

export async function* posterTiles(
  input: SheetInput,
  page: Page,
  layOut: LayOut,
): AsyncGenerator<Page, void, void> {
  const ink = inkOf(page);
  const grid = tileGrid(ink, inPoints(window), overlap * pointsPerUnit);
  const whole = wholeOf(grid);
  const map = await layOut(mapSheet(input, grid, whole));
  // What the poster says is heard here, once; on the tiles it is only looked at.
  yield inlaid(map, slot, { page, shows: whole, heard: 'yes' });
  for (const tile of grid.tiles) {
    const frame = await layOut(tileSheet(input, grid, tile));
    yield inlaid(frame, slot, { page, shows: tile.shows, heard: 'no' });
  }
}

function inPoints({ width, height }: { readonly width: number; readonly height: number }) {
  return { width_pt: width * pointsPerUnit, height_pt: height * pointsPerUnit };
}

/** Where the poster has its ink: in the middle of the page, as much smaller as the page is. */
function inkOf({ width_pt, height_pt }: Page): Box {
  const full = inPoints({ width: mm(posterPaper.width_mm), height: mm(posterPaper.height_mm) });
  const times = Math.min(width_pt / full.width_pt, height_pt / full.height_pt);
  const ink = inPoints({ width: posterInk.width * times, height: posterInk.height * times });
  return { x_pt: (width_pt - ink.width_pt) / 2, y_pt: (height_pt - ink.height_pt) / 2, ...ink };
}

/** All that the tiles show together. */
function wholeOf({ tiles }: TileGrid): Box {
  const [first, last] = [tiles[0]?.shows, tiles.at(-1)?.shows];
  if (first === undefined || last === undefined) throw new Error('a poster without tiles');
  return {
    ...{ x_pt: first.x_pt, y_pt: first.y_pt },
    width_pt: last.x_pt + last.width_pt - first.x_pt,
    height_pt: last.y_pt + last.height_pt - first.y_pt,
  };
}

const mapHeight = mm(160);

function mapSheet(input: SheetInput, grid: TileGrid, whole: Box): Sheet {
  const { rows, columns, tiles } = grid;
  const counts = { rows: String(rows), columns: String(columns), count: String(tiles.length) };
  const scale = Math.min((safe.width - beside) / whole.width_pt, mapHeight / whole.height_pt);
  const head = {
    title: poster(input, 'title', { name: input.system.name }),
    kind: poster(input, 'tiles.map'),
    subject: poster(input, 'tiles.whole', counts),
  };
  return sideOf(
    input,
    head,
    <div style={{ display: 'flex', flexDirection: 'column', rowGap: mm(3) }}>
      <TestBar text={poster(input, 'tiles.measure')} />
      <Para text={poster(input, 'tiles.stick', counts)} />
      <Para text={poster(input, 'tiles.ladder')} />
      <AssemblyMap grid={grid} whole={whole} scale={scale} />
    </div>,
  );
}

/** Beside the map the numbers of rows, over it those of columns. */
const beside = mm(9);

type MapProps = { readonly grid: TileGrid; readonly whole: Box; readonly scale: number };

function AssemblyMap({ grid, whole, scale }: MapProps) {
  const picture = { width: whole.width_pt * scale, height: whole.height_pt * scale };
  const places = grid.tiles.map(({ row, column, shows }) => ({
    ...{ row, column },
    left: beside + (shows.x_pt - whole.x_pt) * scale,
    top: beside + (shows.y_pt - whole.y_pt) * scale,
    width: shows.width_pt * scale,
    height: shows.height_pt * scale,
  }));
  return (
    <div
      style={{
        display: 'flex',
        position: 'relative',
        width: picture.width + beside,
        height: picture.height + beside,
      }}
    >
      <div
        data-slot={slot}
        style={{ display: 'flex', position: 'absolute', left: beside, top: beside, ...picture }}
      />
      {places.map(({ row: _, column: __, ...box }) => (
        <div data-role="Artifact" style={{ ...cell, ...box }} />
      ))}
      {places
        .filter(({ row }) => row === 1)
        .map(({ column, left, width }) => (
          <div style={{ ...number, left, top: 0, width, height: beside }}>{String(column)}</div>
        ))}
      {places
        .filter(({ column }) => column === 1)
        .map(({ row, top, height }) => (
          <div style={{ ...number, left: 0, top, width: beside, height }}>{String(row)}</div>
        ))}
    </div>
  );
}

const cell = {
  display: 'flex',
  position: 'absolute',
  boxSizing: 'border-box',
  border: '3px solid black',
} as const;

const number = {
  display: 'flex',
  position: 'absolute',
  alignItems: 'center',
  justifyContent: 'center',
  fontSize: size.heading,
  fontWeight: weight.heavy,
  lineHeight: 1.1,
} as const;

function tileSheet(input: SheetInput, { rows, columns }: TileGrid, { row, column }: Tile): Sheet {
  const name = poster(input, 'tiles.tile', {
    ...{ row: String(row), rows: String(rows), column: String(column), columns: String(columns) },
    name: shorten(input.system.name, 48),
  });
  return {
    ...paperSizes[input.paper],
    title: poster(input, 'title', { name: input.system.name }),
    lang: 'en',
    root: (
      <Leaf height={safe.height}>
        <div style={{ display: 'flex', flexDirection: 'column', width: safe.width, height: safe.height }}>
          <div data-role="Artifact" style={{ display: 'flex', position: 'relative', ...window }}>
            <div data-slot={slot} style={{ display: 'flex', ...window }} />
            <div style={{ display: 'flex', position: 'absolute', left: 0, top: 0, ...window }}>
              <Shapes shapes={[crosses]} {...window} />
            </div>
          </div>
          <div style={{ display: 'flex', height: nameHeight, alignItems: 'flex-end' }}>
            <div data-role="H1" style={{ display: 'flex', fontSize: size.note, lineHeight: 1.1 }}>
              {name}
            </div>
          </div>
        </div>
      </Leaf>
    ),
  };
}

/** In the middle of every overlap, so that neighbours bear the same ones. */
const arm = mm(4);
const crosses = {
  d: [overlap / 2, window.width - overlap / 2]
    .flatMap((x) =>
      [overlap / 2, window.height - overlap / 2].map(
        (y) => `M${x - arm} ${y}L${x + arm} ${y}M${x} ${y - arm}L${x} ${y + arm}`,
      ),
    )
    .join(''),
  paint: { stroke: 'black', width: 2 },
} as const;
