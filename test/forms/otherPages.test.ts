/** Pages that nobody sees wait for a better plan, and not for long. */
import { afterEach, beforeEach, describe, expect, test, vi } from 'vitest';
import { otherPages } from '../../src/forms/season/otherPages.ts';

beforeEach(() => void vi.useFakeTimers());
afterEach(() => void vi.useRealTimers());

/** After how many milliseconds they come, where something is done after a second. */
async function comesAfter_ms(pages: ReturnType<typeof otherPages>, done: () => void): Promise<number> {
  const from = Date.now();
  let at = Number.NaN;
  void pages.mayCome().then(() => {
    at = Date.now() - from;
  });
  await vi.advanceTimersByTimeAsync(1000);
  done();
  await vi.advanceTimersByTimeAsync(10_000);
  return at;
}

describe('the other pages of a calendar', () => {
  test('wait until no better plan comes, or somebody looks at one of them', async () => {
    const pages = otherPages();
    pages.begin('coming');
    expect(await comesAfter_ms(pages, pages.settle)).toBe(1000);
    pages.begin('coming');
    expect(await comesAfter_ms(pages, () => pages.look(0))).toBe(4000);
    expect(await comesAfter_ms(pages, () => pages.look(2))).toBe(1000);
  });

  test('wait only for the first to be on the screen where nothing better comes, or one of them is looked at', async () => {
    const pages = otherPages();
    pages.begin('none');
    expect(await comesAfter_ms(pages, () => undefined)).toBe(150);
    pages.look(1);
    pages.begin('coming');
    expect(await comesAfter_ms(pages, () => undefined)).toBe(150);
    pages.look(0);
    pages.settle();
    expect(await comesAfter_ms(pages, () => undefined)).toBe(150);
  });
});
