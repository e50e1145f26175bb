/** A published source. The name of its file is the key by which everything else cites it. */
import * as z from 'zod';
import { line, prose, whole } from './fields.ts';

/**
 * How we know what it says. read: in the document itself, an official programme's output, an abstract or a
 * word-for-word reprint. quoted: only as quoted in another text. unread: from memory, to be confirmed.
 * none: no document stands behind it.
 */
const waysSeen = ['read', 'quoted', 'unread', 'none'] as const;

export const sourceFile = z.strictObject({
  /** Short form for the foot of a sheet: "FAO 589 (2014)". */
  short: line(),
  /** The whole reference: who, year, title, where published. */
  citation: prose(),
  /** Year of publication. Left out where there is none. */
  year: whole(1500, 2100, 'year').optional(),
  seen: z.enum(waysSeen),
  /** Which parts were seen, what disagrees, what it must not be used for. */
  note: prose().optional(),
});

export type SourceFile = z.output<typeof sourceFile>;
