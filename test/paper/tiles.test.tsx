import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { maySee } from '../../src/paper/edges.ts';
import { onPaper } from '../../src/paper/enlarge.ts';
import { mm, pointsPerUnit, wallSizes } from '../../src/paper/measures.ts';
import { nodePress } from '../../src/paper/node.ts';
import { overflows } from '../../src/paper/overflows.ts';
import type { Clip, Item, Page } from '../../src/paper/page.ts';
import { tagPage } from '../../src/paper/tags.ts';
import { inlaid, tileGrid } from '../../src/paper/tiles.ts';
import { denseSheet } from './denseSheet.tsx';

const press = await nodePress();
const large = onPaper(await press.layOut(denseSheet()), wallSizes.A2);
const window = { width_pt: mm(190) * pointsPerUnit, height_pt: mm(246) * pointsPerUnit };
const overlap_pt = mm(10) * pointsPerUnit;
const all = { x_pt: 0, y_pt: 0, width_pt: large.width_pt, height_pt: large.height_pt };

/** A sheet with a hole of the window's size. */
async function frame(): Promise<Page> {
  return press.layOut({
    ...{ width_mm: 210, height_mm: 297, title: 'A tile', lang: 'en' },
    root: (
      <div
        style={{ display: 'flex', flexDirection: 'column', width: '100%', height: '100%', padding: mm(10) }}
      >
        <div data-role="P" style={{ display: 'flex', height: mm(8), fontSize: 30 }}>
          before
        </div>
        <div
          data-role="Artifact"
          data-slot="part"
          style={{ display: 'flex', width: mm(190), height: mm(246) }}
        />
        <div data-role="P" style={{ display: 'flex', fontSize: 30 }}>
          after
        </div>
      </div>
    ),
  });
}

/** Where a thing begins, whatever it is. */
function startOf(item: Item): readonly [number, number] {
  if (item.kind === 'words') return [item.x_pt, item.baseline_pt];
  const [first] = item.path;
  return first === undefined || first[0] === 'Z' ? [0, 0] : [first[1], first[2]];
}

function outermost(clip: Clip | null): Clip | null {
  return clip?.within ? outermost(clip.within) : clip;
}

describe('a page on larger paper', () => {
  test('is as large as fits, in the middle, and every line breaks where it broke', async () => {
    const page = await press.layOut(denseSheet());
    const words = (of: Page) => of.items.flatMap((item) => (item.kind === 'words' ? [item.text] : []));
    expect(words(large)).toEqual(words(page));
    const times = Math.min(large.width_pt / page.width_pt, large.height_pt / page.height_pt);
    const [a, b] = [
      page.items.find((one) => one.kind === 'words'),
      large.items.find((one) => one.kind === 'words'),
    ];
    if (a?.kind !== 'words' || b?.kind !== 'words') throw new Error('a page without words');
    expect(b.size_pt / a.size_pt).toBeCloseTo(times, 3);
    expect(b.width_pt / a.width_pt).toBeCloseTo(times, 3);
    const middle = (large.width_pt - page.width_pt * times) / 2;
    expect(b.x_pt).toBeCloseTo(a.x_pt * times + middle, 2);
    const strokes = (of: Page) =>
      of.items.flatMap((item) => (item.kind === 'shape' && item.stroke ? [item.stroke] : []));
    strokes(large).forEach((stroke, i) => {
      expect(stroke.width_pt).toBeCloseTo((strokes(page)[i]?.width_pt ?? 0) * times, 2);
    });
    expect(strokes(large).length).toBeGreaterThan(0);
  });

  test('has the size of its paper to a tenth of a millimetre', () => {
    expect(large.width_pt * (25.4 / 72)).toBeCloseTo(420, 1);
    expect(large.height_pt * (25.4 / 72)).toBeCloseTo(594, 1);
  });
});

describe('a grid of tiles', () => {
  const length = fc.double({ min: 50, max: 4000, noNaN: true });

  test('shows every point, neighbours sharing the overlap, with no row or column too many', () => {
    fc.assert(
      fc.property(length, length, (width_pt, height_pt) => {
        const part = { x_pt: 30, y_pt: 40, width_pt, height_pt };
        const { rows, columns, tiles } = tileGrid(part, window, overlap_pt);
        expect(tiles).toHaveLength(rows * columns);
        const xs = tiles.filter(({ row }) => row === 1).map(({ shows }) => shows.x_pt);
        expect(xs[0]).toBeLessThanOrEqual(30 + 1e-6 * width_pt);
        expect((xs.at(-1) ?? 0) + window.width_pt).toBeGreaterThanOrEqual(30 + width_pt * (1 - 1e-6));
        xs.slice(1).forEach((x, i) => {
          expect((xs[i] ?? 0) + window.width_pt - x).toBeCloseTo(overlap_pt, 6);
        });
        // One column less would not do.
        const fewer = (columns - 1) * (window.width_pt - overlap_pt) + overlap_pt;
        if (columns > 1) expect(fewer).toBeLessThan(width_pt * (1 + 1e-5));
      }),
    );
  });

  test('counts rows and columns from 1, row by row', () => {
    const { tiles } = tileGrid(all, window, overlap_pt);
    expect(tiles.map(({ row, column }) => `${row}.${column}`)).toEqual([
      '1.1',
      '1.2',
      '1.3',
      '2.1',
      '2.2',
      '2.3',
      '3.1',
      '3.2',
      '3.3',
    ]);
  });

  test('refuses an overlap that leaves nothing of a tile', () => {
    expect(() => tileGrid(all, window, window.width_pt)).toThrow('overlap');
  });
});

describe('a part of a page in the slot of a frame', () => {
  test('is at its own size, moved as one, and cut at the slot', async () => {
    const empty = await frame();
    const slot = empty.nodes.findIndex((node) => node.slot === 'part');
    const room = empty.nodes[slot]?.box;
    for (const { shows } of tileGrid(all, window, overlap_pt).tiles) {
      const page = inlaid(empty, 'part', { page: large, shows, heard: 'no' });
      const own = page.items.filter((item) => item.node === slot);
      expect(own.length).toBeGreaterThan(0);
      for (const item of own) {
        const clip = outermost(item.clip);
        expect(clip?.path[0]).toEqual(['M', room?.x_pt, room?.y_pt]);
      }
      const sizes = new Set(own.flatMap((item) => (item.kind === 'words' ? [item.size_pt] : [])));
      const wanted = new Set(large.items.flatMap((item) => (item.kind === 'words' ? [item.size_pt] : [])));
      expect([...sizes].every((size) => wanted.has(size))).toBe(true);
    }
  });

  test('leaves nothing out: all tiles together bear every item, each where the page has it', async () => {
    const empty = await frame();
    const slot = empty.nodes.findIndex((node) => node.slot === 'part');
    const room = empty.nodes[slot]?.box ?? { x_pt: 0, y_pt: 0 };
    const found = new Set<string>();
    const keyOf = (item: Item, [x, y]: readonly [number, number]) =>
      `${item.kind} ${item.kind === 'words' ? item.text : item.path.length} ${x.toFixed(1)} ${y.toFixed(1)}`;
    for (const { shows } of tileGrid(all, window, overlap_pt).tiles) {
      const page = inlaid(empty, 'part', { page: large, shows, heard: 'no' });
      for (const item of page.items.filter(({ node }) => node === slot)) {
        const [x, y] = startOf(item);
        found.add(keyOf(item, [x - room.x_pt + shows.x_pt, y - room.y_pt + shows.y_pt]));
      }
    }
    // What its own clip hides is on no tile either.
    const lost = large.items
      .filter((item) => maySee(item, large))
      .filter((item) => {
        const [x, y] = startOf(item);
        // Rounding to thousandths may turn a digit.
        return ![0, 0.05, -0.05].some((right) =>
          [0, 0.05, -0.05].some((down) => found.has(keyOf(item, [x + right, y + down]))),
        );
      });
    expect(lost.map((item) => (item.kind === 'words' ? item.text : 'a shape'))).toEqual([]);
  });

  test('is painted where the slot stands, over what comes before and under what comes after', async () => {
    const page = inlaid(await frame(), 'part', { page: large, shows: all, heard: 'no' });
    const texts = page.items.flatMap((item) => (item.kind === 'words' ? [item.text.trim()] : []));
    expect(texts[0]).toBe('before');
    expect(texts.at(-1)).toBe('after');
    expect(texts.length).toBeGreaterThan(50);
  });

  test('is only looked at, or heard with all its parts in their order', async () => {
    const empty = await frame();
    const looked = tagPage(inlaid(empty, 'part', { page: large, shows: all, heard: 'no' }));
    expect(looked.tags.map(({ role }) => role)).toEqual(tagPage(empty).tags.map(({ role }) => role));
    const heardFrame = {
      ...empty,
      nodes: empty.nodes.map((node) => (node.slot === 'part' ? { ...node, role: null } : node)),
    };
    const heard = tagPage(inlaid(heardFrame, 'part', { page: large, shows: all, heard: 'yes' }));
    expect(heard.faults).toEqual(tagPage(large).faults);
    const roles = heard.tags.map(({ role }) => role);
    expect(roles.slice(2)).toEqual(tagPage(large).tags.map(({ role }) => role));
  });

  test('is no overflow where it is cut: the frame’s own words still are', async () => {
    const [tile] = tileGrid(all, window, overlap_pt).tiles;
    if (tile === undefined) throw new Error('no tile');
    const page = inlaid(await frame(), 'part', { page: large, shows: tile.shows, heard: 'no' });
    expect(overflows(page)).toEqual([]);
    const narrow = {
      ...page,
      nodes: page.nodes.map((node) =>
        node.text === 'after' ? { ...node, box: { ...node.box, width_pt: 5 } } : node,
      ),
    };
    expect(overflows(narrow).map(({ text }) => text)).toEqual(['after']);
  });

  test('changes nothing of a frame that has no such slot', async () => {
    const empty = await frame();
    expect(inlaid(empty, 'other', { page: large, shows: all, heard: 'no' })).toBe(empty);
  });
});
