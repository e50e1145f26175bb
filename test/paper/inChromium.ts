import { readFile } from 'node:fs/promises';
import { createRequire } from 'node:module';
import type { Browser } from 'playwright-core';
import { fontSources } from '../../src/paper/fonts.ts';
import { packFile, packNamed } from '../../src/paper/packs.ts';
import type { Placed } from './placed.ts';

const packages = createRequire(import.meta.url);

/**
 * Lays texts out in Chromium, each on a line of its own with `unicode-bidi: plaintext` and set at the left, in the very
 * font files of the press and in their order, and tells where each of its letters stands. The press does not draw
 * brackets of Chinese and Japanese together, so Chromium is told not to.
 */
export async function placedInChromium(
  browser: Browser,
  texts: readonly { readonly text: string; readonly packs: readonly string[] }[],
): Promise<readonly (readonly Placed[])[]> {
  const base = fontSources.filter((font) => font.weight === 'text').map(({ name, file }) => ({ name, file }));
  const more = [...new Set(texts.flatMap(({ packs }) => packs))].map((name) => {
    return { name, file: packFile(packNamed(name), 'text') };
  });
  const faces = await Promise.all([...base, ...more].map(faceRule));
  const families = ({ packs }: { packs: readonly string[] }) =>
    [...base.map(({ name }) => name), ...packs].map((name) => `'${name}'`).join(',');
  const lines = texts.map((each) => `<p style="font-family:${families(each)}">${escaped(each.text)}</p>`);
  const page = await browser.newPage();
  await page.setContent(
    `<style>${faces.join('')} p{font-size:100px;white-space:pre;unicode-bidi:plaintext;text-align:left;margin:0;` +
      `width:max-content;line-height:2;text-spacing-trim:space-all}</style><body style="margin:0">${lines.join('')}</body>`,
  );
  await page.evaluate(async () => {
    await Promise.all([...document.fonts].map((font) => font.load()));
    await document.fonts.ready;
  });
  const placed = await page.evaluate(() => {
    const graphemes = new Intl.Segmenter('en', { granularity: 'grapheme' });
    return [...document.querySelectorAll('p')].map((line) => {
      const text = line.firstChild;
      if (!text?.textContent) throw new Error('A line without text.');
      const from = line.getBoundingClientRect().left;
      return [...graphemes.segment(text.textContent)].map(({ segment, index }) => {
        const range = document.createRange();
        range.setStart(text, index);
        range.setEnd(text, index + segment.length);
        const rects = [...range.getClientRects()];
        const left = Math.min(...rects.map((rect) => rect.left)) - from;
        const right = Math.max(...rects.map((rect) => rect.right)) - from;
        return { text: segment, left: left / 100, right: right / 100 };
      });
    });
  });
  await page.close();
  return placed;
}

async function faceRule({ name, file }: { name: string; file: string }): Promise<string> {
  const bytes = await readFile(packages.resolve(file));
  return `@font-face{font-family:'${name}';src:url(data:font/woff;base64,${bytes.toString('base64')})}`;
}

function escaped(text: string): string {
  return text.replace(/&/g, '&amp;').replace(/</g, '&lt;');
}
