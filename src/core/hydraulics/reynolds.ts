/** How fast water runs in a round pipe, and whether it runs smoothly or in whirls. */

/**
 * Mean velocity in a round pipe that runs full.
 *
 * Velocity = flow ÷ (π ÷ 4 × bore²).
 *
 * @param flow_L_h flow, L/h, 0 or more
 * @param bore_mm inside diameter, mm, above 0
 * @returns velocity, m/s
 * @valid a pipe that runs full
 * @throws RangeError where a measure is out of its range
 * @source epanetManual, chapter 12
 * @example velocity_m_s(3600, 40) // 0.7957747155
 */
export function velocity_m_s(flow_L_h: number, bore_mm: number): number {
  if (!(0 <= flow_L_h)) throw new RangeError(`velocity_m_s: flow_L_h is ${flow_L_h}, must be 0 or more`);
  if (!(0 < bore_mm)) throw new RangeError(`velocity_m_s: bore_mm is ${bore_mm}, must be above 0`);
  // A cubic metre a second is 3,600,000 litres an hour.
  return flow_L_h / 3.6e6 / ((Math.PI / 4) * (bore_mm / 1000) ** 2);
}

/**
 * Reynolds number of water in a round pipe: push against thickness.
 *
 * Reynolds number = velocity × bore ÷ kinematic viscosity.
 *
 * @param flow_L_h flow, L/h, 0 or more
 * @param bore_mm inside diameter, mm, above 0
 * @param viscosity_m2_s kinematic viscosity, m2/s, above 0
 * @returns a ratio
 * @valid a pipe that runs full
 * @throws RangeError where a measure is out of its range
 * @source epanetManual, chapter 12
 * @example reynolds(3600, 40, 1e-6) // 31830.98862
 */
export function reynolds(flow_L_h: number, bore_mm: number, viscosity_m2_s: number): number {
  if (!(0 < viscosity_m2_s)) {
    throw new RangeError(`reynolds: viscosity_m2_s is ${viscosity_m2_s}, must be above 0`);
  }
  return (velocity_m_s(flow_L_h, bore_mm) * bore_mm) / 1000 / viscosity_m2_s;
}
