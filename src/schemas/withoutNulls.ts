/**
 * Plain data without the keys that were left empty (`spoon_g:` with nothing behind it), which means the same as
 * leaving the line out. Deeper than any of our files goes, it is left as it is.
 */
export function withoutNulls(raw: unknown, deep = 0): unknown {
  if (deep > 20 || typeof raw !== 'object' || raw === null) return raw;
  if (Array.isArray(raw)) return raw.map((value) => withoutNulls(value, deep + 1));
  const kept = Object.entries(raw).filter(([, value]) => value !== null && value !== undefined);
  return Object.fromEntries(kept.map(([key, value]) => [key, withoutNulls(value, deep + 1)]));
}
