/**
 * `npm run bench:typing`: how long it takes from a key to the changed sheet on the screen, in real Chromium on the
 * finished planner: for a word, for a length that changes the drawing, and for whole sheets laid out anew beside them.
 */
import { mkdtemp, rm } from 'node:fs/promises';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import type { Page } from 'playwright-core';
import { buildPages } from '../../src/print/site.ts';
import { openBrowser, serve } from '../browser.ts';

const rounds = 40;

const home = await mkdtemp(join(tmpdir(), 'bedfirst-bench-'));
const browser = await openBrowser();
try {
  await buildPages(join(home, 'site'));
  const served = await serve(join(home, 'site'));
  const page = await browser.newPage({ viewport: { width: 1280, height: 900 } });
  await page.goto(`${served.origin}/planner/`);
  await page.locator('.sheet[data-state="current"]').waitFor();
  await measure(page, 'a word: the name', '#field-name', (round) => `Tank ${round % 10}`);
  await measure(
    page,
    'a length: the tank',
    '#field-tank-container-diameter_mm',
    (round) => `${1101 + (round % 10)}`,
  );
  await served.close();
} finally {
  await browser.close();
  await rm(home, { recursive: true, force: true });
}

async function measure(
  page: Page,
  what: string,
  field: string,
  text: (round: number) => string,
): Promise<void> {
  const times: number[] = [];
  for (let round = 0; round < 2 * rounds; round += 1) {
    const time = await page.evaluate(fromKeyToPaint, { field, text: text(round) });
    if (round >= rounds) times.push(time);
    await page.waitForTimeout(60);
  }
  times.sort((a, b) => a - b);
  const at = (share: number) =>
    `${(times[Math.floor(share * (times.length - 1))] ?? Number.NaN).toFixed(1)} ms`;
  process.stdout.write(
    `${what.padEnd(24)} median ${at(0.5)}   nine of ten within ${at(0.9)}   slowest ${at(1)}\n`,
  );
}

/** In the page: types, and waits for the frame after the one in which the front changed. */
function fromKeyToPaint({ field, text }: { field: string; text: string }): Promise<number> {
  const input = document.querySelector<HTMLInputElement>(field);
  const picture = document.querySelector('.picture svg');
  if (!input || !picture) throw new Error(`no ${field} or no picture`);
  return new Promise((done) => {
    const start = performance.now();
    const seen = new MutationObserver(() => {
      seen.disconnect();
      requestAnimationFrame(() => setTimeout(() => done(performance.now() - start)));
    });
    seen.observe(picture, { childList: true, subtree: true });
    input.value = text;
    input.dispatchEvent(new InputEvent('input', { bubbles: true }));
  });
}
