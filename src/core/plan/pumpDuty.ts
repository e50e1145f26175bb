/** The pump's real flow, where its curve meets the lift and the losses, and the loss in its pipe. */
import type { SupplyPipe } from '../equipment.ts';
import { gravity_m_s2 } from '../constants.ts';
import { dutyFlow_L_h } from '../hydraulics/dutyPoint.ts';
import { bend, fittingK, fittingLoss_m, twoK } from '../hydraulics/fittings.ts';
import { frictionFactor, frictionLoss_m } from '../hydraulics/friction.ts';
import { calmVelocity_m_s, pumpHead_frac, roughness_mm } from '../hydraulics/hydraulicConstants.ts';
import { mostFlow_L_h, type PumpCurve, pumpHead_m } from '../hydraulics/pumpCurve.ts';
import { reynolds, velocity_m_s } from '../hydraulics/reynolds.ts';
import type { Note } from '../note.ts';
import type { Pump, Range } from '../system.ts';
import type { Figure, Step } from './figure.ts';
import { byHand, figure, lookup, noFigure, quantity } from './write.ts';

export type Work = { readonly pump: Pump; readonly lift_m: Range; readonly viscosity_m2_s: number };

type Wall = 'fresh' | 'slimy';

/** Less than a drop a second is no flow. */
const nothing_L_h = 0.1;

/** All bends, the mouth and the open end. Slow water in a narrow pipe loses more at a bend than the fixed figure says. */
function fittings(pipe: SupplyPipe, flow_L_h: number, work: Work, wall: Wall): number {
  const Re = reynolds(flow_L_h, pipe.bore_mm, work.viscosity_m2_s);
  const slow = twoK(bend.K1, bend.Kinf, Re, pipe.bore_mm);
  const each = wall === 'fresh' ? fittingK.elbowShort : Math.max(fittingK.elbowShort, slow);
  return fittingK.entrance + fittingK.exit + pipe.bends * each;
}

function losses_m(pipe: SupplyPipe, flow_L_h: number, work: Work, wall: Wall): number {
  if (flow_L_h < nothing_L_h) return 0;
  const straight = { ...pipe, roughness_mm: Math.min(roughness_mm[wall], pipe.bore_mm / 20) };
  const K = fittings(pipe, flow_L_h, work, wall);
  return frictionLoss_m(straight, flow_L_h, work.viscosity_m2_s) + fittingLoss_m(K, flow_L_h, pipe.bore_mm);
}

/**
 * Flow of the pump: the duty point where curve and pipe are known, else what the keeper gave.
 * @param work pump, lift and viscosity
 * @returns pumpFlow_L_h; null with a note where the curve does not reach the lift
 * @valid low: slimy pipe, weak pump, water at the intake; high: new pipe, strong pump, full line
 * @source epanetManual, chapter 3, pump curves
 */
export function dutyFigure(work: Work): Figure {
  const { pump } = work;
  const curve = pump.curve ?? null;
  const pipe = pump.pipe ?? null;
  if (curve === null || pipe === null) return givenFlow(pump.flow_L_h, curve, pipe);
  const at = (share: number, lift_m: number, wall: Wall): number | null => {
    const scaled = curve.map((point) => ({ ...point, head_m: point.head_m * share }));
    return dutyFlow_L_h(scaled, (flow_L_h) => lift_m + losses_m(pipe, flow_L_h, work, wall));
  };
  const value = at(1, work.lift_m.likely, 'fresh');
  if (value === null || value < nothing_L_h) return noFigure('pumpFlow_L_h', 'L_h', tooWeak(work, curve));
  const weak = at(pumpHead_frac.low, work.lift_m.high, 'slimy') ?? 0;
  const low = weak < nothing_L_h ? 0 : Math.min(weak, value);
  const high = at(pumpHead_frac.high, work.lift_m.low, 'fresh') ?? value;
  return figure({
    key: 'pumpFlow_L_h',
    value,
    low,
    high: Math.max(high, value),
    unit: 'L_h',
    safeSide: 'down',
    confidence: 'estimate',
    steps: [dutyStep(value, work, pumpHead_m(curve, value))],
    notes: dutyNotes(work, curve, { low, likely: value, high }),
  });
}

function dutyStep(flow_L_h: number, work: Work, head_m: number): Step {
  return {
    kind: 'simulated',
    gives: quantity('Q', 'pumpFlow', flow_L_h, 'L_h'),
    formula: '',
    symbols: [quantity('H', 'lift', work.lift_m.likely, 'm'), quantity('h', 'pumpHead', head_m, 'm')],
    byHand: 'no',
    source: 'epanetManual',
  };
}

function givenFlow(flow_L_h: number, curve: PumpCurve | null, pipe: SupplyPipe | null): Figure {
  const code = curve === null ? 'flowAsGiven' : 'flowNeedsPipe';
  const why: Note = { code, level: 'info', numbers: { flow_L_h }, source: 'commonPractice' };
  return figure({
    key: 'pumpFlow_L_h',
    value: flow_L_h,
    unit: 'L_h',
    safeSide: 'down',
    confidence: 'estimate',
    steps: [lookup(quantity('Q', 'pumpFlow', flow_L_h, 'L_h'), 'keeper')],
    notes: pipe !== null && curve !== null ? [] : [why],
  });
}

/** Water never comes out up there. */
function tooWeak(work: Work, curve: PumpCurve): Note {
  const numbers = { head_m: pumpHead_m(curve, 0), lift_m: work.lift_m.likely };
  return { code: 'pumpTooWeak', level: 'stop', numbers, source: 'epanetManual' };
}

function dutyNotes(work: Work, curve: PumpCurve, flow: Range): readonly Note[] {
  const given_L_h = work.pump.flow_L_h;
  const note = (code: string, level: Note['level'], numbers: Note['numbers']): Note => {
    return { code, level, numbers, source: 'epanetManual' };
  };
  return [
    ...(flow.low === 0 ? [note('pumpMayFail', 'stop', { lift_m: work.lift_m.high })] : []),
    ...(flow.likely >= mostFlow_L_h(curve) ? [note('curveEnds', 'caution', { flow_L_h: flow.likely })] : []),
    ...(given_L_h > flow.high * (1 + 1e-9)
      ? [note('flowGivenTooHigh', 'caution', { given_L_h, flow_L_h: flow.likely })]
      : []),
  ];
}

/**
 * Head that the supply pipe takes at the pump's flow.
 * @param work pump, lift and viscosity
 * @param flow_L_h the pump's flow; null where there is none
 * @returns pipeLoss_m, from a new wall to a slimy one; null with a note without a pipe or a flow
 * @source epanetManual, chapter 12
 */
export function pipeLossFigure(work: Work, flow_L_h: Range | null): Figure {
  const pipe = work.pump.pipe ?? null;
  const without: Note = {
    code: pipe === null ? 'pipeUnknown' : 'pipeNoFlow',
    level: 'info',
    numbers: {},
    source: 'epanetManual',
  };
  if (pipe === null || flow_L_h === null) return noFigure('pipeLoss_m', 'm', without);
  const flow = flow_L_h.likely;
  const value = losses_m(pipe, flow, work, 'fresh');
  const V = velocity_m_s(flow, pipe.bore_mm);
  const fast: Note = {
    code: 'pipeFast',
    level: 'caution',
    numbers: { velocity_m_s: V, calm_m_s: calmVelocity_m_s.value },
    source: calmVelocity_m_s.source,
  };
  return figure({
    key: 'pipeLoss_m',
    value,
    low: value,
    high: losses_m(pipe, flow, work, 'slimy'),
    unit: 'm',
    safeSide: 'up',
    confidence: 'estimate',
    steps: lossSteps(pipe, flow, work, value),
    notes: V > calmVelocity_m_s.value ? [fast] : [],
  });
}

function lossSteps(pipe: SupplyPipe, flow: number, work: Work, loss_m: number): readonly Step[] {
  const Re = reynolds(flow, pipe.bore_mm, work.viscosity_m2_s);
  const V = velocity_m_s(flow, pipe.bore_mm);
  const f = frictionFactor(Re, Math.min(roughness_mm.fresh / pipe.bore_mm, 0.05));
  const bore = quantity('D', 'pipeBore', pipe.bore_mm, 'mm');
  return [
    byHand(
      quantity('V', 'velocity', V, 'm_s'),
      'Q ÷ 3600000 ÷ (π ÷ 4 × (D ÷ 1000)^2)',
      [quantity('Q', 'pumpFlow', flow, 'L_h'), bore],
      'epanetManual',
    ),
    lookup(quantity('f', 'frictionFactor', f, 'ratio'), 'epanetManual'),
    byHand(
      quantity('h', 'pipeLoss', loss_m, 'm'),
      '(f × L × 1000 ÷ D + K) × V^2 ÷ (2 × g)',
      [
        quantity('f', 'frictionFactor', f, 'ratio'),
        quantity('L', 'pipeLength', pipe.length_m, 'm'),
        bore,
        quantity('K', 'fittingLosses', fittings(pipe, flow, work, 'fresh'), 'ratio'),
        quantity('V', 'velocity', V, 'm_s'),
        quantity('g', 'gravity', gravity_m_s2, 'm_s2'),
      ],
      'epanetManual',
    ),
  ];
}
