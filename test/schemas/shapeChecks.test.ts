/** What several measures of one container cannot be together. */
import { describe, expect, test } from 'vitest';
import { said, sound, withTank, withTankShape } from './plainSystem.ts';

describe('shapes', () => {
  test('a drum cut above its own diameter', () => {
    const drum = { shape: 'lyingCylinder', diameter_mm: 571, length_mm: 850, depth_mm: 600 };
    expect(said(withTankShape(drum))).toMatchInlineSnapshot(`
      [
        "tank.container.depth_mm: The cut edge is at 600 mm, but the whole drum is only 571 mm across. For a half drum, enter half the diameter.",
      ]
    `);
  });
  test('an obround shorter than wide, at the rim and at the floor', () => {
    const tub = {
      shape: 'obround',
      length_mm: 800,
      width_mm: 900,
      floorLength_mm: 500,
      floorWidth_mm: 600,
      depth_mm: 400,
    };
    expect(said(withTankShape(tub))).toMatchInlineSnapshot(`
      [
        "tank.container.length_mm: The length over the round ends is 800 mm, but the width is 900 mm. The length cannot be the shorter one. Swap them, or choose the ellipse.",
        "tank.container.floorLength_mm: The length over the round ends is 500 mm, but the width is 600 mm. The length cannot be the shorter one. Swap them, or choose the ellipse.",
      ]
    `);
  });
  test('a floor far wider than the rim', () => {
    const tub = { shape: 'taperedRound', topDiameter_mm: 300, floorDiameter_mm: 3000, depth_mm: 400 };
    expect(said(withTankShape(tub))).toMatchInlineSnapshot(`
      [
        "tank.container.floorDiameter_mm: The floor measures 3000 mm, more than three times the rim. Expected is at most 900 mm. Look whether a figure slipped, or use a dip table.",
      ]
    `);
  });
  test('a trough that comes to a narrow keel is a real tub', () => {
    const trough = {
      shape: 'taperedBox',
      topLength_mm: 1800,
      topWidth_mm: 500,
      floorLength_mm: 1800,
      floorWidth_mm: 40,
    };
    expect(said(withTank({ container: { ...trough, depth_mm: 800 } }))).toEqual([]);
  });
  test('dips that do not rise, lie above the rim, or hold more than the outside', () => {
    const dips = [
      { depth_mm: 100, volume_L: 50 },
      { depth_mm: 90, volume_L: 50 },
      { depth_mm: 450, volume_L: 900 },
    ];
    const table = { shape: 'dipTable', dips, outsideLength_mm: 1000, outsideWidth_mm: 700, depth_mm: 400 };
    expect(said(withTankShape(table))).toMatchInlineSnapshot(`
      [
        "tank.container.dips[1].depth_mm: This dip has 90 mm, but the dip before it has 100 mm. Depth and litres both rise from dip to dip. Enter all the water poured in so far.",
        "tank.container.dips[1].volume_L: This dip has 50 L, but the dip before it has 50 L. Depth and litres both rise from dip to dip. Enter all the water poured in so far.",
        "tank.container.dips[2].depth_mm: This dip is at 450 mm, but the rim is at 400 mm. Measure both from the inside floor.",
        "tank.container.dips[2].volume_L: This dip has 900 L, but up to that depth the outside measures leave room for only 315 L. Look at the litres, the depth and the outside measures.",
      ]
    `);
  });
  test('dips that fill the outside to the last drop, however the litres were rounded', () => {
    // 0.3 × 0.7 × 1.1 m hold 231 L; as numbers they come out a hair above or below.
    const most_L = (1100 * 700 * 300) / 1e6;
    const table = (volume_L: number) => ({
      shape: 'dipTable',
      dips: [
        { depth_mm: 100, volume_L: 50 },
        { depth_mm: 300, volume_L },
      ],
      outsideLength_mm: 1100,
      outsideWidth_mm: 700,
      depth_mm: 300,
    });
    expect(said(withTankShape(table(most_L * (1 + 4 * Number.EPSILON))))).toEqual([]);
    expect(said(withTankShape(table(most_L * (1 + 1e-6))))).toHaveLength(1);
  });
  test('a level above the last dip', () => {
    const dips = [
      { depth_mm: 100, volume_L: 50 },
      { depth_mm: 200, volume_L: 110 },
    ];
    const table = { shape: 'dipTable', dips, outsideLength_mm: 1000, outsideWidth_mm: 700, depth_mm: 400 };
    expect(said({ ...sound, tank: { container: table, full_mm: 300 } })).toMatchInlineSnapshot(`
      [
        "tank.full_mm: This level is at 300 mm, but the dip table ends at 200 mm. Pour on and note more dips, up to the rim.",
      ]
    `);
  });
});
