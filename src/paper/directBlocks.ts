import { mixesDirections, paragraphDirection } from './direction.ts';
import type { Style } from './styles.ts';

/** A box of the sheet that may hold words, before its style is handed to the layout engine. */
export type DirectedBlock = {
  readonly paragraph: number;
  readonly style: Style;
  /** The side its words stand at, its own or handed down. */
  readonly textAlign: unknown;
  readonly holds: 'words' | 'boxes';
};

/**
 * Gives each box with words the direction of its first letter, as `dir="auto"` does; its words stay at the side where
 * all words of the sheet stand. Where a text is cut short, it then loses its end and not its beginning. Boxes that hold
 * boxes keep the order of the sheet. A sheet without letters that run to the left is left as it is.
 */
export function directBlocks(
  blocks: readonly DirectedBlock[],
  paragraphs: ReadonlyMap<number, string>,
): void {
  if (![...paragraphs.values()].some(mixesDirections)) return;
  for (const { paragraph, style, textAlign, holds } of blocks) {
    const direction = holds === 'words' ? paragraphDirection(paragraphs.get(paragraph) ?? '') : 'ltr';
    Object.assign(style, { direction, textAlign });
  }
}
