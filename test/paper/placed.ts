import { expect } from 'vitest';
import type { Page } from '../../src/paper/page.ts';
import type { Type } from '../../src/paper/type.ts';

/** Where a letter stands: from the left edge of the line, in parts of the type size. */
export type Placed = { readonly text: string; readonly left: number; readonly right: number };

/** Where our own letters stand: each cluster with its text, in parts of the type size. */
export function placedByUs(page: Page, type: Type): Placed[] {
  const words = page.items.filter((item) => item.kind === 'words');
  const start_pt = Math.min(...words.map((each) => each.x_pt));
  return words.flatMap(({ text, weight, direction, x_pt, size_pt }) => {
    let x = (x_pt - start_pt) / size_pt;
    return type.shape(text, weight, direction).flatMap((run) => {
      const clusters = new Map<number, { text: string; left: number; right: number }>();
      for (const glyph of run.glyphs) {
        const known = clusters.get(glyph.cluster) ?? { text: '', left: x, right: x };
        x += glyph.advance / run.face.unitsPerEm;
        clusters.set(glyph.cluster, { ...known, text: known.text + glyph.text, right: x });
      }
      return [...clusters.values()];
    });
  });
}

/** Letters as they stand from left to right. Blanks are left out; what lies between letters tells of them. */
export function fromLeft(placed: readonly Placed[]): Placed[] {
  return placed
    .filter(({ text }) => text.trim() !== '')
    .map((each) => ({ ...each, text: each.text.trim() }))
    .sort((a, b) => a.left - b.left || a.right - b.right);
}

const spelling = (letters: readonly Placed[]) =>
  letters
    .flatMap(({ text }) => text.split(''))
    .sort()
    .join('');

/** The shortest groups of letters that hold the same text here and there: a ligature, or a conjunct, is one of them. */
export function sameGroups(ours: readonly Placed[], theirs: readonly Placed[]): [Placed[], Placed[]][] {
  const groups: [Placed[], Placed[]][] = [];
  let [here, there]: [Placed[], Placed[]] = [[], []];
  const [ownLeft, theirLeft] = [[...ours], [...theirs]];
  while (ownLeft.length + theirLeft.length > 0) {
    const behind = spelling(here).length <= spelling(there).length ? [ownLeft, here] : [theirLeft, there];
    const next = behind[0]?.shift();
    if (!next) break;
    behind[1]?.push(next);
    if (spelling(here) === spelling(there)) {
      groups.push([here, there]);
      [here, there] = [[], []];
    }
  }
  expect([here, there].flat(), 'letters in another order').toEqual([]);
  return groups;
}

/** How far the place and the width of two groups differ, and how wide the gap before them is in each. */
export function differences(groups: readonly [Placed[], Placed[]][]) {
  const edges = (letters: readonly Placed[]) => {
    return { left: Math.min(...letters.map((e) => e.left)), right: Math.max(...letters.map((e) => e.right)) };
  };
  return groups.map(([here, there], at) => {
    const before = groups[at - 1];
    const [own, their] = [edges(here), edges(there)];
    const gaps = before ? [own.left - edges(before[0]).right, their.left - edges(before[1]).right] : [0, 0];
    return { text: spelling(here), width: own.right - own.left - (their.right - their.left), gaps };
  });
}
