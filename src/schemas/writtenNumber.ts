/** Numbers as people write them: "58.5", "58,5", and with marks for thousands "1.200" or "1,200.5". */

const decimal = /^\d+(?:[.,]\d+)?$/;
/** Thousands by the one mark, and decimals, if there are some, by the other. */
const grouped = /^[1-9]\d{0,2}(?:(?:\.\d{3})+(?:,\d+)?|(?:,\d{3})+(?:\.\d+)?)$/;

/**
 * What a number can stand for.
 * @param text figures, points and commas
 * @returns nothing where it is no number; two values where a mark can be that of decimals or of thousands, the one with
 * decimals first
 */
export function valuesOf(text: string): readonly number[] {
  const values = decimal.test(text) ? [Number(text.replace(',', '.'))] : [];
  if (!grouped.test(text)) return values;
  const [mark = ''] = /[.,]/.exec(text) ?? [];
  return [...values, Number(text.replaceAll(mark, '').replace(',', '.'))];
}
