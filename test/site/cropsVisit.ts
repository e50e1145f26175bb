/** The crops page with a season open, and what to wait for on it. */
import type { BrowserContextOptions, Locator, Page } from 'playwright-core';
import { downloaded, type Site, type Visit } from './visit.ts';

export const status = '[role="status"]';

/** Waits for a plan that is worked out to its end. */
export async function planned(page: Page): Promise<void> {
  await page.locator(status, { hasText: 'This is the plan.' }).waitFor({ timeout: 60_000 });
}

/** Waits for the plan of what was just typed. */
export async function plannedAnew(page: Page): Promise<void> {
  await page.locator(status, { hasText: 'Working it out' }).waitFor();
  await planned(page);
}

export async function openNorth(site: Site, options: BrowserContextOptions = {}): Promise<Visit> {
  const visit = await site.visit('/crops/', options);
  await visit.page.getByRole('button', { name: 'The north yard' }).click();
  await plannedAnew(visit.page);
  return visit;
}

/** The north yard up to the end of June, which is planned in a moment. */
export async function openSpring(site: Site, options: BrowserContextOptions = {}): Promise<Visit> {
  const visit = await site.visit('/crops/', options);
  await visit.page.getByRole('button', { name: 'The north yard' }).click();
  await visit.page.getByLabel('Last day', { exact: true }).fill('2031-06-29');
  await plannedAnew(visit.page);
  return visit;
}

/** All that the page says of the season. */
export async function lines(page: Page): Promise<string> {
  return (await page.locator('.output').textContent()) ?? '';
}

export const fold = (page: Page, name: string): Promise<void> =>
  page.locator('summary', { hasText: name }).first().click();

/** Rows of the plan as a table: each job with its day, its place and its count. */
export async function jobs(page: Page): Promise<readonly string[]> {
  const { bytes } = await downloaded(page, 'For a spreadsheet (CSV)');
  return new TextDecoder().decode(bytes).trim().split('\r\n').slice(1);
}

/** A wish of the form: its row, found by its number. */
export const wish = (page: Page, number: number): Locator =>
  page.getByRole('group', { name: `Crop ${number}`, exact: true });

/** The form of what came differently, opened. */
export async function differently(page: Page): Promise<Locator> {
  await fold(page, 'Something came differently');
  return page.getByRole('group', { name: 'Sowings that failed', exact: true });
}
