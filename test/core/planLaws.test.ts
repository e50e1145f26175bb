import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { rim_L, volume_L } from '../../src/core/geometry/container.ts';
import { bedPlans } from '../../src/core/plan/beds.ts';
import type { Plan } from '../../src/core/plan/figure.ts';
import { planOf } from '../../src/core/plan/planOf.ts';
import type { FishStock } from '../../src/core/fish.ts';
import type { Bed, System, Vessel } from '../../src/core/system.ts';
import { scaled, systemFiles, systems } from '../systemArbitrary.ts';
import { toSystem } from '../../src/schemas/toSystem.ts';
import { content, contentProblems } from '../demoSystems.ts';

const runs = { numRuns: 200 };

function law(check: (system: System, plan: Plan) => void): void {
  fc.assert(
    fc.property(systems(), (system) => check(system, planOf(system))),
    runs,
  );
}

/** The value of a figure that has to be there. */
function value(plan: Plan, key: string): number {
  const found = plan.figures[key]?.value;
  if (found === undefined || found === null) throw new Error(`${plan.systemId} has no ${key}`);
  return found;
}

function isThere(plan: Plan, key: string): boolean {
  return typeof plan.figures[key]?.value === 'number';
}

function expectSame(ours: number, theirs: number, relative = 1e-9): void {
  expect(Math.abs(ours - theirs), `${ours} and ${theirs}`).toBeLessThanOrEqual(
    relative * Math.max(1, Math.abs(theirs)),
  );
}

test('the content that these laws borrow fish and media from has no problem', () => {
  expect(contentProblems).toEqual([]);
});

describe('every figure of every system', () => {
  test('is a finite number, or nothing with a note that says why', () => {
    law((_, plan) => {
      for (const figure of Object.values(plan.figures)) {
        if (figure.value === null) expect(figure.notes, figure.key).not.toEqual([]);
        else expect(Number.isFinite(figure.value), `${figure.key} is ${figure.value}`).toBe(true);
        for (const step of figure.steps) {
          for (const one of [step.gives, ...step.symbols]) {
            expect(Number.isFinite(one.value), `${figure.key}: ${one.term} is ${one.value}`).toBe(true);
          }
        }
        for (const note of figure.notes) {
          expect(Object.values(note.numbers).every(Number.isFinite), `${figure.key}: ${note.code}`).toBe(
            true,
          );
        }
      }
    });
  });

  test('lies within its own range', () => {
    law((_, plan) => {
      for (const { key, value: of, low, high } of Object.values(plan.figures)) {
        if (of === null || low === undefined || high === undefined) continue;
        expect(low, key).toBeLessThanOrEqual(of);
        expect(of, key).toBeLessThanOrEqual(high);
      }
    });
  });

  test('is not below nothing, but for temperatures', () => {
    law((_, plan) => {
      for (const figure of Object.values(plan.figures)) {
        if (figure.unit === 'degC' || figure.value === null) continue;
        expect(figure.value, figure.key).toBeGreaterThanOrEqual(-1e-9);
      }
    });
  });

  test('bears its unit in its key and names a source for every step', () => {
    law((_, plan) => {
      for (const [key, figure] of Object.entries(plan.figures)) {
        expect(key).toBe(figure.key);
        const counted = ['fish', 'spoons', 'weeks', 'months', 'plants', 'money', 'ratio', 'pH'].includes(
          figure.unit,
        );
        if (!counted) expect(key.endsWith(`_${figure.unit}`), `${key} in ${figure.unit}`).toBe(true);
        for (const step of figure.steps) expect(figure.sources).toContain(step.source);
      }
    });
  });

  test('comes out the same a second time, and leaves its system as it was', () => {
    law((system, plan) => {
      const before = structuredClone(system);
      expect(planOf(system)).toEqual(plan);
      expect(system).toEqual(before);
    });
  });
});

/** Litres in a vessel below a height, baskets and all. */
function standing_L(vessel: Vessel, depth_mm: number): number {
  return volume_L(vessel.container, depth_mm) * vessel.count;
}

/** Stone that baskets hold below a height over the tank's floor, as much as the tightest heap. */
function stone_L(beds: readonly Bed[], depth_mm: number): number {
  return beds
    .filter((bed) => bed.mode === 'inTank')
    .reduce((sum, bed) => {
      const wet_mm = Math.min(bed.mediaDepth_mm, Math.max(0, depth_mm - bed.above_mm));
      return sum + volume_L(bed.container, wet_mm) * bed.count * (1 - bed.media.void_frac.low);
    }, 0);
}

/** Water in the pump's vessel below a height, the media of baskets left out. */
function waterBelow_L(system: System, depth_mm: number): number {
  const stone = system.sump ? 0 : stone_L(system.beds, depth_mm);
  return standing_L(system.sump ?? system.tank, depth_mm) - stone;
}

describe('water is neither made nor lost', () => {
  /** What stands in the pumped beds, with the loosest media: to the line, or to the drain. */
  function inBeds_L(system: System, state: 'flooded' | 'drained' | 'siphonedDry'): number {
    return system.beds
      .filter((bed) => bed.mode !== 'inTank')
      .reduce((sum, bed) => {
        const drains = bed.mode !== 'constantFlood';
        const rest_mm = state === 'siphonedDry' ? 0 : drains ? bed.drained_mm : bed.waterLine_mm;
        const at_mm = state === 'flooded' ? bed.waterLine_mm : rest_mm;
        return sum + volume_L(bed.container, at_mm) * bed.count * bed.media.void_frac.high;
      }, 0);
  }

  /** Water of a tank that overflows into a sump: it stands at its full line whatever the beds do. */
  function stillTank_L(system: System): number {
    return system.sump
      ? standing_L(system.tank, system.tank.full_mm) - stone_L(system.beds, system.tank.full_mm)
      : 0;
  }

  const most_L = (plan: Plan): number => plan.figures['systemWater_L']?.high ?? Number.NaN;

  test('at the full line all vessels together hold the water of the system', () => {
    law((system, plan) => {
      const lower = system.sump ?? system.tank;
      const all_L = waterBelow_L(system, lower.full_mm) + stillTank_L(system) + inBeds_L(system, 'drained');
      expectSame(most_L(plan), all_L);
    });
  });

  test('with all beds full they hold the same', () => {
    law((system, plan) => {
      const low_mm = value(plan, system.sump ? 'sumpLow_mm' : 'tankLow_mm');
      expectSame(
        waterBelow_L(system, low_mm) + stillTank_L(system) + inBeds_L(system, 'flooded'),
        most_L(plan),
      );
    });
  });

  test('after a power cut they hold the same, all of it below', () => {
    law((system, plan) => {
      expectSame(value(plan, 'afterPowerCut_L') + stillTank_L(system), most_L(plan));
      if (!isThere(plan, 'freeboard_mm')) return;
      const { container } = system.sump ?? system.tank;
      const level_mm = container.depth_mm - value(plan, 'freeboard_mm');
      expectSame(
        waterBelow_L(system, level_mm) + stillTank_L(system) + inBeds_L(system, 'siphonedDry'),
        most_L(plan),
      );
    });
  });

  test('where it spills, the litres that run over are those that find no room', () => {
    law((system, plan) => {
      const spills = plan.figures['freeboard_mm']?.notes.find((note) => note.code === 'powerCutSpills');
      if (spills === undefined) return;
      const { container, count } = system.sump ?? system.tank;
      const stone = system.sump ? 0 : stone_L(system.beds, container.depth_mm);
      const room_L = rim_L(container) * count - stone;
      expectSame(spills.numbers['over_L'] ?? Number.NaN, value(plan, 'afterPowerCut_L') - room_L);
      expect(spills.numbers['over_L']).toBeGreaterThan(0);
    });
  });

  test('what a blocked return leaves is what lies below the intake', () => {
    law((system, plan) => {
      if (system.pump === null) return;
      expectSame(value(plan, 'blockedReturn_L'), waterBelow_L(system, system.pump.intake_mm));
    });
  });

  test('what a bed holds is what moves and what stays', () => {
    law((system) => {
      for (const bed of bedPlans(system)) {
        for (const end of ['low', 'likely', 'high'] as const) {
          expectSame(bed.moved_L[end] + bed.left_L[end], bed.held_L[end]);
        }
      }
    });
  });
});

describe('levels', () => {
  test('stand in their order: intake, low, full, rim', () => {
    law((system, plan) => {
      const lower = system.sump ?? system.tank;
      const low_mm = value(plan, system.sump ? 'sumpLow_mm' : 'tankLow_mm');
      expect(low_mm).toBeLessThanOrEqual(lower.full_mm * (1 + 1e-12));
      expect(lower.full_mm).toBeLessThanOrEqual(lower.container.depth_mm);
      expect(value(plan, 'tankLow_L')).toBeLessThanOrEqual(value(plan, 'tankFull_L') * (1 + 1e-12));
      if (system.pump) expect(system.pump.intake_mm).toBeLessThan(low_mm);
    });
  });

  test('after a power cut lie above the full line and below the rim, or nowhere', () => {
    law((system, plan) => {
      const { container, full_mm } = system.sump ?? system.tank;
      if (!isThere(plan, 'freeboard_mm')) return;
      const freeboard_mm = value(plan, 'freeboard_mm');
      expect(freeboard_mm).toBeGreaterThanOrEqual(0);
      expect(container.depth_mm - freeboard_mm).toBeGreaterThanOrEqual(full_mm * (1 - 1e-12));
    });
  });

  test('do not depend on the order of the beds', () => {
    law((system, plan) => {
      const turned = planOf({ ...system, beds: [...system.beds].reverse() });
      for (const [key, figure] of Object.entries(plan.figures)) {
        if (key.startsWith('bed') || figure.value === null) continue;
        expectSame(value(turned, key), figure.value);
      }
    });
  });
});

/** The same system in a world where every length is twice as long. */
function twiceAsLong(system: System): System {
  const vessel = (of: Vessel): Vessel => ({ ...doubled(of), container: scaled(of.container, 2) });
  return {
    ...system,
    tank: vessel(system.tank),
    sump: system.sump ? vessel(system.sump) : null,
    beds: system.beds.map((bed) => ({ ...doubled(bed), container: scaled(bed.container, 2) })),
    pump: system.pump ? doubled(system.pump) : null,
  };
}

function doubled<T extends object>(of: T): T {
  const measures = Object.entries(of).map(([key, one]) => [
    key,
    key.endsWith('_mm') && typeof one === 'number' ? one * 2 : one,
  ]);
  return Object.fromEntries(measures) as T;
}

/** What stands over a lip follows the pump's flow, which stays the same when vessels grow. */
const standsOverLip = /(overLip|halfBlocked|levelLowest)_mm$/;

/** What follows the fish, or goes by the surface and not by a length. */
const byFish = new Set(['fishNeed_L', 'mineralBarrel_L', 'ornamentalLength_mm']);

describe('size', () => {
  test('twice all lengths is eight times all litres and twice all levels', () => {
    law((system, plan) => {
      const large = planOf(twiceAsLong(system));
      for (const figure of Object.values(plan.figures)) {
        // What the fish need depends on the fish; water over a lip does not grow with the pipe.
        if (byFish.has(figure.key) || standsOverLip.test(figure.key)) continue;
        if (figure.value === null || !isThere(large, figure.key)) continue;
        if (figure.unit === 'L' || figure.unit === 'L_d')
          expectSame(value(large, figure.key), 8 * figure.value, 1e-8);
        if (figure.unit === 'mm') expectSame(value(large, figure.key), 2 * figure.value, 1e-8);
      }
    });
  });

  test('twice as many equal vessels and beds hold twice as much, at the same levels', () => {
    law((system, plan) => {
      const twice = <T extends { readonly count: number }>(of: T): T => ({ ...of, count: of.count * 2 });
      const more = planOf({
        ...system,
        tank: twice(system.tank),
        sump: system.sump ? twice(system.sump) : null,
        beds: system.beds.map(twice),
      });
      for (const figure of Object.values(plan.figures)) {
        if (byFish.has(figure.key) || figure.key === 'levelLowest_mm') continue;
        if (figure.value === null || !isThere(more, figure.key)) continue;
        if (figure.unit === 'L') expectSame(value(more, figure.key), 2 * figure.value, 1e-8);
        if (figure.unit === 'mm') expectSame(value(more, figure.key), figure.value, 1e-8);
      }
    });
  });
});

describe('fish', () => {
  const counts = ['fishByBed', 'fishByTank', 'fishByDensity', 'fishPlanned'] as const;
  const tableFish: FishStock = {
    species: speciesOf('nileTilapia'),
    present: 10,
    massNow_g: 100,
    massAdult_g: 500,
    keeperRation_frac: null,
  };
  const masses = fc.tuple(
    fc.double({ min: 1, max: 3000, noNaN: true }),
    fc.double({ min: 1, max: 3, noNaN: true }),
  );

  function speciesOf(kind: string): FishStock['species'] {
    const file = {
      id: 'x',
      name: 'x',
      tank: { container: { shape: 'box', length_mm: 900, width_mm: 900, depth_mm: 900 }, full_mm: 800 },
    };
    const bed = {
      name: 'x',
      container: { shape: 'box', length_mm: 300, width_mm: 300, depth_mm: 860 },
      mode: 'inTank',
      media: Object.keys(content.media)[0],
      mediaDepth_mm: 850,
      above_mm: 0,
    };
    const read = toSystem({ ...file, beds: [bed], fish: { kind, present: 1, massNow_g: 1 } }, content);
    if (!('system' in read) || read.system.fish === null) throw new Error(JSON.stringify(read));
    return read.system.fish.species;
  }

  test('a larger adult fish never means more fish', () => {
    const check = (system: System, [massAdult_g, by]: readonly [number, number]) => {
      const small = planOf({ ...system, fish: { ...tableFish, massAdult_g } });
      const large = planOf({ ...system, fish: { ...tableFish, massAdult_g: massAdult_g * by } });
      for (const key of counts) expect(value(large, key), key).toBeLessThanOrEqual(value(small, key));
    };
    fc.assert(fc.property(systems(), masses, check), runs);
  });

  test('more wet media never means fewer fish by the bed', () => {
    const check = (system: System, share: number) => {
      const lower = (bed: Bed): Bed => ({
        ...bed,
        waterLine_mm: bed.drained_mm + (bed.waterLine_mm - bed.drained_mm) * share,
      });
      const less = planOf({ ...system, fish: tableFish, beds: system.beds.map(lower) });
      const more = planOf({ ...system, fish: tableFish });
      expect(value(less, 'fishByBed')).toBeLessThanOrEqual(value(more, 'fishByBed'));
    };
    fc.assert(fc.property(systems(), fc.double({ min: 0.01, max: 1, noNaN: true }), check), runs);
  });

  test('the plan is the least of the three limits, and says which', () => {
    law((system) => {
      const plan = planOf({ ...system, fish: tableFish });
      const limits = counts.slice(0, 3).map((key) => value(plan, key));
      expect(value(plan, 'fishPlanned')).toBe(Math.min(...limits));
      const binding = plan.figures['fishPlanned']?.notes
        .find((note) => note.code.startsWith('binds.'))
        ?.code.slice(6);
      expect(value(plan, binding ?? '')).toBe(Math.min(...limits));
      for (const limit of limits) expect(Number.isInteger(limit)).toBe(true);
    });
  });

  test('more fish never need less feed or less water', () => {
    const check = (system: System, present: number, more: number) => {
      const few = planOf({ ...system, fish: { ...tableFish, present } });
      const many = planOf({ ...system, fish: { ...tableFish, present: present + more } });
      for (const key of ['feed_g_d', 'fishNeed_L', 'fishMass_kg']) {
        if (isThere(few, key)) expect(value(many, key), key).toBeGreaterThanOrEqual(value(few, key));
      }
    };
    fc.assert(fc.property(systems(), fc.integer({ min: 1, max: 200 }), fc.nat(100), check), runs);
  });
});

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
    const all = [
      'box',
      'cylinder',
      'dipTable',
      'ellipse',
      'lyingCylinder',
      'obround',
      'taperedBox',
      'taperedRound',
    ];
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
