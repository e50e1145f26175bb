/** A character that none of our fonts can draw, and the text it stands in. */
export type Uncovered = { readonly character: string; readonly codePoint: string; readonly standsIn: string };

/** `U+4F60` for 你. */
export function codePointName(character: string): string {
  const value = character.codePointAt(0) ?? 0;
  return `U+${value.toString(16).toUpperCase().padStart(4, '0')}`;
}

/** Raised instead of printing an empty box. Carries every such character of the sheet at once. */
export class CoverError extends Error {
  readonly uncovered: readonly Uncovered[];

  constructor(uncovered: readonly Uncovered[]) {
    const list = uncovered.map(({ character, codePoint, standsIn }) => {
      return `"${character}" (${codePoint}), in "${shorten(standsIn)}"`;
    });
    super(`These characters cannot be printed, as no font here has them: ${list.join('; ')}.`);
    this.name = 'CoverError';
    this.uncovered = uncovered;
  }
}

function shorten(text: string): string {
  const letters = [...text];
  return letters.length > 60 ? `${letters.slice(0, 60).join('')}…` : text;
}
