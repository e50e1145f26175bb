/** `npm run bench`: how long a plan, a layout and each print take, in this process, warm. Ratios count, not milliseconds. */
import { bedPlans } from '../core/plan/beds.ts';
import { sheetFacts } from '../core/plan/sheetFacts.ts';
import { flowPlan } from '../core/plan/flowPlan.ts';
import { levels } from '../core/plan/levels.ts';
import { planOf } from '../core/plan/planOf.ts';
import { nodePress } from '../paper/node.ts';
import type { Page } from '../paper/page.ts';
import { readContent } from '../schemas/readContent.ts';
import { writeRecord } from '../schemas/systemRecord.ts';
import { careCard, careCardKind } from '../sheets/careCard.tsx';
import { sheetPrint } from '../sheets/sheetPrint.ts';

const rounds = 30;

/** A plan is short; it takes more of them until the machine has made it as fast as it will be. */
const planRounds = 120;

const { content } = await readContent('content');
const one = content.systems.find((system) => system.id === 'hollow-lane-ibc');
if (one === undefined) throw new Error('the bench needs content/systems/hollow-lane-ibc.yaml');
const press = await nodePress();
const { terms, sources } = content;
const words = { catalogue: content.wording['en'] ?? {}, terms, sources };
const input = { ...sheetFacts(one.system, content.care), words, ...one.sheet, day: '2031-05-04' };
const pages = await sides();
const [front] = pages;
if (front === undefined) throw new Error('the card has no side');

await plans();
await measure('lay out the front', async () => careCard(input, press.layOut).next());
await measure('lay out all sides', sides);
await measure('PDF of all sides', () =>
  press.toPdf(sheetPrint(careCardKind, input, pages, writeRecord(one.raw))),
);
await measure('SVG of the front', async () => press.toSvg(front));
await measure('PNG of the front, 300 dpi', () => press.toPng(front, { dpi: 300 }));

async function sides(): Promise<readonly Page[]> {
  const all = [];
  for await (const page of careCard(input, press.layOut)) all.push(page);
  return all;
}

/** Every system: its whole plan with the level simulation, and what of that is moving water and levels over time. */
async function plans(): Promise<void> {
  const heading = 'plan'.padEnd(28);
  process.stdout.write(`${heading} median whole      of it water moving, with level simulation\n`);
  for (const { id, system } of content.systems) {
    const beds = bedPlans(system);
    const still = levels(system, beds);
    const whole = medianOf(await taken(async () => planOf(system), planRounds));
    const moving = medianOf(await taken(async () => flowPlan(system, beds, still), planRounds));
    process.stdout.write(`  ${id.padEnd(26)}    ${shown(whole)}      ${shown(moving)}\n`);
  }
}

async function measure(name: string, run: () => Promise<unknown>): Promise<void> {
  const times = await taken(run);
  process.stdout.write(
    `${name.padEnd(28)} median ${shown(medianOf(times))}   slowest ${shown(times.at(-1))}\n`,
  );
}

/** Milliseconds of some rounds after as many again to warm up, shortest first. */
async function taken(run: () => Promise<unknown>, count = rounds): Promise<readonly number[]> {
  const times: number[] = [];
  for (let i = 0; i < 2 * count; i++) {
    const start = performance.now();
    await run();
    if (i >= count) times.push(performance.now() - start);
  }
  return times.sort((a, b) => a - b);
}

function medianOf(times: readonly number[]): number | undefined {
  return times[Math.floor(times.length / 2)];
}

function shown(value: number | undefined): string {
  return `${(value ?? Number.NaN).toFixed(2).padStart(9)} ms`;
}
