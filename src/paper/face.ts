import * as harfbuzz from 'harfbuzzjs';
import type { Direction } from './direction.ts';
import type { Kerning } from './fonts.ts';
import type { Weight } from './page.ts';
import { type Inflate, sfntFromWoff } from './woff.ts';

/** A font file as it comes from its package. */
export type FontFile = {
  /** One name for each subset of a family; both weights of a subset share it. */
  readonly name: string;
  readonly weight: Weight;
  readonly postScriptName: string;
  readonly kerning: Kerning;
  readonly woff: Uint8Array;
};

export type Face = {
  /** Place in the list of faces: the short, stable name of the face in what we write. */
  readonly index: number;
  readonly name: string;
  readonly weight: Weight;
  readonly postScriptName: string;
  readonly kerning: Kerning;
  readonly sfnt: Uint8Array<ArrayBuffer>;
  readonly unitsPerEm: number;
  readonly has: (codePoint: number) => boolean;
  readonly font: harfbuzz.Font;
};

/** Lengths in font units. One glyph of a cluster carries its text, the others of it an empty one. */
export type Glyph = {
  readonly id: number;
  readonly text: string;
  /** Where the text of its cluster starts in the text of its run. */
  readonly cluster: number;
  readonly advance: number;
  readonly right: number;
  readonly up: number;
};

/** Glyphs as they stand from left to right. */
export type Run = { readonly face: Face; readonly direction: Direction; readonly glyphs: readonly Glyph[] };

/**
 * A font is unpacked and opened when something of it is first asked for: most sheets need two or three of twenty.
 * @param index the place of the face among all faces of the press
 */
export function faceFrom(file: FontFile, index: number, inflate?: Inflate): Face {
  const { name, weight, postScriptName, kerning } = file;
  let opened: Opened | null = null;
  const open = (): Opened => {
    opened ??= openedFrom(file, inflate);
    return opened;
  };
  return {
    ...{ index, name, weight, postScriptName, kerning },
    get sfnt() {
      return open().sfnt;
    },
    get unitsPerEm() {
      return open().unitsPerEm;
    },
    get font() {
      return open().font;
    },
    has: (codePoint) => open().codePoints.has(codePoint),
  };
}

type Opened = Pick<Face, 'sfnt' | 'unitsPerEm' | 'font'> & { readonly codePoints: ReadonlySet<number> };

function openedFrom({ woff }: FontFile, inflate?: Inflate): Opened {
  const sfnt = new Uint8Array(sfntFromWoff(woff, inflate));
  const face = new harfbuzz.Face(new harfbuzz.Blob(sfnt));
  const codePoints = new Set(face.collectUnicodes());
  return { sfnt, unitsPerEm: face.upem, font: new harfbuzz.Font(face), codePoints };
}
