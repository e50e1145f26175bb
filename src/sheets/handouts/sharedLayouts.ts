/** Sheets laid out once for all whose layout is the same, with slots, and filled for each of them. */
import type { Box, Page } from '../../paper/page.ts';
import type { Press } from '../../paper/press.ts';
import type { Filled, Pictures, Stencil, Values } from '../../paper/stencil.ts';

/** Somebody's sheet among those with the same layout. */
export type SharedSheet = {
  /** All that the layout depends on, beside how many lines the name takes. */
  readonly shape: string;
  /** The pages with nobody's values in them, for a name of so many lines. */
  readonly sample: (lines: number) => Promise<readonly Page[]>;
  readonly values: Values;
  /** What is drawn into the figures, each as large as its box. */
  readonly pictures?: Readonly<Record<string, (box: Box) => Promise<Page>>>;
  /** The pages laid out for these values alone, where something has no room. */
  readonly own: () => Promise<readonly Page[]>;
};

export type SharedLayouts = (sheet: SharedSheet) => Promise<readonly Filled[]>;

/** Where sheets that were laid out for everybody are kept from one run to the next. */
export type LayoutShelf = {
  readonly kept: (shape: string) => Promise<readonly Page[] | null>;
  /** Of what is kept already nothing is done. */
  readonly keep: (shape: string, pages: readonly Page[]) => Promise<void>;
};

/** Longer names than take so many lines are rare: each gets a layout of its own. */
const mostLines = 3;

/** More shapes than this and the oldest is laid out anew. */
const mostKept = 32;

/** A shape by how many lines the name takes. */
type Layouts = Map<number, Promise<readonly Stencil[]>>;

/** Remembers the sheets that it has laid out. */
export function sharedLayouts(
  press: Pick<Press, 'stencilOf' | 'fill' | 'asLaidOut'>,
  shelf: LayoutShelf | null,
): SharedLayouts {
  const shapes = new Map<string, Layouts>();
  const layoutsOf = (shape: string): Layouts => {
    const known = shapes.get(shape);
    if (known !== undefined) return known;
    const [oldest] = shapes.keys();
    if (shapes.size >= mostKept && oldest !== undefined) shapes.delete(oldest);
    const made: Layouts = new Map();
    shapes.set(shape, made);
    return made;
  };
  const laidOut = async ({ shape, sample }: SharedSheet, lines: number): Promise<readonly Stencil[]> => {
    const key = `${lines} ${shape}`;
    const pages = (await shelf?.kept(key)) ?? (await sample(lines));
    await shelf?.keep(key, pages);
    return pages.map(press.stencilOf);
  };
  const stencilsFor = (sheet: SharedSheet, lines: number): Promise<readonly Stencil[]> => {
    const layouts = layoutsOf(sheet.shape);
    // Known as soon as it is begun: who asks meanwhile waits for it.
    const known = layouts.get(lines) ?? laidOut(sheet, lines);
    layouts.set(lines, known);
    return known;
  };
  /** Null where something has no room on one of its pages. */
  const filledFor = async (
    sheet: SharedSheet,
    lines: number,
    drawn: Map<string, Page>,
  ): Promise<readonly Filled[] | null> => {
    const filled: Filled[] = [];
    for (const stencil of await stencilsFor(sheet, lines)) {
      const page = await press.fill(stencil, sheet.values, await picturesFor(stencil, sheet, drawn));
      if (page === null) return null;
      filled.push(page);
    }
    return filled;
  };
  return async (sheet) => {
    const drawn = new Map<string, Page>();
    for (let lines = 1; lines <= mostLines; lines += 1) {
      const filled = await filledFor(sheet, lines, drawn);
      if (filled !== null) return filled;
    }
    return (await sheet.own()).map(press.asLaidOut);
  };
}

/** @param drawn what was drawn for the same person before, by its name and size */
async function picturesFor(
  { pictures: slots }: Stencil,
  { pictures = {} }: SharedSheet,
  drawn: Map<string, Page>,
): Promise<Pictures> {
  const found: Record<string, Page> = {};
  for (const [name, { box }] of slots) {
    const key = `${name} ${box.width_pt} ${box.height_pt}`;
    const picture = drawn.get(key) ?? (await pictures[name]?.(box));
    if (picture === undefined) continue;
    drawn.set(key, picture);
    found[name] = picture;
  }
  return found;
}
