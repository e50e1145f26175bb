/** "Did you mean …?": the known word nearest to what was typed, where one is near enough to be meant. */
export function nearest(typed: string, known: readonly string[]): string | null {
  let best: string | null = null;
  let bestEdits = Math.max(1, Math.floor(Math.min(typed.length, 60) / 3)) + 1;
  for (const word of known) {
    const edits = editsBetween(typed.slice(0, 60).toLowerCase(), word.slice(0, 60).toLowerCase());
    if (edits < bestEdits) [best, bestEdits] = [word, edits];
  }
  return best;
}

/** Letters to add, drop or change to turn one word into the other (Levenshtein's distance). */
function editsBetween(from: string, to: string): number {
  let row = Array.from({ length: to.length + 1 }, (_, index) => index);
  for (const [i, letter] of [...from].entries()) {
    const next = [i + 1];
    for (let j = 0; j < to.length; j++) {
      const change = (row[j] ?? 0) + (letter === to[j] ? 0 : 1);
      next.push(Math.min(change, (row[j + 1] ?? 0) + 1, (next[j] ?? 0) + 1));
    }
    row = next;
  }
  return row[to.length] ?? 0;
}
