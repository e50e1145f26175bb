/** `npm run bench`: how long a plan, a layout and each print take, in this process, warm. Ratios count, not milliseconds. */
import { planOf } from '../core/plan/planOf.ts';
import { nodePress } from '../paper/node.ts';
import type { Page } from '../paper/page.ts';
import { readContent } from '../schemas/readContent.ts';
import { writeRecord } from '../schemas/systemRecord.ts';
import { careCard } from '../sheets/careCard.tsx';
import { cardPrint } from '../sheets/cardPrint.ts';
import type { SheetInput } from '../sheets/sheet.ts';

const rounds = 30;

const { content } = await readContent('content');
const one = content.systems.find((system) => system.id === 'hollow-lane-ibc');
if (one === undefined) throw new Error('the bench needs content/systems/hollow-lane-ibc.yaml');
const press = await nodePress();
const words = { catalogue: content.wording['en'] ?? {}, terms: content.terms, sources: content.sources };
const input: SheetInput = {
  system: one.system,
  plan: planOf(one.system),
  words,
  ...one.sheet,
  day: '2031-05-04',
};
const pages = await sides();
const [front] = pages;
if (front === undefined) throw new Error('the card has no side');

await measure('plan', async () => planOf(one.system));
await measure('lay out the front', async () => careCard(input, press.layOut).next());
await measure('lay out all sides', sides);
await measure('PDF of all sides', () => press.toPdf(cardPrint(input, pages, writeRecord(one.raw))));
await measure('SVG of the front', async () => press.toSvg(front));
await measure('PNG of the front, 300 dpi', () => press.toPng(front, { dpi: 300 }));

async function sides(): Promise<readonly Page[]> {
  const all = [];
  for await (const page of careCard(input, press.layOut)) all.push(page);
  return all;
}

/** Median and slowest of some rounds after as many again to warm up. */
async function measure(name: string, run: () => Promise<unknown>): Promise<void> {
  const taken: number[] = [];
  for (let i = 0; i < 2 * rounds; i++) {
    const start = performance.now();
    await run();
    if (i >= rounds) taken.push(performance.now() - start);
  }
  taken.sort((a, b) => a - b);
  const show = (value: number | undefined): string => `${(value ?? Number.NaN).toFixed(2).padStart(9)} ms`;
  process.stdout.write(
    `${name.padEnd(28)} median ${show(taken[rounds / 2])}   slowest ${show(taken.at(-1))}\n`,
  );
}
