/** Lists that run over pages: nothing is lost, every page fits, and none has room for a row more. */
import { describe, expect, test } from 'vitest';
import type { Sheet } from '../../src/paper/layOut.ts';
import { mm, paperSizes } from '../../src/paper/measures.ts';
import { overflows } from '../../src/paper/overflows.ts';
import type { Page } from '../../src/paper/page.ts';
import { paged } from '../../src/sheets/paged.ts';
import { Leaf } from '../../src/sheets/parts/blocks.tsx';
import { Frame } from '../../src/sheets/parts/Frame.tsx';
import { Grid } from '../../src/sheets/parts/Grid.tsx';
import { press } from './laidOut.ts';

const rowHeight = mm(7.6);
const columns = [{ head: 'Who', width: mm(60) }];

function sheetOf(some: readonly string[]): Sheet {
  return {
    ...paperSizes.A4,
    ...{ title: 'A list', lang: 'en' },
    root: (
      <Leaf height={mm(254)}>
        <Frame>
          <Grid columns={columns} rows={some.map((row) => [row])} rowHeight={rowHeight} />
        </Frame>
      </Leaf>
    ),
  };
}

/** The rows on each page, by how many marks of rows it has, and how many layouts that took. */
async function counted(all: readonly string[]) {
  const pages: Page[] = [];
  let layouts = 0;
  const layOut = (sheet: Sheet): Promise<Page> => {
    layouts += 1;
    return press.layOutAnew(sheet);
  };
  const list = paged({ all, rowHeight, draw: ({ some }) => sheetOf(some) }, layOut);
  for await (const page of list) pages.push(page);
  return { pages, counts: pages.map(({ nodes }) => nodes.filter(({ entry }) => entry).length), layouts };
}

const names = Array.from({ length: 70 }, (_, at) => `Person ${at + 1}`);
const long = 'comes from far away and tells whoever listens of every tank on the way '.repeat(4);
const lists: Readonly<Record<string, readonly string[]>> = {
  'of one line each': names,
  'that begins with a high row': [long, ...names],
  'with high rows in it': names.map((name, at) => (at % 9 === 4 ? long : name)),
  'of high rows': names.slice(0, 30).map((name) => `${name} ${long}`),
};

describe('a list', () => {
  test.each(Object.keys(lists))(
    '%s fills its pages',
    async (key) => {
      const all = lists[key] ?? [];
      const { pages, counts } = await counted(all);
      expect(counts.reduce((sum, count) => sum + count, 0)).toBe(all.length);
      let from = 0;
      for (const [at, page] of pages.entries()) {
        const count = counts[at] ?? 0;
        expect(overflows(page)).toEqual([]);
        if (from + count < all.length) {
          const fuller = await press.layOutAnew(sheetOf(all.slice(from, from + count + 1)));
          expect(overflows(fuller).length, `one more on page ${at + 1}`).toBeGreaterThan(0);
        }
        from += count;
      }
    },
    60_000,
  );

  test('of equal rows is laid out once a page, but for a try with one row', async () => {
    const { pages, layouts } = await counted(names);
    expect(pages.length).toBeGreaterThan(2);
    expect(layouts).toBe(pages.length + 1);
  });

  test('keeps blank rows to write in, as many as can stand below each other', async () => {
    const { counts } = await counted([...names.slice(0, 20), ...Array.from({ length: 60 }, () => '')]);
    expect(counts.reduce((sum, count) => sum + count, 0)).toBe(80);
    expect(Math.max(...counts)).toBeLessThan(mm(254) / rowHeight);
  });

  test('without rows is one page', async () => {
    expect((await counted([])).counts).toEqual([0]);
  });
});
