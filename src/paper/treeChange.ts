/** What differs between two sheets that are built alike. */
import type { JSXElement } from 'satori/jsx';
import type { Settled } from './settle.ts';
import type { Style } from './styles.ts';

export type Change = {
  readonly node: number;
  /**
   * content: its own words or its drawing; place: where it was put on what is around it; frame: its measures, which
   * concern what is around it.
   */
  readonly what: 'content' | 'place' | 'frame';
};

/** The changes in the order of the sheet; null where the sheets are not built alike. */
export function changesBetween(before: Settled, after: Settled): readonly Change[] | null {
  if (before.nodes.length !== after.nodes.length) return null;
  const found: Change[] = [];
  return compare(before.tree, after.tree, found) === 'alike' ? found : null;
}

function compare(old: JSXElement, now: JSXElement, found: Change[]): 'alike' | 'other' {
  if (old.type !== now.type || old.key !== now.key) return 'other';
  const node = Number(now.key);
  const what = styleChange(styleOf(old), styleOf(now));
  if (what !== null) found.push({ node, what });
  if (now.type === 'svg') {
    if (drawn(old) !== drawn(now)) found.push({ node, what: 'content' });
    return 'alike';
  }
  return compareChildren(childrenOf(old), childrenOf(now), node, found);
}

function compareChildren(
  olds: readonly (JSXElement | string)[],
  nows: readonly (JSXElement | string)[],
  node: number,
  found: Change[],
): 'alike' | 'other' {
  if (olds.length !== nows.length) return 'other';
  for (const [at, now] of nows.entries()) {
    const old = olds[at];
    if (typeof old !== 'object' || typeof now !== 'object') {
      if (typeof old !== typeof now) return 'other';
      if (old !== now) found.push({ node, what: 'content' });
    } else if (compare(old, now, found) === 'other') return 'other';
  }
  return 'alike';
}

const placing = new Set(['left', 'top', 'width', 'height']);

function styleChange(old: Style, now: Style): 'place' | 'frame' | null {
  const names = new Set([...Object.keys(old), ...Object.keys(now)]);
  const changed = [...names].filter((name) => old[name] !== now[name]);
  if (changed.length === 0) return null;
  const placed = now.position === 'absolute' && old.position === 'absolute';
  const given = changed.every((name) => typeof old[name] === 'number' && typeof now[name] === 'number');
  return placed && given && changed.every((name) => placing.has(name)) ? 'place' : 'frame';
}

export function styleOf(element: JSXElement): Style {
  return (element.props as { style?: Style } | null)?.style ?? {};
}

export function childrenOf(element: JSXElement): readonly (JSXElement | string)[] {
  return (element.props as { children?: readonly (JSXElement | string)[] } | null)?.children ?? [];
}

/** All that a drawing draws, but the style of its box. */
function drawn(element: JSXElement): string {
  return JSON.stringify({ ...(element.props as object), style: null });
}
