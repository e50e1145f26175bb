/** What comes next: estimates beside the rules, ornamental fish, the stages a system can grow into. */
import { describe, expect, test } from 'vitest';
import type { Plan } from '../../src/core/plan/figure.ts';
import { planOf } from '../../src/core/plan/planOf.ts';
import { noteSentence } from '../../src/wording/note.ts';
import { demoSystem, english } from '../demoSystems.ts';

const ibc = demoSystem('hollow-lane-ibc').system;
const plan = planOf(ibc);

function figure(of: Plan, key: string) {
  const found = of.figures[key];
  if (found === undefined) throw new Error(`no ${key}`);
  return found;
}

const said = (of: Plan, key: string): readonly string[] =>
  figure(of, key).notes.map((note) =>
    `${note.level}: ${noteSentence(note, english, 'metric')}`.replaceAll('\u00a0', ' '),
  );

function rows(of: Plan, key: string) {
  return of.tables.find((one) => one.key === key)?.rows ?? [];
}

describe('rules and estimates side by side', () => {
  test('the least of the rules is the plan, and an estimate below it is a caution, not a number of fish', () => {
    const limits = rows(plan, 'fishLimits');
    expect(limits.map((row) => row[0])).toEqual([
      'fishByBed',
      'fishByTank',
      'fishByDensity',
      'fishByFeedArea',
    ]);
    expect(limits.filter((row) => row[5] === 'binds').map((row) => row[0])).toEqual(['fishByBed']);
    expect(figure(plan, 'fishPlanned').value).toBe(12);
    expect(figure(plan, 'fishByFeedArea').value).toBe(8);
    expect(said(plan, 'fishByFeedArea')[1]).toContain(
      'caution: Leafy beds take up the feed of about 8 grown fish',
    );
  });

  test('more air keeps up with more fish, and never plans more of them', () => {
    const air = (flow_L_min: number) => planOf({ ...ibc, air: { flow_L_min, stones: 2, depth_mm: 500 } });
    const counts = [2, 10, 40].map((flow) => figure(air(flow), 'fishByOxygen').value ?? 0);
    expect(counts).toEqual([...counts].sort((a, b) => a - b));
    expect(counts[2]).toBeGreaterThan(12);
    expect(figure(air(40), 'fishPlanned').value).toBe(12);
  });
});

describe('ornamental fish', () => {
  test('get the whole band of the rules, six-fold, and its low end', () => {
    const pond = planOf(demoSystem('pond-and-tray').system);
    const band = figure(pond, 'ornamentalLength_mm');
    expect(band.value).toBe(band.low);
    const lengths = rows(pond, 'ornamentalRules').map((row) => Number(row[1]));
    expect(Number(lengths[2]) / Number(lengths[0])).toBeCloseTo(6, 9);
    expect(Math.min(...lengths)).toBe(band.low);
    expect(Math.max(...lengths)).toBe(band.high);
    expect(figure(pond, 'fishPlanned').value).toBeNull();
  });
});

describe('the next stages', () => {
  test('a bed at constant flood adds fish without lowering the tank; one that floods lowers it', () => {
    expect(figure(plan, 'anotherStillBedFish').value).toBe(22);
    expect(said(plan, 'anotherStillBedFish')[0]).toContain('The mass of fish in the tank binds');
    expect(figure(plan, 'anotherFloodBedFish').value).toBe(17);
    expect(said(plan, 'anotherFloodBedFish')).toContain(
      'info: Then 1200 L should stand at the full line, and there are 700 L. A bigger tank first, or let the new bed stand at constant flood.',
    );
  });

  test('a bigger tank alone adds no fish where the bed binds', () => {
    expect(figure(plan, 'biggerTankFish').value).toBe(12);
    expect(said(plan, 'biggerTankFish')[0]).toContain('The bed binds');
    const tank = rows(plan, 'nextStages').find((row) => row[0] === 'tankFull_L');
    expect(tank).toEqual(['tankFull_L', 700, 700, 700, 1400]);
    expect(rows(plan, 'nextStages').find((row) => row[0] === 'sumpFull_L')?.[4]).toBe(700);
  });

  test('stand beside today in the table, by the very figures of a plan of that stage', () => {
    const bed = ibc.beds[0];
    if (bed === undefined) throw new Error('no bed');
    const grown = planOf({ ...ibc, beds: [bed, bed] });
    for (const row of rows(plan, 'nextStages')) {
      const [key, today, flood] = row;
      expect(today, String(key)).toBe(plan.figures[String(key)]?.value ?? null);
      expect(flood, String(key)).toBe(grown.figures[String(key)]?.value ?? null);
    }
    expect(rows(plan, 'nextStages').length).toBeGreaterThan(8);
  });

  test('that would bare the pump or drink the tank dry are told as that', () => {
    const shallow = planOf({ ...ibc, pump: ibc.pump && { ...ibc.pump, intake_mm: 500 } });
    expect(said(shallow, 'anotherFloodBedFish')).toContain(
      'info: The beds would bare the pump. A bigger tank first, or set the intake lower.',
    );
    const small = planOf({ ...ibc, tank: { ...ibc.tank, full_mm: 200 } });
    expect(figure(small, 'anotherFloodBedFish').value).toBeNull();
    expect(said(small, 'anotherFloodBedFish')[0]).toContain('info: No figure');
  });
});

describe('electricity', () => {
  test('costs what the year’s kilowatt-hours cost, in no currency of ours', () => {
    const cost = figure(plan, 'energyCostYear');
    expect(cost.value).toBeCloseTo(0.022 * 24 * 365 * 0.31, 9);
    expect(cost.unit).toBe('money');
    expect(planOf({ ...ibc, pricePerKWh: null }).figures['energyCostYear']).toBeUndefined();
  });
});

describe('a bed with no room on top', () => {
  test('as a drum on its side, full to where it closes, has no places, and still a plan', () => {
    const drum = { shape: 'lyingCylinder', diameter_mm: 500, length_mm: 800, depth_mm: 500 } as const;
    const full = { container: drum, mediaDepth_mm: 500, waterLine_mm: 400 };
    const closed = planOf({ ...ibc, beds: ibc.beds.map((bed) => ({ ...bed, ...full })) });
    expect(figure(closed, 'bed1.placesSquare').value).toBe(0);
    expect(figure(closed, 'bed1.placesOffset').value).toBe(0);
    expect(rows(closed, 'placesBySpacing').every(([, square]) => square === 0)).toBe(true);
  });
});

describe('an absence', () => {
  const away = planOf({ ...ibc, absence: { from: '2031-02-27', to: '2031-03-02' } });

  test('counts its first and its last day, and weighs a packet for each', () => {
    expect(figure(away, 'absence_d').value).toBe(4);
    expect(figure(away, 'absenceFeed_g').value).toBeCloseTo(4 * 21.6, 9);
    expect(rows(away, 'absenceDays').map((row) => row[0])).toEqual([
      '2031-02-27',
      '2031-02-28',
      '2031-03-01',
      '2031-03-02',
    ]);
  });

  test('without dates is none', () => {
    expect(planOf({ ...ibc, absence: null }).figures['absence_d']).toBeUndefined();
  });
});

describe('the parts', () => {
  test('are those that were measured: the pipe to the water line, the heap to the top of the media', () => {
    const part = (name: string) => rows(plan, 'parts').find((row) => row[0] === name);
    expect(part('tank')).toEqual(['tank', null, 1, null, null, 700, null]);
    expect(part('standpipe')).toEqual(['standpipe', 'Top bed', 1, 300, 40, null, null]);
    expect(part('media')?.[5]).toBe(330);
    expect(part('supplyPipe')?.slice(3, 5)).toEqual([2400, 20]);
    expect(rows(plan, 'holes')).toEqual([['standpipeHole', 'Top bed', 1, 40, 0]]);
  });

  test('with the old tank as the sump count a hole for the overflow, at the full line', () => {
    const round = planOf(demoSystem('old-tank-as-sump').system);
    expect(rows(round, 'holes').at(-1)).toEqual(['overflowHole', null, 1, null, 760]);
  });
});

describe('the start-up, day by day', () => {
  const empty = { ...ibc, fish: null };

  test('begins with the first dose; ammonia falls from day 5, nitrite rises from day 10', () => {
    const signs = rows(planOf({ ...empty, water: { ...ibc.water, now_degC: 26 } }), 'startUpDays');
    expect(signs.slice(0, 3)).toEqual([
      ['firstDose', 1, 1],
      ['ammoniaFalls', 5, 7],
      ['nitriteRises', 10, 14],
    ]);
    expect(signs.at(-1)).toEqual(['readyForFish', 21, 42]);
  });

  test('promises no day in water too cold for the bacteria', () => {
    const signs = rows(planOf({ ...empty, water: { ...ibc.water, now_degC: 10 } }), 'startUpDays');
    expect(signs.slice(1).every(([, from, to]) => from === null && to === null)).toBe(true);
  });
});
