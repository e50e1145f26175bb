/** Which way a line of words runs. */
export type Direction = 'ltr' | 'rtl';

/** Letters of the Arabic and the Hebrew script, and digits that only they have. */
const rightToLeft = /[\p{Script=Arabic}\p{Script=Hebrew}\u0660-\u0669]/u;
const letter = /\p{L}/u;

/** Whether the text has letters that run from right to left, so that it must be put in order before it is drawn. */
export function mixesDirections(text: string): boolean {
  return rightToLeft.test(text);
}

/** The direction of a paragraph: that of its first letter (Unicode Standard Annex #9, rules P2 and P3). */
export function paragraphDirection(text: string): Direction {
  return rightToLeft.test(letter.exec(text)?.[0] ?? '') ? 'rtl' : 'ltr';
}

/** Odd levels run to the left (Unicode Standard Annex #9, BD2). */
export function directionOf(level: number): Direction {
  return level % 2 === 1 ? 'rtl' : 'ltr';
}

/** The annex’s rule L2: from the highest level to the lowest odd one, whatever stands together at that level or above is turned. */
export function inVisualOrder<Part extends { readonly level: number }>(parts: readonly Part[]): Part[] {
  const order = [...parts];
  const highest = Math.max(0, ...parts.map((part) => part.level));
  for (let level = highest; level > 0; level--) {
    for (let from = 0; from < order.length; from++) {
      let to = from;
      while ((order[to]?.level ?? -1) >= level) to++;
      if (to > from) order.splice(from, to - from, ...order.slice(from, to).reverse());
      from = to;
    }
  }
  return order;
}
