import { getDocument } from 'pdfjs-dist/legacy/build/pdf.mjs';
import { beforeAll, expect, it } from 'vitest';
import { paperSizes } from '../../src/paper/measures.ts';
import { nodePress } from '../../src/paper/node.ts';
import type { Page } from '../../src/paper/page.ts';
import type { Press } from '../../src/paper/press.ts';

type Mark = {
  readonly title: string;
  readonly page: number;
  readonly top: number;
  readonly items: readonly Mark[];
};

let press: Press;
beforeAll(async () => {
  press = await nodePress();
});

type Heading = readonly [level: 'H1' | 'H2' | 'H3', text: string];

function pageOf(headings: readonly Heading[]): Promise<Page> {
  const root = (
    <div style={{ display: 'flex', flexDirection: 'column', width: '100%', height: '100%', padding: 100 }}>
      {headings.map(([level, text]) => (
        <div data-role={level} style={{ display: 'flex', height: 200 }}>
          <span style={{ display: 'flex' }}>{text}</span>
        </div>
      ))}
    </div>
  );
  return press.layOut({ ...paperSizes.A4, title: 'T', lang: 'en', root });
}

/** The bookmarks as a viewer shows them. */
async function marksOf(pages: readonly Page[]): Promise<readonly Mark[]> {
  const reading = getDocument({ data: await press.toPdf({ pages, title: 'T', lang: 'en' }), verbosity: 0 });
  const document = await reading.promise;
  type Items = Awaited<ReturnType<typeof document.getOutline>>;
  const read = async (items: Items): Promise<readonly Mark[]> => {
    const marks: Mark[] = [];
    for (const { title, dest, items: inside } of items ?? []) {
      if (!Array.isArray(dest)) throw new Error(`${title} leads nowhere`);
      const page = await document.getPageIndex(dest[0]);
      marks.push({ title, page, top: Math.round(Number(dest[3])), items: await read(inside) });
    }
    return marks;
  };
  const marks = await read(await document.getOutline());
  await reading.destroy();
  return marks;
}

it('are the headings of all pages, the minor ones under the major, each leading to its place', async () => {
  const pages = [
    await pageOf([
      ['H1', 'Łódź big tank'],
      ['H2', 'Feed'],
      ['H3', 'Packets'],
      ['H2', 'Water'],
    ]),
    // The head of the first page again, which needs no second bookmark.
    await pageOf([
      ['H1', 'Łódź big tank'],
      ['H2', 'Steps'],
    ]),
  ];
  const top = (row: number) => Math.round(841.89 - ((100 + 200 * row) * 72) / 254);
  const leaf = (title: string, page: number, row: number, items: readonly Mark[] = []): Mark => {
    return { title, page, top: top(row), items };
  };
  expect(await marksOf(pages)).toEqual([
    leaf('Łódź big tank', 0, 0, [
      leaf('Feed', 0, 1, [leaf('Packets', 0, 2)]),
      leaf('Water', 0, 3),
      leaf('Steps', 1, 1),
    ]),
  ]);
});

it('are left out where there is one page, or nothing to lead to', async () => {
  expect(await marksOf([await pageOf([['H1', 'One']])])).toEqual([]);
  expect(await marksOf([await pageOf([]), await pageOf([])])).toEqual([]);
});
