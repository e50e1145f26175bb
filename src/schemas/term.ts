/** A word of the trade, as the glossary explains it and as the worked steps use it. */
import * as z from 'zod';
import { line, prose } from './fields.ts';

export const termFile = z.strictObject({
  /** The word as it is printed: "wet media". */
  name: line(),
  /** What it means, in one or two plain sentences. */
  meaning: prose(),
  /** The letter that formulas use for it, where there is one. */
  symbol: line().optional(),
  /** The unit it is given in, as its suffix in the program: mm, L, L_h, frac. */
  unit: line().optional(),
  /** Citation key, where the meaning follows a document. */
  source: line().optional(),
});

export type TermFile = z.output<typeof termFile>;
