import { afterAll, beforeAll, describe, expect, test } from 'vitest';
import { exercises } from '../../src/core/workshop/exercise.ts';
import { sheetNumber } from '../../src/core/workshop/sheetNumber.ts';
import { planOf } from '../../src/core/plan/planOf.ts';
import { content } from '../demoSystems.ts';
import { openSite, type Site } from './visit.ts';

let site: Site;

beforeAll(async () => {
  site = await openSite();
});

afterAll(async () => {
  await site?.close();
});

describe('checking a worksheet', () => {
  test('finds the step that differs, and says what follows from it', async () => {
    // Somebody of the demo workshop who got an exercise.
    const person = content.workshops[0]?.people.find(({ number }) => number !== null);
    if (person === undefined) throw new Error('nobody has an exercise');
    const { figures } = planOf(person.system);
    const value = (key: string) => String(Number((figures[key]?.value ?? 0).toPrecision(5)));
    const { page, close } = await site.visit('/check/');
    await page.getByLabel('Sheet number').fill(person.number ?? '');
    const answer = (group: string) => page.getByRole('group', { name: group, exact: true });
    const tell = (group: string, at: number) => answer(group).getByRole('status').nth(at).textContent();
    await answer('Wet media').getByRole('textbox').fill(value('bed1.wetMedia_L'));
    expect(await tell('Wet media', 0)).toBe('Right.');
    await answer('Fish tank at the full line').getByRole('textbox').fill('1');
    expect(await tell('Fish tank at the full line', 0)).toContain('Look at this step again');
    const lowest = answer('Fish tank at its lowest in normal running').getByRole('textbox').last();
    // Of a tank that holds a litre, what the beds take is more than all of it.
    await lowest.fill(String(1 - (Number(value('tankFull_L')) - Number(value('tankLow_L')))));
    expect(await tell('Fish tank at its lowest in normal running', 1)).toContain('a number before it');
    // The wet media was right.
    await answer('Fish that the wet media carries').getByRole('textbox').fill('999');
    expect(await tell('Fish that the wet media carries', 0)).toContain('Look at this step again');
    await answer('Fish that the wet media carries').getByRole('textbox').fill('many');
    expect(await tell('Fish that the wet media carries', 0)).toBe('Write figures only, such as 12.5.');
    expect(new URL(page.url()).search).toBe('');
    await close();
  });

  test('refuses a number that was copied wrong, and takes containers instead', async () => {
    const { page, close } = await site.visit('/check/');
    const number = sheetNumber({ level: 'adults', seed: 7, index: 3 });
    await page
      .getByLabel('Sheet number')
      .fill(number.replace(/\d$/, (digit) => String((Number(digit) + 1) % 10)));
    expect(await page.getByText('a digit of it was copied wrong').isVisible()).toBe(true);
    expect(await page.getByRole('heading', { name: 'Your answers' }).count()).toBe(0);
    await page.getByLabel('Sheet number').fill('');
    await page.getByLabel('Your containers').fill('tank box 100 x 90 x 80 cm');
    expect(await page.getByText('must have one').isVisible()).toBe(true);
    await page.getByLabel('Your containers').fill('tank box 100 x 90 x 80 cm + bed box 100 x 60 x 35 cm');
    const wet = page.getByRole('group', { name: 'Wet media', exact: true });
    // 35 cm to the rim: 30 cm of media, 25 cm of it wet.
    await wet.getByRole('textbox').fill('150');
    expect(await wet.getByRole('status').textContent()).toBe('Right.');
    const lowest = page.getByRole('group', { name: 'Fish tank at its lowest in normal running' });
    const most = { coarseGravel: 0.45, expandedClay: content.media['expandedClay']?.void_frac.high ?? 0 };
    const line = 'tank box 100 x 90 x 80 cm + bed box 100 x 60 x 35 cm';
    for (const [typed, wet_L, moved_L] of [
      [`${line} + media expandedClay + pump small`, 150, 150 * most.expandedClay],
      ['hollow-lane-ibc', 300, 300 * most.coarseGravel],
    ] as const) {
      await page.getByLabel('Your containers').fill(typed);
      await wet.getByRole('textbox').fill(String(wet_L));
      expect(await wet.getByRole('status').textContent()).toBe('Right.');
      await lowest.getByRole('textbox').first().fill(String(moved_L));
      expect(await lowest.getByRole('status').first().textContent()).toBe('Right.');
    }
    await close();
  });

  test('gives back the very exercise that was printed', async () => {
    const { page, close } = await site.visit('/check/');
    const most_frac = content.media['coarseGravel']?.void_frac.high ?? 0;
    const [, , third] = exercises('primary', 31, 3, most_frac);
    if (third === undefined) throw new Error('no exercise');
    await page.getByLabel('Sheet number').fill(sheetNumber({ level: 'primary', seed: 31, index: 2 }));
    const wet = page.getByRole('group', { name: 'Wet media', exact: true });
    const { bed, waterLine_mm } = third;
    if (bed.shape !== 'box') throw new Error('children get boxes');
    await wet.getByRole('textbox').fill(String((bed.length_mm * bed.width_mm * waterLine_mm) / 1e6));
    expect(await wet.getByRole('status').textContent()).toBe('Right.');
    await close();
  });
});
