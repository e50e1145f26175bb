/** A visit to the finished site in a real browser, with everything that a page must not do written down. */
import type { Browser, BrowserContext, BrowserContextOptions, Page } from 'playwright-core';
import { inject } from 'vitest';
import { testDay } from '../builtSite.ts';
import { openBrowser, type Served, serve } from '../browser.ts';

export type Visit = {
  readonly page: Page;
  readonly context: BrowserContext;
  /** Errors, refusals of the policy, failed requests. */
  readonly complaints: string[];
  /** Addresses that the page asked for anywhere else. */
  readonly abroad: string[];
  readonly close: () => Promise<void>;
};

export type Site = {
  readonly served: Served;
  readonly browser: Browser;
  readonly visit: (path: string, options?: BrowserContextOptions) => Promise<Visit>;
  readonly close: () => Promise<void>;
};

export async function openSite(): Promise<Site> {
  const served = await serve(`${inject('built').out}/site`);
  const browser = await openBrowser();
  return {
    served,
    browser,
    visit: (path, options) => visit(browser, `${served.origin}${path}`, options),
    close: async () => {
      await browser.close();
      await served.close();
    },
  };
}

async function visit(browser: Browser, url: string, options: BrowserContextOptions = {}): Promise<Visit> {
  const context = await browser.newContext({ viewport: { width: 1280, height: 900 }, ...options });
  const page = await context.newPage();
  const complaints: string[] = [];
  const abroad: string[] = [];
  page.on('pageerror', (error) => complaints.push(String(error)));
  page.on('console', (message) => {
    if (message.type() === 'error' || message.type() === 'warning') complaints.push(message.text());
  });
  context.on('request', (request) => {
    const { origin, protocol } = new URL(request.url());
    if (protocol.startsWith('http') && origin !== new URL(url).origin) abroad.push(request.url());
  });
  // The day is printed on the card; timers go on.
  await page.clock.setFixedTime(new Date(`${testDay}T12:00:00`));
  await page.goto(url);
  return { page, context, complaints, abroad, close: () => context.close() };
}

/** Waits until the card shows the latest edit. */
export async function current(page: Page): Promise<void> {
  await page.locator('.sheet[data-state="current"]').waitFor();
}

/** Waits until the card is marked as not current. */
export async function stale(page: Page): Promise<void> {
  await page.locator('.sheet[data-state="stale"]').waitFor();
}

/** Waits until what was typed is kept on the device. */
export async function saved(page: Page): Promise<void> {
  await page.locator('.status [data-saving="saved"]').waitFor();
}

/** Puts everything aside and begins with empty fields. */
export async function startEmpty(page: Page): Promise<void> {
  await page.getByRole('button', { name: 'Start over' }).click();
  await page.getByRole('button', { name: 'Start with empty fields' }).click();
}

/** The bytes of a file that the page makes. */
export async function downloaded(page: Page, button: string): Promise<{ name: string; bytes: Uint8Array }> {
  const [download] = await Promise.all([
    page.waitForEvent('download'),
    page.getByRole('button', { name: button }).click(),
  ]);
  const chunks: Buffer[] = [];
  for await (const chunk of await download.createReadStream()) chunks.push(chunk as Buffer);
  return { name: download.suggestedFilename(), bytes: new Uint8Array(Buffer.concat(chunks)) };
}

/** Lets a file fall on the page. */
export async function drop(page: Page, name: string, bytes: Uint8Array): Promise<void> {
  await page.evaluate(
    ([fileName, base64]) => {
      const raw = Uint8Array.from(atob(base64), (letter) => letter.charCodeAt(0));
      const dataTransfer = new DataTransfer();
      dataTransfer.items.add(new File([raw], fileName));
      document.body.dispatchEvent(new DragEvent('drop', { dataTransfer, bubbles: true, cancelable: true }));
    },
    [name, Buffer.from(bytes).toString('base64')] as const,
  );
}
