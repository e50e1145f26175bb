/** What pumps, pipes, standpipes and their waters obey. */
import fc from 'fast-check';
import { fullPipeFlow_L_h, mouthCloses_L_h } from '../../src/core/hydraulics/bellSiphon.ts';
import { dutyFlow_L_h } from '../../src/core/hydraulics/dutyPoint.ts';
import { fittingLoss_m } from '../../src/core/hydraulics/fittings.ts';
import { frictionFactor, frictionLoss_m } from '../../src/core/hydraulics/friction.ts';
import { blockedHead_mm } from '../../src/core/hydraulics/halfBlocked.ts';
import { bucket_s, energy_kWh_d, hydraulicPower_W } from '../../src/core/hydraulics/power.ts';
import { mostFlow_L_h, type PumpCurve, pumpHead_m } from '../../src/core/hydraulics/pumpCurve.ts';
import { reynolds } from '../../src/core/hydraulics/reynolds.ts';
import { settlerArea_m2 } from '../../src/core/hydraulics/settler.ts';
import { waterViscosity_m2_s } from '../../src/core/hydraulics/waterProperties.ts';
import { floodedBed_kg, load_kg_m2 } from '../../src/core/weight/full.ts';
import { lipCd, mouthCd, standpipeFlow_L_h, standpipeHead_mm } from '../../src/core/hydraulics/standpipe.ts';
import { standpipeStep } from '../../src/core/hydraulics/standpipeStep.ts';
import { workedOut } from '../core/workedOut.ts';
import { atMost, equal, less, same } from './claims.ts';
import { type FormulaLaw, law } from './law.ts';

const between = (min: number, max: number) => fc.double({ min, max, noNaN: true });
const share = between(0, 1);
const roughness = between(0, 0.05);
const flow = between(1, 20_000);
const pipe = fc.record({
  bore_mm: between(8, 100),
  length_m: between(0.1, 50),
  roughness_mm: between(0, 0.3),
});
const viscosity = between(0.5e-6, 1.8e-6);

/** Flow rises and height falls from point to point. */
const curve: fc.Arbitrary<PumpCurve> = fc
  .tuple(
    between(0.5, 10),
    fc.array(fc.tuple(between(50, 2000), between(0.05, 0.95)), { minLength: 1, maxLength: 5 }),
    fc.constantFrom(0, 1),
  )
  .map(([top_m, steps, skip]) => {
    let flow_L_h = 0;
    let head_m = top_m;
    const later = steps.map(([more, left]) => {
      flow_L_h += more;
      head_m *= left;
      return { flow_L_h, head_m };
    });
    return skip === 1 ? later : [{ flow_L_h: 0, head_m: top_m }, ...later];
  });
const bore = between(10, 315);
const head = between(0.1, 500);

/** Head at which the lip stops to rule and the mouth begins: both flows are the same there. */
function changeOver_mm(bore_mm: number): number {
  return (3 / 8) * (mouthCd / lipCd) * bore_mm;
}

const asked =
  (lift_m: number, K: number) =>
  (flow_L_h: number): number =>
    lift_m +
    frictionLoss_m({ bore_mm: 20, length_m: 3, roughness_mm: 0.0015 }, flow_L_h, 1e-6) +
    fittingLoss_m(K, flow_L_h, 20);

/** Laws of moving water. */
export const flowLaws: readonly FormulaLaw[] = [
  law(
    'a standpipe stands as high over its lip as the flow it takes says',
    fc.tuple(bore, head),
    ([bore_mm, head_mm]) => {
      same(standpipeHead_mm(bore_mm, standpipeFlow_L_h(bore_mm, head_mm)), head_mm, 1e-9);
    },
  ),
  law('a standpipe takes more the higher the water stands', fc.tuple(bore, head), ([bore_mm, head_mm]) => {
    less(standpipeFlow_L_h(bore_mm, head_mm), standpipeFlow_L_h(bore_mm, head_mm * 1.001));
  }),
  law('a standpipe takes more the wider it is', fc.tuple(bore, head), ([bore_mm, head_mm]) => {
    less(standpipeFlow_L_h(bore_mm, head_mm), standpipeFlow_L_h(bore_mm * 1.001, head_mm));
  }),
  law('a standpipe does not jump where the lip hands over to the mouth', bore, (bore_mm) => {
    const at_mm = changeOver_mm(bore_mm);
    const flow_L_h = standpipeFlow_L_h(bore_mm, at_mm);
    same(standpipeFlow_L_h(bore_mm, at_mm * (1 - 1e-9)), flow_L_h, 1e-8);
    same(standpipeFlow_L_h(bore_mm, at_mm * (1 + 1e-9)), flow_L_h, 1e-8);
    same(standpipeHead_mm(bore_mm, flow_L_h * (1 - 1e-9)), at_mm, 1e-8);
    same(standpipeHead_mm(bore_mm, flow_L_h * (1 + 1e-9)), at_mm, 1e-8);
  }),
  law(
    'a standpipe twice as large and twice as deep takes two to the power of two and a half as much',
    fc.tuple(bore, head),
    ([bore_mm, head_mm]) => {
      same(standpipeFlow_L_h(2 * bore_mm, 2 * head_mm), 2 ** 2.5 * standpipeFlow_L_h(bore_mm, head_mm), 1e-9);
    },
  ),
  law(
    'a standpipe has a step whose printed formula gives its value on both sides of the change-over',
    fc.tuple(bore, head),
    ([bore_mm, head_mm]) => {
      const step = standpipeStep(bore_mm, standpipeFlow_L_h(bore_mm, head_mm));
      same(workedOut(step), step.gives.value, 1e-9);
      same(step.gives.value, head_mm, 1e-9);
      const lipRules = step.symbols.some((symbol) => symbol.term === 'lipCoefficient');
      if (Math.abs(head_mm / changeOver_mm(bore_mm) - 1) > 1e-6) {
        equal(lipRules, head_mm < changeOver_mm(bore_mm));
      }
    },
  ),
  law('the friction factor does not jump where smooth flow ends and where whirls begin', roughness, (k) => {
    for (const Re of [2000, 4000]) {
      const at = frictionFactor(Re, k);
      same(frictionFactor(Re * (1 - 1e-9), k), at, 1e-7);
      same(frictionFactor(Re * (1 + 1e-9), k), at, 1e-7);
    }
  }),
  law(
    'the friction factor is never smaller for a rougher wall',
    fc.tuple(between(1, 1e6), roughness, share),
    ([Re, k, by]) => {
      atMost(frictionFactor(Re, k * by), frictionFactor(Re, k) * (1 + 1e-12));
    },
  ),
  law(
    'the friction factor of smooth flow is the one of Hagen and Poiseuille',
    fc.tuple(between(1, 2000), roughness),
    ([Re, k]) => {
      same(frictionFactor(Re, k) * Re, 64, 1e-12);
    },
  ),
  law(
    'the loss in a pipe grows with flow, through all three ways of running',
    fc.tuple(pipe, flow, viscosity),
    ([of, flow_L_h, nu]) => {
      less(frictionLoss_m(of, flow_L_h, nu), frictionLoss_m(of, flow_L_h * 1.001, nu));
    },
  ),
  law(
    'the loss in a pipe grows with length alike, and is less in a wider pipe',
    fc.tuple(pipe, flow, viscosity),
    ([of, flow_L_h, nu]) => {
      const loss = frictionLoss_m(of, flow_L_h, nu);
      same(frictionLoss_m({ ...of, length_m: 2 * of.length_m }, flow_L_h, nu), 2 * loss, 1e-12);
      less(frictionLoss_m({ ...of, bore_mm: 1.01 * of.bore_mm }, flow_L_h, nu), loss);
    },
  ),
  law(
    'the loss in a pipe twice the size at the same Reynolds number loses a quarter of the head a length',
    fc.tuple(between(8, 100), flow, viscosity),
    ([bore_mm, flow_L_h, nu]) => {
      const small = frictionLoss_m({ bore_mm, length_m: 1, roughness_mm: bore_mm / 1000 }, flow_L_h, nu);
      const large = frictionLoss_m(
        { bore_mm: 2 * bore_mm, length_m: 2, roughness_mm: bore_mm / 500 },
        2 * flow_L_h,
        nu,
      );
      same(large, small / 4, 1e-9);
    },
  ),
  law(
    'the loss in a pipe of cold water is never less than of warm',
    fc.tuple(pipe, flow, between(0, 49)),
    ([of, flow_L_h, T]) => {
      const at = (degC: number): number => frictionLoss_m(of, flow_L_h, waterViscosity_m2_s(degC));
      // Between the two ways of running the cubic falls where thicker water would still run smoothly.
      const Re = reynolds(flow_L_h, of.bore_mm, waterViscosity_m2_s(T));
      if (1900 < Re && Re < 4200) return;
      atMost(at(T + 0.5) * (1 - 1e-12), at(T));
    },
  ),
  law(
    'a full pipe carries the flow whose losses use up the fall',
    fc.tuple(pipe, between(1, 20), between(1, 5000), viscosity),
    ([of, K, head_mm, nu]) => {
      const flow_L_h = fullPipeFlow_L_h(of, K, head_mm, nu);
      const lost_m = frictionLoss_m(of, flow_L_h, nu) + fittingLoss_m(K, flow_L_h, of.bore_mm);
      same(1000 * lost_m, head_mm, 1e-9);
    },
  ),
  law(
    'a full pipe closes over its mouth at a flow that grows as the bore to the power two and a half',
    between(10, 150),
    (bore_mm) => {
      same(mouthCloses_L_h(2 * bore_mm), 2 ** 2.5 * mouthCloses_L_h(bore_mm), 1e-9);
    },
  ),
  law('a pump curve goes through all its points', curve, (points) => {
    for (const { flow_L_h, head_m } of points) same(pumpHead_m(points, flow_L_h), head_m, 1e-9);
  }),
  law('a pump curve never rises with flow', fc.tuple(curve, share, share), ([points, a, b]) => {
    const most = mostFlow_L_h(points);
    const [less, more] = [Math.min(a, b) * most, Math.max(a, b) * most];
    atMost(pumpHead_m(points, more), pumpHead_m(points, less) * (1 + 1e-12) + 1e-12);
  }),
  law(
    'the duty point lies on both curves, or at the end of the pump’s',
    fc.tuple(curve, share, between(0, 10)),
    ([points, of, K]) => {
      const lift_m = of * pumpHead_m(points, 0);
      const duty = dutyFlow_L_h(points, asked(lift_m, K));
      if (duty === null) {
        atMost(pumpHead_m(points, 0), lift_m);
        return;
      }
      const spare = pumpHead_m(points, duty) - asked(lift_m, K)(duty);
      if (duty === mostFlow_L_h(points)) atMost(0, spare);
      else less(Math.abs(spare), 1e-9 * Math.max(1, pumpHead_m(points, 0)));
    },
  ),
  law(
    'the duty point never moves to more flow for more bends or more lift',
    fc.tuple(curve, share, between(0, 10), between(0, 10)),
    ([points, of, K, more]) => {
      const lift_m = 0.9 * of * pumpHead_m(points, 0);
      const duty = dutyFlow_L_h(points, asked(lift_m, K)) ?? 0;
      atMost(dutyFlow_L_h(points, asked(lift_m, K + more)) ?? 0, duty * (1 + 1e-9));
      atMost(dutyFlow_L_h(points, asked(lift_m * 1.05, K)) ?? 0, duty * (1 + 1e-9));
    },
  ),
  law(
    'a standpipe with a screen that is clean stands as an open one, and ever higher the less is open',
    fc.tuple(between(10, 150), flow, between(0.05, 0.98)),
    ([bore_mm, flow_L_h, open]) => {
      same(blockedHead_mm(bore_mm, flow_L_h, 1), standpipeHead_mm(bore_mm, flow_L_h), 1e-9);
      less(blockedHead_mm(bore_mm, flow_L_h, open * 1.01), blockedHead_mm(bore_mm, flow_L_h, open));
    },
  ),
  law(
    'scale power, time of a bucket and settler grow as they should',
    fc.tuple(flow, between(0.1, 10), between(0.1, 10)),
    ([flow_L_h, head_m, by]) => {
      same(
        hydraulicPower_W(by * flow_L_h, head_m, 1000),
        by * hydraulicPower_W(flow_L_h, head_m, 1000),
        1e-9,
      );
      same(bucket_s(10, by * flow_L_h), bucket_s(10, flow_L_h) / by, 1e-9);
      same(settlerArea_m2(by * flow_L_h, 0.0031), by * settlerArea_m2(flow_L_h, 0.0031), 1e-9);
      same(energy_kWh_d(by * 20, 0.5), by * energy_kWh_d(20, 0.5), 1e-9);
    },
  ),
  law(
    'scale a flooded bed is heavier the more media, the heavier media and the looser heap',
    fc.tuple(between(10, 2000), between(0.1, 1), between(200, 2000), between(0.2, 0.7)),
    ([rim_L, of, bulk, e]) => {
      const at = floodedBed_kg(rim_L, of * rim_L, bulk, e);
      less(at, floodedBed_kg(rim_L, of * rim_L, bulk * 1.1, e));
      less(at, floodedBed_kg(rim_L, of * rim_L, bulk, Math.min(1, e * 1.1)));
      // Media whose dry heap is heavier than the water it leaves no room for.
      if (bulk / 1000 > 1 - e) less(floodedBed_kg(rim_L, 0, bulk, e), at);
      same(load_kg_m2(at, 0.5), 2 * at, 1e-12);
    },
  ),
];
