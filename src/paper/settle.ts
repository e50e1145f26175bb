import type { JSXElement, JSXNode } from 'satori/jsx';
import { Fragment } from 'satori/jsx';
import { type Field, isRole, type Role, roles } from './page.ts';
import { printable } from './printable.ts';
import { refusal, type Style, settleStyle } from './styles.ts';
import { type DirectedBlock, directBlocks } from './directBlocks.ts';

/** What is known of a node before it has a place. */
export type NodeDraft = {
  readonly path: string;
  readonly parent: number | null;
  readonly tag: string;
  readonly role: Role | null;
  readonly alt: string | null;
  readonly slot: string | null;
  readonly field: Field | null;
  readonly entry: boolean;
  readonly floats: 'in flow' | 'placed';
  /** The node whose running text this node's words are part of: itself, or the block around an inline node. */
  readonly paragraph: number;
  text: string;
};

export type Settled = {
  /** Only plain elements and strings; each element's key is the index of its node. */
  readonly tree: JSXElement;
  readonly nodes: readonly NodeDraft[];
  /** The running text of each paragraph in reading order, by the index of its node. */
  readonly paragraphs: ReadonlyMap<number, string>;
};

type Props = { readonly [name: string]: unknown; readonly style?: Style; readonly children?: JSXNode };
type Plain = JSXElement | string;

const blockTags = new Set(
  'div p h1 h2 h3 h4 h5 h6 section header footer main article aside figure figcaption'.split(' '),
);
const inlineTags = new Set(['span', 'b', 'strong', 'small']);

/**
 * Makes a sheet's tree plain: calls its components, opens its fragments, drops what is not drawn, names every node,
 * and takes the metadata off. Refuses what the press cannot print faithfully, naming it.
 */
export async function settle(root: JSXNode): Promise<Settled> {
  const [only, ...more] = await flatten(root);
  if (!only || typeof only === 'string' || more.length > 0) throw new Error('A sheet has one root element.');
  const state: State = { nodes: [], paragraphs: new Map(), blocks: [] };
  const around: Around = { path: '', parent: null, inFlex: true, paragraph: null, textAlign: 'left' };
  const tree = await settleElement(only, around, state);
  directBlocks(state.blocks, state.paragraphs);
  return { tree, nodes: state.nodes, paragraphs: state.paragraphs };
}

type State = { nodes: NodeDraft[]; paragraphs: Map<number, string>; blocks: DirectedBlock[] };
type Around = {
  path: string;
  parent: number | null;
  inFlex: boolean;
  paragraph: number | null;
  textAlign: unknown;
};

/** Resolves components, fragments, lists and promises into elements and strings; neighbouring strings are joined. */
async function flatten(node: JSXNode): Promise<Plain[]> {
  const found: Plain[] = [];
  const add = async (given: JSXNode): Promise<void> => {
    const value = await given;
    if (value === null || value === undefined || typeof value === 'boolean') return;
    if (typeof value !== 'object') addText(found, printable(String(value)));
    else if (!('type' in value)) for (const each of value) await add(each);
    else if ((value.type as unknown) === Fragment) await add(propsOf(value).children);
    else if (typeof value.type === 'function') await add(await value.type(value.props));
    else found.push(value);
  };
  await add(node);
  return found;
}

function addText(found: Plain[], text: string): void {
  const last = found.at(-1);
  if (typeof last === 'string') found[found.length - 1] = last + text;
  else if (text !== '') found.push(text);
}

async function settleElement(element: JSXElement, around: Around, state: State): Promise<JSXElement> {
  const tag = String(element.type);
  if (tag === 'br') {
    addToParagraph(state, around, '\n');
    return { type: 'br', key: null, props: {} };
  }
  if (!blockTags.has(tag) && !inlineTags.has(tag) && tag !== 'svg')
    throw refusal(`<${tag}>`, around.path, tagHint(tag));
  const props = propsOf(element);
  checkProps(props, tag, around.path);
  const style = props.style ?? {};
  const index = state.nodes.length;
  const placed = style.position === 'absolute';
  const inline = inlineTags.has(tag) && !around.inFlex && !placed && (style.display ?? 'inline') === 'inline';
  const paragraph = inline ? (around.paragraph ?? index) : index;
  const alt = await altOf(tag, props);
  state.nodes.push(draftOf(tag, props, { around, paragraph, placed, alt }));
  const settledStyle = settleStyle(style, tag, around.path, index);
  if (tag === 'svg') return settleDrawing(element, index, settledStyle);
  const inFlex = style.display === 'flex' || style.display === 'grid';
  const textAlign = style.textAlign ?? around.textAlign;
  if (!inline)
    state.blocks.push({ paragraph, style: settledStyle, textAlign, holds: inFlex ? 'boxes' : 'words' });
  const inside: Around = { path: around.path, parent: index, inFlex, paragraph, textAlign };
  const children = await settleChildren(props.children, inside, state);
  return { type: tag, key: String(index), props: { style: settledStyle, children } };
}

const metadata = new Set(['data-role', 'data-alt', 'data-slot', 'data-field', 'data-tip', 'data-entry']);

/** A misspelt property would be lost without a word. A drawing has many more, which its reader checks. */
function checkProps(props: Props, tag: string, path: string): void {
  for (const [name, value] of Object.entries(props)) {
    const known = name.startsWith('data-')
      ? metadata.has(name)
      : tag === 'svg' || /^(style|children)$/.test(name);
    if (!known) throw refusal(`${name} on <${tag}>`, path, `Known are style, ${[...metadata].join(', ')}.`);
    if (name === 'data-role' && !isRole(value)) {
      throw refusal(`data-role "${String(value)}" on <${tag}>`, path, `Known are ${roles.join(', ')}.`);
    }
  }
}

function draftOf(
  tag: string,
  props: Props,
  {
    around,
    paragraph,
    placed,
    alt,
  }: { around: Around; paragraph: number; placed: boolean; alt: string | null },
): NodeDraft {
  const given = (name: string) => (typeof props[name] === 'string' ? props[name] : null);
  return {
    path: around.path,
    parent: around.parent,
    tag,
    role: isRole(props['data-role']) ? props['data-role'] : null,
    alt,
    slot: given('data-slot'),
    entry: 'data-entry' in props,
    field: fieldOf(given('data-field'), given('data-tip'), around.path),
    floats: placed ? 'placed' : 'in flow',
    paragraph,
    text: '',
  };
}

/** A field that does not say what it asks for is of no use to whoever cannot see the sheet. */
function fieldOf(name: string | null, tip: string | null, path: string): Field | null {
  if (name === null && tip === null) return null;
  if (name === null || tip === null || tip.trim() === '')
    throw refusal('half a field', path, 'A field has a name (data-field) and a tip (data-tip).');
  if (!/^[\w-]+$/.test(name))
    throw refusal(`a field named "${name}"`, path, 'Letters, digits, - and _ make a name.');
  return { name, tip };
}

async function settleChildren(children: JSXNode, inside: Around, state: State): Promise<Plain[]> {
  const flat = await flatten(children);
  // Blanks between the boxes of a row or column have no place in it.
  const kept = inside.inFlex
    ? flat.filter((child) => typeof child !== 'string' || child.trim() !== '')
    : flat;
  const settled: Plain[] = [];
  for (const [at, child] of kept.entries()) {
    const path = inside.path === '' ? String(at) : `${inside.path}-${at}`;
    if (typeof child !== 'string') settled.push(await settleElement(child, { ...inside, path }, state));
    else {
      addToParagraph(state, inside, child);
      const node = inside.parent === null ? undefined : state.nodes[inside.parent];
      if (node) node.text += child;
      settled.push(child);
    }
  }
  return settled;
}

function addToParagraph(state: State, around: Around, text: string): void {
  if (around.paragraph === null) return;
  state.paragraphs.set(around.paragraph, (state.paragraphs.get(around.paragraph) ?? '') + text);
}

async function settleDrawing(element: JSXElement, index: number, style: Style): Promise<JSXElement> {
  const { props } = await settleDrawn(element);
  return { type: 'svg', key: String(index), props: { ...propsOf({ ...element, props }), style } };
}

/** Inside a drawing nothing is a node; components and fragments are opened, and what is said of it is taken off. */
async function settleDrawn(element: JSXElement): Promise<JSXElement> {
  const children: JSXElement[] = [];
  for (const child of await flatten(propsOf(element).children)) {
    if (typeof child === 'string' && child.trim() === '') continue;
    if (typeof child === 'string')
      throw new Error(`Words in a drawing: "${child}". Labels are boxes beside it.`);
    if (child.type === 'text') throw new Error('<text> in a drawing is refused. Labels are boxes beside it.');
    if (child.type !== 'title') children.push(await settleDrawn(child));
  }
  const props = Object.entries(propsOf(element)).filter(([name]) => !/^(data-|aria-|role$)/.test(name));
  return { type: element.type, key: null, props: { ...Object.fromEntries(props), children } };
}

/** A drawing says what it shows as a sheet's drawing does (`data-alt`), or with a title, as any svg does. */
async function altOf(tag: string, props: Props): Promise<string | null> {
  const { 'data-alt': alt } = props;
  if (typeof alt === 'string') return alt;
  if (tag !== 'svg') return null;
  for (const child of await flatten(props.children)) {
    if (typeof child === 'object' && child.type === 'title') {
      return (await flatten(propsOf(child).children)).filter((part) => typeof part === 'string').join('');
    }
  }
  return null;
}

function propsOf(element: JSXElement): Props {
  return (element.props ?? {}) as Props;
}

function tagHint(tag: string): string {
  if (['ul', 'ol', 'li', 'table', 'tr', 'td', 'th'].includes(tag)) {
    return 'Use a div and say what it is with data-role (L, LI, Table, TR, TD).';
  }
  return `Sheets are built of ${[...blockTags, ...inlineTags, 'br', 'svg'].join(', ')}.`;
}
