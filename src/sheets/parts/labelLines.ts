/** How many lines words take in a column of so many characters: words go whole to the next line, as the press sets them. */
export function labelLines(text: string, perLine: number): number {
  let lines = 1;
  let used = 0;
  for (const word of text.split(' ')) {
    if (used > 0 && used + word.length > perLine) {
      lines += 1;
      used = 0;
    }
    used += word.length + 1;
  }
  return lines;
}
