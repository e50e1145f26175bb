/** Power in the water, energy from the plug, and the bucket that tells the flow. */
import { gravity_m_s2 } from '../constants.ts';

/**
 * Power that a pump gives to the water.
 *
 * Power = density × g × flow × head.
 *
 * @param flow_L_h flow, L/h, 0 or more
 * @param head_m head, m of water, 0 or more
 * @param density_kg_m3 density of the water, kg/m3, above 0
 * @returns power, W; the plug gives several times as much
 * @valid any pump
 * @throws RangeError where a measure is out of its range
 * @source cengel2006, chapter 5
 * @example hydraulicPower_W(3600, 1, 1000) // 9.80665
 */
export function hydraulicPower_W(flow_L_h: number, head_m: number, density_kg_m3: number): number {
  if (!(0 <= flow_L_h && 0 <= head_m && 0 < density_kg_m3)) {
    throw new RangeError(`hydraulicPower_W(${flow_L_h} L/h, ${head_m} m, ${density_kg_m3} kg/m3)`);
  }
  return (density_kg_m3 * gravity_m_s2 * flow_L_h * head_m) / 3.6e6;
}

/**
 * Electricity of a day.
 *
 * Energy = power × share of the day × 24 ÷ 1000.
 *
 * @param power_W power on the plate, W, 0 or more
 * @param on_frac share of the time that it runs, 0 to 1
 * @returns energy, kWh a day
 * @valid a motor that takes what its plate says; a meter in the plug tells better
 * @throws RangeError where an argument is out of its range
 * @source siBrochure2019, the hour and the watt
 * @example energy_kWh_d(25, 1) // 0.6
 */
export function energy_kWh_d(power_W: number, on_frac: number): number {
  if (!(0 <= power_W && 0 <= on_frac && on_frac <= 1)) {
    throw new RangeError(`energy_kWh_d(${power_W} W, ${on_frac})`);
  }
  return (power_W * on_frac * 24) / 1000;
}

/**
 * Seconds that a flow takes to fill a bucket.
 *
 * Time = volume ÷ flow × 3600.
 *
 * @param volume_L what the bucket holds, L, above 0
 * @param flow_L_h flow, L/h, above 0
 * @returns time, s
 * @valid a steady flow
 * @throws RangeError where an argument is not above 0
 * @source cengel2006, example 5-1
 * @example bucket_s(10, 900) // 40
 */
export function bucket_s(volume_L: number, flow_L_h: number): number {
  if (!(0 < volume_L && 0 < flow_L_h)) throw new RangeError(`bucket_s(${volume_L} L, ${flow_L_h} L/h)`);
  return (volume_L / flow_L_h) * 3600;
}
