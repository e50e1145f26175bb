/**
 * Parts of a laid-out sheet that can be laid out again by themselves: whatever comes to stand in them, their box stays
 * where it is and as large as it is, or it is seen at once that it does not.
 */
import type { JSXElement } from 'satori/jsx';
import type { Box } from './page.ts';
import { pointsPerUnit } from './measures.ts';
import type { Settled } from './settle.ts';
import type { Style } from './styles.ts';
import { type Change, childrenOf, styleOf } from './treeChange.ts';

export type Part = {
  readonly element: JSXElement;
  readonly style: Style;
  readonly parent: number | null;
  /** Index after the last node inside it. */
  readonly end: number;
};

/** The parts of a sheet by the index of their node. */
export function partsOf(settled: Settled): readonly Part[] {
  const parts: Part[] = [];
  const walk = (element: JSXElement): void => {
    const at = Number(element.key);
    const { parent } = settled.nodes[at] ?? { parent: null };
    parts[at] = { element, style: styleOf(element), parent, end: at + 1 };
    if (element.type !== 'svg') for (const child of childrenOf(element)) walkInto(child);
    parts[at] = { ...(parts[at] as Part), end: parts.length };
  };
  const walkInto = (child: JSXElement | string): void => {
    if (typeof child === 'object' && child.key !== null) walk(child);
  };
  walk(settled.tree);
  return parts;
}

/** The outermost nodes to lay out again for these changes; null where that is the whole sheet. */
export function islandsFor(changes: readonly Change[], settled: Settled, parts: readonly Part[]) {
  const roots = changes.map(({ node, what }) => {
    const around = what === 'frame' ? parts[node]?.parent : settled.nodes[node]?.paragraph;
    return around === null || around === undefined ? null : outOfCuts(ofGivenWidth(around, parts), parts);
  });
  return outermost(roots, parts);
}

/** The islands around those that did not keep their size. */
export function widened(islands: readonly number[], grown: ReadonlySet<number>, parts: readonly Part[]) {
  return outermost(
    islands.map((at) => (grown.has(at) ? (parts[at]?.parent ?? null) : at)),
    parts,
  );
}

/** A box as wide as its words would not stay so; the first around it that is given its width will. */
function ofGivenWidth(index: number, parts: readonly Part[]): number {
  let at = index;
  while (parts[at]?.style.position !== 'absolute' && isGiven('width', at, parts) === 'no')
    at = parts[at]?.parent ?? 0;
  return at;
}

function outermost(roots: readonly (number | null)[], parts: readonly Part[]): readonly number[] | null {
  const known = roots.filter((at) => at !== null);
  if (known.length < roots.length || known.includes(0)) return null;
  const sorted = [...new Set(known)].sort((a, b) => a - b);
  let end = 0;
  return sorted.filter((at) => {
    if (at < end) return false;
    end = parts[at]?.end ?? at + 1;
    return true;
  });
}

/** A box that cuts or turns what is in it is laid out as a whole. */
function outOfCuts(index: number, parts: readonly Part[]): number | null {
  let island: number | null = index;
  for (let at: number | null = index; at !== null; at = parts[at]?.parent ?? null) {
    if (
      /(^|,)(transform|overflow|overflowX|overflowY)(,|$)/.test(Object.keys(parts[at]?.style ?? {}).join())
    ) {
      island = parts[at]?.parent ?? null;
    }
  }
  return island;
}

/** Whether the box gets this measure from outside, whatever stands in it. */
export function isGiven(side: 'width' | 'height', at: number, parts: readonly Part[]): 'yes' | 'no' {
  const part = parts[at];
  if (part === undefined || part.parent === null) return 'yes';
  if (typeof part.style[side] === 'number') return 'yes';
  const around = parts[part.parent]?.style ?? {};
  if (part.style.position === 'absolute' || around.display !== 'flex') return 'no';
  const runs = around['flexDirection'] === 'column' ? 'height' : 'width';
  const filled = runs === side ? growsAlone(part.style) : stretches(part.style, around);
  return filled === 'yes' ? isGiven(side, part.parent, parts) : 'no';
}

/** `flex: 1` starts from nothing, so what stands in it does not count. */
function growsAlone(style: Style): 'yes' | 'no' {
  return typeof style['flex'] === 'number' ? 'yes' : 'no';
}

function stretches(style: Style, around: Style): 'yes' | 'no' {
  if (around.display === 'grid' || around['flexWrap'] !== undefined) return 'no';
  return (style['alignSelf'] ?? around['alignItems'] ?? 'stretch') === 'stretch' ? 'yes' : 'no';
}

/** What words take over from the boxes around them. */
const inherited = [
  ...['color', 'fontSize', 'fontWeight', 'lineHeight', 'textAlign', 'textIndent', 'whiteSpace', 'textWrap'],
  ...['wordBreak', 'overflowWrap'],
];
/** What a box means to those around it; an island has none. */
const outward = new Set([
  ...['left', 'top', 'right', 'bottom', 'inset', 'flex', 'flexGrow', 'flexShrink', 'flexBasis', 'alignSelf'],
  ...['margin', 'marginTop', 'marginRight', 'marginBottom', 'marginLeft', 'position', 'minWidth', 'maxWidth'],
  ...['minHeight', 'maxHeight'],
]);

/** The island as an element of its own, put where it stands in the sheet. */
export function alone(at: number, box: Box, parts: readonly Part[]): JSXElement {
  const part = parts[at] as Part;
  const own = Object.entries(part.style).filter(([name]) => !outward.has(name));
  const given = (side: 'width' | 'height', length_pt: number) => ({
    [side]: isGiven(side, at, parts) === 'yes' ? length_pt / pointsPerUnit : undefined,
  });
  const style = {
    ...takenOver(at, parts),
    ...Object.fromEntries(own),
    ...{ position: 'absolute', boxSizing: 'border-box', margin: 0 },
    ...{ left: box.x_pt / pointsPerUnit, top: box.y_pt / pointsPerUnit },
    ...given('width', box.width_pt),
    ...given('height', box.height_pt),
  };
  return { ...part.element, props: { ...(part.element.props as object), style } } as JSXElement;
}

function takenOver(at: number, parts: readonly Part[]): Style {
  const taken: Record<string, unknown> = {};
  for (let from = parts[at]?.parent ?? null; from !== null; from = parts[from]?.parent ?? null) {
    const style = parts[from]?.style ?? {};
    for (const name of inherited)
      if (!(name in taken) && style[name] !== undefined) taken[name] = style[name];
  }
  return taken;
}
