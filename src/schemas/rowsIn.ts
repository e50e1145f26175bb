/** A hyphen, or one of the dashes that writing programs put in its place. */
const dash = /\s*[-‐‑‒–—−]\s*/g;
const between = /\s*[,;]\s*|\s+/;

/**
 * Rows as people write them: `3,5-8`, `3; 5–8`, `3 5 - 8`.
 * @param text empty for all of them
 * @param most how many there are
 * @returns places from 0, in the order they were written; null where the text is no such list
 */
export function rowsIn(text: string, most: number): readonly number[] | null {
  if (text.trim() === '') return Array.from({ length: most }, (_, at) => at);
  const rows: number[] = [];
  for (const part of text.trim().replace(dash, '-').split(between)) {
    const [, from, to = from] = /^(\d+)(?:-(\d+))?$/.exec(part) ?? [];
    const [first, last] = [Number(from), Number(to)];
    if (!(1 <= first && first <= last && last <= most)) return null;
    for (let row = first; row <= last; row += 1) rows.push(row - 1);
  }
  return rows;
}
