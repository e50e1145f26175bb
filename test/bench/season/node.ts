/** One round in Node: from a season's task to its last plan. What comes before, reading content, is not counted. */
import { grown } from '../../../src/core/crops/growth.ts';
import type { Grows } from '../../../src/core/turnover/choices.ts';
import { clockFor } from '../../../src/core/turnover/clock.ts';
import { draftPlan, turnoverPlans } from '../../../src/core/turnover/turnoverPlan.ts';
import { readContent } from '../../../src/schemas/readContent.ts';
import { nodeSolver } from '../../../src/solver/node.ts';
import type { Measured } from './measured.ts';

const { content } = await readContent('content');
const task = content.turnovers.find(({ id }) => id === process.argv[2])?.task;
if (task === undefined) throw new Error(`there is no season ${process.argv[2]}`);
const grows: Grows = (crop, ...days) => grown(crop, task.place, ...days);
const now_s = () => performance.now() / 1000;
const began_s = now_s();
const before = process.cpuUsage();
const clock = clockFor(now_s, 8);
draftPlan(task, grows);
const first_s = now_s() - began_s;
const stages: Measured['stages'][number][] = [];
for (const plan of turnoverPlans(task, { grows, solver: await nodeSolver(), clock })) {
  const last = plan.stages.at(-1);
  if (last) stages.push({ name: last.name, at_s: now_s() - began_s, gap_frac: last.gap_frac });
}
const { user, system } = process.cpuUsage(before);
const told: Measured = {
  ...{ first_s, stages, whole_s: now_s() - began_s },
  peak_MB: Math.round(process.resourceUsage().maxRSS / 1024),
  cpu_s: (user + system) / 1e6,
};
process.stdout.write(`${JSON.stringify(told)}\n`);
