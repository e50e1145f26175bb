import { orificeFlow_L_h } from './orifice.ts';
import { lipCd, mouthCd } from './standpipe.ts';
import { weirFlow_L_h } from './weir.ts';

/**
 * How high the water stands over a standpipe whose screen is partly blocked.
 *
 * As over an open one, with the open share of its lip and of its mouth: head = the larger of (flow ÷ weir flow of the
 * open lip at 1 mm)^(2 ÷ 3) and (flow ÷ orifice flow of the open mouth at 1 mm)².
 *
 * @param bore_mm inside diameter of the pipe, mm, above 0
 * @param flow_L_h flow to be taken, L/h, 0 or more
 * @param open_frac share that is still open, above 0 to 1
 * @returns still water over the lip, mm
 * @valid as `standpipeHead_mm`; blocking counts as lost area
 * @throws RangeError where an argument is out of its range
 * @source epaSwmmHydraulics, orifices in a floor; lalHydraulics, example 3.5; gmuWeirLecture
 * @example blockedHead_mm(50, 873.1887732, 1) // 10
 */
export function blockedHead_mm(bore_mm: number, flow_L_h: number, open_frac: number): number {
  if (!(0 <= flow_L_h)) throw new RangeError(`blockedHead_mm: flow_L_h is ${flow_L_h}, must be 0 or more`);
  if (!(0 < open_frac && open_frac <= 1)) throw new RangeError(`blockedHead_mm: open_frac is ${open_frac}`);
  const weir_mm = (flow_L_h / weirFlow_L_h(Math.PI * bore_mm * open_frac, 1, lipCd)) ** (2 / 3);
  const mouth_mm = (flow_L_h / open_frac / orificeFlow_L_h(bore_mm, 1, mouthCd)) ** 2;
  return Math.max(weir_mm, mouth_mm);
}
