import type { JSXElement, JSXNode } from 'satori/jsx';
import { mm, pointsPerUnit, thousandth } from './measures.ts';
import type { Box, Page, Shape } from './page.ts';
import { type NodeFinder, type Piece, readSvg } from './readSvg.ts';
import { type NodeDraft, type Settled, settle } from './settle.ts';
import { type EngineFont, engineFonts } from './engineFonts.ts';
import { nodeOfMark } from './styles.ts';
import type { Type } from './type.ts';
import type { TypeCase } from './typeCase.ts';
import { joinWords } from './words.ts';

export type Sheet = {
  readonly width_mm: number;
  readonly height_mm: number;
  readonly title: string;
  /** BCP 47 language tag. */
  readonly lang: string;
  readonly root: JSXNode;
};

/** The layout engine, as the runtime gives it. Both runtimes give the same one, so that both lay out alike. */
export type Engine = (
  tree: unknown,
  options: {
    width: number;
    height: number;
    fonts: EngineFont[];
    embedFont: false;
    pointScaleFactor: 0;
    onNodeDetected: (node: Detected) => void;
  },
) => Promise<string>;

type Detected = { key?: string | number; left: number; top: number; width: number; height: number };

/** What the engine drew, before words are joined: for the press itself and for the tests of its measures. */
export type Drawn = {
  readonly settled: Settled;
  readonly boxes: ReadonlyMap<number, Box>;
  readonly found: readonly (Piece | Shape)[];
};

/** A page with the tree that it was laid out from, so that new values can be put into it. */
export type Laid = { readonly page: Page; readonly settled: Settled };

/**
 * Lays a sheet out: its tree becomes placed items. The engine runs once.
 *
 * @throws CoverError naming every character that no font has; Error naming what cannot be printed.
 */
export async function layOut(sheet: Sheet, types: TypeCase, engine: Engine): Promise<Page> {
  const settled = await settle(sheet.root);
  const type = await types.typeFor(settled.paragraphs.values());
  return (await layOutSettled(sheet, settled, type, engine)).page;
}

/** The same for a tree that is plain already, in a type that has all its letters. */
export async function layOutSettled(
  sheet: Sheet,
  settled: Settled,
  type: Type,
  engine: Engine,
): Promise<Laid> {
  const { boxes, found } = await draw(sheet, settled, type, engine);
  const page: Page = {
    width_pt: sheetLength_pt(sheet.width_mm),
    height_pt: sheetLength_pt(sheet.height_mm),
    title: sheet.title,
    lang: sheet.lang,
    packs: type.packs,
    items: joinWords(found, settled, type),
    nodes: settled.nodes.map((node, index) => ({ ...node, box: boxes.get(index) ?? nowhere })),
  };
  return { page, settled };
}

export async function draw(sheet: Sheet, settled: Settled, type: Type, engine: Engine): Promise<Drawn> {
  type.mustCover(settled.paragraphs.values());
  const size = { width: mm(sheet.width_mm), height: mm(sheet.height_mm) };
  const { svg, boxes } = await runEngine(
    settled.tree,
    size,
    { type, texts: settled.paragraphs.values() },
    engine,
  );
  return { settled, boxes, found: readSvg(svg, nodeFinder(settled.nodes)) };
}

/** The type of a sheet, and all that is set in it. */
export type Setting = { readonly type: Type; readonly texts: Iterable<string> };

type Size = { readonly width: number; readonly height: number };

/** What the engine makes of a tree whose keys are the numbers of its nodes. */
export async function runEngine(tree: JSXElement, size: Size, { type, texts }: Setting, engine: Engine) {
  const boxes = new Map<number, Box>();
  const svg = await engine(tree, {
    ...size,
    fonts: engineFonts(type, texts),
    embedFont: false,
    pointScaleFactor: 0,
    onNodeDetected: (node) => {
      if (typeof node.key === 'string') boxes.set(Number(node.key), boxOf(node));
    },
  });
  return { svg, boxes };
}

function sheetLength_pt(length_mm: number): number {
  if (!(0 < length_mm && length_mm < 5000)) throw new Error(`A sheet cannot be ${length_mm} mm long.`);
  return thousandth(mm(length_mm) * pointsPerUnit);
}

function boxOf({ left, top, width, height }: Detected): Box {
  const length = (units: number) => thousandth(units * pointsPerUnit);
  return { x_pt: length(left), y_pt: length(top), width_pt: length(width), height_pt: length(height) };
}

export const nowhere: Box = { x_pt: 0, y_pt: 0, width_pt: 0, height_pt: 0 };

/** The engine numbers boxes by their place in the tree. A box in running text has a further number for each line. */
function nodeFinder(nodes: readonly NodeDraft[]): NodeFinder {
  const byPath = new Map(nodes.map((node, index) => [node.path, index]));
  const runsInText = (index: number) => nodes[index]?.paragraph !== index;
  return {
    nodeOfFamily: nodeOfMark,
    nodeOfPath: (path) => {
      const own = byPath.get(path);
      if (own !== undefined && !runsInText(own)) return own;
      const around = byPath.get(path.slice(0, Math.max(0, path.lastIndexOf('-'))));
      if (around === undefined) throw new Error(`A box that belongs to no node: "${path}".`);
      return around;
    },
  };
}
