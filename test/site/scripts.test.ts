import { readFile } from 'node:fs/promises';
import { describe, expect, inject, test } from 'vitest';
import { readPdf } from '../paper/readPdf.ts';
import { current, openSite } from './visit.ts';

/** Files of the fonts of rare scripts, and what goes with them. */
const ofPacks =
  /noto-sans-(arabic|hebrew|devanagari|bengali|tamil|thai|sc|jp|kr)-|browserPacks-|unicode-|bidi-/;

describe('a name in a rare script', () => {
  test('adds nothing to what everybody fetches', async () => {
    const worker = await readFile(`${inject('built').out}/site/sw.js`, 'utf8');
    const [, list = '[]'] = /const files = (\[.*?\]);/s.exec(worker) ?? [];
    const files: string[] = JSON.parse(list);
    expect(files.length).toBeGreaterThan(20);
    expect(files.filter((file) => ofPacks.test(file))).toEqual([]);
  });

  test('fetches its own fonts when it is typed, and has them without network from then on', async () => {
    const site = await openSite();
    const { page, context, complaints, abroad, close } = await site.visit('/planner/');
    const fetched: string[] = [];
    context.on('request', (request) => fetched.push(request.url()));
    await current(page);
    await page.locator('.status [data-offline="ready"]').waitFor();
    await page.reload();
    await current(page);
    expect(fetched.filter((url) => ofPacks.test(url))).toEqual([]);
    await page.fill('#field-name', 'حوض السمك 7');
    await current(page);
    expect(fetched.filter((url) => /noto-sans-arabic-/.test(url))).not.toEqual([]);
    expect(fetched.filter((url) => /noto-sans-(tamil|sc|jp|kr)-/.test(url))).toEqual([]);
    expect(complaints).toEqual([]);
    await site.served.close();
    await page.reload();
    await current(page);
    await page.fill('#field-name', 'حوض السمك 8');
    await current(page);
    const [download] = await Promise.all([
      page.waitForEvent('download'),
      page.getByRole('button', { name: 'Download the card (PDF)' }).click(),
    ]);
    const { pages } = await readPdf(new Uint8Array(await readFile(await download.path())));
    expect(pages[0]?.text).toContain('حوض السمك 8');
    await page.fill('#field-name', 'மீன் 9');
    await page.getByText('The fonts for these letters did not load.').first().waitFor();
    await page.fill('#field-name', 'Pond 9');
    await current(page);
    expect(abroad).toEqual([]);
    await close();
    await site.browser.close();
  });

  test('that no font has is told at its field, with the letter and its code', async () => {
    const site = await openSite();
    const { page, close } = await site.visit('/planner/');
    await current(page);
    await page.fill('#field-name', 'Pond თ');
    await page.getByText('holds the character თ (U+10D7)').first().waitFor();
    await page.fill('#field-name', 'Pond தொட்டி');
    await current(page);
    expect(await page.getByText('U+10D7').count()).toBe(0);
    await close();
    await site.close();
  });
});
