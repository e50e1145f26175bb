/**
 * One language: every sentence that sheets and pages are made of, in nested groups. Words in braces stand for
 * what is filled in. Blocks beyond the ones named here may be added; they are groups of texts too.
 */
import * as z from 'zod';
import { problemCodes } from '../core/problem.ts';
import { prose } from './fields.ts';

export type Words = { readonly [key: string]: string | Words };

const words: z.ZodType<Words> = z.lazy(() => z.record(z.string(), z.union([prose(), words])));

/** A field as a person knows it. */
const field = z.strictObject({
  /** What it is called, to begin a sentence with. */
  name: prose(),
  /** What to measure and how, or what to do. */
  how: prose().optional(),
});

const texts = z.record(z.string(), prose());

const oneEach = z.record(z.enum(problemCodes), prose());

export const wordingFile = z
  .object({
    problems: z.strictObject({
      /** For whoever edits a file: follows file, line, column and key. */
      line: oneEach,
      /** For whoever fills in a form. */
      sentence: oneEach,
      /** What a field wants, in the middle of a sentence. */
      expected: texts,
      /** Units in words; one that is not here goes without saying. */
      units: texts,
      /** How to turn another unit into ours: `cm_mm`. */
      conversions: texts,
      /** Added to a sentence where they help. */
      hints: texts,
      /** What the reader of YAML found, by its code. */
      yaml: texts,
      /** By key, or by group and key where one key has two meanings: `dips.depth_mm`. */
      fields: z.record(z.string(), field),
    }),
  })
  .catchall(words);

export type WordingFile = z.output<typeof wordingFile>;
