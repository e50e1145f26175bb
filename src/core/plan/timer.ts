/** The timer of the pump, and how much of the time it lets the pump run. */
import { usualTimer_min } from '../hydraulics/hydraulicConstants.ts';
import type { System } from '../system.ts';

/**
 * Share of the time that the pump runs.
 * On over on plus off; all of it without a timer.
 * @param system a checked system
 * @returns 0 to 1
 * @valid any timer
 * @source geometry
 * @example on_frac({ pump: { flow_L_h: 900, intake_mm: 100, timer: { on_min: 15, off_min: 45 } }, beds: [] }) // 0.25
 */
export function on_frac(system: Pick<System, 'pump' | 'beds'>): number {
  const timer = timerOf(system);
  return timer === null ? 1 : timer.on_min / (timer.on_min + timer.off_min);
}

/** The timer as told, the usual one where a bed needs one, or none. */
export function timerOf(
  system: Pick<System, 'pump' | 'beds'>,
): { readonly on_min: number; readonly off_min: number } | null {
  const told = system.pump?.timer ?? null;
  if (told !== null || system.beds.every((bed) => bed.mode !== 'timer')) return told;
  return { on_min: usualTimer_min.on, off_min: usualTimer_min.off };
}
