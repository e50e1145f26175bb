import fc from 'fast-check';
import type { Browser } from 'playwright-core';
import { afterAll, beforeAll, describe, expect, it } from 'vitest';
import { draw, layOut } from '../../src/paper/layOut.ts';
import { settle } from '../../src/paper/settle.ts';
import { mm, pointsPerUnit } from '../../src/paper/measures.ts';
import { nodeParts, nodePress, type Parts } from '../../src/paper/node.ts';
import { overflows } from '../../src/paper/overflows.ts';
import type { Page, Words } from '../../src/paper/page.ts';
import type { Press } from '../../src/paper/press.ts';
import { openBrowser } from '../browser.ts';
import { placedInChromium } from './inChromium.ts';
import { oneBox } from './oneBox.tsx';
import { differences, fromLeft, type Placed, placedByUs, sameGroups } from './placed.ts';
import { readPdf } from './readPdf.ts';
import { scriptNames } from './scriptNames.ts';

let parts: Parts;
let press: Press;
let browser: Browser;
beforeAll(async () => {
  [parts, press, browser] = await Promise.all([nodeParts(), nodePress(), openBrowser()]);
});
afterAll(async () => {
  await browser?.close();
});

/** Each name alone, with a number, with a bracket, and between number and Latin. */
const named = scriptNames.flatMap(({ name }) => {
  const [first = ''] = name.split(' ');
  return [
    name,
    `${name} 12`,
    `${first} (Tank 3) ${first}`,
    `Tank ${first} [7]`,
    `${first} 12.5, 7 kg Tank ${first}`,
  ];
});

/** What is hard: marks, ligatures, digits of two kinds, signs between letters of two directions, joiners. */
const hard = [
  'בֹּקֶר טוֹב לַדָּגִים',
  'حَوْضُ السَّمَكِ',
  'الأسماك الطازجة ٣٥ لا ٤٫٥',
  'لالا 5% +7',
  'سعر 3/4 (ب) [b]',
  'סעיף 3-4 (א) [b] {c}',
  'Tank דגים 12 (קטן), 7',
  'Tank 3 דגים (12) قصير 4',
  'دلو 2 דלי 3 pail 4',
  'می\u200cخواهم ماهی',
  '10% דגים, $5 – fish – דגים!',
  'A1 حوض 3/4 b',
  '(דגים)',
  'क\u094d\u200dष क\u094d\u200cष',
  '「養魚」（一号）。',
];

function wordsOf(page: Page): Words[] {
  return page.items.filter((item) => item.kind === 'words');
}

/** In parts of the type size: Chromium rounds to a 64th of a pixel, at 100 pixels. */
const same_em = 0.002;
/** Chromium does not kern the signs between numbers in Hebrew. */
const kerned_em = 0.05;
/** Chromium sets a space in the first font, the press in that of the word before it. */
const space_em = 0.06;

/** The text of a page as a viewer gives it, without the ends of lines. */
async function readText(page: Page): Promise<string> {
  const { pages } = await readPdf(await press.toPdf({ pages: [page], title: 'T', lang: 'en' }));
  return normal((pages[0]?.text ?? '').replace(/\s+/g, ' ').trim());
}

/** Viewers leave joiners out where they are signs of their own. */
const normal = (text: string) => text.normalize('NFC').replace(/[\u200c\u200d]/g, '');

describe('a line of any script', () => {
  it.each(scriptNames)('is as wide as the layout engine holds it to be: $script', async ({ name }) => {
    const sheet = oneBox(`${name} 12 (Tank) ${name}`);
    const settled = await settle(sheet.root);
    const type = await parts.types.typeFor(settled.paragraphs.values());
    const { found } = await draw(sheet, settled, type, parts.engine);
    const pieces = found.filter((each) => each.kind !== 'shape');
    expect(pieces.length).toBeGreaterThan(0);
    for (const { text, weight, size_pt, width_pt } of pieces) {
      const own_pt = type.width(text, weight, size_pt);
      expect(Math.abs(own_pt - width_pt) / pointsPerUnit, text).toBeLessThan(0.02);
    }
  });

  it.each(scriptNames)('is read from the PDF as it was written: $script', async ({ name }) => {
    const [first = ''] = name.split(' ');
    for (const text of [name, `${name} 12`, `Tank ${first} [7]`, `${first} (Tank 3) ${first}, 12.5: 7 kg`]) {
      for (const fontWeight of [400, 800]) {
        expect(await readText(await press.layOut(oneBox(text, { fontWeight })))).toBe(normal(text));
      }
    }
  });

  it.each(scriptNames)('stays in its box when it is long, and loses nothing: $script', async ({ name }) => {
    const long = Array.from({ length: 30 }, () => name).join(' ');
    const page = await press.layOut(oneBox(long, { width: mm(60), wordBreak: 'break-word' }));
    expect(overflows(page)).toEqual([]);
    expect(new Set(wordsOf(page).map((words) => words.baseline_pt)).size).toBeGreaterThan(5);
    expect((await readText(page)).replace(/\s/g, '')).toBe(normal(long).replace(/\s/g, ''));
  });

  it.each(hard)('is read from the PDF as it was written: %s', async (text) => {
    expect(await readText(await press.layOut(oneBox(text)))).toBe(normal(text));
  });

  it('has its letters in the order and at the places of Chromium’s own text layout', async () => {
    const texts = [...named, ...hard];
    const pages = await Promise.all(texts.map((text) => layOut(oneBox(text), parts.types, parts.engine)));
    const theirs = await placedInChromium(
      browser,
      texts.map((text, at) => ({ text, packs: pages[at]?.packs ?? [] })),
    );
    for (const [at, text] of texts.entries()) {
      const page = pages[at];
      if (!page) throw new Error(`No page of ${text}`);
      const groups = sameGroups(
        fromLeft(placedByUs(page, parts.types.typeOf(page))),
        fromLeft(theirs[at] ?? []),
      );
      for (const { text: letters, width, gaps } of differences(groups)) {
        const [own = 0, their = 0] = gaps;
        const spaced = Math.max(own, their) > 0.15;
        const kerned = /[-/]/.test(letters);
        expect(Math.abs(width), `width of ${letters} in ${text}`).toBeLessThan(kerned ? kerned_em : same_em);
        expect(Math.abs(own - their), `gap before ${letters} in ${text}`).toBeLessThan(
          spaced ? space_em : same_em,
        );
      }
    }
  }, 60_000);

  it('is read as it was written, and ordered as in Chromium, whatever is mixed in it', async () => {
    const bits =
      'שלום דגים א حوض سمك لا abc Tank x 12 3.5 ٣٥ 7 ( ) [ ] , . : - / % + $ ! – " மீன் 鱼 さかな ปลา মাছ';
    const word = fc.array(fc.constantFrom(...bits.split(' ')), { minLength: 1, maxLength: 3 });
    const line = fc.array(word, { minLength: 1, maxLength: 6 });
    const mixed = fc.sample(line, 200).map((words) => words.map((word) => word.join('')).join(' '));
    const pages: Page[] = [];
    for (const text of mixed) pages.push(await layOut(oneBox(text), parts.types, parts.engine));
    const theirs = await placedInChromium(
      browser,
      mixed.map((text, at) => ({ text, packs: pages[at]?.packs ?? [] })),
    );
    for (const [at, text] of mixed.entries()) {
      const page = pages[at];
      if (!page) throw new Error(`No page of ${text}`);
      const read = wordsOf(page).map((words) => words.text);
      expect(read.join('').trim()).toBe(text.normalize('NFC'));
      const letters = (placed: readonly Placed[]) => fromLeft(placed).map((each) => each.text);
      const ours = placedByUs(page, parts.types.typeOf(page));
      expect(letters(ours).join(''), text).toBe(letters(theirs[at] ?? []).join(''));
    }
  }, 60_000);
});
