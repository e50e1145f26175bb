/**
 * One round in Chromium: the crops page is opened with the season kept on the device, and every change of what it shows is
 * noted, from opening it to the last plan. It is opened as people open a page, in a browser that runs already: a new
 * window is busy with its own bars and menus for most of a second, and is waited for. Of the page nothing is warm: it was
 * never opened here, and neither its files nor what the browser makes of them are kept.
 */
import { readFile } from 'node:fs/promises';
import { setTimeout as pause } from 'node:timers/promises';
import type { Browser, Page } from 'playwright-core';
import { readContent } from '../../../src/schemas/readContent.ts';
import { say } from '../../../src/wording/catalogue.ts';
import type { ReadTurnover } from '../../../src/schemas/content.ts';
import { draftOf } from '../../../src/forms/season/seasonDraft.ts';
import { openBrowser, serve } from '../../browser.ts';
import type { Measured } from './measured.ts';

const { content } = await readContent('content');
const catalogue = content.wording['en'] ?? {};
const season = content.turnovers.find(({ id }) => id === process.argv[2]);
if (season === undefined) throw new Error(`there is no season ${process.argv[2]}`);
const current = say(catalogue, 'crops.state.current');
const [, , , site] = process.argv;
if (site === undefined) throw new Error('the folder of the site is missing');

const browser = await openBrowser();
try {
  const served = await serve(site);
  process.stdout.write(`${JSON.stringify(await measured(served.origin, season))}\n`);
  await served.close();
} finally {
  await browser.close();
}

async function measured(origin: string, of: ReadTurnover): Promise<Measured> {
  const context = await browser.newContext({ viewport: { width: 1280, height: 900 } });
  const other = await context.newPage();
  await other.goto(origin);
  await other.evaluate(keepTyped, JSON.stringify(draftOf(of.raw)));
  await other.close();
  const page = await context.newPage();
  await page.addInitScript(noteChanges);
  await still(browser);
  const before = await renderers(browser);
  await page.goto(`${origin}/crops/`);
  await whole(page);
  const seen = await page.evaluate(() => (window as unknown as { seen: Seen[] }).seen);
  const after = await renderers(browser);
  return { ...read(seen), cpu_s: after.cpu_s - before.cpu_s, peak_MB: after.peak_MB };
}

/** In another page: the season as somebody typed it here before, and no plan of it. */
function keepTyped(draft: string): Promise<void> {
  return new Promise((done, refuse) => {
    const opening = indexedDB.open('bedfirst-season', 2);
    opening.onerror = () => refuse(opening.error);
    opening.onupgradeneeded = () => {
      for (const name of ['season', 'plan']) opening.result.createObjectStore(name);
    };
    opening.onsuccess = () => {
      const change = opening.result.transaction('season', 'readwrite');
      change.objectStore('season').put(JSON.parse(draft), 'kept');
      change.oncomplete = () => {
        opening.result.close();
        done();
      };
      change.onerror = () => refuse(change.error);
    };
  });
}

async function whole(page: Page): Promise<void> {
  await page.locator('[role="status"]', { hasText: current }).waitFor({ timeout: 120_000 });
}

/** What stood in the result at a time. */
type Seen = {
  readonly at_s: number;
  readonly status: string;
  readonly picture: boolean;
  readonly lines: readonly string[];
};

/** In the page: notes what is drawn, as often as it changes. */
function noteChanges(): void {
  const seen: Seen[] = [];
  Object.assign(window, { seen });
  new MutationObserver(() => {
    const output = document.querySelector('.output');
    if (output === null) return;
    const status = output.querySelector('[role="status"]')?.textContent ?? '';
    const picture = output.querySelector('.sheet svg path') !== null;
    const lines = [...output.querySelectorAll('ul:first-of-type li')].map((line) => line.textContent ?? '');
    // It counts when it is on the screen, in the frame after.
    requestAnimationFrame(() =>
      setTimeout(() => seen.push({ at_s: performance.now() / 1000, status, picture, lines })),
    );
  }).observe(document, { childList: true, subtree: true, characterData: true });
}

function read(seen: readonly Seen[]): Omit<Measured, 'peak_MB' | 'cpu_s'> {
  const first_s = seen.find(({ picture }) => picture)?.at_s ?? Number.NaN;
  const whole_s = seen.find(({ status }) => status === current)?.at_s ?? Number.NaN;
  const last = seen.at(-1)?.lines ?? [];
  const stages = (['demand', 'level', 'days', 'idle'] as const).map((name, index) => {
    const at_s =
      seen.find(({ picture, lines }) => picture && startsStage(lines[index], name))?.at_s ?? Number.NaN;
    return { name, at_s, gap_frac: gapIn(last[index] ?? '', name) };
  });
  return { first_s, whole_s, stages };
}

function startsStage(line: string | undefined, name: string): boolean {
  const start = say(catalogue, `crops.stage.${name}.proven`).split(':')[0] ?? '';
  return line?.startsWith(start) ?? false;
}

/** 1 where the page says that it is not known. */
function gapIn(line: string, name: string): number {
  if (line === say(catalogue, `crops.stage.${name}.proven`)) return 0;
  return Number(/([\d.]+)\s%/.exec(line)?.[1] ?? 100) / 100;
}

/** Until the browser has hardly done anything for half a second; a busy machine is not waited for. */
async function still(of: Browser): Promise<void> {
  let quiet = 0;
  let before_s = Number.NEGATIVE_INFINITY;
  for (let look = 0; look < 40 && quiet < 2; look += 1) {
    await pause(250);
    const now_s = (await processes(of)).reduce((sum, { cpuTime }) => sum + cpuTime, 0);
    quiet = now_s - before_s <= 0.02 ? quiet + 1 : 0;
    before_s = now_s;
  }
}

async function processes(of: Browser) {
  const session = await of.newBrowserCDPSession();
  const { processInfo } = await session.send('SystemInfo.getProcessInfo');
  await session.detach();
  return processInfo;
}

/** Processor time of all pages with their workers, and peak memory of the largest. */
async function renderers(of: Browser): Promise<Pick<Measured, 'peak_MB' | 'cpu_s'>> {
  const pages = (await processes(of)).filter(({ type }) => type === 'renderer');
  const peaks = await Promise.all(pages.map(({ id }) => peakOf_MB(id)));
  return { cpu_s: pages.reduce((sum, { cpuTime }) => sum + cpuTime, 0), peak_MB: Math.max(0, ...peaks) };
}

/** 0 where the system does not tell. */
async function peakOf_MB(id: number): Promise<number> {
  const status = await readFile(`/proc/${id}/status`, 'utf8').catch(() => '');
  return Math.round(Number(/VmHWM:\s+(\d+)/.exec(status)?.[1] ?? 0) / 1024);
}
