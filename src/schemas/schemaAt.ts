/** Finds the part of a schema that a path leads to, so that a message can tell its bounds, unit and keys. */
import * as z from 'zod';

export type Path = readonly (string | number)[];

/** The schema of the field at a path; `raw` decides which of several shapes is meant. */
export function schemaAt(schema: z.ZodType, path: Path, raw: unknown): z.ZodType | null {
  const here = alternative(unwrapped(schema), raw);
  const [head, ...rest] = path;
  if (head === undefined || here === null) return here;
  const next = child(here, head);
  return next === null ? null : schemaAt(next, rest, valueAt(raw, [head]));
}

/** The keys that a group may have; none where it is no group of fixed keys. */
export function keysOf(schema: z.ZodType | null): readonly string[] {
  if (schema instanceof z.ZodObject) return Object.keys(schema.shape);
  if (schema instanceof z.ZodRecord && schema.keyType instanceof z.ZodEnum)
    return schema.keyType.options.map(String);
  if (schema instanceof z.ZodDiscriminatedUnion) return ['shape'];
  return [];
}

/** What the person gave at a path; undefined where nothing is there. */
export function valueAt(raw: unknown, path: Path): unknown {
  let value = raw;
  for (const step of path) {
    if (typeof value !== 'object' || value === null || !Object.hasOwn(value, step)) return undefined;
    value = (value as Record<string | number, unknown>)[step];
  }
  return value;
}

function unwrapped(schema: z.ZodType): z.ZodType {
  if (schema instanceof z.ZodOptional || schema instanceof z.ZodDefault) {
    return unwrapped(schema.unwrap() as z.ZodType);
  }
  return schema;
}

function child(schema: z.ZodType, step: string | number): z.ZodType | null {
  if (schema instanceof z.ZodObject) {
    return Object.hasOwn(schema.shape, step) ? (schema.shape[step] as z.ZodType) : null;
  }
  if (schema instanceof z.ZodArray) return schema.element as z.ZodType;
  if (schema instanceof z.ZodRecord) return schema.valueType as z.ZodType;
  return null;
}

/** Of a choice by `shape`, the alternative that was chosen; the choice itself where none was. */
function alternative(schema: z.ZodType, raw: unknown): z.ZodType | null {
  if (!(schema instanceof z.ZodDiscriminatedUnion)) return schema;
  const key = schema.def.discriminator;
  const chosen = valueAt(raw, [key]);
  for (const option of schema.options as z.ZodObject[]) {
    if ((option.shape[key] as z.ZodType | undefined)?.safeParse(chosen).success) return option;
  }
  return schema;
}
