/** Filling and draining over time: no water is made or lost, and the closed forms come out within half a per cent. */
import fc from 'fast-check';
import { volume_L } from '../../src/core/geometry/container.ts';
import { rim_mm } from '../../src/core/geometry/rim.ts';
import { type Drains, filled, type Moment, type Rhythm } from '../../src/core/hydraulics/filling.ts';
import { drainTime_s } from '../../src/core/hydraulics/draining.ts';
import { orificeFlow_L_h } from '../../src/core/hydraulics/orifice.ts';
import { boxOf, drained_s, siphonBed } from '../core/beds.ts';
import { containerAndShare, shapes } from '../core/geometryArbitraries.ts';
import { atMost, equal, less, same } from './claims.ts';
import { type FormulaLaw, law } from './law.ts';

const between = (min: number, max: number) => fc.double({ min, max, noNaN: true });
const drains = fc.constantFrom<Drains>('siphon', 'hole', 'lip');
const rhythm = fc.option(fc.record({ on_s: between(60, 1800), off_s: between(60, 1800) }), { nil: null });

/** Long enough for some rounds of most beds. */
const until_s = 4000;

function onTime_s({ on_s, off_s }: Rhythm, time_s: number): number {
  const rounds = Math.floor(time_s / (on_s + off_s));
  return rounds * on_s + Math.min(on_s, time_s - rounds * (on_s + off_s));
}

/** Every moment against the one before it: what came in went out or is still there. */
function balanced(moments: readonly Moment[], least_L: number, most_L: number): void {
  let before = moments[0];
  for (const now of moments) {
    const scale_L = Math.max(1, most_L, now.pumped_L);
    atMost(Math.abs(now.pumped_L - now.returned_L - (now.water_L - least_L)), 1e-9 * scale_L, 'water lost');
    atMost(now.water_L, most_L, 'over the highest water', 1e-12);
    atMost(least_L, now.water_L, 'under the drain', 1e-12);
    atMost(before?.time_s ?? 0, now.time_s, 'time');
    atMost(before?.returned_L ?? 0, now.returned_L + 1e-9 * scale_L, 'return');
    before = now;
  }
}

/** Layers and their filling know no shapes, only litres: all shapes together are one field to draw from. */
const anyContainer = fc.oneof(...shapes.map((shape) => containerAndShare(shape)));

const balance = law(
  'a bed neither makes nor loses water to 1e-9, whatever its drain and its timer do',
  fc.tuple(anyContainer, between(50, 3000), drains, rhythm),
  ([[container], inflow_L_h, how, beat]) => {
    const cells = siphonBed(container, inflow_L_h);
    const { moments } = filled({ cells, drains: how, inflow_L_h, rhythm: beat, until_s });
    balanced(moments, moments[0]?.water_L ?? 0, cells.at(-1)?.water_L ?? 0);
    const last = moments.at(-1);
    if (last?.time_s !== until_s) return;
    const on_s = beat === null ? until_s : onTime_s(beat, until_s);
    same(last.pumped_L, (inflow_L_h / 3600) * on_s, 1e-9);
  },
);

const layered = law('a bed holds what its layers hold', anyContainer, ([container]) => {
  for (const { depth_mm, water_L } of siphonBed(container, 500)) {
    const media_L = volume_L(container, Math.min(depth_mm, 0.8 * rim_mm(container)));
    same(water_L, 0.4 * media_L + volume_L(container, depth_mm) - media_L, 1e-12);
  }
});

const upright = fc.tuple(between(0.05, 5), between(5, 60), between(50, 1500), between(0, 0.95));
const held = fc.tuple(
  between(0.05, 5),
  between(5, 60),
  between(50, 1500),
  between(0.1, 0.9),
  between(0.05, 0.9),
);

/** Laws of filling and draining. */
export const fillingLaws: readonly FormulaLaw[] = [
  balance,
  layered,
  law('a simulated upright vessel drains in the closed form, within 0.5 %', upright, (one) => {
    const [area, bore_mm, from_mm, share] = one;
    const hole = { bore_mm, Cd: 0.6 };
    const to_mm = from_mm * share;
    const closed_s = drainTime_s(area, hole, from_mm, to_mm, 0);
    same(drained_s(boxOf(area, from_mm), hole, from_mm, to_mm), closed_s, 5e-3);
  }),
  law(
    'a simulated upright vessel with water running in drains in the closed form, within 0.5 %',
    held,
    (one) => {
      const [area, bore_mm, from_mm, share, q] = one;
      const hole = { bore_mm, Cd: 0.6 };
      const to_mm = from_mm * share;
      const inflow_L_h = q * orificeFlow_L_h(bore_mm, to_mm, 0.6);
      const closed_s = drainTime_s(area, hole, from_mm, to_mm, inflow_L_h);
      same(drained_s(boxOf(area, from_mm), hole, from_mm, to_mm, inflow_L_h), closed_s, 5e-3);
      less(drainTime_s(area, hole, from_mm, to_mm, 0), closed_s);
      equal(drainTime_s(area, hole, from_mm, to_mm, (1.001 * inflow_L_h) / q), Number.POSITIVE_INFINITY);
    },
  ),
];
