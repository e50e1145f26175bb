/** The form of a season in a real browser: pulses, own months, and the rest of a plan once more. */
import { afterAll, beforeAll, describe, expect, test } from 'vitest';
import {
  differently,
  fold,
  jobs,
  lines,
  openNorth,
  openSpring,
  planned,
  plannedAnew,
  status,
  wish,
} from './cropsVisit.ts';
import { objections } from './objections.ts';
import { openSite, type Site } from './visit.ts';

let site: Site;

beforeAll(async () => {
  site = await openSite();
});

afterAll(async () => {
  await site?.close();
});

/** @example dayAfter('2031-04-30', 1) // '2031-05-01' */
function dayAfter(day: string, days: number): string {
  return new Date(Date.parse(day) + days * 86_400_000).toISOString().slice(0, 10);
}

describe('other amounts in some weeks', () => {
  test('of one crop and of all are planned, refused at their fields, and kept', async () => {
    const { page, complaints, close } = await openSpring(site);
    const before = await lines(page);
    await wish(page, 1).locator('summary').click();
    await wish(page, 1).getByRole('button', { name: 'Another amount in some weeks' }).click();
    const market = wish(page, 1).getByRole('group', { name: 'Other weeks 1' });
    // Typing goes on in the new row.
    await expect
      .poll(() => page.evaluate(() => document.activeElement?.id))
      .toBe('field-wishes-0-pulses-0-from');
    await market.getByLabel('From the week of').fill('2032-07-10');
    await market.getByLabel('In each of these weeks').fill('many');
    await page.getByRole('button', { name: 'More or less in some weeks' }).click();
    const all = page.locator('#field-pulses-0');
    await all.getByLabel('From the week of').fill('2031-05-26');
    await all.getByLabel('Times the usual').fill('0');
    const alert = page.getByRole('alert');
    await expect.poll(() => alert.textContent()).toContain('which is not in the season');
    expect(await alert.textContent()).toContain('The other amount is "many", which is not a number');
    expect(await market.getByLabel('In each of these weeks').getAttribute('aria-invalid')).toBe('true');
    const described = await market.getByLabel('From the week of').getAttribute('aria-describedby');
    expect(await page.locator(`#${described?.split(' ')[1]}`).textContent()).toContain('not in the season');
    // The way from the summary leads to the field.
    await alert.getByRole('link', { name: 'not a number' }).click();
    expect(await page.evaluate(() => document.activeElement?.id)).toBe('field-wishes-0-pulses-0-amount');
    await market.getByLabel('From the week of').fill('2031-06-10');
    await market.getByLabel('In each of these weeks').fill('30');
    await planned(page);
    const asked = /Head lettuce: \d+ heads of (\d+) heads/;
    // Thirty instead of three in one week, none instead of three in another.
    expect(Number(asked.exec(await lines(page))?.[1])).toBe(Number(asked.exec(before)?.[1]) + 27 - 3);
    await page.reload();
    await planned(page);
    expect(await market.getByLabel('In each of these weeks').inputValue()).toBe('30');
    expect(await all.getByLabel('Times the usual').inputValue()).toBe('0');
    expect(new URL(page.url()).search).toBe('');
    expect(complaints).toEqual([]);
    await close();
  }, 120_000);
});

describe('own months', () => {
  test('begin as those of the climate, go with the units, and stay while they are left out', async () => {
    const { page, close } = await openSpring(site);
    const before = await lines(page);
    const own = page.getByLabel('I type my own monthly temperatures');
    const night = page.getByLabel('Nights, Mar');
    await own.check();
    // Helsinki: -3.6 at night, 2.3 by day.
    expect(await night.inputValue()).toBe('-3.6');
    expect(await page.getByLabel('Mean, Mar').inputValue()).toBe('-0.65');
    await plannedAnew(page);
    await page.getByLabel('Units').selectOption('us');
    expect(await night.inputValue()).toBe('25.5');
    expect(await page.getByLabel('Length inside').first().inputValue()).toBe('78.74');
    await night.fill('hot');
    await expect.poll(() => page.getByRole('alert').textContent()).toContain('Mar is "hot"');
    await night.fill('86');
    await expect.poll(() => page.getByRole('alert').textContent()).toContain('Mar: warmer than the mean');
    expect(await night.getAttribute('aria-invalid')).toBe('true');
    for (const month of ['Jan', 'Feb', 'Mar', 'Apr', 'May', 'Oct', 'Nov', 'Dec']) {
      await page.getByLabel(`Mean, ${month}`).fill('64');
      await page.getByLabel(`Nights, ${month}`).fill('59 °F');
    }
    await planned(page);
    expect(await lines(page)).not.toBe(before);
    await own.uncheck();
    expect(await night.count()).toBe(0);
    await own.check();
    expect(await night.inputValue()).toBe('59 °F');
    await planned(page);
    await page.reload();
    await planned(page);
    expect(await night.inputValue()).toBe('59 °F');
    await close();
  }, 150_000);

  test('of the water are twelve or none', async () => {
    const { page, close } = await openSpring(site);
    await page.getByLabel('Water, Jun').fill('16');
    await expect.poll(() => page.getByText('Still to fill in: 11').count()).toBe(1);
    await page.getByLabel('Water, Jun').fill('');
    await planned(page);
    expect(await page.getByRole('alert').count()).toBe(0);
    await close();
  }, 60_000);
});

const today = '2031-05-04';

describe('planning again', () => {
  test('takes a failed sowing out and moves nothing that stands; one can go back, and nothing is lost by a reload', async () => {
    const { page, complaints, close } = await openSpring(site);
    const before = await jobs(page);
    const failed = await differently(page);
    const box = failed.getByRole('checkbox').first();
    const [crop = '', , sown = ''] = (await failed.locator('label').first().textContent())?.split(', ') ?? [];
    await box.check();
    await page.getByRole('button', { name: 'Plan the rest again' }).click();
    await page.locator(status, { hasText: 'Planning the rest again' }).waitFor();
    await planned(page);
    const text = await lines(page);
    expect(text).toContain(`Failed and taken out: ${crop}`);
    expect(text).toContain('You keep to this plan');
    expect(await failed.getByRole('checkbox').first().isChecked()).toBe(false);
    // What was sown before today and did not fail is sown, planted and picked as before.
    const after = await jobs(page);
    const past = (rows: readonly string[]) => rows.filter((row) => row < today);
    const lost = past(before).filter((row) => !past(after).includes(row));
    expect(sown).toMatch(/^sown \d/);
    // Nobody unsows what came to nothing: its seeds stay where they were counted.
    const sowings = (rows: readonly string[]) => past(rows).filter((row) => /^[^,]*,[^,]*,sow /.test(row));
    expect(sowings(before).length).toBeGreaterThan(0);
    expect(sowings(after)).toEqual(sowings(before));
    expect(before.filter((row) => row.includes(crop) && !after.includes(row)).length).toBeGreaterThan(0);
    for (const row of lost) expect(row).toContain(crop);
    expect(
      past(after)
        .filter((row) => !past(before).includes(row))
        .every((row) => row.includes(crop)),
    ).toBe(true);
    await page.reload();
    await planned(page);
    expect(await lines(page)).toContain(`Failed and taken out: ${crop}`);
    expect(await jobs(page)).toEqual(after);
    await page.getByRole('button', { name: 'Back to what was before' }).click();
    await planned(page);
    expect(await jobs(page)).toEqual(before);
    expect(await box.isChecked()).toBe(true);
    await page.getByRole('button', { name: 'Back to what was before' }).click();
    await planned(page);
    expect(await jobs(page)).toEqual(after);
    expect(complaints).toEqual([]);
    await close();
  }, 150_000);

  test('after a missed week does its jobs later, and refuses at its fields what cannot be', async () => {
    const { page, close } = await openSpring(site);
    const before = await jobs(page);
    await differently(page);
    await page.getByLabel('Plan again from').fill('2032-01-01');
    await page.getByRole('button', { name: 'A week was missed' }).click();
    const missed = page.getByLabel('Any day of that week');
    await missed.fill('2030-04-30');
    const again = page.getByRole('button', { name: 'Plan the rest again' });
    await again.click();
    await expect.poll(() => page.getByRole('alert').textContent()).toContain('The day of the missed week');
    expect(await page.getByRole('alert').textContent()).toContain('The day from which to plan again');
    expect(await missed.getAttribute('aria-invalid')).toBe('true');
    // The plan from before is there, whole.
    await planned(page);
    expect(await jobs(page)).toEqual(before);
    // A Sunday with something to do, as all days of this season; which ones there are is up to the plan.
    const sunday = before[Math.floor(before.length / 2)]?.slice(0, 10) ?? '';
    const monday = dayAfter(sunday, -6);
    await page.getByLabel('Plan again from').fill(dayAfter(sunday, 1));
    await missed.fill(dayAfter(sunday, -4));
    await again.click();
    await page.locator(status, { hasText: 'Planning the rest again' }).waitFor();
    await planned(page);
    expect(await page.getByRole('alert').count()).toBe(0);
    const inWeek = (rows: readonly string[]) =>
      rows.filter((row) => monday <= row && row < dayAfter(sunday, 1));
    expect(inWeek(before).length).toBeGreaterThan(0);
    expect(inWeek(await jobs(page))).toEqual([]);
    await close();
  }, 120_000);

  test('can be stopped: at once the plan from before is there, later the best so far, and before it the other', async () => {
    const { page, close } = await openNorth(site);
    const before = await jobs(page);
    const failed = await differently(page);
    await failed.getByRole('checkbox').first().check();
    await page.getByRole('button', { name: 'Plan the rest again' }).click();
    await page.getByRole('button', { name: 'Stop here' }).click();
    await page.locator(status, { hasText: /This is the plan|Stopped/ }).waitFor();
    if (await failed.getByRole('checkbox').first().isChecked()) expect(await jobs(page)).toEqual(before);
    else await page.getByRole('button', { name: 'Back to what was before' }).click();
    await planned(page);
    expect(await jobs(page)).toEqual(before);
    await close();
  }, 90_000);
});

describe('a plan that is kept to', () => {
  test('is not changed by typing, and is put aside when the season is planned anew', async () => {
    const { page, close } = await openSpring(site);
    const before = await jobs(page);
    await page.getByRole('button', { name: 'Keep to this plan' }).click();
    const amount = wish(page, 3).getByLabel('Each week');
    const radish = (rows: readonly string[]) => rows.filter((row) => row.includes('Radish'));
    expect(radish(before).length).toBeGreaterThan(0);
    await amount.fill('0');
    const apart = page.locator(status, { hasText: 'What you typed since is not in it' });
    await apart.waitFor();
    expect(await jobs(page)).toEqual(before);
    await page.reload();
    await apart.waitFor();
    expect(await amount.inputValue()).toBe('0');
    expect(await jobs(page)).toEqual(before);
    await page.getByRole('button', { name: 'Plan the whole season anew' }).click();
    await planned(page);
    expect(radish(await jobs(page))).toEqual([]);
    await page.getByRole('button', { name: 'Back to what was before' }).click();
    await apart.waitFor();
    expect(await jobs(page)).toEqual(before);
    await close();
  }, 120_000);
});

describe('with every group open', () => {
  test.each([320, 390])(
    'the page scrolls in one direction only at %i pixels, and shuts nobody out',
    async (width) => {
      const { page, close } = await openSpring(site, { viewport: { width, height: 800 } });
      await page.getByLabel('I type my own monthly temperatures').check();
      await page.getByRole('button', { name: 'More or less in some weeks' }).click();
      await wish(page, 1).locator('summary').click();
      await wish(page, 1).getByRole('button', { name: 'Another amount in some weeks' }).click();
      for (const name of ['Labels:', 'Something came differently']) await fold(page, name);
      for (const name of ['A week was missed', 'A sowing failed in part'])
        await page.getByRole('button', { name }).click();
      await page.getByLabel('From then on I want to pick something else').check();
      await page.getByLabel('Water, Jun').fill('warm');
      await page.getByRole('alert').waitFor();
      const wider = () => page.evaluate(() => document.documentElement.scrollWidth - innerWidth);
      expect(await objections(page)).toEqual([]);
      expect(await wider()).toBeLessThanOrEqual(0);
      await page.evaluate(() => {
        document.documentElement.style.fontSize = '200%';
      });
      expect(await wider()).toBeLessThanOrEqual(0);
      await close();
    },
    60_000,
  );
});
