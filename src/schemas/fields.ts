/**
 * The kinds of field that all our schemas are made of. A number carries its bounds and its unit, so that a
 * message, a form and the schema can never disagree about them.
 */
import * as z from 'zod';
import { dayOf } from '../core/calendar.ts';
import type { ProblemCode } from '../core/problem.ts';
import { liesBelow } from './liesBelow.ts';

/** A number within bounds. The unit stands in the messages and beside the field of a form. */
export function number(min: number, max: number, unit: string) {
  return z.number().min(min).max(max).meta({ unit });
}

/** From a finger's breadth to the length of a shed. */
export const lengthRange_mm = { least: 10, most: 20_000 } as const;

/** A length measured with a tape or a folding rule. */
export function length() {
  return number(lengthRange_mm.least, lengthRange_mm.most, 'mm');
}

/** A height, which may be nothing at all. */
export function height() {
  return number(0, 20_000, 'mm');
}

/** A count of things that are not cut in half. */
export function whole(min: number, max: number, unit: string) {
  return z.int().min(min).max(max).meta({ unit });
}

/** Words on one line: any language and script, up to 500 characters. */
export function line() {
  return z.string().superRefine(checkText(500, ''));
}

/** Name of a file beside the one that names it, or in a folder below. */
export function beside(code: ProblemCode) {
  return line().superRefine((text, context) => {
    const own: OwnIssue | null = liesBelow(text) ? null : { code, given: text };
    if (own) context.addIssue({ code: 'custom', params: own });
  });
}

/** Words on one line that may also be left empty. */
export function lineOrNothing() {
  return z.string().superRefine((text, context) => {
    if (text !== '') checkText(500, '')(text, context);
  });
}

/** A name that becomes a file name and part of an address: lower-case letters, figures, hyphens. */
export function slug() {
  return z.string().superRefine((text, context) => {
    const own = textProblem(text, 80, '') ?? (/^[a-z0-9]+(-[a-z0-9]+)*$/.test(text) ? null : letters(text));
    if (own) context.addIssue({ code: 'custom', params: own });
  });
}

/** A day of the calendar: 2031-04-30. */
export function day() {
  return z.string().superRefine((text, context) => {
    const own: OwnIssue | null = dayOf(text) === null ? { code: 'notDate', given: text } : null;
    if (own) context.addIssue({ code: 'custom', params: own });
  });
}

/** A time of day: 09:30. */
export function time() {
  return z.string().superRefine((text, context) => {
    const own: OwnIssue | null = timePattern.test(text) ? null : { code: 'notTime', given: text };
    if (own) context.addIssue({ code: 'custom', params: own });
  });
}

const timePattern = /^([01]\d|2[0-3]):[0-5]\d$/;

function letters(text: string): OwnIssue {
  return { code: 'idLetters', given: text };
}

/** A name inside our own files: letters and figures, a small letter first. */
export function key() {
  return z.string().superRefine((text, context) => {
    const wrong: OwnIssue = { code: 'keyLetters', given: text };
    const own = textProblem(text, 80, '') ?? (/^[a-z][A-Za-z0-9]*$/.test(text) ? null : wrong);
    if (own) context.addIssue({ code: 'custom', params: own });
  });
}

/** Sentences, which may run over several lines. */
export function prose() {
  return z.string().superRefine(checkText(5000, '\n'));
}

/** What our own checks leave in a zod issue, for `issues.ts` to turn into a Problem. */
export type OwnIssue = {
  readonly code: ProblemCode;
  readonly given?: string;
  readonly min?: number;
  readonly max?: number;
  readonly unit?: string;
};

function checkText(most: number, allowedControls: string) {
  return (text: string, context: z.RefinementCtx<string>) => {
    const own = textProblem(text, most, allowedControls);
    if (own) context.addIssue({ code: 'custom', params: own });
  };
}

function textProblem(text: string, most: number, allowedControls: string): OwnIssue | null {
  if (text.trim() === '') return { code: 'missing' };
  const hidden = hiddenCharacter(text, allowedControls);
  if (hidden) return { code: 'controlCharacter', given: hidden };
  if ([...text].length > most) return { code: 'tooLong', max: most, unit: 'characters' };
  return null;
}

/**
 * The first character that no page, picture or PDF can carry: C0 controls, halves of a surrogate pair, and the
 * two code points that XML forbids.
 */
function hiddenCharacter(text: string, allowedControls: string): string | null {
  for (const character of text) {
    const code = character.codePointAt(0) ?? 0;
    const control = code < 0x20 && !allowedControls.includes(character);
    const half = 0xd800 <= code && code <= 0xdfff;
    if (control || half || code === 0xfffe || code === 0xffff) {
      return `U+${code.toString(16).toUpperCase().padStart(4, '0')}`;
    }
  }
  return null;
}

/** How files of fish, media, sources, terms and languages are named. */
export const keyPattern = /^[A-Za-z][A-Za-z0-9]*$/;
