import type { Page } from 'playwright-core';
import { afterAll, beforeAll, describe, expect, test } from 'vitest';
import { current, downloaded, openSite, type Site, stale, startEmpty, type Visit } from './visit.ts';
import { readPdf } from '../paper/readPdf.ts';

let site: Site;

beforeAll(async () => {
  site = await openSite();
});

afterAll(async () => {
  await site?.close();
});

async function opened(): Promise<Visit> {
  const visit = await site.visit('/planner/#from=hollow-lane-ibc');
  await current(visit.page);
  return visit;
}

/** What is said of a field, to those who see it and to those who hear it. */
async function saidOf(page: Page, id: string): Promise<string> {
  const field = page.locator(`#${id}`);
  const described = (await field.getAttribute('aria-describedby')) ?? '';
  const texts = described.split(' ').map((one) => page.locator(`#${one}`).textContent());
  return (await Promise.all(texts)).join(' ');
}

describe('a value that cannot be', () => {
  test('puts its message at the field and keeps the last sheet, marked as not current', async () => {
    const { page, close } = await opened();
    await page.fill('#field-pump-intake_mm', '640');
    await stale(page);
    const said = await saidOf(page, 'field-pump-intake_mm');
    expect(said).toContain('with all beds full the water can fall to 565');
    expect(await page.getAttribute('#field-pump-intake_mm', 'aria-invalid')).toBe('true');
    expect(await page.locator('.sheet .stale-mark').textContent()).toContain('Not current');
    expect(await page.locator('.sheet .picture svg').getAttribute('aria-label')).toContain(
      'Front of the care card',
    );
    // Refused, and says why; a disabled button would be silent.
    const pdf = page.getByRole('button', { name: 'Download the card (PDF)' });
    expect(await pdf.getAttribute('aria-disabled')).toBe('true');
    await page.fill('#field-pump-intake_mm', '150');
    await current(page);
    expect(await page.locator('.stale-mark').count()).toBe(0);
    expect(await page.getAttribute('#field-pump-intake_mm', 'aria-invalid')).toBe('false');
    await close();
  });

  test('stands in a list above the form whose links lead to the fields; the focus stays where one types', async () => {
    const { page, close } = await opened();
    await page.fill('#field-tank-container-depth_mm', 'deep');
    await page.fill('#field-fish-present', '2.5');
    await page.fill('#field-tank-full_mm', '1,200');
    await page.getByText('To put right: 3').waitFor();
    expect(await page.evaluate(() => document.activeElement?.id)).toBe('field-tank-full_mm');
    expect(await page.locator('.summary').textContent()).toContain('Write 1200 or 1.200');
    await page.getByRole('link', { name: /The inside depth is "deep"/ }).click();
    expect(await page.evaluate(() => document.activeElement?.id)).toBe('field-tank-container-depth_mm');
    await close();
  });

  test('is told in the units of the reader', async () => {
    const { page, close } = await opened();
    await page.selectOption('#field-sheet-units', 'us');
    await page.fill('#field-tank-full_mm', '40');
    await stale(page);
    expect(await saidOf(page, 'field-tank-full_mm')).toMatch(/at 40\s+in, but the rim is at 30\.7\s+in/);
    await close();
  });

  test('is not called wrong while it is still being typed', async () => {
    const { page, close } = await opened();
    const seen = await page.evaluate(async () => {
      const field = document.querySelector<HTMLInputElement>('#field-tank-full_mm');
      let most = 0;
      const watch = new MutationObserver(() => {
        most = Math.max(most, document.querySelectorAll('.trouble').length);
      });
      watch.observe(document.body, { subtree: true, childList: true });
      for (const text of ['6', '69', '690']) {
        if (field) field.value = text;
        field?.dispatchEvent(new InputEvent('input', { bubbles: true }));
        await new Promise((resolve) => setTimeout(resolve, 150));
      }
      watch.disconnect();
      return most;
    });
    expect(seen).toBe(0);
    await current(page);
    await close();
  });

  test('is announced, and so is the result', async () => {
    const { page, close } = await opened();
    const status = page.getByRole('status');
    await page.fill('#field-fish-present', '10');
    await status.getByText(/^Card is current\. Feed: 18\s+g\. Fish to plan for: 12\s+fish\./).waitFor();
    await page.fill('#field-fish-present', 'many');
    await status.getByText('The card is not current. To put right: 1. Still to fill in: 0.').waitFor();
    await close();
  });
});

describe('a field that is folded away', () => {
  test('is unfolded by the link to it, and says what is wrong in its unit', async () => {
    const { page, close } = await opened();
    const more = page.getByText('More about the pump: watts, curve, pipe, timer');
    const power = page.locator('#field-pump-power_W');
    if (!(await power.isVisible())) await more.click();
    await power.fill('99999');
    await page.getByText('To put right: 1').waitFor();
    await power.fill('');
    expect(await power.isVisible(), 'stays open while one types in it').toBe(true);
    await power.fill('99999');
    await page.getByText('To put right: 1').waitFor();
    await more.click();
    expect(await power.isVisible()).toBe(false);
    await page.getByRole('link', { name: /The power of the pump is 99999\sW/ }).click();
    expect(await page.evaluate(() => document.activeElement?.id)).toBe('field-pump-power_W');
    await close();
  });
});

describe('a sheet of labels', () => {
  test('is measured field by field, and its labels come back as a PDF once the grid fits', async () => {
    const { page, close } = await opened();
    await page.getByText('Labels: measure your own sheet of blank labels').click();
    const field = (key: string) => page.locator(`#field-labels-${key}`);
    const grid = {
      ...{ columns: '2', rows: '5', labelWidth_mm: '90', labelHeight_mm: '50', left_mm: '12', top_mm: '20' },
      ...{ across_mm: '80', down_mm: '51', used: '10' },
    };
    for (const [key, text] of Object.entries(grid)) await field(key).fill(text);
    await page.getByText('To put right: 2').waitFor();
    expect(await saidOf(page, 'field-labels-across_mm')).toContain('but one label measures 90');
    expect(await saidOf(page, 'field-labels-used')).toContain('At most 9 can be gone.');
    await field('across_mm').fill('92');
    await field('used').fill('');
    await current(page);
    const { name, bytes } = await downloaded(page, 'Labels (PDF)');
    expect(name).toBe('hollow-lane-ibc-labels.pdf');
    const { pages } = await readPdf(bytes);
    expect(pages[0]?.text).toContain('2 across and 5 down, on your own sheet of labels');
    await close();
  });
});

describe('a dip table', () => {
  test('says how many dips it wants, and takes them row by row', async () => {
    const { page, close } = await opened();
    await page.selectOption('#field-beds-0-container-shape', 'dipTable');
    await page.fill('#field-beds-0-container-outsideLength_mm', '1000');
    await page.fill('#field-beds-0-container-outsideWidth_mm', '1000');
    await page.locator('.bed .rows').getByText('The dip table is missing.').waitFor();
    for (const [row, [depth, litres]] of [
      ['180', '150'],
      ['360', '320'],
    ].entries()) {
      await page.getByRole('button', { name: 'Add a dip' }).click();
      await page.waitForFunction((at) => document.activeElement?.id.endsWith(`dips-${at}-depth_mm`), row);
      await page.keyboard.type(depth ?? '');
      await page.fill(`#field-beds-0-container-dips-${row}-volume_L`, litres ?? '');
      if (row === 0) await page.locator('.bed .rows').getByText('there are 1, and 2 are the least').waitFor();
    }
    await current(page);
    // 150 L up to 180 mm, then 170 L over the next 180 mm: 150 + 170 x 120 / 180 at the water line of 300 mm.
    expect(await page.locator('[data-figure="wetMedia_L"] .value').textContent()).toMatch(/263\s+L/);
    await close();
  });
});

describe('empty fields', () => {
  test('are not scolded, but every one of them is listed', async () => {
    const { page, close } = await opened();
    await startEmpty(page);
    await page.getByText(/Still to fill in: \d\d/).click();
    await page.getByRole('link', { name: 'Full line' }).click();
    expect(await page.evaluate(() => document.activeElement?.id)).toBe('field-tank-full_mm');
    expect(await page.locator('[aria-invalid="true"]').count()).toBeLessThanOrEqual(2);
    await close();
  });
});

describe('names of every kind', () => {
  const printable = [
    '<script>window.hit=1</script>',
    '"><img src=x onerror=window.hit=1>',
    "O'Neill & Söhne “№ 5” {name} $x %s \\",
    'Łódź Ωμέγα Журавль Ấp Bắc',
  ];

  test.each(printable)('are shown and printed as text: %s', async (name) => {
    const { page, complaints, abroad, close } = await opened();
    await page.fill('#field-name', name);
    await page.fill('#field-beds-0-name', name);
    await current(page);
    const pdf = await downloaded(page, 'Download the card (PDF)');
    const { pages, info } = await readPdf(pdf.bytes);
    expect(info['Title']).toBe(`${name}: care card`);
    const squeezed = (text: string) => text.replace(/\s+/g, '');
    expect(squeezed(pages[0]?.text ?? '')).toContain(squeezed(name));
    expect(await page.evaluate(() => 'hit' in window)).toBe(false);
    expect(complaints).toEqual([]);
    expect(abroad).toEqual([]);
    await close();
  });

  test('of 500 characters are cut on the sheet and kept whole in the form', async () => {
    const { page, close } = await opened();
    const long = 'Long name of a tank, '.repeat(24).slice(0, 500);
    await page.fill('#field-name', long);
    await current(page);
    expect(await page.inputValue('#field-name')).toBe(long);
    await page.fill('#field-name', `${long}!`);
    await stale(page);
    expect(await saidOf(page, 'field-name')).toContain('more than 500 characters');
    await close();
  });

  const unprintable = [
    ['დოქი', 'დ (U+10D3)'],
    ['tank 🐟', '🐟 (U+1F41F)'],
    ['ዓሣ', 'ዓ (U+12D3)'],
  ] as const;

  test.each(unprintable)('that no font has are refused with the character: %s', async (name, character) => {
    const { page, complaints, close } = await opened();
    await page.fill('#field-name', name);
    await stale(page);
    expect(await saidOf(page, 'field-name')).toContain(character);
    expect(await page.getAttribute('#field-name', 'aria-invalid')).toBe('true');
    expect(await page.inputValue('#field-name')).toBe(name);
    expect(complaints).toEqual([]);
    await close();
  });
});
