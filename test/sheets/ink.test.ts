import { Resvg } from '@resvg/resvg-js';
import { expect, test } from 'vitest';
import type { Page } from '../../src/paper/page.ts';
import { allSheets } from '../../src/sheets/allSheets.ts';
import { content, inputOf, press } from './laidOut.ts';

/** The share of a page that ink covers, in per cent; grey counts as so much of black. */
function cover_pct(page: Page): number {
  const size = { fitTo: { mode: 'width', value: 630 }, font: { loadSystemFonts: false } } as const;
  const { pixels } = new Resvg(press.toSvg(page), size).render();
  let dark = 0;
  for (let i = 0; i < pixels.length; i += 4) {
    const [red = 0, green = 0, blue = 0, alpha = 0] = pixels.subarray(i, i + 4);
    dark += ((255 - (red + green + blue) / 3) * alpha) / 255;
  }
  return (100 * dark) / 255 / (pixels.length / 4);
}

function mean(values: readonly number[]): number {
  return values.reduce((all, one) => all + one, 0) / values.length;
}

/** The larger posters have the ink of the smallest, larger. */
const larger = /^wall-poster-(?!A3$)/;

for (const id of ['hollow-lane-ibc', 'room-seven-totes'])
  test(`ink covers less than 5 % of the sheets of ${id}, on the average of sheets, and a tenth of no page`, async () => {
    const of = content.systems.find((system) => system.id === id);
    if (of === undefined) throw new Error(`no system ${id}`);
    const input = inputOf(of.system);
    const sheets: number[] = [];
    for (const kind of allSheets.filter((one) => one.fits(input) === 'yes' && !larger.test(one.id))) {
      const pages: number[] = [];
      for await (const page of kind.pages(input, press.layOut)) pages.push(cover_pct(page));
      expect(Math.max(...pages), kind.id).toBeLessThan(10);
      sheets.push(mean(pages));
    }
    expect(sheets.length).toBeGreaterThan(8);
    expect(mean(sheets)).toBeLessThan(5);
    expect(mean(sheets)).toBeGreaterThan(1);
  });
