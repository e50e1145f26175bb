/** Words that a person typed, made fit to stand inside a sentence of ours. */

/** Longer than this nobody reads it twice. */
const mostCharacters = 60;

/** More than this many words to choose from are cut off. */
const mostWords = 24;

/** The beginning of a long text, with a mark that something is missing. */
export function shortened(text: string, most = mostCharacters): string {
  const characters = [...text];
  return characters.length <= most ? text : `${characters.slice(0, most - 1).join('')}…`;
}

/** Characters that would break the line, drive a terminal or turn the direction of writing, by their names. */
export function isolated(text: string): string {
  return text.replace(
    /[\p{Cc}\p{Zl}\p{Zp}\p{Cs}\u061c\u200e\u200f\u202a-\u202e\u2066-\u2069]/gu,
    (character) => {
      const code = character.codePointAt(0) ?? 0;
      return `U+${code.toString(16).toUpperCase().padStart(4, '0')}`;
    },
  );
}

/** "a, b or c"; `join` says how the last one is joined in this language. */
export function listed(words: readonly string[], join: (some: string, last: string) => string): string {
  const shown = words.map((word) => shortened(word));
  if (shown.length > mostWords) return `${shown.slice(0, mostWords).join(', ')}, …`;
  const last = shown.at(-1) ?? '';
  return shown.length < 2 ? last : join(shown.slice(0, -1).join(', '), last);
}
