/**
 * One system as a piece of text: what a printed sheet carries inside it, so that dropping the sheet on a page
 * opens the system again. It holds what the person wrote, never what was worked out from it.
 */
import type { Problem } from '../core/problem.ts';
import type { SystemFile } from './systemFile.ts';

/** Raised when an older Bedfirst could no longer read what a newer one writes. */
const recordVersion = 1;

/** More than any real system takes; a larger text is not ours. */
const mostCharacters = 2_000_000;

/** The same system always gives the same text: keys in order, no clock. */
export function writeRecord(raw: SystemFile): string {
  return `${JSON.stringify({ bedfirst: recordVersion, system: inOrder(raw) })}\n`;
}

/** The system as it was written; it still has to pass `toSystem`, for anybody can write such a text. */
export function readRecord(
  text: string,
): { readonly raw: unknown } | { readonly problems: readonly Problem[] } {
  const record = text.length > mostCharacters ? undefined : parsed(text);
  const { bedfirst, system } = isGroup(record) ? record : {};
  if (typeof bedfirst !== 'number' || !isGroup(system))
    return { problems: [{ code: 'notRecord', place: [] }] };
  if (bedfirst > recordVersion) {
    return { problems: [{ code: 'recordNewer', place: [], given: String(bedfirst), max: recordVersion }] };
  }
  return { raw: system };
}

function parsed(text: string): unknown {
  try {
    return JSON.parse(text);
  } catch {
    return undefined;
  }
}

function isGroup(value: unknown): value is Record<string, unknown> {
  return typeof value === 'object' && value !== null && !Array.isArray(value);
}

function inOrder(value: unknown): unknown {
  if (Array.isArray(value)) return value.map(inOrder);
  if (!isGroup(value)) return value;
  const keys = Object.keys(value).sort();
  return Object.fromEntries(keys.map((key) => [key, inOrder(value[key])]));
}
