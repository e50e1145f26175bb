/** Planning the rest of a season again in a real browser: other wishes, and a sowing that failed in part. */
import type { Page } from 'playwright-core';
import { afterAll, beforeAll, describe, expect, test } from 'vitest';
import { differently, jobs, lines, openSpring, planned, status, wish } from './cropsVisit.ts';
import { openSite, type Site } from './visit.ts';

let site: Site;

beforeAll(async () => {
  site = await openSite();
});

afterAll(async () => {
  await site?.close();
});

const from = '2031-05-05';
const past = (rows: readonly string[]) => rows.filter((row) => row < from);

async function planAgain(page: Page): Promise<void> {
  await page.getByRole('button', { name: 'Plan the rest again' }).click();
  await page.locator(status, { hasText: 'Planning the rest again' }).waitFor();
  await planned(page);
}

describe('other wishes from a day on', () => {
  test('begin as those of now, move nothing that stands, and are those of the form afterwards', async () => {
    const { page, complaints, close } = await openSpring(site);
    const before = await jobs(page);
    const crops = await page.locator('#field-wishes > fieldset').count();
    await differently(page);
    await page.getByLabel('Plan again from').fill(from);
    await page.getByLabel('From then on I want to pick something else').check();
    const other = (number: number) =>
      page.getByRole('group', { name: `Crop from then on ${number}`, exact: true });
    expect(await other(1).getByLabel('Each week').inputValue()).toBe(
      await wish(page, 1).getByLabel('Each week').inputValue(),
    );
    // What is typed here does not replace the plan.
    await other(3).getByRole('button', { name: 'Take crop from then on 3 out' }).click();
    await other(1).getByLabel('Each week').fill('lots');
    expect(await jobs(page)).toEqual(before);
    await page.getByRole('button', { name: 'Plan the rest again' }).click();
    const alert = page.getByRole('alert');
    await expect.poll(() => alert.textContent()).toContain('"lots", which is not a number');
    expect(await other(1).getByLabel('Each week').getAttribute('aria-invalid')).toBe('true');
    await other(1).getByLabel('Each week').fill('6');
    await planAgain(page);
    const after = await jobs(page);
    const sown = (rows: readonly string[], crop: string) =>
      rows.filter((row) => row.includes(crop) && row.includes(',sow into the bed,'));
    const coming = (rows: readonly string[]) => rows.filter((row) => row >= from);
    expect(past(after)).toEqual(past(before));
    expect(sown(coming(before), 'Radish').length).toBeGreaterThan(0);
    expect(sown(coming(after), 'Radish')).toEqual([]);
    // The form says what is wanted of the whole season now, and the plan is that of the form.
    expect(await page.locator('#field-wishes > fieldset').count()).toBe(crops);
    expect(await wish(page, 1).getByLabel('Each week').inputValue()).toBe('6');
    expect(await wish(page, 1).getByLabel('Only from').inputValue()).toBe('2031-05-05');
    expect(await wish(page, 3).getByLabel('Only up to').inputValue()).toBe('2031-05-04');
    expect(await page.locator(status).textContent()).toContain('This is the plan.');
    await page.reload();
    await planned(page);
    expect(await jobs(page)).toEqual(after);
    await page.getByRole('button', { name: 'Back to what was before' }).click();
    await planned(page);
    expect(await jobs(page)).toEqual(before);
    expect(await wish(page, 1).getByLabel('Each week').inputValue()).not.toBe('6');
    expect(await other(1).getByLabel('Each week').inputValue()).toBe('6');
    expect(complaints).toEqual([]);
    await close();
  }, 150_000);
});

describe('a sowing that failed in part', () => {
  test('gives less, is told, and leaves the rest where it stands; what cannot be is told at its field', async () => {
    const { page, complaints, close } = await openSpring(site);
    const before = await jobs(page);
    await differently(page);
    await page.getByLabel('Plan again from').fill(from);
    await page.getByRole('button', { name: 'A sowing failed in part' }).click();
    await expect
      .poll(() => page.evaluate(() => document.activeElement?.id))
      .toBe('field-again-partly-0-sowing');
    const row = page.getByRole('group', { name: 'Failed in part 1' });
    const choice = row.getByLabel('Which sowing');
    // "Spinach, 28 plants, sown 13 Apr 2031: Long bed, places 3–9".
    const texts = await choice.locator('option').allTextContents();
    const text = texts.find((one) => one.startsWith('Spinach')) ?? '';
    const count = Number(/(\d+) plants/.exec(text)?.[1]);
    expect(count).toBeGreaterThan(13);
    await choice.selectOption({ label: text });
    const left = row.getByLabel('Plants that are left');
    await left.fill(`${count}`);
    await page.getByRole('button', { name: 'Plan the rest again' }).click();
    await expect.poll(() => page.getByRole('alert').textContent()).toContain('The plants that are left');
    expect(await left.getAttribute('aria-invalid')).toBe('true');
    expect(await jobs(page)).toEqual(before);
    // Four stand on each place: the thirteenth fills none.
    await left.fill('13');
    await planAgain(page);
    expect(await lines(page)).toContain('Failed in part, left of it: Spinach, 12 plants');
    expect(await page.getByRole('group', { name: 'Failed in part 1' }).count()).toBe(0);
    const after = await jobs(page);
    const others = (rows: readonly string[]) => past(rows).filter((one) => !one.includes('Spinach'));
    expect(others(after)).toEqual(others(before));
    expect(complaints).toEqual([]);
    await close();
  }, 120_000);
});
