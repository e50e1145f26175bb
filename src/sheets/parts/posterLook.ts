/** Sizes of the wall poster on its largest everyday paper, A2; every other size is this one enlarged or reduced. */
import { mm } from '../../paper/measures.ts';

export const posterPaper = { width_mm: 420, height_mm: 594 };

/** Ink stays in here; two by three tiles of a home printer hold it. */
export const posterInk = { width: mm(368), height: mm(552) };

/**
 * Letters are read from some 250 times their height (common practice, no source). The main words have small letters
 * of 8.4 mm on A2, for 2.1 m, and capitals of 8 mm on A3.
 */
export const posterSize = {
  title: mm(28),
  longTitle: mm(21),
  longestTitle: mm(16),
  figure: mm(23),
  sign: mm(13),
  main: mm(17),
  heading: mm(12),
  near: mm(7.6),
};

export const posterRule = { head: 10, thin: 5, box: 9, ring: 7 };
