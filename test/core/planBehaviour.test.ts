import { describe, expect, test } from 'vitest';
import type { Bed, System } from '../../src/core/system.ts';
import {
  basket,
  bed,
  box,
  codesOf,
  figureOf,
  ornamentalFish,
  plain,
  planned,
  tableFish,
  tank,
  valueIn,
} from './plainSystems.ts';

describe('a bed that floods and drains', () => {
  test('holds its wet media, and in it the share of water that its media leaves', () => {
    const plan = planned({});
    expect(valueIn(plan, 'bed1.wetMedia_L')).toBe(300);
    expect(figureOf(plan, 'bed1.waterHeld_L')).toMatchObject({ value: 120, low: 105, high: 135 });
  });

  test('takes its water from the tank, at its loosest for the lowest level', () => {
    const plan = planned({});
    expect(valueIn(plan, 'tankFull_L')).toBe(700);
    expect(figureOf(plan, 'tankLow_L')).toMatchObject({ value: 565, low: 565, high: 595 });
    expect(valueIn(plan, 'tankLow_mm')).toBe(565);
    expect(valueIn(plan, 'drawdown_mm')).toBe(135);
  });

  test('moves only what stands above the drain, and the rest counts as water of the system', () => {
    const plan = planned({ beds: [{ ...bed, drained_mm: 50 }] });
    expect(valueIn(plan, 'bed1.waterMoved_L')).toBe(100);
    expect(valueIn(plan, 'tankLow_L')).toBe(587.5);
    expect(valueIn(plan, 'systemWater_L')).toBe(720);
  });

  test('is known better once a bucket was tried', () => {
    const media = {
      ...bed.media,
      void_frac: { low: 0.4, likely: 0.4, high: 0.4 },
      voidFrom: 'bucketTest' as const,
    };
    const plan = planned({ beds: [{ ...bed, media }] });
    expect(figureOf(plan, 'bed1.waterHeld_L')).toMatchObject({ confidence: 'measured', notes: [] });
    expect(codesOf(planned({}), 'bed1.waterHeld_L')).toEqual(['voidIsRange']);
  });

  test('wants twice its volume below, and says so where the tank is smaller', () => {
    expect(valueIn(planned({}), 'tankWanted_L')).toBe(600);
    expect(codesOf(planned({}), 'tankWanted_L')).toEqual([]);
    const small = planned({ tank: { ...tank, full_mm: 599 } });
    expect(codesOf(small, 'tankWanted_L')).toEqual(['tankUnderTwiceBed']);
  });
});

describe('a bed at constant flood', () => {
  const still: Bed = { ...bed, mode: 'constantFlood' };

  test('takes nothing from the tank, whose level stands still', () => {
    const plan = planned({ beds: [still] });
    expect(valueIn(plan, 'tankLow_L')).toBe(700);
    expect(valueIn(plan, 'drawdown_mm')).toBe(0);
    expect(codesOf(plan, 'waterMoved_L')).toEqual(['levelStandsStill']);
  });

  test('keeps its water besides that of the tank, and asks for no tank twice its size', () => {
    const plan = planned({ beds: [still] });
    expect(figureOf(plan, 'systemWater_L')).toMatchObject({ value: 820, low: 805, high: 835 });
    expect(plan.figures['tankWanted_L']).toBeUndefined();
  });

  test('can siphon back in a power cut, which the tank has to hold', () => {
    // 700 L and at most 135 L, but the rim is at 800 L.
    const plan = planned({ beds: [still] });
    expect(valueIn(plan, 'afterPowerCut_L')).toBe(835);
    expect(valueIn(plan, 'freeboard_mm')).toBeNull();
    expect(figureOf(plan, 'freeboard_mm').notes[0]).toMatchObject({
      code: 'powerCutSpills',
      level: 'stop',
      numbers: { over_L: 35, rim_L: 800 },
      words: { vessel: 'tank' },
    });
    const lower = planned({ beds: [still], tank: { ...tank, full_mm: 650 } });
    expect(valueIn(lower, 'freeboard_mm')).toBe(15);
  });
});

describe('a sump', () => {
  const sump = { container: box(1000, 500, 500), count: 1, full_mm: 400, above_mm: 0 };
  const plan = planned({ sump });

  test('takes the fall of the level, and the fish tank stands at its full line', () => {
    expect(valueIn(plan, 'sumpFull_L')).toBe(200);
    expect(valueIn(plan, 'sumpLow_L')).toBe(65);
    expect(valueIn(plan, 'sumpLow_mm')).toBe(130);
    expect(valueIn(plan, 'tankLow_L')).toBe(700);
    expect(codesOf(plan, 'tankLow_L')).toEqual(['tankOverflows']);
  });

  test('counts in the water of the system', () => {
    expect(valueIn(plan, 'systemWater_L')).toBe(900);
    expect(valueIn(plan, 'waterChange_L')).toBe(225);
  });

  test('is what a blocked return empties, while the fish keep their water', () => {
    expect(valueIn(plan, 'blockedReturn_L')).toBe(50);
    expect(codesOf(plan, 'blockedReturn_L')).toEqual(['blockedEmptiesSump']);
    expect(plan.figures['fishNeed_L']).toBeUndefined();
  });

  test('has to hold what comes down in a power cut', () => {
    const still: Bed = { ...bed, mode: 'constantFlood' };
    const spilled = figureOf(planned({ sump, beds: [still] }), 'freeboard_mm');
    expect(spilled).toMatchObject({
      value: null,
      notes: [{ words: { vessel: 'sump' }, numbers: { over_L: 85 } }],
    });
  });

  test('and tank together want twice the flood beds', () => {
    expect(codesOf(plan, 'tankWanted_L')).toEqual([]);
    const short = planned({ sump, tank: { ...tank, full_mm: 399 } });
    expect(codesOf(short, 'tankWanted_L')).toEqual(['waterUnderTwiceBedSump']);
  });
});

describe('baskets that stand in the tank', () => {
  test('take the room of their stones from its water', () => {
    const plan = planned({ beds: [basket], pump: null });
    expect(valueIn(plan, 'bed1.wetMedia_L')).toBe(175);
    expect(valueIn(plan, 'tankFull_L')).toBeCloseTo(700 - 175 * 0.65, 9);
    expect(valueIn(plan, 'systemWater_L')).toBeCloseTo(586.25, 9);
  });

  test('are warned of, since no pump drives water through them', () => {
    expect(codesOf(planned({ beds: [basket], pump: null }), 'fishByBed')).toContain('noForcedFlow');
    expect(codesOf(planned({ beds: [basket, bed] }), 'fishByBed')).not.toContain('noForcedFlow');
  });

  test('leave less water below the intake of a pump', () => {
    // 100 mm of a square metre, less 100 mm of a quarter of it at 0.65.
    expect(valueIn(planned({ beds: [basket, bed] }), 'blockedReturn_L')).toBeCloseTo(100 - 25 * 0.65, 9);
  });
});

describe('a return that is blocked while the pump runs', () => {
  // Ten fish of 200 g at 20 g a litre need 100 L.
  const withIntake = (intake_mm: number, fish = tableFish) =>
    planned({ pump: { flow_L_h: 900, intake_mm }, fish });

  test('leaves what lies below the intake, and the fish live where that is enough', () => {
    expect(valueIn(withIntake(100), 'fishNeed_L')).toBe(100);
    expect(codesOf(withIntake(100), 'blockedReturn_L')).toEqual(['blockedFishLive']);
    expect(codesOf(withIntake(99), 'blockedReturn_L')).toEqual(['raiseIntake']);
  });

  test('names an intake height that does', () => {
    const stranded = figureOf(withIntake(40), 'blockedReturn_L').notes[0];
    expect(stranded).toMatchObject({ level: 'stop', numbers: { left_L: 40, wanted_L: 100, intake_mm: 100 } });
    const raised = withIntake(stranded?.numbers['intake_mm'] ?? 0);
    expect(codesOf(raised, 'blockedReturn_L')).toEqual(['blockedFishLive']);
  });

  test('names an intake height that does in a tank of any shape, with baskets in it', () => {
    const tub = {
      shape: 'taperedRound' as const,
      topDiameter_mm: 1200,
      floorDiameter_mm: 700,
      depth_mm: 800,
    };
    const system: System = {
      ...plain,
      tank: { ...tank, container: tub },
      beds: [basket, bed],
      pump: { flow_L_h: 900, intake_mm: 20 },
    };
    const stranded = figureOf(planned(system), 'blockedReturn_L').notes[0];
    expect(stranded?.code).toBe('raiseIntake');
    const raised = planned({
      ...system,
      pump: { flow_L_h: 900, intake_mm: stranded?.numbers['intake_mm'] ?? 0 },
    });
    // Under 500 L the density is half, and the need twice as much.
    expect(valueIn(raised, 'fishNeed_L')).toBe(200);
    expect(valueIn(raised, 'blockedReturn_L')).toBeCloseTo(200, 6);
    expect(codesOf(raised, 'blockedReturn_L')).toEqual(['blockedFishLive']);
  });

  test('says that no height does where the fish need more than the low level holds', () => {
    const many = { ...tableFish, present: 60 };
    expect(codesOf(withIntake(100, many), 'blockedReturn_L')).toEqual(['tankTooSmallForFish']);
  });

  test('troubles nobody where there are no fish yet', () => {
    const none = withIntake(100, { ...tableFish, present: 0 });
    expect(codesOf(none, 'blockedReturn_L')).toEqual([]);
    expect(none.figures['fishNeed_L']).toBeUndefined();
  });
});

describe('a standpipe', () => {
  const withBore = (standpipeBore_mm: number, flow_L_h: number) =>
    planned({ beds: [{ ...bed, standpipeBore_mm }], pump: { flow_L_h, intake_mm: 100 } });

  test('that is wide enough keeps the top of the media dry', () => {
    expect(codesOf(withBore(50, 900), 'bed1.overLip_mm')).toEqual([]);
  });

  test('that is narrow lets the water rise over the media', () => {
    // 0.25 L/s through half of 4.909 cm²: 1.0186 m/s, which is 52.9 mm of water. The media ends 30 mm over the lip.
    expect(codesOf(withBore(25, 900), 'bed1.overLip_mm')).toEqual(['waterOverMedia']);
    expect(valueIn(withBore(25, 900), 'bed1.overLip_mm')).toBeCloseTo(52.9, 1);
  });

  test('that is too small lets it run over the rim', () => {
    const plan = withBore(15, 2000);
    expect(figureOf(plan, 'bed1.overLip_mm').notes[0]).toMatchObject({
      code: 'standpipeTooSmall',
      level: 'stop',
    });
    expect(valueIn(plan, 'bed1.overLip_mm')).toBeGreaterThan(60);
  });

  test('that was not measured says nothing', () => {
    expect(planned({}).figures['bed1.overLip_mm']).toBeUndefined();
  });
});

describe('fish', () => {
  test('are planned by the least of bed, tank and mass', () => {
    const plan = planned({});
    expect(valueIn(plan, 'fishByBed')).toBe(12);
    // 565 L at the lowest level: 20 L each, and 20 g a litre at 500 g each.
    expect(valueIn(plan, 'fishByTank')).toBe(28);
    expect(valueIn(plan, 'fishByDensity')).toBe(22);
    expect(valueIn(plan, 'fishPlanned')).toBe(12);
    expect(codesOf(plan, 'fishPlanned')).toEqual(['binds.fishByBed', 'supplierFirst']);
  });

  test('of another size scale the bed and the tank by their mass', () => {
    const plan = planned({ fish: { ...tableFish, massAdult_g: 1000 } });
    expect([valueIn(plan, 'fishByBed'), valueIn(plan, 'fishByTank'), valueIn(plan, 'fishByDensity')]).toEqual(
      [6, 14, 11],
    );
  });

  test('that are too many are told, and the feed is still for those that are there', () => {
    const plan = planned({ fish: { ...tableFish, present: 13 } });
    expect(codesOf(plan, 'fishPresent')).toEqual(['moreFishThanPlanned']);
    expect(valueIn(plan, 'feed_g_d')).toBe(26);
  });

  test('to be eaten get no place in a tank under 500 L', () => {
    const plan = planned({ tank: { ...tank, full_mm: 499 } });
    expect(valueIn(plan, 'fishByTank')).toBe(0);
    expect(valueIn(plan, 'fishPlanned')).toBe(0);
    expect(codesOf(plan, 'fishByTank')).toEqual(['noTableFishHere']);
  });

  test('to be looked at get the word of the supplier instead of a number', () => {
    const plan = planned({ fish: ornamentalFish });
    for (const key of ['fishByBed', 'fishByTank', 'fishByDensity', 'fishPlanned']) {
      expect(figureOf(plan, key)).toMatchObject({ value: null, notes: [{ code: 'supplierWord' }] });
    }
    expect(valueIn(plan, 'fishPresent')).toBe(10);
    expect(codesOf(plan, 'fishPresent')).toEqual([]);
  });

  test('that are not there yet leave a plan for the rule’s own fish, and no feed', () => {
    const plan = planned({ fish: null });
    expect(valueIn(plan, 'fishPlanned')).toBe(12);
    for (const key of ['fishPresent', 'feed_g_d', 'tanMax_mg_L', 'goodFrom_degC'])
      expect(plan.figures[key]).toBeUndefined();
  });
});

describe('feed', () => {
  const feedOf = (fish: Partial<typeof tableFish>) => planned({ fish: { ...tableFish, ...fish } });

  test('is the low end of the published ration, in grams and in the keeper’s own spoons', () => {
    const plan = planned({});
    expect(figureOf(plan, 'feed_g_d')).toMatchObject({ value: 20, low: 20, high: 40, safeSide: 'down' });
    expect(valueIn(plan, 'feedSpoons')).toBe(5);
  });

  test('of a keeper goes before the published ration', () => {
    const plan = feedOf({ keeperRation_frac: 0.015 });
    expect(valueIn(plan, 'feed_g_d')).toBe(30);
    expect(figureOf(plan, 'ration_frac').sources).toEqual(['keeper']);
    expect(codesOf(plan, 'ration_frac')).toEqual(['rationKeeper']);
  });

  test('of a keeper that is above the published range is told', () => {
    expect(codesOf(feedOf({ keeperRation_frac: 0.021 }), 'ration_frac')).toEqual([
      'rationKeeper',
      'rationAbovePublished',
    ]);
  });

  test('has no published figure for fish under 50 g, but the keeper’s own one counts', () => {
    const small = feedOf({ massNow_g: 49.9 });
    expect(figureOf(small, 'feed_g_d')).toMatchObject({
      value: null,
      notes: [{ code: 'rationTooSmallFish' }],
    });
    expect(small.figures['feedSpoons']).toBeUndefined();
    expect(valueIn(feedOf({ massNow_g: 49.9, keeperRation_frac: 0.03 }), 'feed_g_d')).toBeCloseTo(14.97, 9);
  });

  test('has no published figure for ornamental fish', () => {
    expect(codesOf(planned({ fish: ornamentalFish }), 'feed_g_d')).toEqual(['rationSupplier']);
    const tables = planned({ fish: ornamentalFish }).tables.map((table) => table.key);
    expect(tables).not.toContain('feedByMass');
  });

  test('is told for every weighing up to the grown fish', () => {
    const table = feedOf({ massAdult_g: 300 }).tables.find(({ key }) => key === 'feedByMass');
    expect(table?.rows.map(([mass_g]) => mass_g)).toEqual([50, 100, 150, 200, 300]);
    expect(table?.rows[1]).toEqual([100, 10, 20]);
  });
});

describe('at the edges', () => {
  test('a system without beds carries no fish by the bed and keeps its level', () => {
    const plan = planned({ beds: [], pump: null });
    expect(valueIn(plan, 'fishByBed')).toBe(0);
    expect(valueIn(plan, 'tankLow_L')).toBe(700);
    expect(plan.figures['wetMedia_L']).toBeUndefined();
  });

  test('a system without a pump knows nothing of intakes and returns', () => {
    const plan = planned({ beds: [basket], pump: null });
    for (const key of ['intakeCover_mm', 'blockedReturn_L', 'fishNeed_L'])
      expect(plan.figures[key]).toBeUndefined();
    expect(plan.section.pump).toBeNull();
    expect(plan.section.pipes).toEqual([]);
  });

  test('an intake on the floor strands every fish', () => {
    const plan = planned({ pump: { flow_L_h: 900, intake_mm: 0 } });
    expect(valueIn(plan, 'blockedReturn_L')).toBe(0);
    expect(codesOf(plan, 'blockedReturn_L')).toEqual(['raiseIntake']);
  });

  test('a tank of exactly 500 L takes table fish, and one a hair smaller only by the last digit', () => {
    const withFull = (full_mm: number) => planned({ beds: [], tank: { ...tank, full_mm } });
    expect(valueIn(withFull(500), 'fishByTank')).toBe(25);
    expect(valueIn(withFull(499.9999999999), 'fishByTank')).toBe(25);
    expect(valueIn(withFull(499.999), 'fishByTank')).toBe(0);
  });

  test('the density of fish is halved under 500 L, and nowhere else does the plan jump', () => {
    const withFull = (full_mm: number) => planned({ beds: [], tank: { ...tank, full_mm } });
    expect([499.99, 500].map((full_mm) => valueIn(withFull(full_mm), 'fishByDensity'))).toEqual([9, 20]);
    expect(valueIn(withFull(499.99), 'fishNeed_L')).toBe(200);
    expect(valueIn(withFull(500), 'fishNeed_L')).toBe(100);
  });

  test('a tank of exactly twice the bed is enough', () => {
    expect(codesOf(planned({ tank: { ...tank, full_mm: 600 } }), 'tankWanted_L')).toEqual([]);
    expect(codesOf(planned({ tank: { ...tank, full_mm: 599.99 } }), 'tankWanted_L')).toEqual([
      'tankUnderTwiceBed',
    ]);
  });

  test('water that comes to the very rim does not spill', () => {
    const still: Bed = { ...bed, mode: 'constantFlood' };
    expect(valueIn(planned({ beds: [still], tank: { ...tank, full_mm: 665 } }), 'freeboard_mm')).toBe(0);
    expect(
      valueIn(planned({ beds: [still], tank: { ...tank, full_mm: 665.01 } }), 'freeboard_mm'),
    ).toBeNull();
  });

  test('fish of exactly 50 g have a published ration', () => {
    expect(valueIn(planned({ fish: { ...tableFish, massNow_g: 50 } }), 'feed_g_d')).toBe(5);
  });

  test('a dry layer of 20 mm is thick enough, a thinner one is told', () => {
    const withLine = (waterLine_mm: number) => planned({ beds: [{ ...bed, waterLine_mm }] });
    expect(codesOf(withLine(310), 'bed1.dryLayer_mm')).toEqual([]);
    expect(codesOf(withLine(311), 'bed1.dryLayer_mm')).toEqual(['dryLayerThin']);
    expect(valueIn(withLine(330), 'bed1.dryLayer_mm')).toBe(0);
  });

  test('exactly as many fish as planned are not too many', () => {
    expect(codesOf(planned({ fish: { ...tableFish, present: 12 } }), 'fishPresent')).toEqual([]);
  });

  test('a ration of nothing is a feed of nothing', () => {
    const plan = planned({ fish: { ...tableFish, keeperRation_frac: 0 } });
    expect(valueIn(plan, 'feed_g_d')).toBe(0);
    expect(valueIn(plan, 'feedSpoons')).toBe(0);
  });
});
