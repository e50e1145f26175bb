import type { Field, Item, Page, Role } from './page.ts';

/** What a part can be: what a sheet names, or a field. */
type Kind = Role | 'Form';

/** A part of the document as a screen reader walks through it, and where its content is among the page's marks. */
export type Tag = {
  role: Kind;
  readonly alt: string | null;
  /** For a head cell: whether it heads its column or its row. */
  scope: 'Column' | 'Row' | null;
  /** Of a form part: the field, and the node that it stands at. */
  readonly field: { readonly of: Field; readonly node: number } | null;
  /** In reading order: other parts, and numbers of marked content. */
  readonly kids: (Tag | number)[];
};

/** What becomes of places to write in: form fields, or lines on paper that a reader is told of. */
export type Fields = 'live' | 'printed';

export type TaggedPage = {
  readonly tags: readonly Tag[];
  /** For each item the number of its marked content, or null for an artifact: a border, a rule, a background. */
  readonly marks: readonly (number | null)[];
  /** The part that each number belongs to. */
  readonly owners: readonly Tag[];
  /** What is wrong with the parts the sheet names, in words. Wrong parts are told as plain groups. */
  readonly faults: readonly string[];
};

/** What may stand in what (ISO 32000-1, tables 336 and 337). Parts that are not listed may hold anything. */
const mayHold: Partial<Record<Kind, readonly Kind[]>> = {
  L: ['LI', 'Caption'],
  LI: ['Lbl', 'LBody'],
  Table: ['TR', 'Caption'],
  TR: ['TH', 'TD'],
};
const mustStandIn: Partial<Record<Kind, Kind>> = {
  LI: 'L',
  Lbl: 'LI',
  LBody: 'LI',
  TR: 'Table',
  TH: 'TR',
  TD: 'TR',
};
/** Parts that group others; words right inside them become a paragraph. */
const groups: ReadonlySet<Kind> = new Set<Kind>(['Part', 'Sect', 'Div', 'L', 'LI', 'Table', 'TR']);

type Desk = {
  readonly page: Page;
  readonly fields: Fields;
  /** The part of each node that has one, by its index. */
  readonly byNode: Map<number, Tag>;
  /** Paragraphs that the sheet did not name. */
  readonly implied: Map<number, Tag>;
  readonly top: Tag;
  /** The node of the first item of each mark. */
  readonly starts: number[];
  readonly faults: string[];
};

/** The page's parts in reading order, from the nodes of the sheet; never guessed from where something lies. */
export function tagPage(page: Page, fields: Fields = 'live'): TaggedPage {
  const top = tagOf('Div');
  const maps = { byNode: new Map(), implied: new Map() };
  const desk: Desk = { page, fields, ...maps, top, starts: [], faults: [] };
  for (const index of page.nodes.keys()) makeTag(desk, index);
  const owners: Tag[] = [];
  let last: Tag | null = null;
  let before = 0;
  const marks = page.items.map((item) => {
    const owner = ownerOf(desk, item);
    if (owner && (owner !== last || passesField(desk, before, item.node))) {
      owner.kids.push(owners.length);
      owners.push(owner);
      desk.starts.push(item.node);
    }
    last = owner;
    before = item.node;
    return owner ? owners.length - 1 : null;
  });
  putInOrder(desk);
  settleParts(top, desk.faults);
  return { tags: top.kids.filter((kid) => typeof kid !== 'number'), marks, owners, faults: desk.faults };
}

function tagOf(role: Kind, alt: string | null = null, field: Tag['field'] = null): Tag {
  return { role, alt, scope: null, field, kids: [] };
}

function makeTag(desk: Desk, index: number): void {
  const node = desk.page.nodes[index];
  if (!node || node.role === 'Artifact' || isArtifact(desk.page, index)) return;
  if (node.field) desk.byNode.set(index, tagOf('Form', node.field.tip, { of: node.field, node: index }));
  if (!node.role || node.field) return;
  const silent = node.role === 'Figure' && !node.alt;
  if (silent) desk.faults.push('Figure has no alt text.');
  desk.byNode.set(index, tagOf(silent ? 'Div' : node.role, node.alt));
}

/** What stands before a field and what stands after it are apart, so that the field can stand between them. */
function passesField({ byNode }: Desk, from: number, to: number): boolean {
  for (let at = from + 1; at < to; at += 1) if (byNode.get(at)?.field) return true;
  return false;
}

function isArtifact(page: Page, index: number): boolean {
  for (let at: number | null = index; at !== null; at = page.nodes[at]?.parent ?? null) {
    if (page.nodes[at]?.role === 'Artifact') return true;
  }
  return false;
}

/** The nearest node with a part, from this node outwards. */
function nearest(desk: Desk, index: number | null): number | null {
  for (let at = index; at !== null; at = desk.page.nodes[at]?.parent ?? null) {
    if (desk.byNode.has(at)) return at;
  }
  return null;
}

function ownerOf(desk: Desk, item: Item): Tag | null {
  if (isArtifact(desk.page, item.node)) return null;
  if (item.kind === 'shape') return partDrawn(desk, item.node);
  const named = nearest(desk, item.node);
  const part = named === null ? desk.top : (desk.byNode.get(named) ?? desk.top);
  return groups.has(part.role) ? impliedPart(desk, item.node, part) : part;
}

/** What is drawn belongs to the figure around it. A line to write on is a field by itself, if it is not a live one. */
function partDrawn(desk: Desk, index: number): Tag | null {
  for (let at = nearest(desk, index); at !== null; at = nearest(desk, desk.page.nodes[at]?.parent ?? null)) {
    const tag = desk.byNode.get(at);
    if (tag?.role === 'Figure' || (tag?.field && desk.fields === 'printed')) return tag;
  }
  return null;
}

/** Words that no part was named for are a paragraph; in a list item, its body. */
function impliedPart(desk: Desk, index: number, around: Tag): Tag {
  const paragraph = desk.page.nodes[index]?.paragraph ?? index;
  const tag = desk.implied.get(paragraph) ?? tagOf(around.role === 'LI' ? 'LBody' : 'P');
  desk.implied.set(paragraph, tag);
  return tag;
}

/** Hangs each part with content into the part around it, in reading order. */
function putInOrder(desk: Desk): void {
  const placed = [...desk.byNode, ...desk.implied].sort(([a], [b]) => a - b);
  const inside = new Map<Tag, Tag[]>();
  // From the innermost outwards, so that a part has its own parts before it is hung up, if there is anything in it.
  for (const [index, tag] of placed.reverse()) {
    takeIn(desk, tag, inside.get(tag) ?? []);
    const cell = tag.role === 'TD' || tag.role === 'TH';
    if (tag.kids.length === 0 && !cell && !tag.field) continue;
    const implied = desk.implied.get(index) === tag;
    const outer = nearest(desk, implied ? index : (desk.page.nodes[index]?.parent ?? null));
    const around = outer === null ? desk.top : (desk.byNode.get(outer) ?? desk.top);
    inside.set(around, [tag, ...(inside.get(around) ?? [])]);
  }
  takeIn(desk, desk.top, inside.get(desk.top) ?? []);
}

/** Among words, a part stands where its own words stand; without words, parts stand as in the sheet. */
function takeIn(desk: Desk, tag: Tag, parts: readonly Tag[]): void {
  const words = tag.kids.length > 0;
  tag.kids.push(...parts);
  if (words) tag.kids.sort((a, b) => firstMark(desk, a) - firstMark(desk, b));
}

/** A live field has no mark of its own: it stands before the first mark of what comes after it in the sheet. */
function firstMark(desk: Desk, kid: Tag | number): number {
  if (typeof kid === 'number') return kid;
  if (kid.field && kid.kids.length === 0) return beforeMark(desk, kid.field.node);
  return Math.min(...kid.kids.map((one) => firstMark(desk, one)));
}

function beforeMark({ starts }: Desk, node: number): number {
  const next = starts.findIndex((start) => start > node);
  return next === -1 ? starts.length : next - 0.5;
}

/** Turns parts that stand where they may not into plain groups, and names them. */
function settleParts(tag: Tag, faults: string[]): void {
  const kids = tag.kids.filter((kid) => typeof kid !== 'number');
  const allowed = mayHold[tag.role];
  const wrong = kids.find((kid) => allowed && !allowed.includes(kid.role));
  if (wrong || (allowed && kids.length < tag.kids.length)) {
    faults.push(`${tag.role} holds ${wrong?.role ?? 'words'}; it may hold ${allowed?.join(', ')}.`);
    tag.role = 'Div';
  }
  if (tag.role === 'TR') headCells(kids);
  for (const kid of kids) {
    const home = mustStandIn[kid.role];
    if (home && tag.role !== home) {
      faults.push(`${kid.role} stands in ${tag.role}; it may stand in ${home}.`);
      kid.role = 'Div';
    }
    settleParts(kid, faults);
  }
}

/** In a row of head cells each heads its column; one at the start of a row heads the row. */
function headCells(cells: readonly Tag[]): void {
  const scope = cells.every((cell) => cell.role === 'TH') ? 'Column' : 'Row';
  for (const cell of cells) if (cell.role === 'TH') cell.scope = scope;
}
