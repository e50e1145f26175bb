/**
 * What an evening class waits for: a roster on the finished page in real Chromium, from the press of a button to its
 * file, with every sheet that a class can have; each round is a page of its own. Pressed at once, nothing is laid out yet,
 * and the worker has only read the roster; after a few seconds, what belongs to the stack has been made ready.
 * `--people N`, `--rounds N`; `--site folder` takes pages that are built already.
 */
import { mkdtemp, rm, stat } from 'node:fs/promises';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import { parseArgs } from 'node:util';
import type { Browser } from 'playwright-core';
import { buildPages } from '../../src/print/site.ts';
import { readContent } from '../../src/schemas/readContent.ts';
import { say } from '../../src/wording/catalogue.ts';
import { openBrowser, serve } from '../browser.ts';

const { values: told } = parseArgs({
  allowPositionals: true,
  options: {
    people: { type: 'string', default: '30' },
    rounds: { type: 'string', default: '3' },
    site: { type: 'string' },
  },
});

const { content } = await readContent('content');
const catalogue = content.wording['en'] ?? {};
const home = await mkdtemp(join(tmpdir(), 'bedfirst-bench-'));
const site = told.site ?? join(home, 'site');
if (told.site === undefined) await buildPages(site);
const browser = await openBrowser();
const served = await serve(site);
try {
  for (const part of ['stack', 'answers', 'each'])
    for (const [when, wait_ms] of [
      ['at once', 0],
      ['after 4 s', 4_000],
    ] as const) {
      const rounds: Round[] = [];
      for (let round = 0; round < Number(told.rounds); round += 1)
        rounds.push(await pressed(browser, served.origin, part, wait_ms));
      const median = rounds.sort((a, b) => a.seconds - b.seconds)[Math.floor(rounds.length / 2)];
      if (median !== undefined)
        process.stdout.write(
          `${told.people} people, ${part.padEnd(8)} ${when.padEnd(10)} ${median.seconds.toFixed(2)} s, ${(median.bytes / 1000).toFixed(0)} kB\n`,
        );
    }
} finally {
  await browser.close();
  await served.close();
  await rm(home, { recursive: true });
}

type Round = { readonly seconds: number; readonly bytes: number };

async function pressed(of: Browser, origin: string, part: string, wait_ms: number): Promise<Round> {
  const context = await of.newContext();
  const page = await context.newPage();
  await page.goto(`${origin}/class/`);
  await page.getByLabel('Name of the workshop').fill('An evening of tanks');
  await page
    .getByLabel('Roster')
    .setInputFiles({ name: 'class.csv', mimeType: 'text/csv', buffer: Buffer.from(roster()) });
  const button = page.getByRole('button', { name: say(catalogue, `class.parts.${part}`) });
  await page.getByText(`${told.people} people in class.csv`).waitFor();
  await page.waitForTimeout(wait_ms);
  const began = performance.now();
  const [download] = await Promise.all([page.waitForEvent('download', { timeout: 120_000 }), button.click()]);
  const seconds = (performance.now() - began) / 1000;
  const { size } = await stat(await download.path());
  await context.close();
  return { seconds, bytes: size };
}

/** One in three has containers of their own. */
function roster(): string {
  const lines = Array.from({ length: Number(told.people) }, (_, at) => {
    const own = `tank box ${100 + at} x 90 x 80 cm + bed box 100 x 60 x 30 cm`;
    return `Person ${at + 1};Team ${(at % 10) + 1};${at % 3 === 2 ? own : ''}`;
  });
  return `name;team;containers\n${lines.join('\n')}\n`;
}
