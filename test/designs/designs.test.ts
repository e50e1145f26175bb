/** Systems that somebody worked out with a pencil; the reasoning stands beside every figure. */
import { readdirSync, readFileSync } from 'node:fs';
import { describe, expect, test } from 'vitest';
import { parse } from 'yaml';
import * as z from 'zod';
import { planOf } from '../../src/core/plan/planOf.ts';
import { demoSystem } from '../demoSystems.ts';

const design = z.strictObject({
  title: z.string(),
  system: z.string(),
  /** Measures that the pencil began with. */
  given: z.record(z.string(), z.number()),
  figures: z
    .array(
      z.strictObject({
        key: z.string(),
        value: z.number(),
        within: z.number().min(0),
        because: z.string().min(5),
      }),
    )
    .min(5),
  /** Figures that have no value in this system. */
  nothing: z.array(z.string()).default([]),
  notes: z.record(z.string(), z.array(z.string())),
});

const here = new URL('.', import.meta.url);
const designs = readdirSync(here)
  .filter((name) => name.endsWith('.yaml'))
  .sort()
  .map((name) => design.parse(parse(readFileSync(new URL(name, here), 'utf8'))));

function valueAt(of: unknown, path: string): unknown {
  return path.split('.').reduce<unknown>((at, key) => (at as Record<string, unknown> | null)?.[key], of);
}

test('there are worked designs', () => {
  expect(designs.length).toBeGreaterThanOrEqual(3);
});

describe.each(designs.map((one) => [one.title, one] as const))('%s', (_title, worked) => {
  const { system } = demoSystem(worked.system);
  const plan = planOf(system);

  test('is still measured as it was when it was worked out', () => {
    const now = Object.keys(worked.given).map((path) => [path, valueAt(system, path)]);
    expect(Object.fromEntries(now)).toEqual(worked.given);
  });

  test.each(worked.figures.map((one) => [one.key, one] as const))('%s', (key, { value, within, because }) => {
    const ours = plan.figures[key]?.value ?? Number.NaN;
    expect(Math.abs(ours - value), `${ours}, but by pencil ${value}: ${because}`).toBeLessThanOrEqual(
      within + 1e-12,
    );
  });

  test('has no figure where none fits', () => {
    expect(worked.nothing.filter((key) => plan.figures[key]?.value !== null)).toEqual([]);
  });

  test('carries the cautions that belong to it', () => {
    const codes = Object.keys(worked.notes).map((key) => [
      key,
      plan.figures[key]?.notes.map((note) => note.code),
    ]);
    expect(Object.fromEntries(codes)).toEqual(worked.notes);
  });
});
