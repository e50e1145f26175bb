import type { BrowserContextOptions } from 'playwright-core';
import { afterAll, beforeAll, describe, expect, test } from 'vitest';
import { readPdf } from '../paper/readPdf.ts';
import { objections } from './objections.ts';
import { current, openSite, type Site, stale } from './visit.ts';

let site: Site;

beforeAll(async () => {
  site = await openSite();
});

afterAll(async () => {
  await site?.close();
});

const phone: BrowserContextOptions = { viewport: { width: 320, height: 640 } };
const pages = ['/', '/planner/', '/crops/', '/class/', '/check/', '/care/', '/glossary/', '/sources/'];

describe.each(pages)('the page %s', (path) => {
  test('gives the rules for accessible pages nothing to object to, light, dark and small', async () => {
    const looks: readonly BrowserContextOptions[] = [{}, { colorScheme: 'dark' }, phone];
    for (const options of looks) {
      const { page, close } = await site.visit(path, options);
      if (path === '/planner/')
        await page.locator('.sheet[data-state="current"]').waitFor({ state: 'attached' });
      expect(await objections(page)).toEqual([]);
      await close();
    }
  });

  test('scrolls in one direction only at 320 pixels, also with letters of twice the size', async () => {
    const { page, close } = await site.visit(path, phone);
    const wider = () => page.evaluate(() => document.documentElement.scrollWidth - innerWidth);
    if (path === '/planner/') await page.getByRole('button', { name: 'See the sheet' }).waitFor();
    expect(await wider()).toBeLessThanOrEqual(0);
    await page.evaluate(() => {
      document.documentElement.style.fontSize = '200%';
    });
    expect(await wider()).toBeLessThanOrEqual(0);
    if (path === '/planner/') {
      await page.getByRole('button', { name: 'See the sheet' }).click();
      expect(await wider()).toBeLessThanOrEqual(0);
    }
    await close();
  });

  test('has no inline script or style and complains of nothing', async () => {
    const { page, complaints, abroad, close } = await site.visit(path);
    await page.waitForLoadState('networkidle');
    const policy = await page.locator('meta[http-equiv="content-security-policy"]').getAttribute('content');
    expect(policy).toContain("default-src 'none'");
    expect(policy).not.toContain('unsafe-inline');
    expect(
      await page.locator('[style], style, script:not([src]):not([type="application/json"])').count(),
    ).toBe(0);
    expect(complaints).toEqual([]);
    expect(abroad).toEqual([]);
    await close();
  });
});

describe('the planner in trouble', () => {
  test('gives the rules for accessible pages nothing to object to either', async () => {
    const { page, close } = await site.visit('/planner/');
    await current(page);
    await page.fill('#field-tank-full_mm', '7000');
    await stale(page);
    await page.getByRole('button', { name: 'Start over' }).click();
    expect(await objections(page)).toEqual([]);
    await close();
  });

  test('still shows its frames and marks where colours are forced', async () => {
    const { page, close } = await site.visit('/planner/', { forcedColors: 'active' });
    await current(page);
    const width = (selector: string) =>
      page
        .locator(selector)
        .first()
        .evaluate((one) => getComputedStyle(one).borderTopWidth);
    expect(Number.parseFloat(await width('#field-name'))).toBeGreaterThan(0);
    expect(Number.parseFloat(await width('.files button'))).toBeGreaterThan(0);
    await close();
  });
});

describe('with the keyboard alone', () => {
  test('one fills in a field, adds a bed and takes the card', async () => {
    const { page, close } = await site.visit('/planner/#from=hollow-lane-ibc-two-beds');
    await current(page);
    const focused = () => page.evaluate(() => document.activeElement?.id ?? '');
    const tabTo = async (is: (id: string, text: string) => boolean) => {
      for (let steps = 0; steps < 200; steps++) {
        await page.keyboard.press('Tab');
        const text = await page.evaluate(() => document.activeElement?.textContent ?? '');
        if (is(await focused(), text)) return;
      }
      throw new Error('the focus never came there');
    };
    await tabTo((id) => id === 'field-name');
    await page.keyboard.press('ControlOrMeta+a');
    await page.keyboard.type('Typed');
    await tabTo((id) => id === 'add-bed');
    await page.keyboard.press('Enter');
    await page.locator('#field-beds-2-name').waitFor();
    await page.waitForFunction(() => document.activeElement?.id === 'field-beds-2-name');
    await tabTo((_, text) => text.startsWith('Remove Bed 3'));
    await page.keyboard.press('Enter');
    await page.waitForFunction(() => document.activeElement?.id === 'add-bed');
    await current(page);
    await tabTo((_, text) => text === 'Download the card (PDF)');
    const [download] = await Promise.all([page.waitForEvent('download'), page.keyboard.press('Enter')]);
    expect(download.suggestedFilename()).toBe('typed.pdf');
    await close();
  });

  test('every stop is large enough to be hit and shows that it has the focus', async () => {
    const { page, close } = await site.visit('/planner/');
    await current(page);
    const small = await page
      .locator('button:visible, select:visible, input[type="text"]:visible')
      .evaluateAll((all) =>
        all.filter((one) => one.getBoundingClientRect().height < 44).map((one) => one.outerHTML),
      );
    expect(small).toEqual([]);
    await page.focus('#field-tank-full_mm');
    const outline = await page
      .locator('#field-tank-full_mm')
      .evaluate((one) => getComputedStyle(one).outlineWidth);
    expect(Number.parseFloat(outline)).toBeGreaterThanOrEqual(2);
    await close();
  });
});

describe('after the first visit', () => {
  test('everything works without network: pages, the live card, the PDF', async () => {
    const own = await openSite();
    const { page, abroad, close } = await own.visit('/planner/');
    await page.locator('.status [data-offline="ready"]').waitFor();
    await own.served.close();
    await page.reload();
    await current(page);
    await page.fill('#field-name', 'Far from any network');
    await current(page);
    const [download] = await Promise.all([
      page.waitForEvent('download'),
      page.getByRole('button', { name: 'Download the card (PDF)' }).click(),
    ]);
    const chunks: Buffer[] = [];
    for await (const chunk of await download.createReadStream()) chunks.push(chunk as Buffer);
    const { pages: printed } = await readPdf(new Uint8Array(Buffer.concat(chunks)));
    expect(printed[0]?.text).toContain('Far from any network');
    await page.getByRole('link', { name: 'Home' }).click();
    await page.getByRole('heading', { name: 'Containers in, care card out' }).waitFor();
    const picture = page.locator('figure img');
    expect(await picture.evaluate((one) => (one as HTMLImageElement).naturalWidth)).toBeGreaterThan(0);
    expect(abroad).toEqual([]);
    await close();
    await own.browser.close();
  });
});

describe('without scripts', () => {
  test('the planner points to the ready-made cards', async () => {
    const { page, close } = await site.visit('/planner/', { javaScriptEnabled: false });
    await page.getByRole('link', { name: 'ready-made cards' }).click();
    const card = page.getByRole('link', { name: 'Card (PDF): The big tank', exact: true });
    const answer = await page.request.get(new URL((await card.getAttribute('href')) ?? '', page.url()).href);
    expect(answer.headers()['content-type']).toBe('application/pdf');
    await close();
  });
});
