import { spawnSync } from 'node:child_process';
import { mkdtemp, readFile, rm, writeFile } from 'node:fs/promises';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import type { Browser, Page as Tab } from 'playwright-core';
import { afterAll, beforeAll, describe, expect, test } from 'vitest';
import type { Page } from '../../src/paper/page.ts';
import { allSheets } from '../../src/sheets/allSheets.ts';
import { openBrowser } from '../browser.ts';
import { content, inputOf, press } from '../sheets/laidOut.ts';

const dpi = 150;
/**
 * The mean difference of grey, of 255, in one tile of 32 by 32 pixels. Edges of letters differ from raster to raster,
 * and poppler draws thin lines a whole pixel wide; a word that is lost makes 70.
 */
const most = { browser: 12, poppler: 40 };

let browser: Browser;
let tab: Tab;
let home: string;
beforeAll(async () => {
  browser = await openBrowser();
  tab = await browser.newPage();
  home = await mkdtemp(join(tmpdir(), 'bedfirst-agree-'));
});
afterAll(async () => {
  await browser.close();
  await rm(home, { recursive: true });
});

/** Some page with drawings, letters of all sizes, hatching, a grid. */
async function someOf(id: string, system: string): Promise<Page> {
  const kind = allSheets.find((one) => one.id === id);
  const of = content.systems.find((one) => one.id === system);
  if (!kind || !of) throw new Error(`no ${id} of ${system}`);
  for await (const page of kind.pages(inputOf(of.system, of.sheet.paper, of.sheet.units), press.layOut))
    return page;
  throw new Error(`${id} has no page`);
}

type Pictures = Readonly<Record<'svg' | 'png' | 'pdf', string | null>>;

async function picturesOf(page: Page): Promise<Pictures> {
  const png = Buffer.from(await press.toPng(page, { dpi })).toString('base64');
  return {
    svg: `data:image/svg+xml;base64,${Buffer.from(press.toSvg(page)).toString('base64')}`,
    png: `data:image/png;base64,${png}`,
    pdf: await asPoppler(await press.toPdf({ pages: [page], title: 'T', lang: 'en' }), page),
  };
}

/** The PDF as another viewer shows it, at this very size; null where there is none on this machine. */
async function asPoppler(pdf: Uint8Array, { width_pt, height_pt }: Page): Promise<string | null> {
  const [from, to] = [join(home, 'one.pdf'), join(home, 'one')];
  await writeFile(from, pdf);
  const size = ['-scale-to-x', String(pixels(width_pt)), '-scale-to-y', String(pixels(height_pt))];
  const { error } = spawnSync('pdftoppm', [...size, '-png', '-singlefile', from, to]);
  return error ? null : `data:image/png;base64,${(await readFile(`${to}.png`)).toString('base64')}`;
}

function pixels(length_pt: number): number {
  return Math.round((length_pt * dpi) / 72);
}

type Pair = { readonly one: string; readonly other: string; readonly width: number; readonly height: number };

/** In the browser: both pictures on canvases of the same size, compared tile by tile. */
async function worstTile({ one, other, width, height }: Pair): Promise<number> {
  const draw = async (url: string, width: number, height: number): Promise<Uint8ClampedArray> => {
    const image = new Image();
    image.src = url;
    await image.decode();
    const canvas = new OffscreenCanvas(width, height);
    const pen = canvas.getContext('2d');
    if (!pen) throw new Error('no canvas');
    pen.fillStyle = 'white';
    pen.fillRect(0, 0, width, height);
    pen.drawImage(image, 0, 0, width, height);
    return pen.getImageData(0, 0, width, height).data;
  };
  const [a, b] = [await draw(one, width, height), await draw(other, width, height)];
  let worst = 0;
  for (let top = 0; top < height; top += 32) {
    for (let left = 0; left < width; left += 32) {
      let sum = 0;
      let count = 0;
      for (let y = top; y < Math.min(top + 32, height); y += 1) {
        for (let x = left; x < Math.min(left + 32, width); x += 1) {
          const at = 4 * (y * width + x);
          sum += Math.abs((a[at] ?? 0) - (b[at] ?? 0));
          count += 1;
        }
      }
      worst = Math.max(worst, sum / count);
    }
  }
  return worst;
}

function differ(one: string, other: string, { width_pt, height_pt }: Page): Promise<number> {
  return tab.evaluate(worstTile, { one, other, width: pixels(width_pt), height: pixels(height_pt) });
}

const sheets = [
  ['care-card', 'hollow-lane-ibc'],
  ['system-drawing', 'stair-wall'],
  ['water-and-feed-log', 'kitchen-frame'],
  ['wall-poster-A3', 'old-tank-as-sump'],
] as const;

describe('what is drawn is the same in every form, in the worst tile and not only on average', () => {
  test.each(sheets)('%s of %s', async (id, system) => {
    const page = await someOf(id, system);
    const { svg, png, pdf } = await picturesOf(page);
    if (svg === null || png === null) throw new Error('no picture');
    expect(await differ(svg, png, page)).toBeLessThan(most.browser);
    if (pdf !== null) expect(await differ(pdf, png, page)).toBeLessThan(most.poppler);
  });

  test('and a single lost mark is seen', async () => {
    const page = await someOf('care-card', 'hollow-lane-ibc');
    const figure = page.items.findIndex((item) => item.kind === 'words' && item.text.trim() === 'Every');
    const { png } = await picturesOf(page);
    const { svg, pdf } = await picturesOf({ ...page, items: page.items.filter((_, at) => at !== figure) });
    if (svg === null || png === null || figure < 0) throw new Error('nothing to lose');
    expect(await differ(svg, png, page)).toBeGreaterThan(1.5 * most.poppler);
    if (pdf !== null) expect(await differ(pdf, png, page)).toBeGreaterThan(1.2 * most.poppler);
  });
});
