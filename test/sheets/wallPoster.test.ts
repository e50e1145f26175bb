import { PDFDocument, PDFName } from 'pdf-lib';
import { describe, expect, test } from 'vitest';
import { overflows } from '../../src/paper/overflows.ts';
import type { Page } from '../../src/paper/page.ts';
import { tagPage } from '../../src/paper/tags.ts';
import { allSheets } from '../../src/sheets/allSheets.ts';
import type { PaperName, SheetInput } from '../../src/sheets/sheet.ts';
import type { SheetKind } from '../../src/sheets/sheetKind.ts';
import { sheetPrint } from '../../src/sheets/sheetPrint.ts';
import { content, faultsOf, inputOf, press, textOf, wordsOf } from './laidOut.ts';

const per_mm = 72 / 25.4;
const posters = allSheets.filter(({ id }) => id.startsWith('wall-poster'));

function demo(id: string, paper: PaperName = 'A4'): SheetInput {
  const of = content.systems.find((one) => one.id === id);
  if (of === undefined) throw new Error(`no system ${id}`);
  return inputOf(of.system, paper, of.sheet.units);
}

function kindOf(id: string): SheetKind {
  const found = posters.find((one) => one.id === id);
  if (found === undefined) throw new Error(`no poster ${id}`);
  return found;
}

async function pagesOf(id: string, input: SheetInput): Promise<readonly Page[]> {
  const pages = [];
  for await (const page of kindOf(id).pages(input, press.layOut)) pages.push(page);
  return pages;
}

async function onlyPage(id: string, input: SheetInput): Promise<Page> {
  const [page, ...more] = await pagesOf(id, input);
  if (page === undefined || more.length > 0) throw new Error(`${id} is not one page`);
  return page;
}

function inOrder(text: string, parts: readonly string[]): void {
  let at = 0;
  for (const part of parts) {
    const found = text.indexOf(part, at);
    expect(found, `"${part}" after "${text.slice(Math.max(0, at - 40), at)}"`).toBeGreaterThanOrEqual(0);
    at = found + part.length;
  }
}

describe('the wall poster', () => {
  test('tells how the system works, then what to look at, then what to do', async () => {
    const text = textOf(await onlyPage('wall-poster-A2', demo('hollow-lane-ibc'))).replace(/\u00a0/g, ' ');
    inOrder(text, [
      ...['The big tank', 'Fish, at most', '12', 'Feed each day', '21', 'Water, lowest', '565'],
      ...['The way of the water', 'Pump', 'Pipe', 'Stone bed', 'Bell siphon', 'Return'],
      ...['Waste becomes food', 'Fish', 'Ammonia', 'Bacteria', 'Plants'],
      ...['When you pass', 'none gasping', 'Something wrong? Fetch an adult.', 'touch nothing wet'],
      ...['never alone at the water', 'Do not climb', 'Call', 'licensed electrician'],
    ]);
  });

  test('prints the plan’s own limits', async () => {
    const input = demo('hollow-lane-ibc');
    const words = wordsOf(await onlyPage('wall-poster-A3', input)).map((one) => one.text.trim());
    const figure = (key: string): number => input.plan.figures[key]?.value ?? Number.NaN;
    expect(words).toContain(String(Math.floor(figure('fishPlanned'))));
    expect(words).toContain(String(Math.floor(figure('feed_g_d'))));
    expect(words).toContain(String(Math.floor(figure('tankLow_mm') + 1e-6)));
  });

  test('says no number of fish and no feed where no source carries one', async () => {
    const input = demo('two-bathtubs');
    const text = textOf(await onlyPage('wall-poster-A3', input));
    expect(text).toContain('Ask the supplier how many.');
    expect(text).toContain('Ask the keeper');
  });

  test('tells children of no dose and no chemistry to add', async () => {
    for (const { id } of content.systems) {
      const text = textOf(await onlyPage('wall-poster-A2', demo(id)));
      expect(text, id).not.toMatch(/\bsalt\b|\bmedicine\b|\bdose\b|chlor|bicarbonate/i);
    }
  });

  test('has main words of 8 mm and more, told by small letters on A2 and by capitals on A3', async () => {
    // Letters are read from some 250 times their height: common practice, no source. 2 m want 8 mm.
    const main = ['Pump', 'Pipe', 'Return', 'Ammonia', 'Bacteria', 'Plants', 'Something'];
    // Of this face small letters are 0.496 and capitals 0.668 of the type size (its own OS/2 table).
    for (const [size, share] of [
      ['A3', 0.668],
      ['A2', 0.496],
      ['A1', 0.496],
    ] as const) {
      const words = wordsOf(await onlyPage(`wall-poster-${size}`, demo('hollow-lane-ibc')));
      for (const wanted of main) {
        const largest = Math.max(
          ...words.filter((one) => one.text.includes(wanted)).map((one) => one.size_pt),
        );
        expect((largest * share) / per_mm, `${wanted} on ${size}`).toBeGreaterThanOrEqual(8);
      }
    }
  });

  test('has the size of its paper, for ISO and for American presses', async () => {
    const sizes = { A3: [297, 420], A2: [420, 594], A1: [594, 841] } as const;
    for (const [size, [width, height]] of Object.entries(sizes)) {
      const page = await onlyPage(`wall-poster-${size}`, demo('drum-corner'));
      expect(page.width_pt / per_mm).toBeCloseTo(width, 1);
      expect(page.height_pt / per_mm).toBeCloseTo(height, 1);
    }
    const inches = await onlyPage('wall-poster-17x22', demo('drum-corner', 'Letter'));
    expect([inches.width_pt / 72, inches.height_pt / 72]).toEqual([17, 22]);
  });

  test('is offered in the sizes of the system’s own paper only', () => {
    const offered = (paper: PaperName) =>
      posters.filter((kind) => kind.fits(demo('drum-corner', paper)) === 'yes').map(({ id }) => id);
    expect(offered('A4')).toEqual(
      ['A3', 'A2', 'A1'].flatMap((size) => [`wall-poster-${size}`, `wall-poster-${size}-tiles`]),
    );
    expect(offered('Letter')).toHaveLength(6);
    expect(offered('Letter').join()).not.toContain('A3');
  });

  test.each(['A4', 'Letter'] as const)(
    'keeps its words apart and off the edges, on one page and in tiles for %s, and within reach of a screen reader',
    async (paper) => {
      for (const { id } of content.systems) {
        const input = demo(id, paper);
        for (const kind of posters.filter((one) => one.fits(input) === 'yes')) {
          const pages = await pagesOf(kind.id, input);
          expect(pages.flatMap(faultsOf), `${id} ${kind.id}`).toEqual([]);
          if (pages.length === 1) expect(pages.flatMap(overflows), `${id} ${kind.id}`).toEqual([]);
          expect(
            pages.flatMap((page) => tagPage(page).faults),
            `${id} ${kind.id}`,
          ).toEqual([]);
        }
      }
    },
    120_000,
  );

  test('numbers every station in the drawing as in the list', async () => {
    for (const { id } of content.systems) {
      const input = demo(id);
      const words = wordsOf(await onlyPage('wall-poster-A2', input)).map((one) => one.text.trim());
      input.plan.section.way.forEach((_, i) => {
        expect(words.filter((one) => one === String(i + 1)).length, `${id} ${i + 1}`).toBeGreaterThanOrEqual(
          2,
        );
      });
    }
  });

  test('cuts a name of 500 letters with a mark, and lays nothing on anything', async () => {
    const { system } = demo('hollow-lane-ibc');
    for (const name of ['W'.repeat(500), 'a wordy name '.repeat(38)]) {
      const input = inputOf({ ...system, name, place: name });
      const pages = [
        ...(await pagesOf('wall-poster-A2', input)),
        ...(await pagesOf('wall-poster-A2-tiles', input)),
      ];
      expect(pages.flatMap(faultsOf), name.slice(0, 20)).toEqual([]);
      expect(textOf(pages[0] as Page)).toContain('…');
    }
  });
});

describe('the poster in tiles', () => {
  test('begins with a map that says how many there are, and has each with its row and column', async () => {
    const [map, ...tiles] = await pagesOf('wall-poster-A2-tiles', demo('hollow-lane-ibc'));
    expect(map && textOf(map)).toContain('in 3 rows and 2 columns');
    expect(map && textOf(map)).toContain('6 tiles');
    expect(tiles.map((page) => /Row \d of 3, column \d of 2/.exec(textOf(page))?.[0])).toEqual(
      [1, 2, 3].flatMap((row) => [1, 2].map((column) => `Row ${row} of 3, column ${column} of 2`)),
    );
  });

  test('is at the size of the poster, with crosses 180 mm apart that neighbours share', async () => {
    const input = demo('hollow-lane-ibc');
    const poster = await onlyPage('wall-poster-A2', input);
    const [, first, second] = await pagesOf('wall-poster-A2-tiles', input);
    if (first === undefined || second === undefined) throw new Error('no tiles');
    const place = (page: Page, text: string) =>
      page.items.find((item) => item.kind === 'words' && item.text.startsWith(text));
    const [whole, part] = [place(poster, 'The '), place(first, 'The ')];
    if (whole?.kind !== 'words' || part?.kind !== 'words') throw new Error('no title');
    expect(part.size_pt).toBeCloseTo(whole.size_pt, 2);
    const crosses = (page: Page) => [...new Set(crossesOf(page))].sort((a, b) => a - b);
    const [left = 0, right = 0] = crosses(first);
    expect((right - left) / per_mm).toBeCloseTo(180, 1);
    // A word in the overlap: as far from the right crosses of one tile as from the left ones of the next.
    const [before, after] = [place(first, 'printed'), place(second, 'printed')];
    if (before?.kind !== 'words' || after?.kind !== 'words') throw new Error('no word in the overlap');
    expect(before.x_pt - right).toBeCloseTo(after.x_pt - (crosses(second)[0] ?? 0), 1);
  });

  test('bears a bar of 100 mm, and asks the printer not to scale it', async () => {
    const input = demo('hollow-lane-ibc');
    const kind = kindOf('wall-poster-A3-tiles');
    const pages = await pagesOf(kind.id, input);
    const lengths = (pages[0]?.items ?? []).flatMap((item) =>
      item.kind !== 'shape'
        ? []
        : item.path.flatMap((segment, i) => {
            const last = item.path[i - 1];
            if (segment[0] !== 'L' || last === undefined || last[0] === 'Z' || last[0] === 'C') return [];
            return [Math.hypot(segment[1] - last[1], segment[2] - last[2]) / per_mm];
          }),
    );
    expect(Math.min(...lengths.map((one) => Math.abs(one - 100)))).toBeLessThan(0.05);
    const { catalog } = await PDFDocument.load(await press.toPdf(sheetPrint(kind, input, pages, '{}')));
    expect(catalog.lookup(PDFName.of('ViewerPreferences'))?.toString()).toContain('/PrintScaling /None');
  });

  test('is read aloud once, with the map, and not again from tile to tile', async () => {
    const [map, ...tiles] = await pagesOf('wall-poster-A2-tiles', demo('hollow-lane-ibc'));
    const heard = (page: Page | undefined): string => {
      if (page === undefined) return '';
      const { marks } = tagPage(page);
      return page.items
        .flatMap((item, i) => (item.kind === 'words' && marks[i] !== null ? [item.text] : []))
        .join(' ')
        .replace(/\s+/g, ' ');
    };
    expect(heard(map)).toContain('Bacteria');
    expect(heard(map)).toContain('Fetch an adult');
    for (const tile of tiles)
      expect(heard(tile)).toMatch(/^\s*Row \d of 3, column \d of 2: The big tank\s*$/);
  });
});

/** Where the upright arms of the crosses stand: lines of 8 mm. */
function crossesOf(page: Page): readonly number[] {
  return page.items.flatMap((item) => {
    if (item.kind !== 'shape') return [];
    return item.path.flatMap((segment, i) => {
      const last = item.path[i - 1];
      if (segment[0] !== 'L' || last === undefined || last[0] === 'Z' || last[0] === 'C') return [];
      const upright = Math.abs(segment[1] - last[1]) < 0.01;
      const long = Math.abs(Math.abs(segment[2] - last[2]) / per_mm - 8) < 0.05;
      return upright && long ? [Math.round(segment[1] * 100) / 100] : [];
    });
  });
}
