/** Every sentence about measures that are each sensible but cannot be true together. */
import { describe, expect, test } from 'vitest';
import { toSystem } from '../../src/schemas/toSystem.ts';
import { problemSentence } from '../../src/wording/problem.ts';
import { english } from './contentFolder.ts';
import {
  basket,
  bed,
  box,
  content,
  problemsOf,
  pump,
  said,
  sound,
  tank,
  withBed,
  withTank,
  withTankShape,
} from './plainSystem.ts';

describe('a sound system', () => {
  test('has no problem, and everything left out is filled in', () => {
    const result = toSystem(sound, content);
    expect(result).toMatchObject({
      system: { place: '', sump: null, fish: null, spoon_g: null, water: { pH: null, now_degC: null } },
      raw: { shared: false, sheet: { paper: 'A4', units: 'metric' }, tank: { count: 1, above_mm: 0 } },
    });
  });

  test('takes the adult mass from the file of its fish where the keeper gives none', () => {
    const fish = { kind: 'rainbowTrout', present: 3, massNow_g: 100 };
    expect(toSystem({ ...sound, fish }, content)).toMatchObject({
      system: { fish: { massAdult_g: 1000 } },
      raw: { fish: { massAdult_g: 1000 } },
    });
  });

  test('a bucket test replaces the range of the media by what was measured', () => {
    const result = toSystem(withBed({ bucketTest: { media_L: 10, water_L: 3.7 } }), content);
    expect(result).toMatchObject({
      system: {
        beds: [{ media: { void_frac: { low: 0.37, likely: 0.37, high: 0.37 }, voidFrom: 'bucketTest' } }],
      },
    });
  });

  test('straight round-ended tubs may leave out their floor measures', () => {
    const result = toSystem(
      withTankShape({ shape: 'obround', length_mm: 1800, width_mm: 900, depth_mm: 400 }),
      content,
    );
    expect(result).toMatchObject({
      raw: { tank: { container: { floorLength_mm: 1800, floorWidth_mm: 900 } } },
    });
  });

  test('a basket takes its water line from the tank', () => {
    const { pump: _, ...still } = sound;
    expect(toSystem({ ...still, beds: [basket] }, content)).toMatchObject({
      system: { beds: [{ waterLine_mm: 300 }], pump: null },
    });
  });
});

describe('media and water in a bed', () => {
  test('media above the rim', () => {
    expect(said(withBed({ mediaDepth_mm: 400 }))).toMatchInlineSnapshot(`
      [
        "beds[0].mediaDepth_mm: The media is 400 mm deep, but the container is only 360 mm deep. Measure both from the inside floor.",
      ]
    `);
  });
  test('water above the media', () => {
    expect(said(withBed({ waterLine_mm: 350 }))).toMatchInlineSnapshot(`
      [
        "beds[0].waterLine_mm: The water stands at 350 mm, but the media reaches only to 330 mm. Lower the water or add media, so that a dry layer of two fingers stays on top.",
      ]
    `);
  });
  test('no water line', () => {
    expect(said(withBed({ waterLine_mm: undefined }))).toMatchInlineSnapshot(`
      [
        "beds[0].waterLine_mm: The water line is missing. Measure from the inside floor of the bed to the highest water, the lip of the standpipe.",
      ]
    `);
  });
  test('a drain above the water line', () => {
    expect(said(withBed({ drained_mm: 300 }))).toMatchInlineSnapshot(`
      [
        "beds[0].drained_mm: After draining the water stands at 300 mm, but the water line is at 300 mm. It cannot drain to above its own line.",
      ]
    `);
  });
  test('more water in the bucket than the bucket holds', () => {
    expect(said(withBed({ bucketTest: { media_L: 10, water_L: 10 } }))).toMatchInlineSnapshot(`
      [
        "beds[0].bucketTest.water_L: The bucket took 10 L of water, but it holds only 10 L. Enter the litres of water that went in beside the media.",
      ]
    `);
  });
  test('a bed too low for its water to run back', () => {
    expect(said(withBed({ above_mm: 500 }))).toMatchInlineSnapshot(`
      [
        "beds[0].above_mm: The bed stands at 500 mm, too low for its water to run back by itself. It must stand at 700 mm at least. Raise the bed, or lower the full line.",
      ]
    `);
  });
  test('a constant flood bed returns from its lip, so its floor may lie lower', () => {
    expect(said(withBed({ mode: 'constantFlood', above_mm: 400 }))).toEqual([]);
    expect(said(withBed({ mode: 'constantFlood', above_mm: 399 }))).toMatchInlineSnapshot(`
      [
        "beds[0].above_mm: The bed stands at 399 mm, too low for its water to run back by itself. It must stand at 400 mm at least. Raise the bed, or lower the full line.",
      ]
    `);
  });
  test('an unknown media', () => {
    expect(said(withBed({ media: 'roundGravel' }))).toMatchInlineSnapshot(`
      [
        "beds[0].media: The media is "roundGravel", which is not known here. Did you mean "roundedGravel"? Choose one from the list.",
      ]
    `);
  });
});

describe('tank, sump and pump', () => {
  test('a full line above the rim', () => {
    expect(said(withTank({ full_mm: 801 }))).toMatchInlineSnapshot(`
      [
        "tank.full_mm: The full line is at 801 mm, but the rim is at 800 mm. Measure both from the inside floor.",
      ]
    `);
  });
  test('an intake above the full line', () => {
    expect(said({ ...sound, pump: { ...pump, intake_mm: 700 } })).toMatchInlineSnapshot(`
      [
        "pump.intake_mm: The pump takes in water at 700 mm, but the full line is at 700 mm. Measure both from the inside floor, and set the pump lower.",
      ]
    `);
  });
  test('an intake above the lowest level: 700 L less 300 L of media with 45 % voids leave 565 mm', () => {
    expect(said({ ...sound, pump: { ...pump, intake_mm: 564 } })).toEqual([]);
    expect(said({ ...sound, pump: { ...pump, intake_mm: 565 } })).toMatchInlineSnapshot(`
      [
        "pump.intake_mm: The pump takes in water at 565 mm, but with all beds full the water can fall to 565 mm, and the pump would run dry. Set the pump lower, or let the beds take less water.",
      ]
    `);
  });
  test('all beds are full at once when the lowest level is looked for', () => {
    const beds = [bed, { ...bed, name: 'Other', count: 3 }];
    expect(said({ ...sound, beds, pump: { ...pump, intake_mm: 150 } })).toEqual([]);
    expect(said({ ...sound, beds, pump: { ...pump, intake_mm: 161 } })).toMatchInlineSnapshot(`
      [
        "pump.intake_mm: The pump takes in water at 161 mm, but with all beds full the water can fall to 160 mm, and the pump would run dry. Set the pump lower, or let the beds take less water.",
      ]
    `);
  });
  test('beds that take more than there is', () => {
    expect(said(withBed({ count: 6 }))).toMatchInlineSnapshot(`
      [
        "tank.full_mm: At the full line the pump has 700 L to draw on, but all beds together can take 810 L. Flood fewer beds at once, lower their water lines, or use a bigger tank.",
      ]
    `);
  });
  test('with a sump the pump stands in the sump, and the beds draw on that', () => {
    const sump = { container: box, full_mm: 200 };
    expect(said({ ...sound, sump })).toMatchInlineSnapshot(`
      [
        "pump.intake_mm: The pump takes in water at 100 mm, but with all beds full the water can fall to 65 mm, and the pump would run dry. Set the pump lower, or let the beds take less water.",
      ]
    `);
    expect(said({ ...sound, sump: { ...sump, full_mm: 340 } })).toEqual([]);
  });
  test('no pump', () => {
    expect(said({ ...sound, pump: undefined })).toMatchInlineSnapshot(`
      [
        "pump: The bed "Bed" needs a pump. Fill in the pump, or make the bed a basket that stands in the tank.",
      ]
    `);
  });
  test('a sump without a pump', () => {
    expect(said({ ...sound, pump: undefined, sump: tank })).toMatchInlineSnapshot(`
      [
        "pump: The bed "Bed" needs a pump. Fill in the pump, or make the bed a basket that stands in the tank.",
        "sump: There is a sump, but no pump. The sump is where the pump stands. Fill in the pump, or take the sump out.",
      ]
    `);
  });
  test('an unknown fish', () => {
    expect(
      said({ ...sound, fish: { kind: 'nileTilapa', present: 1, massNow_g: 100 } }),
    ).toMatchInlineSnapshot(`
      [
        "fish.kind: The kind of fish is "nileTilapa", which is not known here. Did you mean "nileTilapia"? Choose one from the list.",
      ]
    `);
  });
});

test('one broken field does not hide what is wrong elsewhere', () => {
  const raw = {
    ...withBed({ mediaDepth_mm: 400, colour: 'red' }),
    tank: { ...tank, full_mm: 900 },
    pump: { flow_L_h: -1 },
  };
  expect(said(raw)).toMatchInlineSnapshot(`
    [
      "beds[0].colour: This file holds something that Bedfirst does not know: "colour".",
      "pump.flow_L_h: The flow of the pump is −1 L/h. It must lie between 10 L/h and 100000 L/h. Time how long it takes to fill a bucket at the height of the beds.",
      "pump.intake_mm: The intake of the pump is missing. Measure from the inside floor to the lowest opening that takes in water.",
      "tank.full_mm: The full line is at 900 mm, but the rim is at 800 mm. Measure both from the inside floor.",
      "beds[0].mediaDepth_mm: The media is 400 mm deep, but the container is only 360 mm deep. Measure both from the inside floor.",
    ]
  `);
});

test('a person who measures in inches and gallons reads inches and gallons', () => {
  const [problem] = problemsOf(withBed({ mediaDepth_mm: 400 }));
  if (!problem) throw new Error('there should be one problem');
  expect(problemSentence(problem, english(content), 'us')).toMatchInlineSnapshot(
    `"The media is 15.7 in deep, but the container is only 14.1 in deep. Measure both from the inside floor."`,
  );
});
