/** The crops page in a real browser: a season is planned, changed, refused, kept and taken away. */
import ICAL from 'ical.js';
import { afterAll, beforeAll, describe, expect, test } from 'vitest';
import { readPdf } from '../paper/readPdf.ts';
import { lines, openNorth, planned, status } from './cropsVisit.ts';
import { downloaded, openSite, type Site } from './visit.ts';

let site: Site;

beforeAll(async () => {
  site = await openSite();
});

afterAll(async () => {
  await site?.close();
});

describe('a season', () => {
  test('is shown as a calendar, with what it gives and how good the plan is', async () => {
    const { page, complaints, abroad, close } = await openNorth(site);
    const text = await lines(page);
    expect(text).toMatch(/Picking: (no plan meets more of your wishes|at most [\d.]+\s% of what is missing)/);
    expect(text).toMatch(/Head lettuce: \d+ heads of \d+ heads that were asked for/);
    expect(text).toContain('too cold, too hot or too dark');
    const picture = page.locator('.sheet svg');
    expect(await picture.getAttribute('aria-label')).toContain('places of the beds down and weeks across');
    expect(await picture.locator('path').count()).toBeGreaterThan(100);
    expect(complaints).toEqual([]);
    expect(abroad).toEqual([]);
    await close();
  }, 90_000);

  test('is a first draft that says so, until it is solved', async () => {
    const { page, context, close } = await site.visit('/', { serviceWorkers: 'block' });
    let go = (): void => undefined;
    const held = new Promise<void>((resolve) => {
      go = resolve;
    });
    await context.route(/highs.*\.wasm/, async (route) => {
      await held;
      await route.continue();
    });
    await page.goto(`${site.served.origin}/crops/`);
    await page.locator('.sheet svg').waitFor();
    expect(await lines(page)).toContain('A first draft, being improved.');
    expect(await lines(page)).not.toContain('How good the plan is');
    go();
    await planned(page);
    expect(await lines(page)).not.toContain('A first draft');
    expect(await lines(page)).toContain('How good the plan is');
    await close();
  }, 90_000);

  test('stays a draft that says so where what solves does not load', async () => {
    const { page, context, close } = await site.visit('/', { serviceWorkers: 'block' });
    await context.route(/highs.*\.wasm/, (route) => route.abort());
    await page.goto(`${site.served.origin}/crops/`);
    const alert = page.getByRole('alert');
    await alert.waitFor();
    expect(await alert.textContent()).toContain('did not load');
    expect(await lines(page)).toContain('A first draft. It fits your beds;');
    // Once it can be had, typing on is enough.
    await context.unroute(/highs.*\.wasm/);
    await page.getByLabel('Each week').first().fill('0.5');
    await planned(page);
    await close();
  }, 90_000);

  test('changes with what is typed, and is kept on the device', async () => {
    const { page, close } = await openNorth(site);
    const before = await lines(page);
    await page.getByLabel('Each week').first().fill('0.5');
    await page.locator(status, { hasText: 'Working it out' }).waitFor();
    await planned(page);
    expect(await lines(page)).not.toBe(before);
    await page.reload();
    await planned(page);
    expect(await page.getByLabel('Each week').first().inputValue()).toBe('0.5');
    await close();
  }, 120_000);

  test('that cannot be is refused at its fields, all at once, and the last plan stays in sight', async () => {
    const { page, close } = await openNorth(site);
    await page.getByLabel('Last day', { exact: true }).first().fill('2030-01-01');
    await page.getByLabel('Length inside').first().fill('long');
    const alert = page.getByRole('alert');
    await alert.waitFor();
    await expect.poll(() => alert.textContent()).toContain('The last day comes after the first');
    await expect.poll(() => alert.textContent()).toContain('long');
    expect(await page.getByLabel('Length inside').first().getAttribute('aria-invalid')).toBe('true');
    expect(await page.locator('.sheet svg').count()).toBe(1);
    expect(await page.getByRole('button', { name: 'Weekly job list' }).isDisabled()).toBe(true);
    await close();
  }, 90_000);

  test('goes home as paper and into the phone', async () => {
    const { page, close } = await openNorth(site);
    const jobs = await downloaded(page, 'Weekly job list');
    expect((await readPdf(jobs.bytes)).pages.length).toBeGreaterThan(1);
    const { name, bytes } = await downloaded(page, 'For the phone (iCalendar)');
    expect(name).toBe('my-season.ics');
    const events = new ICAL.Component(ICAL.parse(new TextDecoder().decode(bytes))).getAllSubcomponents(
      'vevent',
    );
    expect(events.length).toBeGreaterThan(50);
    const table = await downloaded(page, 'For a spreadsheet (CSV)');
    expect(new TextDecoder().decode(table.bytes).trim().split('\r\n')).toHaveLength(events.length + 1);
    await close();
  }, 90_000);

  test('can be stopped, and shows the best so far', async () => {
    const { page, close } = await site.visit('/crops/');
    await page.locator('.sheet svg').waitFor();
    await page.getByRole('button', { name: 'Stop here' }).click();
    await page.locator(status, { hasText: 'Stopped.' }).waitFor();
    expect(await lines(page)).toContain('What it gives');
    await close();
  }, 60_000);
});
