import { readFile } from 'node:fs/promises';
import { unzipSync } from 'fflate';
import type { Page } from 'playwright-core';
import { afterAll, beforeAll, describe, expect, test } from 'vitest';
import { readPdf } from '../paper/readPdf.ts';
import { openSite, type Site } from './visit.ts';

let site: Site;

beforeAll(async () => {
  site = await openSite();
});

afterAll(async () => {
  await site?.close();
});

const roster = (text: string) => ({ name: 'class.csv', mimeType: 'text/csv', buffer: Buffer.from(text) });

async function opened(text: string): Promise<{ readonly page: Page; readonly close: () => Promise<void> }> {
  const { page, close } = await site.visit('/class/');
  await page.getByLabel('Name of the workshop').fill('An evening of tanks');
  await page.getByLabel('Roster').setInputFiles(roster(text));
  return { page, close };
}

async function saved(page: Page, button: string): Promise<Uint8Array> {
  const [download] = await Promise.all([
    page.waitForEvent('download'),
    page.getByRole('button', { name: button }).click(),
  ]);
  return new Uint8Array(await readFile(await download.path()));
}

const sound =
  'name;team;containers\nÅsa Ek;Newt;\nஅருண்;Newt;tank box 100 x 90 x 80 cm + bed box 100 x 60 x 35 cm\n';

describe('a class in the browser', () => {
  test('gets its stack, its answers and a file for each, from a roster', async () => {
    const { page, close } = await opened(sound);
    await page.getByText('2 people in class.csv').waitFor();
    expect(await page.getByLabel('The worked example').inputValue()).toBe('hollow-lane-ibc');
    const stack = await readPdf(await saved(page, 'The stack, as PDF'));
    const text = stack.pages.map((one) => one.text).join(' ');
    for (const words of ['An evening of tanks', 'Åsa Ek', 'PLAN: not measured, no fish yet', 'Safety first'])
      expect(text).toContain(words);
    const answers = await readPdf(await saved(page, 'The answers, as PDF'));
    expect(answers.pages[2]?.text).toContain('150 L');
    const files = Object.keys(unzipSync(await saved(page, 'A file for each, as zip')));
    expect(files).toEqual(['0001-åsa-ek.pdf', '0002-அருண்.pdf']);
    // Names are nobody else's: nothing of them is in the address or kept.
    expect(new URL(page.url()).search).toBe('');
    expect(await page.evaluate(() => localStorage.length)).toBe(0);
    await close();
  }, 60_000);

  test('takes the same file again once it was mended', async () => {
    const { page, close } = await opened('name\n=1+1\n');
    await page.getByRole('alert').waitFor();
    const input = page.getByLabel('Roster');
    expect(await input.inputValue()).toContain('class.csv');
    const [chooser] = await Promise.all([page.waitForEvent('filechooser'), input.click()]);
    // A browser says nothing of a file that stands there already.
    expect(await input.inputValue()).toBe('');
    await chooser.setFiles(roster('name\nAda\n'));
    await page.getByText('1 person in class.csv').waitFor();
    await close();
  });

  test('is told every mistake of its roster, and prints the others where that is wished', async () => {
    const { page, close } = await opened('name;containers\nFish 🐟;\nAda;\n=1+1;\nBo;tank tub 1 x 1 x 1 m\n');
    const told = page.getByRole('alert');
    await told.waitFor();
    // By line, whether it is a letter that no font has or a sum.
    expect(await told.textContent()).toMatch(
      /class\.csv:2:1: .*U\+1F41F.*class\.csv:4:1: .*class\.csv:5:2: /s,
    );
    expect(await page.getByRole('button', { name: 'The stack, as PDF' }).isDisabled()).toBe(true);
    await page.getByLabel('Rows with a mistake').selectOption('skip');
    await page.getByText('1 person in class.csv').waitFor();
    const { pages } = await readPdf(await saved(page, 'The answers, as PDF'));
    expect(pages[0]?.text).toContain('Ada');
    await close();
  }, 60_000);

  test('prints some rows once more, and can be stopped', async () => {
    const many = Array.from({ length: 400 }, (_, at) => `Person ${at + 1}`).join('\n');
    const { page, close } = await opened(`name\n${many}\n`);
    await page.getByText('400 people in class.csv').waitFor();
    await page.getByRole('button', { name: 'A file for each, as zip' }).click();
    await page.getByRole('button', { name: 'Stop' }).click();
    expect(await page.getByRole('progressbar').count()).toBe(0);
    await page.getByLabel('Only these rows').fill('2,400');
    const { pages } = await readPdf(await saved(page, 'The answers, as PDF'));
    const names = pages.flatMap(({ text }) => /Person \d+/.exec(text) ?? []);
    expect(names).toEqual(['Person 2', 'Person 400']);
    await close();
  }, 60_000);

  test('gets a rota for its teams and only the sheets that are ticked, and is told mistakes at their fields', async () => {
    const { page, close } = await opened(sound);
    await page.getByText('2 people in class.csv').waitFor();
    await page.getByText('Only some sheets').click();
    for (const sheet of ['Name tags', 'The worksheets', 'A plan each to take home'])
      await page.getByLabel(sheet, { exact: true }).uncheck();
    await page.getByText('A care rota for the class').click();
    await page.getByLabel('First day of the rota').fill('2031-05-13');
    await page.getByLabel('Last day of the rota').fill('2031-05-02');
    const field = page.getByLabel('Last day of the rota');
    await page.getByRole('alert').getByText('The last day comes after the first.').waitFor();
    expect(await field.getAttribute('aria-invalid')).toBe('true');
    expect(await page.getByRole('button', { name: 'The stack, as PDF' }).isDisabled()).toBe(true);
    await field.fill('2031-05-20');
    await page.getByRole('button', { name: 'Days without class' }).click();
    await page.getByLabel('From', { exact: true }).fill('2031-05-19');
    await page.getByLabel('To', { exact: true }).fill('2031-05-19');
    await page.getByText('2 people in class.csv').waitFor();
    const { pages } = await readPdf(await saved(page, 'The stack, as PDF'));
    const text = pages.map((one) => one.text).join(' ');
    for (const words of ['13 May 2031', '20 May 2031', 'Newt', 'Safety first']) expect(text).toContain(words);
    expect(text).not.toContain('PLAN: not measured');
    await close();
  }, 60_000);

  test('is offered only what its sheets make, and told why the rest is not there', async () => {
    const { page, close } = await opened(sound);
    await page.getByText('2 people in class.csv').waitFor();
    await page.getByText('Only some sheets').click();
    const button = (name: string) => page.getByRole('button', { name });
    await page.getByLabel('The answers', { exact: true }).uncheck();
    await page.getByText('There are no answers').waitFor();
    expect(await button('The answers, as PDF').isDisabled()).toBe(true);
    expect(await button('The stack, as PDF').isEnabled()).toBe(true);
    const id = await button('The answers, as PDF').getAttribute('aria-describedby');
    expect(await page.locator(`#${id}`).textContent()).toContain('not ticked');
    for (const name of ['The worksheets', 'A plan each to take home'])
      await page.getByLabel(name, { exact: true }).uncheck();
    await page.getByText('There is no file for each').waitFor();
    const { pages } = await readPdf(await saved(page, 'The stack, as PDF'));
    expect(pages.map(({ text }) => text).join(' ')).toContain('Åsa Ek');
    await close();
  }, 60_000);

  test('gets the same stack at once and after a while, and never the one from before a change', async () => {
    const { page, close } = await opened(sound);
    await page.getByText('2 people in class.csv').waitFor();
    const first = await saved(page, 'The stack, as PDF');
    const later = await opened(sound);
    await later.page.getByText('2 people in class.csv').waitFor();
    await later.page.waitForTimeout(4000);
    expect(Buffer.from(await saved(later.page, 'The stack, as PDF')).equals(Buffer.from(first))).toBe(true);
    await later.page.getByLabel('Where it is held').fill('The shed');
    const { pages } = await readPdf(await saved(later.page, 'The stack, as PDF'));
    expect(pages.filter(({ text }) => text.includes('The shed')).length).toBeGreaterThan(5);
    await Promise.all([close(), later.close()]);
  }, 60_000);

  test('gets its file whatever is typed while it is made', async () => {
    const many = Array.from({ length: 60 }, (_, at) => `Person ${at + 1}`).join('\n');
    const { page, close } = await opened(`name\n${many}\n`);
    await page.getByText('60 people in class.csv').waitFor();
    const download = page.waitForEvent('download', { timeout: 90_000 });
    await page.getByRole('button', { name: 'The stack, as PDF' }).click();
    await page.getByRole('progressbar').waitFor();
    await page.getByLabel('Where it is held').fill('The shed');
    const { pages } = await readPdf(new Uint8Array(await readFile(await (await download).path())));
    expect(pages.some(({ text }) => text.includes('Person 60'))).toBe(true);
    expect(await page.getByLabel('Where it is held').inputValue()).toBe('The shed');
    expect(await page.getByRole('progressbar').count()).toBe(0);
    await close();
  }, 120_000);

  test('is told that its roster is too large by its size alone, or that it is a workbook', async () => {
    const { page, close } = await site.visit('/class/');
    await page.evaluate(() => {
      File.prototype.arrayBuffer = () => Promise.reject(new Error('read all the same'));
    });
    const large = { ...roster(''), buffer: Buffer.alloc(5_000_001, 'a\n') };
    await page.getByLabel('Name of the workshop').fill('An evening of tanks');
    await page.getByLabel('Roster').setInputFiles(large);
    await page.getByText('The roster has 5000001 bytes').waitFor();
    await close();
    const zip = await opened('PK\u0003\u0004...');
    await zip.page.getByText('this is no CSV file').waitFor();
    await zip.close();
  }, 60_000);

  test.each([390, 1280])(
    'stays within its page at %i px',
    async (width) => {
      const { page, close } = await site.visit('/class/', { viewport: { width, height: 900 } });
      await page.getByText('Only some sheets').click();
      await page.getByLabel('The answers', { exact: true }).uncheck();
      await page.getByText('There are no answers').waitFor();
      expect(await page.evaluate(() => document.documentElement.scrollWidth)).toBeLessThanOrEqual(width);
      await close();
    },
    60_000,
  );
});
