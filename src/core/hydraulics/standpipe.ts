/**
 * Water over the lip of an open upright pipe. At a low head the lip is a weir round its circumference; as the
 * water closes over the mouth the pipe works as a hole. At any head the smaller of the two flows counts.
 */
import { orificeFlow_L_h } from './orifice.ts';
import { weirFlow_L_h } from './weir.ts';

/**
 * The lip as a weir: the low end of the published 2.8 to 3.33 (feet, seconds), divided by 2 ÷ 3 × √(2 × 32.174)
 * and rounded down, so that real water stands rather lower than we say (gmuWeirLecture).
 */
export const lipCd = 0.523;

/**
 * The mouth as a hole. A pipe that stands up into the water is a re-entrant mouthpiece, and its free jet has half
 * the area of the bore (lalHydraulics, example 3.5): less than the 0.6 of a hole in a flat plate.
 */
export const mouthCd = 0.5;

/**
 * Most water that an open standpipe takes at a head.
 *
 * Flow = the smaller of weir flow (crest π × bore) and orifice flow (bore).
 *
 * @param bore_mm inside diameter of the pipe, mm, above 0
 * @param head_mm still water over the lip, mm, 0 or more
 * @returns flow, L/h
 * @valid level lip, nothing in front of it, the pipe below running free; a pipe that runs full and pulls, like
 * a siphon, takes more
 * @throws RangeError where a measure is out of its range
 * @source epaSwmmHydraulics, orifices in a floor; lalHydraulics, example 3.5; gmuWeirLecture
 * @example standpipeFlow_L_h(50, 10) // 873.1887732
 * @example standpipeFlow_L_h(50, 100) // 4949.686933
 */
export function standpipeFlow_L_h(bore_mm: number, head_mm: number): number {
  return Math.min(
    weirFlow_L_h(Math.PI * bore_mm, head_mm, lipCd),
    orificeFlow_L_h(bore_mm, head_mm, mouthCd),
  );
}

/**
 * How high the water stands over the lip of an open standpipe that takes a flow.
 *
 * Head = the larger of the head that the weir needs, (flow ÷ weir flow at 1 mm)^(2 ÷ 3), and the head that the
 * mouth needs, (flow ÷ orifice flow at 1 mm)².
 *
 * @param bore_mm inside diameter of the pipe, mm, above 0
 * @param flow_L_h flow to be taken, L/h, 0 or more
 * @returns still water over the lip, mm
 * @valid as `standpipeFlow_L_h`; a media guard or a grid takes its share of the lip away
 * @throws RangeError where a measure is out of its range
 * @source epaSwmmHydraulics, orifices in a floor; lalHydraulics, example 3.5; gmuWeirLecture
 * @example standpipeHead_mm(50, 873.1887732) // 10
 * @example standpipeHead_mm(50, 4949.686933) // 100
 */
export function standpipeHead_mm(bore_mm: number, flow_L_h: number): number {
  if (!(0 <= flow_L_h)) throw new RangeError(`standpipeHead_mm: flow_L_h is ${flow_L_h}, must be 0 or more`);
  const weir_mm = (flow_L_h / weirFlow_L_h(Math.PI * bore_mm, 1, lipCd)) ** (2 / 3);
  const mouth_mm = (flow_L_h / orificeFlow_L_h(bore_mm, 1, mouthCd)) ** 2;
  return Math.max(weir_mm, mouth_mm);
}
