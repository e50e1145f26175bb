/** Long names cut to what a line can hold, with a mark that says so. */

const segments = new Intl.Segmenter('en', { granularity: 'grapheme' });

/** At most so many characters as a reader counts them; what was cut leaves a mark. */
export function shorten(text: string, most: number): string {
  const graphemes = Array.from(segments.segment(text), (one) => one.segment);
  return graphemes.length <= most
    ? text
    : `${graphemes
        .slice(0, most - 1)
        .join('')
        .trimEnd()}…`;
}
