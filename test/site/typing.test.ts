import { execFileSync } from 'node:child_process';
import { sheetFacts } from '../../src/core/plan/sheetFacts.ts';
import { readFile } from 'node:fs/promises';
import { afterAll, beforeAll, describe, expect, inject, test } from 'vitest';
import { nodePress } from '../../src/paper/node.ts';
import { readContent } from '../../src/schemas/readContent.ts';
import { readRecord, writeRecord } from '../../src/schemas/systemRecord.ts';
import { toSystem } from '../../src/schemas/toSystem.ts';
import { careCard, careCardKind } from '../../src/sheets/careCard.tsx';
import { sheetPrint } from '../../src/sheets/sheetPrint.ts';
import { testDay } from '../builtSite.ts';
import { readPdf } from '../paper/readPdf.ts';
import { typeIbc } from './ibc.ts';
import { current, downloaded, openSite, saved, type Site, startEmpty, type Visit } from './visit.ts';

let site: Site;
let visit: Visit;
let pdf: Uint8Array;

beforeAll(async () => {
  site = await openSite();
  visit = await site.visit('/planner/');
  await current(visit.page);
  await startEmpty(visit.page);
  await typeIbc(visit.page);
  await current(visit.page);
  ({ bytes: pdf } = await downloaded(visit.page, 'Download the card (PDF)'));
});

afterAll(async () => {
  await site?.close();
});

type Figures = Readonly<Record<string, { readonly value: number; readonly low?: number }>>;

/** What the terminal says of the same system, from its file. */
function planned(): Figures {
  const args = ['src/terminal/plan.ts', 'content/systems/hollow-lane-ibc.yaml', '--json'];
  return JSON.parse(execFileSync('tsx', args, { encoding: 'utf8' })).figures;
}

/** The same card made here, from the record that lies in a PDF. */
async function madeHere(record: string, day: string): Promise<Uint8Array> {
  const { content } = await readContent('content');
  const read = readRecord(record);
  const checked = 'raw' in read ? toSystem(read.raw, content) : read;
  if ('problems' in checked) throw new Error(JSON.stringify(checked.problems));
  const { system, raw } = checked;
  const { terms, sources } = content;
  const words = { catalogue: content.wording['en'] ?? {}, terms, sources };
  const input = { ...sheetFacts(system, content.care), words, ...raw.sheet, day };
  const press = await nodePress();
  const pages = [];
  for await (const page of careCard(input, press.layOut)) pages.push(page);
  return press.toPdf(sheetPrint(careCardKind, input, pages, writeRecord(raw)));
}

describe('another sheet', () => {
  test('is made as a PDF of its own, and opens the system again', async () => {
    const { page, close } = await site.visit('/planner/');
    await current(page);
    const { name, bytes } = await downloaded(page, 'Sitter’s sheet (PDF)');
    expect(name).toMatch(/-sitters-sheet\.pdf$/);
    const read = await readPdf(bytes);
    expect(read.pages.length).toBeGreaterThan(0);
    expect(read.attachments.map(({ filename }) => filename)).toEqual(['system.json']);
    await close();
  });
});

describe('a usual container and a usual pump to start from', () => {
  test('fill in the fields, by keyboard, and everything can be written over and is kept', async () => {
    const { page, complaints, close } = await site.visit('/planner/');
    await current(page);
    const tank = page.locator('#field-tank-container-start');
    await tank.focus();
    await page.keyboard.press('ArrowDown');
    await tank.selectOption('ibcHigh');
    expect(await page.inputValue('#field-tank-container-shape')).toBe('box');
    expect(await page.inputValue('#field-tank-container-length_mm')).toBe('1120');
    await page.fill('#field-tank-container-length_mm', '1105');
    await page.locator('#field-pump-start').selectOption('medium');
    expect(await page.inputValue('#field-pump-flow_L_h')).toBe('500');
    expect(await page.inputValue('#field-pump-curve-2-flow_L_h')).toBe('900');
    await saved(page);
    await page.reload();
    await current(page);
    expect(await page.inputValue('#field-tank-container-length_mm')).toBe('1105');
    expect(await page.inputValue('#field-pump-power_W')).toBe('18');
    expect(complaints).toEqual([]);
    await close();
  });

  test('come in the units of the person', async () => {
    const { page, close } = await site.visit('/planner/');
    await current(page);
    await page.selectOption('#field-sheet-units', 'us');
    await page.locator('#field-tank-container-start').selectOption('halfDrum');
    expect(await page.inputValue('#field-tank-container-diameter_mm')).toMatch(/^22/);
    await close();
  });
});

describe('a system typed into empty fields', () => {
  test('gives a card with the figures that the terminal works out from its file', async () => {
    const [front, back] = (await readPdf(pdf)).pages;
    const figures = planned();
    const down = (key: string) => Math.floor(figures[key]?.value ?? Number.NaN);
    const text = `${front?.text} ${back?.text}`.replace(/\s+/g, ' ');
    expect(text).toContain('The big tank');
    expect(text).toContain('Hollow Lane Growers, Quillbeck');
    expect(text).toMatch(new RegExp(`Feed each day ${down('feed_g_d')} ?g`));
    expect(text).toContain('12 fish of about 180 g');
    expect(text).toContain(`bed empty: ${down('tankFull_L')} L`);
    expect(text).toContain(`bed full: ${Math.floor(figures['tankLow_L']?.low ?? Number.NaN)} L`);
    expect(text).toContain(`${down('wetMedia_L')} L wet media`);
    expect(text).toContain(`Planned: ${down('fishPlanned')} fish`);
    expect([down('feed_g_d'), down('tankFull_L'), down('wetMedia_L'), down('fishPlanned')]).toEqual([
      21, 700, 300, 12,
    ]);
  });

  test('shows the same figures on the page, with their steps and sources', async () => {
    const figure = (key: string) => visit.page.locator(`[data-figure="${key}"]`).textContent();
    expect(await visit.page.locator('.feed .big').textContent()).toMatch(/^21\s+g$/);
    expect(await figure('fishPlanned')).toMatch(/12\s+fish/);
    expect(await figure('tankFull_L')).toMatch(/700\s+L/);
    expect(await figure('fishByBed')).toMatch(/300\s+L ÷ .* 25\s+L\) = 12/);
    expect(await figure('fishByBed')).toContain('Source: ');
  });

  test('makes the PDF that Node makes of the same record and day, byte for byte', async () => {
    const { attachments } = await readPdf(pdf);
    expect(attachments.map(({ filename }) => filename)).toEqual(['system.json']);
    const record = new TextDecoder().decode(attachments[0]?.content);
    expect(Buffer.from(await madeHere(record, testDay)).equals(Buffer.from(pdf))).toBe(true);
  });

  test('saves its front as a picture and a drawing, and itself as a record', async () => {
    const png = await downloaded(visit.page, 'Picture (PNG)');
    const svg = await downloaded(visit.page, 'Drawing (SVG)');
    const json = await downloaded(visit.page, 'Record (JSON)');
    expect([png.name, svg.name, json.name]).toEqual([
      'the-big-tank.png',
      'the-big-tank.svg',
      'the-big-tank.json',
    ]);
    // 210 mm at 300 dots an inch; a PNG says its width in bytes 16 to 19.
    expect(new DataView(png.bytes.buffer).getUint32(16)).toBe(Math.round((210 / 25.4) * 300));
    expect(new TextDecoder().decode(svg.bytes)).toMatch(/^<svg /);
    expect(JSON.parse(new TextDecoder().decode(json.bytes)).system.tank.full_mm).toBe(700);
  });

  test('meets no error, breaks no rule of the policy and asks no other place', () => {
    expect(visit.complaints).toEqual([]);
    expect(visit.abroad).toEqual([]);
  });
});

describe('a shared system opened from the home page', () => {
  test('prints the very card that the build has printed', async () => {
    const { page, close } = await site.visit('/');
    await page.getByRole('link', { name: 'Open in the planner: The drum corner' }).click();
    await page.getByText('“The drum corner” is open now.').waitFor();
    await current(page);
    expect(new URL(page.url()).search + new URL(page.url()).hash).toBe('');
    const here = await downloaded(page, 'Download the card (PDF)');
    const built = await readFile(`${inject('built').out}/site/sheets/drum-corner.pdf`);
    expect(here.name).toBe('drum-corner.pdf');
    expect(built.equals(Buffer.from(here.bytes))).toBe(true);
    await close();
  });
});

describe('units', () => {
  test('are converted without losing what was measured, there and back', async () => {
    const { page, close } = await site.visit('/planner/#from=hollow-lane-ibc');
    await current(page);
    const depth = page.locator('#field-tank-container-depth_mm');
    await page.selectOption('#field-sheet-units', 'us');
    expect(await depth.inputValue()).toBe('30.709');
    await page.selectOption('#field-sheet-units', 'metric');
    expect(await depth.inputValue()).toBe('780');
    await current(page);
    expect(await page.locator('[data-figure="tankFull_L"] .value').textContent()).toMatch(/700\s+L/);
    await close();
  });

  test('take fractions of an inch and gallons', async () => {
    const { page, close } = await site.visit('/planner/#from=hollow-lane-ibc');
    await current(page);
    await page.selectOption('#field-sheet-units', 'us');
    await page.fill('#field-tank-full_mm', '27 1/2');
    await current(page);
    expect(await page.locator('#field-tank-full_mm').inputValue()).toBe('27 1/2');
    // 1 m2 of floor under 27.5 in of water: 698.5 L, 184.52 US gallons, rounded down.
    expect(await page.locator('[data-figure="tankFull_L"] .value').textContent()).toMatch(/184\s+gal/);
    await close();
  });
});
