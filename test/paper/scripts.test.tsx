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
import { type Placed, placedInChromium } from './inChromium.ts';
import { oneBox } from './oneBox.tsx';
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
const texts = scriptNames.flatMap(({ name }) => {
  const [first = ''] = name.split(' ');
  return [
    name,
    `${name} 12`,
    `${first} (Tank 3) ${first}`,
    `Tank ${first} [7]`,
    `${first} 12.5, 7 kg Tank ${first}`,
  ];
});

function wordsOf(page: Page): Words[] {
  return page.items.filter((item) => item.kind === 'words');
}

/** Where our own letters stand: each cluster with its text, in parts of the type size. */
function placedByUs(page: Page): Placed[] {
  const type = parts.types.typeOf(page);
  const words = wordsOf(page);
  const start_pt = Math.min(...words.map((each) => each.x_pt));
  return words.flatMap(({ text, weight, direction, x_pt, size_pt }) => {
    let x = (x_pt - start_pt) / size_pt;
    return type.shape(text, weight, direction).flatMap((run) => {
      const clusters = new Map<number, { text: string; left: number; right: number }>();
      for (const glyph of run.glyphs) {
        const known = clusters.get(glyph.cluster) ?? { text: '', left: x, right: x };
        x += glyph.advance / run.face.unitsPerEm;
        clusters.set(glyph.cluster, { ...known, text: known.text + glyph.text, right: x });
      }
      return [...clusters.values()];
    });
  });
}

/** Letters as they stand from left to right. Blanks are left out; what lies between letters tells of them. */
function fromLeft(placed: readonly Placed[]): Placed[] {
  return placed
    .filter(({ text }) => text.trim() !== '')
    .map((each) => ({ ...each, text: each.text.trim() }))
    .sort((a, b) => a.left - b.left || a.right - b.right);
}

const spelling = (letters: readonly Placed[]) =>
  letters
    .flatMap(({ text }) => text.split(''))
    .sort()
    .join('');

/** The shortest groups of letters that hold the same text here and there: a ligature, or a conjunct, is one of them. */
function sameGroups(ours: readonly Placed[], theirs: readonly Placed[]): [Placed[], Placed[]][] {
  const groups: [Placed[], Placed[]][] = [];
  let [here, there]: [Placed[], Placed[]] = [[], []];
  const [ownLeft, theirLeft] = [[...ours], [...theirs]];
  while (ownLeft.length + theirLeft.length > 0) {
    const behind = spelling(here).length <= spelling(there).length ? [ownLeft, here] : [theirLeft, there];
    const next = behind[0]?.shift();
    if (!next) break;
    behind[1]?.push(next);
    if (spelling(here) === spelling(there)) {
      groups.push([here, there]);
      [here, there] = [[], []];
    }
  }
  expect([here, there].flat(), 'letters in another order').toEqual([]);
  return groups;
}

/** How far the place and the width of two groups differ, and how wide the gap before them is in each. */
function differences(groups: readonly [Placed[], Placed[]][]) {
  const edges = (letters: readonly Placed[]) => {
    return { left: Math.min(...letters.map((e) => e.left)), right: Math.max(...letters.map((e) => e.right)) };
  };
  return groups.map(([here, there], at) => {
    const before = groups[at - 1];
    const [own, their] = [edges(here), edges(there)];
    const gaps = before ? [own.left - edges(before[0]).right, their.left - edges(before[1]).right] : [0, 0];
    return { text: spelling(here), width: own.right - own.left - (their.right - their.left), gaps };
  });
}

/** In parts of the type size: Chromium rounds to a 64th of a pixel, at 100 pixels. */
const same_em = 0.002;
/** Chromium sets a space in the first font, the press in that of the word before it. */
const space_em = 0.06;

/** The text of a page as a viewer gives it, without the ends of lines. */
async function readText(page: Page): Promise<string> {
  const { pages } = await readPdf(await press.toPdf({ pages: [page], title: 'T', lang: 'en' }));
  return (pages[0]?.text ?? '').replace(/\s+/g, ' ').trim();
}

const normal = (text: string) => text.normalize('NFC');

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

  it('has its letters in the order and at the places of Chromium’s own text layout', async () => {
    const pages = await Promise.all(texts.map((text) => layOut(oneBox(text), parts.types, parts.engine)));
    const theirs = await placedInChromium(
      browser,
      texts.map((text, at) => ({ text, packs: pages[at]?.packs ?? [] })),
    );
    for (const [at, text] of texts.entries()) {
      const page = pages[at];
      if (!page) throw new Error(`No page of ${text}`);
      const groups = sameGroups(fromLeft(placedByUs(page)), fromLeft(theirs[at] ?? []));
      for (const { text: letters, width, gaps } of differences(groups)) {
        const [own = 0, their = 0] = gaps;
        const spaced = Math.max(own, their) > 0.15;
        expect(Math.abs(width), `width of ${letters} in ${text}`).toBeLessThan(same_em);
        expect(Math.abs(own - their), `gap before ${letters} in ${text}`).toBeLessThan(
          spaced ? space_em : same_em,
        );
      }
    }
  }, 60_000);
});
