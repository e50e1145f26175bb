/** Laws say something only of what the generator makes: every kind of system, and none that a check refuses. */
import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import type { System } from '../../src/core/system.ts';
import { toSystem } from '../../src/schemas/toSystem.ts';
import { shapes } from '../core/geometryArbitraries.ts';
import { content } from '../demoSystems.ts';
import { systemFiles, systems } from '../systemArbitrary.ts';

const runs = { numRuns: 200 };

describe('the generator of systems', () => {
  const seen = (wanted: (system: System) => string) => {
    const found = new Set<string>();
    fc.assert(
      fc.property(systems(), (system) => void found.add(wanted(system))),
      { numRuns: 400, seed: 7 },
    );
    return [...found].sort();
  };

  test('makes beds of every mode and every number of them, with and without sump, pump and fish', () => {
    expect(seen((system) => String(system.beds.length))).toEqual(['0', '1', '2', '3', '4']);
    expect(seen((system) => system.beds[0]?.mode ?? 'none')).toEqual([
      'constantFlood',
      'inTank',
      'none',
      'siphon',
      'timer',
    ]);
    expect(seen((system) => (system.sump ? 'sump' : system.pump ? 'pump' : 'still'))).toEqual([
      'pump',
      'still',
      'sump',
    ]);
    expect(seen((system) => system.fish?.species.use ?? 'none')).toEqual(['none', 'ornamental', 'table']);
  });

  test('makes tanks and beds of every shape', () => {
    const all = [...shapes].sort();
    expect(seen((system) => system.tank.container.shape)).toEqual(all);
    expect(seen((system) => system.beds[0]?.container.shape ?? 'box')).toEqual(all);
  });

  test('makes files that pass every check of a file', () => {
    fc.assert(
      fc.property(systemFiles, (file) => {
        expect(toSystem(file, content)).toHaveProperty('system');
      }),
      runs,
    );
  });
});
