/** Things to start from: containers and pumps of usual sizes, whose figures a person replaces by their own. */
import * as z from 'zod';
import { containerFile } from './container.ts';
import { line, number, prose } from './fields.ts';

export const startContainerFile = z.strictObject({
  /** What people call it. No maker's name. */
  name: line(),
  /** Inside measures of a usual one. */
  container: containerFile,
  /** Citation key; the weakest one where the measures come from several. */
  source: line(),
  /** What it held before, what it is made of, what to look out for. */
  note: prose(),
});

export const startPumpFile = z.strictObject({
  /** Size, and what for. No maker's name. */
  name: line(),
  /** From no flow at its greatest height to its greatest flow. */
  curve: z
    .array(z.strictObject({ flow_L_h: number(0, 200_000, 'L_h'), head_m: number(0, 100, 'm') }))
    .min(3)
    .max(12),
  power_W: z.strictObject({ low: number(0.5, 5_000, 'W'), high: number(0.5, 5_000, 'W') }),
  /** Citation key. */
  source: line(),
});

export type StartContainerFile = z.output<typeof startContainerFile>;
export type StartPumpFile = z.output<typeof startPumpFile>;

/** Both kinds, as the planner offers them. */
export type Starts = {
  readonly containers: Readonly<Record<string, StartContainerFile>>;
  readonly pumps: Readonly<Record<string, StartPumpFile>>;
};
