/** Electricity of the pump, and what it costs. */
import { energy_kWh_d } from '../hydraulics/power.ts';
import type { Note } from '../note.ts';
import type { System } from '../system.ts';
import type { Figure } from './figure.ts';
import { on_frac } from './timer.ts';
import { byHand, figure, noFigure, quantity } from './write.ts';

const yearDays_d = 365;

/**
 * Electricity of a day and money of a year.
 * @param system a checked system with a pump
 * @returns energy_kWh_d, and energyCostYear where a price was given
 * @valid the watts on the plate, which are the most that it takes
 * @source siBrochure2019
 */
export function energyFigures(system: System): readonly Figure[] {
  return [energyFigure(system), ...costFigures(system)];
}

/** As the plate of the pump says. */
function energyFigure(system: System): Figure {
  const power_W = system.pump?.power_W ?? null;
  const unknown: Note = { code: 'powerUnknown', level: 'info', numbers: {}, source: 'commonPractice' };
  if (power_W === null) return noFigure('energy_kWh_d', 'kWh_d', unknown);
  const value = energy_kWh_d(power_W, on_frac(system));
  const step = byHand(
    quantity('E', 'energy', value, 'kWh_d'),
    'P × d × 24 ÷ 1000',
    [quantity('P', 'power', power_W, 'W'), quantity('d', 'timeOn', on_frac(system), 'frac')],
    'siBrochure2019',
  );
  return figure({
    key: 'energy_kWh_d',
    value,
    unit: 'kWh_d',
    safeSide: 'up',
    confidence: 'measured',
    steps: [step],
  });
}

/** In the keeper's own money; nothing without a price. */
function costFigures(system: System): readonly Figure[] {
  const { pump, pricePerKWh: price } = system;
  if (pump?.power_W == null || price == null) return [];
  const day_kWh_d = energy_kWh_d(pump.power_W, on_frac(system));
  const value = day_kWh_d * yearDays_d * price;
  const step = byHand(
    quantity('c', 'energyCost', value, 'money'),
    'E × 365 × p',
    [quantity('E', 'energy', day_kWh_d, 'kWh_d'), quantity('p', 'energyPrice', price, 'money')],
    'keeper',
  );
  return [
    figure({
      key: 'energyCostYear',
      value,
      unit: 'money',
      safeSide: 'up',
      confidence: 'measured',
      steps: [step],
      notes: [{ code: 'costOfPumpOnly', level: 'info', numbers: {}, source: 'commonPractice' }],
    }),
  ];
}
