/** Turns what zod found into our Problems: with bounds, units, allowed words and what was probably meant. */
import * as z from 'zod';
import type { Problem } from '../core/problem.ts';
import type { OwnIssue } from './fields.ts';
import { nearest } from './nearest.ts';
import { keysOf, type Path, schemaAt, valueAt } from './schemaAt.ts';
import { otherUnit } from './wrongUnit.ts';

type Issue = z.core.$ZodIssue;

/** A value as its schema reads it; or everything that the schema finds wrong, `place` being where it stands in the whole. */
export function readBySchema<T extends z.ZodType>(
  schema: T,
  raw: unknown,
  place: Path,
): { readonly value: z.output<T> } | { readonly problems: readonly Problem[] } {
  const result = schema.safeParse(raw);
  if (result.success) return { value: result.data };
  const found = result.error.issues.flatMap((issue) => problemsOf(schema, issue, raw));
  return {
    problems: onePerMistake(found).map((problem) => ({ ...problem, place: [...place, ...problem.place] })),
  };
}

function problemsOf(schema: z.ZodType, issue: Issue, raw: unknown): readonly Problem[] {
  const path = issue.path.map((step) => (typeof step === 'symbol' ? String(step) : step));
  if (issue.code === 'unrecognized_keys') {
    return issue.keys.map((key) => unknownKey(schema, [...path, key], raw));
  }
  return [{ place: path, ...problemOf(issue, path, schemaAt(schema, path, raw), valueAt(raw, path)) }];
}

type Found = Omit<Problem, 'place'>;

function problemOf(issue: Issue, path: Path, field: z.ZodType | null, value: unknown): Found {
  if (issue.code === 'custom') return issue.params as OwnIssue;
  if (value === undefined || value === null) return { code: 'missing', ...bounds(field), ...allowed(issue) };
  const given = asTyped(value);
  switch (issue.code) {
    case 'too_small':
    case 'too_big':
      return issue.origin === 'array'
        ? wrongCount(issue, value)
        : { code: 'outOfRange', given, ...bounds(field) };
    case 'invalid_value':
    case 'invalid_union':
      return notAllowed(issue, given);
    case 'invalid_type':
      return wrongType(issue.expected, given, field, value);
    default:
      return { code: 'wrongType', given, other: path.join('.') };
  }
}

type WrongSize = Extract<Issue, { readonly code: 'too_small' | 'too_big' }>;

/** Too few or too many entries; the least and the most stand in the issue itself. */
function wrongCount(issue: WrongSize, value: unknown): Found {
  const given = String(Array.isArray(value) ? value.length : 0);
  return issue.code === 'too_small'
    ? { code: 'tooFew', given, min: Number(issue.minimum) }
    : { code: 'tooMany', given, max: Number(issue.maximum) };
}

function wrongType(expected: string, given: string, field: z.ZodType | null, value: unknown): Found {
  if (expected === 'int') return { code: 'notWhole', given, ...bounds(field) };
  if (expected === 'number') return { code: 'notNumber', given, ...bounds(field), ...numberMeant(value) };
  if (expected === 'string') return { code: 'notText', given };
  if (expected === 'array') return { code: 'notList', given };
  if (expected === 'object' || expected === 'record')
    return { code: 'notGroup', given, allowed: keysOf(field) };
  if (expected === 'boolean')
    return { code: 'notAllowed', given, allowed: ['true', 'false'], ...yesOrNo(given) };
  return { code: 'wrongType', given };
}

function notAllowed(issue: Issue, given: string): Found {
  const known = allowed(issue).allowed;
  if (!known) return { code: 'wrongType', given };
  const meant = nearest(given, known);
  return { code: 'notAllowed', given, allowed: known, ...(meant === null ? {} : { meant }) };
}

function allowed(issue: Issue): Pick<Problem, 'allowed'> {
  if (issue.code === 'invalid_value') return { allowed: issue.values.map(String) };
  if (issue.code !== 'invalid_union') return {};
  const { options } = issue as { options?: readonly unknown[] };
  return options ? { allowed: options.map(String) } : {};
}

function unknownKey(schema: z.ZodType, place: Path, raw: unknown): Problem {
  const typed = String(place.at(-1));
  const known = keysOf(schemaAt(schema, place.slice(0, -1), raw));
  const other = otherUnit(typed, valueAt(raw, place), known);
  if (other) {
    const { unit, from, write } = other;
    return { code: 'wrongUnit', place, given: typed, meant: write, unit, other: from };
  }
  const meant = nearest(typed, known);
  return { code: 'unknownKey', place, given: typed, allowed: known, ...(meant === null ? {} : { meant }) };
}

/** What people write for true and false. */
function yesOrNo(given: string): Pick<Problem, 'meant'> {
  if (/^(yes|y|on|1|true)$/i.test(given)) return { meant: 'true' };
  return /^(no|n|off|0|false)$/i.test(given) ? { meant: 'false' } : {};
}

/** "12,5" means 12.5; "1,200" may mean 1200 or 1.2, so nothing is guessed for it. */
function numberMeant(value: unknown): Pick<Problem, 'meant' | 'allowed'> {
  if (typeof value !== 'string') return {};
  const text = value.trim();
  if (/^-?\d{1,3},\d{3}$/.test(text)) return { allowed: [text.replace(',', ''), text.replace(',', '.')] };
  if (/^-?\d{1,3}(?:,\d{3}){2,}$/.test(text)) return { meant: text.replaceAll(',', '') };
  if (/^-?\d+,\d+$/.test(text)) return { meant: text.replace(',', '.') };
  const number = /^(-?\d+(?:\.\d+)?)(?:\s*[\p{L}%°/³]+.*)?$/u.exec(text);
  return number?.[1] ? { meant: number[1] } : {};
}

function bounds(field: z.ZodType | null): Pick<Problem, 'min' | 'max' | 'unit'> {
  if (!(field instanceof z.ZodNumber)) return {};
  const { unit } = field.meta() ?? {};
  return {
    ...(field.minValue === null ? {} : { min: field.minValue }),
    ...(field.maxValue === null ? {} : { max: field.maxValue }),
    ...(typeof unit === 'string' ? { unit } : {}),
  };
}

/** What a person typed, as they would recognise it. */
function asTyped(value: unknown): string {
  if (typeof value === 'string') return value;
  if (Array.isArray(value)) return '[…]';
  if (typeof value === 'object' && value !== null) return '{…}';
  return String(value);
}

/** A mistyped key leaves the right one missing: that is one mistake, told once, where it was typed. */
function onePerMistake(found: readonly Problem[]): readonly Problem[] {
  const meant = new Set(found.flatMap((problem) => (isKeyMistake(problem) ? [meantPlace(problem)] : [])));
  return found.filter((problem) => problem.code !== 'missing' || !meant.has(JSON.stringify(problem.place)));
}

function isKeyMistake(problem: Problem): boolean {
  return problem.meant !== undefined && (problem.code === 'unknownKey' || problem.code === 'wrongUnit');
}

function meantPlace(problem: Problem): string {
  const [key] = (problem.meant ?? '').split(':');
  return JSON.stringify([...problem.place.slice(0, -1), key]);
}
