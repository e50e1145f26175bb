/** How crops grow at a place: what must hold whatever the figures, and what a grower knows. */
import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { dayNumber_d } from '../../src/core/calendar.ts';
import type { Crop } from '../../src/core/crops/crop.ts';
import { dayLength_h } from '../../src/core/crops/dayLength.ts';
import type { GrowingPlace } from '../../src/core/crops/growingPlace.ts';
import { type Grown, grown } from '../../src/core/crops/growth.ts';
import { daysAt_d, thermalTime_degC_d } from '../../src/core/crops/thermalTime.ts';
import { ofDay_degC } from '../../src/core/crops/warmth.ts';
import { readContent } from '../../src/schemas/readContent.ts';

const { content } = await readContent('content');
const crops = Object.values(content.crops);

function placeOf(id: string, change: Partial<GrowingPlace> = {}): GrowingPlace {
  const climate = content.climates[id];
  if (climate === undefined) throw new Error(`no climate ${id}`);
  const { latitude, min_degC, max_degC } = climate;
  const mean_degC = min_degC.map((min, month) => (min + (max_degC[month] ?? min)) / 2);
  return {
    ...{ latitude, mean_degC, night_degC: min_degC, water_degC: null },
    ...{ nursery: 'outdoors', shortDays: 'slow', ...change },
  };
}

function crop(id: string): Crop {
  const one = content.crops[id];
  if (one === undefined) throw new Error(`no crop ${id}`);
  return one;
}

function even(degC: number, change: Partial<GrowingPlace> = {}): GrowingPlace {
  const months = Array.from({ length: 12 }, () => degC);
  return {
    ...{ latitude: 10, mean_degC: months, night_degC: months, water_degC: null },
    ...{ nursery: 'outdoors', shortDays: 'slow', ...change },
  };
}

const spring = dayNumber_d('2031-04-01');
const growing = (of: Grown): Extract<Grown, { state: 'grows' }> => {
  if (of.state === 'never') throw new Error(`never: ${of.why}`);
  return of;
};

describe('every crop', () => {
  test('takes the days of its own file at the warmth in which those hold', () => {
    for (const one of crops) {
      const { low, high } = one.days_degC;
      const found = growing(grown(one, even((low + high) / 2), spring));
      expect(found.ready_d - found.plantOut_d).toBe(Math.ceil(one.bed_d.likely));
      expect(found.plantOut_d - spring).toBe(Math.ceil(one.nursery_d?.likely ?? 0));
    }
  });

  test('takes as many days in the bed when its seedlings were planted later', () => {
    for (const one of crops.filter(({ nursery_d }) => nursery_d !== null)) {
      const { low, high } = one.days_degC;
      const found = growing(grown(one, even((low + high) / 2), spring, spring + 90));
      expect([found.sow_d, found.plantOut_d]).toEqual([spring, spring + 90]);
      expect(found.ready_d - found.plantOut_d).toBe(Math.ceil(one.bed_d.likely));
    }
  });

  test('never takes longer where it is warmer, up to its best', () => {
    fc.assert(
      fc.property(
        fc.constantFrom(...crops),
        fc.double({ min: 0, max: 1, noNaN: true }),
        fc.double({ min: 0, max: 1, noNaN: true }),
        (one, a, b) => {
          const from = Math.max(one.germination.least_degC, one.base_degC + 2);
          const to = Math.min(one.best_degC.high, one.germination.most_degC);
          const at = (share: number) => grown(one, even(from + share * (to - from)), spring);
          const [cool, warm] = [at(Math.min(a, b)), at(Math.max(a, b))];
          if (cool.state === 'grows') expect(growing(warm).ready_d).toBeLessThanOrEqual(cool.ready_d);
        },
      ),
    );
  });

  test('is picked in order, within what its file says, at any place on any day', () => {
    fc.assert(
      fc.property(
        fc.constantFrom(...crops),
        fc.constantFrom(...Object.keys(content.climates)),
        fc.integer({ min: 0, max: 730 }),
        fc.constantFrom('slow' as const, 'ignored' as const),
        (one, climate, day, shortDays) => {
          const found = grown(one, placeOf(climate, { shortDays }), spring + day);
          if (found.state === 'never') return;
          const days = [found.sow_d, found.plantOut_d, ...found.picks_d];
          for (const [at, value] of days.entries()) {
            expect(Number.isInteger(value)).toBe(true);
            expect(value).toBeGreaterThanOrEqual(days[at - 1] ?? 0);
          }
          expect(found.readyFrom_d).toBeLessThanOrEqual(found.ready_d);
          expect(found.ready_d).toBeLessThanOrEqual(found.readyTo_d);
          expect(found.ready_d - found.plantOut_d).toBeLessThanOrEqual(Math.ceil(3 * one.bed_d.likely));
        },
      ),
    );
  });

  test('grows alike on both halves of the earth, half a year apart', () => {
    const turned = (months: readonly number[]) => [...months.slice(6), ...months.slice(0, 6)];
    for (const one of crops.slice(0, 12)) {
      const north = placeOf('madrid');
      const south = {
        ...north,
        latitude: -north.latitude,
        mean_degC: turned(north.mean_degC),
        night_degC: turned(north.night_degC),
      };
      const here = grown(one, north, spring);
      const there = grown(one, south, dayNumber_d('2031-10-01'));
      expect(there.state).toBe(here.state);
      if (here.state === 'grows' && there.state === 'grows')
        expect(Math.abs(there.ready_d - there.sow_d - (here.ready_d - here.sow_d))).toBeLessThanOrEqual(3);
    }
  });
});

describe('a grower knows', () => {
  test('that nothing is picked outdoors in a northern winter', () => {
    for (const one of crops) {
      const found = grown(one, placeOf('helsinki'), dayNumber_d('2031-11-15'));
      expect(found.state).toBe('never');
    }
  });

  test('that lettuce does not come up, or bolts, in the hot tropics all year', () => {
    for (const climate of ['bangkok', 'subang', 'joaoPessoa'])
      for (let week = 0; week < 52; week += 1) {
        const found = grown(crop('lettuceHead'), placeOf(climate), spring + 7 * week);
        expect(found.state === 'never' || (found.hot_d ?? Infinity) <= found.ready_d).toBe(true);
      }
  });

  test('that water which is warmer than the air brings the picking forward', () => {
    const place = placeOf('deBilt', { nursery: { even_degC: 18 } });
    const warm = { ...place, water_degC: place.mean_degC.map((degC) => degC + 4) };
    const cold = growing(grown(crop('lettuceHead'), place, spring));
    expect(growing(grown(crop('lettuceHead'), warm, spring)).ready_d).toBeLessThan(cold.ready_d);
  });

  test('that short days slow crops down, no sun at all stops them, and lamps make up for both', () => {
    const warm = { latitude: 50, night_degC: even(15).mean_degC };
    const december = dayNumber_d('2031-11-20');
    const slow = growing(grown(crop('spinach'), even(16, warm), december));
    const lit = growing(grown(crop('spinach'), even(16, { ...warm, shortDays: 'ignored' }), december));
    expect(slow.ready_d).toBeGreaterThan(lit.ready_d + 14);
    const polar = { ...warm, latitude: 85 };
    expect(grown(crop('spinach'), even(16, polar), december).state).toBe('never');
    const lamps = growing(grown(crop('spinach'), even(16, { ...polar, shortDays: 'ignored' }), december));
    expect(lamps.ready_d).toBe(lit.ready_d);
  });

  test('that seed in cold ground does not come up', () => {
    expect(grown(crop('bushBean'), even(9), spring)).toMatchObject({ state: 'never', why: 'noGermination' });
    expect(grown(crop('basil'), even(36), spring)).toMatchObject({ state: 'never', why: 'noGermination' });
  });

  test('that trays outdoors feel the air and its frost, whatever the water of the beds is', () => {
    const heated = { water_degC: even(22).mean_degC };
    expect(grown(crop('basil'), even(9, heated), spring)).toMatchObject({ why: 'noGermination' });
    // In May the nights are still too cold; in June, when it is planted out, they are not.
    const cold = even(20, { night_degC: [2, 2, 2, 4, 6, 12, 14, 14, 12, 8, 4, 2] });
    const may = spring + 40;
    expect(grown(crop('basil'), cold, may)).toMatchObject({ state: 'never', why: 'tooCold' });
    expect(grown(crop('basil'), { ...cold, nursery: { even_degC: 20 } }, may).state).toBe('grows');
  });

  test('that frost kills what is tender', () => {
    const cold = even(18, { night_degC: even(2).mean_degC });
    expect(grown(crop('basil'), cold, spring)).toMatchObject({ state: 'never', why: 'frost' });
  });
});

describe('what is ready', () => {
  /** Warm until the end of September, then nights of frost from the middle of October on. */
  const night_degC = [12, 12, 12, 12, 12, 12, 12, 12, 12, -6, -6, -6];
  const fall = even(20, { night_degC });

  test('stands and lives no longer than the frost lets it', () => {
    for (const id of ['lettuceHead', 'bushBean', 'rocket', 'basil']) {
      const found = growing(grown(crop(id), fall, dayNumber_d('2031-07-01')));
      const least = crop(id).alive_degC.low;
      expect(ofDay_degC(night_degC, found.livesTo_d)).toBeGreaterThanOrEqual(least - 0.5);
      expect(ofDay_degC(night_degC, found.livesTo_d + 2)).toBeLessThan(least + 0.5);
    }
    const days = Array.from({ length: 60 }, (_, day) => dayNumber_d('2031-07-01') + day);
    const lettuces = days.map((day_d) => grown(crop('lettuceHead'), fall, day_d));
    const stand_d = lettuces.flatMap((one) =>
      one.state === 'grows' ? [Math.min(one.ready_d + 10, one.livesTo_d) - one.standsTo_d] : [],
    );
    expect([...new Set(stand_d)]).toEqual([0]);
    expect(lettuces.some((one) => one.state === 'grows' && one.standsTo_d < one.ready_d + 10)).toBe(true);
    const late = growing(grown(crop('springOnion'), even(20), spring));
    expect(late.standsTo_d - late.ready_d).toBe(21);
  });

  test('may bolt from the first day that is too warm for it', () => {
    const mean_degC = [15, 15, 15, 15, 15, 15, 30, 30, 15, 15, 15, 15];
    const found = growing(grown(crop('rocket'), even(15, { mean_degC }), spring));
    expect(ofDay_degC(mean_degC, found.hot_d ?? 0)).toBeGreaterThan(26);
    expect(ofDay_degC(mean_degC, (found.hot_d ?? 0) - 1)).toBeLessThanOrEqual(26);
    expect(growing(grown(crop('rocket'), even(15), spring)).hot_d).toBeNull();
  });
});

describe('at the edges', () => {
  test('the day has no hours in the polar night and all in the polar day', () => {
    expect(dayLength_h(80, 355)).toBe(0);
    expect(dayLength_h(80, 172)).toBe(24);
    expect(dayLength_h(-80, 172)).toBe(0);
    expect(dayLength_h(90, 172)).toBe(24);
    expect(() => dayLength_h(91, 1)).toThrow(RangeError);
  });

  test('at or below the base nothing is gained, and nothing ends', () => {
    expect(thermalTime_degC_d(4, 4, 22)).toBe(0);
    expect(daysAt_d(406, 3, 4, 22)).toBe(Number.POSITIVE_INFINITY);
    expect(() => thermalTime_degC_d(10, 22, 22)).toThrow(RangeError);
    expect(() => daysAt_d(0, 10, 4, 22)).toThrow(RangeError);
  });

  test('the warmth of a day lies between that of two months, and is theirs in their middles', () => {
    const months = [0, 2, 5, 9, 13, 16, 18, 17, 14, 10, 5, 2];
    expect(ofDay_degC(months, dayNumber_d('2031-07-16'))).toBeCloseTo(18, 0);
    const first = ofDay_degC(months, dayNumber_d('2031-05-01'));
    expect(first).toBeGreaterThan(9);
    expect(first).toBeLessThan(13);
    expect(() => ofDay_degC([1, 2], 0)).toThrow(RangeError);
  });
});
