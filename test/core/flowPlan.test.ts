/** What the plan tells of moving water, solids and weight, and the words it has for what can go wrong. */
import { describe, expect, test } from 'vitest';
import type { Figure, Plan } from '../../src/core/plan/figure.ts';
import { planOf } from '../../src/core/plan/planOf.ts';
import type { Bed, Pump, System } from '../../src/core/system.ts';
import { noteSentence } from '../../src/wording/note.ts';
import { content, demoSystem, english } from '../demoSystems.ts';

const ibc = demoSystem('hollow-lane-ibc').system;
const plain = demoSystem('window-aquarium').system;

function withPump(system: System, more: Partial<Pump>): System {
  if (system.pump === null) throw new Error(`${system.id} has no pump`);
  return { ...system, pump: { ...system.pump, ...more } };
}

function withBed(system: System, more: Partial<Bed>): System {
  return { ...system, beds: system.beds.map((bed, i) => (i === 0 ? { ...bed, ...more } : bed)) };
}

function figureOf(plan: Plan, key: string): Figure {
  const found = plan.figures[key];
  if (found === undefined) throw new Error(`${plan.systemId} has no ${key}`);
  return found;
}

function words(plan: Plan, key: string): readonly string[] {
  return figureOf(plan, key).notes.map(
    (note) => `${note.level}: ${noteSentence(note, english, 'metric').replace(/\u00a0/g, ' ')}`,
  );
}

function value(plan: Plan, key: string): number {
  const { value: of } = figureOf(plan, key);
  if (of === null) throw new Error(`${key} has no value`);
  return of;
}

describe('a pump that is too weak', () => {
  const plan = planOf(withPump(ibc, { curve: [{ flow_L_h: 900, head_m: 0.5 }] }));

  test('gives nothing, and says so before anybody builds it', () => {
    expect(figureOf(plan, 'pumpFlow_L_h').value).toBeNull();
    expect(words(plan, 'pumpFlow_L_h')).toEqual([
      'stop: The pump reaches 0.6 m at most, and the water must rise 0.8 m. Nothing will come out up there: take a stronger pump or lower the bed.',
    ]);
  });

  test('leaves out what hangs on its flow instead of making something up', () => {
    for (const key of ['pipeLoss_m', 'levelLowest_mm', 'returnFlow_L_h', 'settler_m2']) {
      expect(figureOf(plan, key).value, key).toBeNull();
      expect(words(plan, key), key).toHaveLength(1);
    }
    for (const key of ['bucket10L_s', 'turnover', 'bed1.siphonFill_min'])
      expect(plan.figures[key]).toBeUndefined();
    expect(plan.traces).toEqual([]);
  });

  test('that only just reaches is told that it may fail', () => {
    const weak = planOf(withPump(ibc, { curve: [{ flow_L_h: 900, head_m: 0.75 }] }));
    expect(value(weak, 'pumpFlow_L_h')).toBeGreaterThan(0);
    expect(figureOf(weak, 'pumpFlow_L_h').low).toBe(0);
    expect(words(weak, 'pumpFlow_L_h')[0]).toMatch(
      /^stop: With a worn pump, a slimy pipe and low water nothing may come out/,
    );
  });
});

describe('what the keeper gave and what curve and pipe allow', () => {
  test('are told apart where the box promised more', () => {
    const plan = planOf(withPump(ibc, { flow_L_h: 1600 }));
    expect(words(plan, 'pumpFlow_L_h')[0]).toMatch(
      /^caution: You gave 1600 L\/h, but curve and pipe allow about \d+ L\/h\. Time a bucket/,
    );
  });

  test('without a curve the given flow is taken, and said to be that', () => {
    const plan = planOf(plain);
    expect(value(plan, 'pumpFlow_L_h')).toBe(180);
    expect(words(plan, 'pumpFlow_L_h')[0]).toMatch(/^info: Taken as 180 L\/h, as you gave it/);
    expect(value(plan, 'bucket10L_s')).toBe(200);
  });

  test('a curve that ends before it meets the pipe says where it ends', () => {
    const short = [
      { flow_L_h: 100, head_m: 3 },
      { flow_L_h: 300, head_m: 2.9 },
    ];
    const plan = planOf(withPump(ibc, { curve: short }));
    expect(value(plan, 'pumpFlow_L_h')).toBe(300);
    expect(words(plan, 'pumpFlow_L_h')[0]).toMatch(/^caution: The pump would give even more/);
  });

  test('a narrow pipe is told by its speed', () => {
    const plan = planOf(
      withPump(ibc, { pipe: { bore_mm: 10, length_m: 1, bends: 0 }, curve: [{ flow_L_h: 900, head_m: 5 }] }),
    );
    expect(words(plan, 'pipeLoss_m')[0]).toMatch(
      /^caution: The water runs at [\d.]+ m\/s in the pipe; above 1\.5 m\/s/,
    );
  });
});

describe('a siphon', () => {
  test('that gets too little never starts, and its bed stands at the lip', () => {
    const plan = planOf(withPump(ibc, { curve: null, flow_L_h: 300 }));
    expect(words(plan, 'bed1.siphonStarts_L_h')[0]).toMatch(
      /^caution: Top bed: 300 L\/h for each container is probably too little/,
    );
    expect(figureOf(plan, 'bed1.siphonCycle_min').value).toBeNull();
    const level = plan.traces.find((trace) => trace.key === 'bed1.level_mm')?.points.at(-1)?.[1] ?? 0;
    expect(level).toBeGreaterThan(300);
  });

  test('that gets more than it draws never breaks', () => {
    const plan = planOf(withPump(ibc, { curve: null, flow_L_h: 9000 }));
    expect(words(plan, 'bed1.siphonBreaks_L_h')[0]).toMatch(
      /^caution: Top bed: 9000 L\/h comes in, about as much as the siphon draws\. It will not take air/,
    );
    expect(figureOf(plan, 'bed1.siphonCycle_min').value).toBeNull();
  });

  test('in between floods and drains by itself, in rounds longer than its filling', () => {
    const plan = planOf(ibc);
    expect(value(plan, 'bed1.siphonCycle_min')).toBeGreaterThan(value(plan, 'bed1.siphonFill_min'));
    const trace =
      plan.traces.find((one) => one.key === 'bed1.level_mm')?.points.map(([, level]) => level) ?? [];
    expect(Math.max(...trace)).toBeGreaterThan(300);
    expect(Math.min(...trace.slice(trace.length / 2))).toBeLessThan(60);
  });

  test('whose standpipe was not measured is not guessed at', () => {
    const plan = planOf(withBed(ibc, { standpipeBore_mm: null }));
    expect(plan.figures['bed1.siphonStarts_L_h']).toBeUndefined();
    expect(figureOf(plan, 'bed1.siphonCycle_min').value).toBeNull();
    expect(value(plan, 'levelLowest_mm')).toBeGreaterThan(0);
    expect(plan.traces).toEqual([]);
  });
});

describe('a bed on a timer', () => {
  const totes = demoSystem('room-seven-totes').system;

  test('is told where its hole was not measured', () => {
    expect(words(planOf(withBed(totes, { drainHole_mm: null })), 'bed1.siphonCycle_min')[0]).toMatch(
      /^info: Bed tote: measure the hole/,
    );
  });

  test('is told where it cannot fill, or cannot drain', () => {
    expect(words(planOf(withBed(totes, { drainHole_mm: 14 })), 'bed1.siphonCycle_min')[0]).toMatch(
      /^caution: Bed tote: while the pump runs the water only rises to \d+ mm/,
    );
    const slow = withPump(withBed(totes, { drainHole_mm: 2 }), { timer: { on_min: 15, off_min: 5 } });
    expect(words(planOf(slow), 'bed1.siphonCycle_min')[0]).toMatch(
      /^caution: Bed tote: when the pump starts again the water still stands/,
    );
  });

  test('takes the usual timer where none was told, and its own where one was', () => {
    expect(value(planOf(withPump(totes, { timer: null })), 'bed1.siphonCycle_min')).toBe(60);
    expect(
      value(planOf(withPump(totes, { timer: { on_min: 10, off_min: 20 } })), 'bed1.siphonCycle_min'),
    ).toBe(30);
  });
});

describe('dangerous levels', () => {
  test('a pump that runs dry with all beds at their highest', () => {
    const low_mm = value(planOf(ibc), 'levelLowest_mm');
    const plan = planOf(withPump(ibc, { intake_mm: low_mm }));
    expect(words(plan, 'levelLowest_mm')[0]).toMatch(
      /^stop: With all beds at their highest the water falls to \d+ mm, and the pump takes it in at \d+ mm: it runs dry/,
    );
  });

  test('a screen half blocked that floods the bed over its rim', () => {
    const plan = planOf(withBed(ibc, { standpipeBore_mm: 18 }));
    expect(words(plan, 'bed1.halfBlocked_mm')[0]).toMatch(
      /^stop: Top bed: with its screen half blocked the water would stand \d+ mm high, over the rim at 360 mm/,
    );
  });
});

describe('weight', () => {
  test('is refused on upper floors, decks and balconies unless somebody has checked it', () => {
    expect(words(planOf(ibc), 'load_kg_m2')[0]).toMatch(
      /^caution: On solid ground only\. .*no upper floor, deck or balcony, unless a qualified person has checked it in writing\.$/,
    );
    expect(words(planOf(plain), 'load_kg_m2')[0]).toMatch(
      /^caution: It weighs [\d.]+ kg .* Checked by: ____$/,
    );
  });

  test('of a flooded bed is that of its stone and of the water to its rim', () => {
    const plan = planOf(ibc);
    // 330 L of gravel at 1,500 kg/m3, 132 L of water in it, 30 L over it.
    expect(value(plan, 'bed1.bedWeight_kg')).toBeCloseTo(495 + 132 + 30, 6);
    expect(value(plan, 'tankWeight_kg')).toBeCloseTo(780, 6);
    expect(value(plan, 'bed1.legLoad_kg')).toBeCloseTo((495 + 162) / 2, 6);
  });

  test('of media that nobody weighed is not guessed at', () => {
    const media = { ...(ibc.beds[0]?.media ?? fail()), bulk: null };
    const plan = planOf(withBed(ibc, { media }));
    expect(figureOf(plan, 'bed1.bedWeight_kg').value).toBeNull();
    expect(words(plan, 'bed1.bedWeight_kg')[0]).toMatch(
      /^caution: The weight of .* is not known\. Weigh a bucket/,
    );
  });

  function fail(): never {
    throw new Error('the big tank has a bed');
  }

  test('of a drum on its side presses on its cradle, not on a line', () => {
    const load = value(planOf(demoSystem('yard-tub').system), 'load_kg_m2');
    expect(load).toBeGreaterThan(400);
    expect(load).toBeLessThan(1000);
  });
});

describe('solids', () => {
  test('follow the feed, and never go onto food', () => {
    const plan = planOf(ibc);
    expect(value(plan, 'solids_g_d')).toBeCloseTo(0.35 * value(plan, 'feed_g_d'), 9);
    expect(words(plan, 'solids_g_d').join(' ')).toContain('never onto food that is eaten raw');
  });

  test.each([
    [0.03, 'a sponge at the inlet'],
    [0.08, 'a small aquarium filter'],
    [0.3, 'a canister filter'],
    [1, 'a radial-flow settler'],
  ])('of %f of the big tank are caught by %s', (share, caught) => {
    const tank = { ...ibc.tank, full_mm: ibc.tank.full_mm * share };
    const small = { ...ibc, tank, beds: [], pump: null };
    expect(words(planOf(small), 'solids_g_d').join(' ')).toContain(caught);
  });
});

test('the demo systems show a pump by its curve, a timer, and a pump that was only timed with a bucket', () => {
  const kinds = content.systems.map(({ system }) =>
    [
      system.pump?.curve ? 'curve' : '',
      system.pump?.timer ? 'timer' : '',
      system.pump?.pipe ? 'pipe' : '',
    ].join(''),
  );
  expect([...new Set(kinds)].sort()).toEqual(['', 'curvepipe', 'timer']);
});
