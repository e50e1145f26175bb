import { mkdtemp, rm } from 'node:fs/promises';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import type { Browser } from 'playwright-core';
import { build } from 'vite';
import { afterAll, beforeAll, describe, expect, it } from 'vitest';
import { nodePress } from '../../src/paper/node.ts';
import { openBrowser, type Served, serve } from '../browser.ts';
import type { Made } from './browserPage/run.ts';
import type { Ways } from './browserPage/page.ts';
import { denseSheet } from './denseSheet.tsx';
import { namesSheet } from './namesSheet.tsx';
import { printOf } from './prints.ts';

let folder: string;
let served: Served;
let browser: Browser;
let node: Bytes;

beforeAll(async () => {
  folder = await mkdtemp(join(tmpdir(), 'bedfirst-press-'));
  await bundle(folder);
  served = await serve(folder);
  browser = await openBrowser();
  node = await inNode();
});

afterAll(async () => {
  await browser?.close();
  await served?.close();
  await rm(folder, { recursive: true, force: true });
});

async function bundle(outDir: string): Promise<void> {
  await build({
    root: new URL('./browserPage/', import.meta.url).pathname,
    configFile: false,
    logLevel: 'error',
    base: './',
    build: { outDir, emptyOutDir: true, assetsInlineLimit: 0, modulePreload: false },
    worker: { format: 'es' },
  });
}

type Bytes = Pick<Made, 'pdf' | 'svg' | 'png' | 'names'>;

async function inNode(): Promise<Bytes> {
  const press = await nodePress();
  const page = await press.layOut(denseSheet());
  const base64 = (bytes: Uint8Array) => Buffer.from(bytes).toString('base64');
  return {
    pdf: base64(await press.toPdf(printOf(page))),
    svg: press.toSvg(page),
    png: base64(await press.toPng(page, { dpi: 100 })),
    names: base64(await press.toPdf(printOf(await press.layOut(namesSheet())))),
  };
}

async function made(way: keyof Ways): Promise<Made> {
  const page = await browser.newPage();
  const complaints: string[] = [];
  page.on('console', (message) => complaints.push(message.text()));
  page.on('pageerror', (error) => complaints.push(String(error)));
  await page.goto(`${served.origin}/index.html`);
  await page.waitForFunction(() => 'ways' in window);
  const result = await page.evaluate((name) => (window as unknown as { ways: Ways }).ways[name](), way);
  await page.close();
  expect(complaints, 'what the browser complained of').toEqual([]);
  return result;
}

describe('the press in a browser, under a strict policy', () => {
  for (const way of ['inPage', 'inWorker'] as const) {
    it(`makes the bytes that Node makes, ${way}`, async () => {
      const { pdf, svg, png, names, packsBefore, packs, milliseconds } = await made(way);
      const { SHOW_TIMES } = process.env;
      if (SHOW_TIMES) console.log(way, milliseconds);
      expect(svg).toBe(node.svg);
      expect(pdf).toBe(node.pdf);
      expect(png).toBe(node.png);
      expect(names).toBe(node.names);
      expect(packsBefore, 'packs that a sheet in Latin letters fetches').toEqual([]);
      expect(packs).toContain('noto-sans-tamil-tamil-400');
    });
  }
});
