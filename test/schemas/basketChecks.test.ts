/** What a basket of media in the fish tank cannot be. */
import { describe, expect, test } from 'vitest';
import { basket, pump, said, sound } from './plainSystem.ts';

describe('baskets in the tank', () => {
  const withBasket = (change: object) => ({ ...sound, pump: undefined, beds: [{ ...basket, ...change }] });
  test('a water line of its own', () => {
    expect(said(withBasket({ waterLine_mm: 200 }))).toMatchInlineSnapshot(`
      [
        "beds[0].waterLine_mm: The full line of the tank sets the water line of a basket. Leave this field empty.",
      ]
    `);
  });
  test('above the water', () => {
    expect(said(withBasket({ above_mm: 701 }))).toMatchInlineSnapshot(`
      [
        "beds[0].above_mm: The basket stands at 701 mm, but the water of the tank reaches only to 700 mm. Lower the basket into the water.",
      ]
    `);
  });
  test('media above the rim of the tank', () => {
    expect(said(withBasket({ above_mm: 480 }))).toMatchInlineSnapshot(`
      [
        "beds[0].mediaDepth_mm: The media in the basket reaches up to 810 mm over the tank floor, but the rim of the tank is at 800 mm. Lower the basket or fill in less media.",
      ]
    `);
  });
  test('media all under water', () => {
    expect(said(withBasket({ above_mm: 300 }))).toMatchInlineSnapshot(`
      [
        "beds[0].mediaDepth_mm: The water stands at 700 mm, but the media reaches only to 630 mm. Lower the water or add media, so that a dry layer of two fingers stays on top.",
      ]
    `);
  });
  test('more of them than the tank has room for', () => {
    expect(said(withBasket({ count: 3 }))).toMatchInlineSnapshot(`
      [
        "beds[0].container: The baskets take up 900 L, but up to its full line the tank holds only 700 L: no water is left for fish. Make them smaller or fewer.",
      ]
    `);
  });
  test('wider than the tank at some height, which a drum on its side is near its floor and near its rim', () => {
    const drum = {
      container: { shape: 'lyingCylinder', diameter_mm: 400, length_mm: 400, depth_mm: 400 },
      full_mm: 398,
    };
    const inDrum = (side_mm: number, from_mm: number, to_mm: number) => ({
      ...sound,
      pump: undefined,
      tank: drum,
      beds: [
        {
          ...basket,
          container: { shape: 'box', length_mm: side_mm, width_mm: side_mm, depth_mm: to_mm - from_mm },
          mediaDepth_mm: to_mm - from_mm,
          above_mm: from_mm,
        },
      ],
    });
    expect(said(inDrum(205, 0, 399))).toMatchInlineSnapshot(`
      [
        "beds[0].container: At 0 mm over the tank floor the baskets are wider than the tank: they cover more than its water surface there. Measure both again. Make the baskets smaller or fewer, or stand them where the tank is wider.",
      ]
    `);
    expect(said(inDrum(205, 60, 399))).toMatchInlineSnapshot(`
      [
        "beds[0].container: At 399 mm over the tank floor the baskets are wider than the tank: they cover more than its water surface there. Measure both again. Make the baskets smaller or fewer, or stand them where the tank is wider.",
      ]
    `);
    // 50 × 50 mm of 400 × 40 mm at 1 mm below the rim.
    expect(said(inDrum(50, 60, 399))).toEqual([]);
  });
  test('of which the last corner just fits', () => {
    const tank = { container: { shape: 'box', length_mm: 500, width_mm: 300, depth_mm: 800 }, full_mm: 700 };
    const side = {
      ...basket,
      container: { shape: 'box', length_mm: 500, width_mm: 300, depth_mm: 700 },
      mediaDepth_mm: 700,
      above_mm: 90,
    };
    const inTank = (length_mm: number) => ({
      ...sound,
      pump: undefined,
      tank,
      beds: [{ ...side, container: { ...side.container, length_mm } }],
    });
    expect(said(inTank(500))).toEqual([]);
    expect(said(inTank(501))).toHaveLength(1);
  });
  test('an intake that the stones between the baskets lay dry', () => {
    // 700 L, of which 300 × 0.65 are stone; the bed takes 300 × 0.45: 370 L stay, 370 mm deep. Without stone: 565 mm.
    const withIntake = (intake_mm: number) => ({
      ...sound,
      beds: [...sound.beds, basket],
      pump: { ...pump, intake_mm },
    });
    expect(said(withIntake(369))).toEqual([]);
    expect(said(withIntake(371))).toMatchInlineSnapshot(`
      [
        "pump.intake_mm: The pump takes in water at 371 mm, but with all beds full the water can fall to 370 mm, and the pump would run dry. Set the pump lower, or let the beds take less water.",
      ]
    `);
  });
  test('a pump for nothing', () => {
    expect(said({ ...withBasket({}), pump })).toMatchInlineSnapshot(`
      [
        "pump: Every bed is a basket in the tank, so no pump is needed. Take the pump out, or choose how the beds are watered.",
      ]
    `);
  });
});
