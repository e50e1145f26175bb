/** What a page imports is named in its head, however far down it is imported. */
import { mkdir, mkdtemp, readFile, rm, writeFile } from 'node:fs/promises';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import { afterAll, beforeAll, expect, test } from 'vitest';
import { writePreloads } from '../../src/print/preloads.ts';

let site = '';

beforeAll(async () => {
  site = await mkdtemp(join(tmpdir(), 'bedfirst-preloads-'));
  await mkdir(join(site, '_astro'));
  await mkdir(join(site, 'crops'));
  const scripts = {
    'start.js': 'import{a as b}from"./form.js";import"./draw.js";const c=()=>import("./late.js");',
    'form.js': 'import { c } from "./words.js";export const a = c;',
    'draw.js': 'import{c}from"./words.js";export{d}from"./shapes.js";',
    'words.js': 'export const c="import x from \\"./nowhere.js\\"";',
    'shapes.js': 'export const d=1;',
    'late.js': '',
  };
  for (const [name, text] of Object.entries(scripts)) await writeFile(join(site, '_astro', name), text);
  const script = '<script type="module" src="/base/_astro/start.js"></script>';
  await writeFile(join(site, 'crops', 'index.html'), `<head><title>x</title></head><body>${script}</body>`);
  await writeFile(join(site, 'plain.html'), '<head></head><body></body>');
  await writePreloads(site);
});

afterAll(() => rm(site, { recursive: true }));

test('a page names its scripts and all that they import from the start, each once', async () => {
  const page = await readFile(join(site, 'crops', 'index.html'), 'utf8');
  const named = [...page.matchAll(/<link rel="modulepreload" href="([^"]*)">/g)].map(([, href]) => href);
  expect(named).toEqual(
    ['start', 'form', 'words', 'draw', 'shapes'].map((name) => `/base/_astro/${name}.js`),
  );
  expect(page).toContain('</title><link');
});

test('a page without scripts stays as it is', async () => {
  expect(await readFile(join(site, 'plain.html'), 'utf8')).toBe('<head></head><body></body>');
});
