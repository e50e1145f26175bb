import { readFile } from 'node:fs/promises';
import { afterAll, beforeAll, describe, expect, inject, test } from 'vitest';
import { current, downloaded, drop, openSite, saved, type Site, stale } from './visit.ts';

let site: Site;

beforeAll(async () => {
  site = await openSite();
});

afterAll(async () => {
  await site?.close();
});

const sheet = (id: string) => readFile(`${inject('built').out}/site/sheets/${id}.pdf`);

describe('what was typed', () => {
  test('is there again after a reload, also what makes no sense', async () => {
    const { page, close } = await site.visit('/planner/');
    await current(page);
    await page.fill('#field-name', '  The "odd" <b>tank</b>  ');
    await page.fill('#field-tank-full_mm', '65 cm');
    await page.fill('#field-tank-container-depth_mm', '750,5');
    await stale(page);
    await saved(page);
    await page.reload();
    await page.getByText('To put right: 1').waitFor();
    expect(await page.inputValue('#field-name')).toBe('  The "odd" <b>tank</b>  ');
    expect(await page.inputValue('#field-tank-full_mm')).toBe('65 cm');
    expect(await page.inputValue('#field-tank-container-depth_mm')).toBe('750,5');
    await close();
  });

  test('is put away within a second', async () => {
    const { page, close } = await site.visit('/planner/');
    await current(page);
    await page.fill('#field-place', 'Under the bridge');
    await page.locator('.status [data-saving="saved"]').waitFor({ timeout: 1000 });
    await close();
  });

  test('stays out of the address and of local storage', async () => {
    const { page, close } = await site.visit('/planner/');
    await current(page);
    await page.fill('#field-name', 'Secret garden');
    await saved(page);
    expect(page.url()).not.toMatch(/[?#]/);
    expect(await page.evaluate(() => localStorage.length + sessionStorage.length)).toBe(0);
    await close();
  });
});

describe('starting over', () => {
  test('asks first, and keeps everything when the answer is Escape', async () => {
    const { page, close } = await site.visit('/planner/');
    await current(page);
    await page.fill('#field-name', 'Mine');
    const startOver = page.getByRole('button', { name: 'Start over' });
    await startOver.focus();
    await page.keyboard.press('Enter');
    await page.getByRole('dialog', { name: 'Start over?' }).waitFor();
    await page.keyboard.press('Escape');
    await page.getByRole('dialog').waitFor({ state: 'hidden' });
    expect(await page.inputValue('#field-name')).toBe('Mine');
    expect(await startOver.evaluate((button) => button === document.activeElement)).toBe(true);
    await close();
  });

  test('can be undone once, also after a reload', async () => {
    const { page, close } = await site.visit('/planner/');
    await current(page);
    await page.fill('#field-name', 'Mine');
    await page.getByRole('button', { name: 'Start over' }).click();
    await page.getByRole('button', { name: 'Start with empty fields' }).click();
    expect(await page.inputValue('#field-name')).toBe('');
    await saved(page);
    await page.reload();
    await page.getByRole('button', { name: 'Undo' }).click();
    expect(await page.inputValue('#field-name')).toBe('Mine');
    expect(await page.getByRole('button', { name: 'Undo' }).count()).toBe(0);
    await close();
  });
});

describe('a file dropped on the page', () => {
  test('opens the system that a printed card carries, and keeps the old one for Undo', async () => {
    const { page, complaints, close } = await site.visit('/planner/');
    await current(page);
    await page.fill('#field-name', 'Mine');
    await drop(page, 'card.pdf', await sheet('old-tank-as-sump'));
    await page.getByText('“The round tank with the old tank as sump” is open now.').waitFor();
    await current(page);
    expect(await page.inputValue('#field-sump-full_mm')).toBe('550');
    expect(await page.inputValue('#field-beds-1-bucketTest-water_L')).toBe('5.4');
    await page.getByRole('button', { name: 'Undo' }).click();
    expect(await page.inputValue('#field-name')).toBe('Mine');
    expect(complaints).toEqual([]);
    await close();
  });

  test('opens what this page itself has saved', async () => {
    const { page, close } = await site.visit('/planner/#from=bent-fork-stock-tank');
    await current(page);
    const typed = await page
      .locator('input[type="text"]')
      .evaluateAll((fields) => fields.map((field) => (field as HTMLInputElement).value));
    const pdf = await downloaded(page, 'Download the card (PDF)');
    const json = await downloaded(page, 'Record (JSON)');
    for (const { name, bytes } of [pdf, json]) {
      await page.getByRole('button', { name: 'Start over' }).click();
      await page.getByRole('button', { name: 'Start with the example' }).click();
      await drop(page, name, bytes);
      await page.getByText('is open now.').waitFor();
      await current(page);
      const again = await page
        .locator('input[type="text"]')
        .evaluateAll((fields) => fields.map((field) => (field as HTMLInputElement).value));
      expect(again, name).toEqual(typed);
    }
    await close();
  });

  const foreign: readonly (readonly [string, () => Promise<Uint8Array>, RegExp])[] = [
    ['cut.pdf', async () => (await sheet('drum-corner')).subarray(0, 9000), /holds no Bedfirst system/],
    ['empty.pdf', async () => new Uint8Array(), /nothing in it/],
    [
      'photo.png',
      async () => Uint8Array.from([137, 80, 78, 71, 13, 10, 26, 10, 0, 255]),
      /holds no Bedfirst/,
    ],
    ['other.json', async () => Buffer.from('{"hello": "world"}'), /holds no Bedfirst system/],
    ['newer.json', async () => Buffer.from('{"bedfirst": 99, "system": {}}'), /newer Bedfirst/],
    ['odd.json', async () => Buffer.from('{"bedfirst": 1, "system": {"beds": 5}}'), /fish tank is missing/i],
  ];

  test.each(foreign)('is refused with a sentence: %s', async (name, bytes, sentence) => {
    const { page, complaints, close } = await site.visit('/planner/');
    await current(page);
    await page.fill('#field-name', 'Mine');
    await drop(page, name, await bytes());
    await page.getByText('This file was not opened.').waitFor();
    expect(await page.locator('.told').textContent()).toMatch(sentence);
    expect(await page.inputValue('#field-name')).toBe('Mine');
    expect(complaints).toEqual([]);
    await close();
  });
});

describe('an address that names no shared system', () => {
  test('says so and leaves the form as it was', async () => {
    const { page, close } = await site.visit('/planner/#from=constructor');
    await page.getByText('There is no shared system “constructor”.').waitFor();
    expect(await page.inputValue('#field-name')).toBe('My first system');
    await close();
  });
});
