/** Labels in a column beside the drawing, pushed apart so that none overlaps, as near to their places as can be. */

type Group = { readonly from: number; readonly to: number; readonly top: number; readonly height: number };

/**
 * Tops of labels of given heights, in the order given, as close as possible to the wished middles.
 * Neighbours that would overlap become one block that sits at the mean of its wishes; blocks merge until all are clear.
 */
export function pushApart(
  wishes: readonly { readonly middle: number; readonly height: number }[],
  top: number,
  bottom: number,
): readonly number[] {
  const groups: Group[] = [];
  wishes.forEach((wish, i) => {
    groups.push({ from: i, to: i, height: wish.height, top: wish.middle - wish.height / 2 });
    mergeBack(groups, wishes);
  });
  const total = wishes.reduce((sum, wish) => sum + wish.height, 0);
  const fits = total <= bottom - top;
  const shifted = fits
    ? keepInside(groups, top, bottom)
    : [{ from: 0, to: wishes.length - 1, top, height: total }];
  return shifted.flatMap((group) => topsOf(group, wishes));
}

function mergeBack(groups: Group[], wishes: readonly { middle: number; height: number }[]): void {
  for (;;) {
    const last = groups.at(-1);
    const before = groups.at(-2);
    if (last === undefined || before === undefined || before.top + before.height <= last.top) return;
    groups.splice(-2, 2, mergedAt(before.from, last.to, wishes));
  }
}

/** The block whose members together miss their wishes the least. */
function mergedAt(from: number, to: number, wishes: readonly { middle: number; height: number }[]): Group {
  let height = 0;
  let wanted = 0;
  for (let i = from; i <= to; i++) {
    const wish = wishes[i];
    if (wish === undefined) continue;
    wanted += wish.middle - wish.height / 2 - height;
    height += wish.height;
  }
  return { from, to, height, top: wanted / (to - from + 1) };
}

/** Down from the upper edge, then up from the lower one. */
function keepInside(groups: readonly Group[], top: number, bottom: number): readonly Group[] {
  let edge = top;
  const down = groups.map((group) => {
    const at = { ...group, top: Math.max(group.top, edge) };
    edge = at.top + at.height;
    return at;
  });
  edge = bottom;
  return down
    .reverse()
    .map((group) => {
      const at = { ...group, top: Math.min(group.top, edge - group.height) };
      edge = at.top;
      return at;
    })
    .reverse();
}

function topsOf(group: Group, wishes: readonly { height: number }[]): readonly number[] {
  let at = group.top;
  return wishes.slice(group.from, group.to + 1).map((wish) => {
    const top = at;
    at += wish.height;
    return top;
  });
}
