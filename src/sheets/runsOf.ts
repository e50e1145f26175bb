/** Neighbours of the same part, which share one heading. */
export function runsOf<Piece extends { readonly part: string }>(
  some: readonly Piece[],
): readonly (readonly Piece[])[] {
  const runs: Piece[][] = [];
  for (const piece of some) {
    const last = runs.at(-1);
    if (last?.[0]?.part === piece.part) last.push(piece);
    else runs.push([piece]);
  }
  return runs;
}
