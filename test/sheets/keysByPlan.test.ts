import { execFile } from 'node:child_process';
import { mkdtemp, rm, writeFile } from 'node:fs/promises';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import { promisify } from 'node:util';
import { afterAll, beforeAll, expect, test } from 'vitest';
import { stringify } from 'yaml';
import * as z from 'zod';
import { levels } from '../../src/core/workshop/exercise.ts';
import type { System } from '../../src/core/system.ts';
import { cells, deskFor, isPrinted, printedResults, systemIds } from './handoutDesk.ts';

let folder: string;
beforeAll(async () => {
  folder = await mkdtemp(join(tmpdir(), 'bedfirst-keys-'));
});
afterAll(() => rm(folder, { recursive: true }));

/** What somebody with the tape would write into a file of their own; neither exercises nor own containers have fish yet. */
function written({ tank, beds: [bed], pump }: System): string {
  if (bed === undefined || pump === null) throw new Error('a first plan without bed or pump');
  const { container, waterLine_mm, mediaDepth_mm, above_mm } = bed;
  return stringify({
    ...{ id: 'measured', name: 'Measured', place: '' },
    tank: { container: tank.container, full_mm: tank.full_mm },
    beds: [
      {
        ...{ name: 'Bed', mode: 'siphon', media: 'coarseGravel' },
        ...{ container, waterLine_mm, mediaDepth_mm, above_mm },
      },
    ],
    pump: { flow_L_h: pump.flow_L_h, intake_mm: pump.intake_mm },
  });
}

const step = z.object({ gives: z.object({ value: z.number() }) });
const plan = z.object({
  figures: z.record(z.string(), z.object({ value: z.number().nullable(), steps: z.array(step) })),
});

/** The figures as the command prints them. */
async function figuresOf(file: string): Promise<z.output<typeof plan>['figures']> {
  const { stdout } = await promisify(execFile)('npm', ['run', '-s', 'plan', '--', file, '--json'], {
    maxBuffer: 64 << 20,
  });
  return plan.parse(JSON.parse(stdout)).figures;
}

/** An exercise, containers of every shape, and systems by their names. */
const own = [...cells, 'hollow-lane-ibc-two-beds', 'two-bathtubs'];

test.each(levels)(
  'the command that plans a system comes to the results of the answer keys: %s',
  async (level) => {
    const desk = deskFor(
      own.map((_, at) => `Person ${at}`),
      { level },
      own,
    );
    let compared = 0;
    for (const [at, person] of desk.people.entries()) {
      const measured = join(folder, `${level}-${at}.yaml`);
      const isNamed = systemIds.includes(own[at] ?? '');
      if (!isNamed) await writeFile(measured, written(person.system));
      const figures = await figuresOf(isNamed ? `content/systems/${own[at]}.yaml` : measured);
      for (const { key, step: number, text } of await printedResults(desk, at)) {
        const figure = figures[key];
        const steps = figure?.steps ?? [];
        const exact = number === steps.length ? figure?.value : steps[number - 1]?.gives.value;
        const where = `${own[at]}: ${key}, step ${number}: ${text}`;
        expect(isPrinted(text, exact ?? Number.NaN, key), where).toBe(true);
        compared += 1;
      }
    }
    expect(compared).toBeGreaterThan(own.length * 3);
  },
  120_000,
);
