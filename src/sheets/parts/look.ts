/** Sizes of all sheets, in the sheet unit (a tenth of a millimetre). */
import { mm, pt } from '../../paper/measures.ts';

/** Ink stays inside this box, centred on A4 and on Letter, so that every printer reaches it. */
export const safe = { width: mm(190), height: mm(254) };

/** A side that is filled by trying ends a hair earlier: the press lets letters reach a little over the foot of their box. */
export const sideHeight = safe.height - mm(0.6);

export const size = {
  figure: pt(60),
  title: pt(27),
  longTitle: pt(18),
  second: pt(24),
  heading: pt(13),
  text: pt(11),
  note: pt(9.5),
  source: pt(8.5),
};

export const weight = { text: 400, heavy: 800 } as const;

export const rule = { head: 7, thin: 2, box: 5, thinBox: 3 };
