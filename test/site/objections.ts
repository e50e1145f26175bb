/** What shuts people out of a page, as far as a machine can tell. */
import { readFileSync } from 'node:fs';
import { createRequire } from 'node:module';
import type { Page } from 'playwright-core';

const axeFile = createRequire(import.meta.url).resolve('axe-core/axe.min.js');
const axe = readFileSync(axeFile, 'utf8');

type AxeRun = {
  readonly violations: readonly { readonly id: string; readonly nodes: readonly { html: string }[] }[];
};

/** What the rules for accessible pages object to. Evaluated from outside, so the page's own policy stays. */
export async function objections(page: Page): Promise<readonly string[]> {
  await page.evaluate(axe);
  const { violations } = await page.evaluate(() =>
    (window as unknown as { axe: { run: () => Promise<AxeRun> } }).axe.run(),
  );
  return violations.map(({ id, nodes }) => `${id}: ${nodes.map(({ html }) => html).join(' ')}`);
}
