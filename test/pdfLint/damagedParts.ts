/** Things that we never write, to be put into a PDF: locks, forms painted twice, simple fonts. */
import { type PDFDocument, PDFDict, type PDFObject } from 'pdf-lib';
import { nodeParts } from '../../src/paper/node.ts';
import { sfntOf, tablesOf } from '../../src/paper/woff.ts';
import { type Damage, descendant, of, rewritten } from './damageTools.ts';

type Entries = Readonly<Record<string, unknown>>;

function objectOf({ context }: PDFDocument, entries: Entries): PDFDict {
  const given = Object.entries(entries).filter(([, value]) => value !== undefined);
  return context.obj(Object.fromEntries(given) as Record<string, string>) as PDFObject as PDFDict;
}

export function locked(lock: Entries): Damage {
  return (document) => {
    document.context.trailerInfo.Encrypt = document.context.register(objectOf(document, lock));
  };
}

/** Puts something under a name where the pages look for what they call by name. */
function resource(document: PDFDocument, group: string, key: string, value: PDFObject): void {
  const resources = document.getPage(0).node.Resources();
  if (resources?.has(of(group)) === false) resources.set(of(group), document.context.obj({}));
  resources?.lookup(of(group), PDFDict).set(of(key), document.context.register(value));
}

export const paintedTwice: Damage = (document) => {
  const entries = { Type: 'XObject', Subtype: 'Form', BBox: [0, 0, 9, 9] };
  resource(document, 'XObject', 'X1', document.context.stream('/P <</MCID 0>> BDC EMC', entries));
  rewritten((text) => `${text}\n/Artifact BMC /X1 Do /X1 Do EMC`)(document);
};

/** A list of the glyphs of the first composed font. */
export function listed(bits: () => Uint8Array): Damage {
  return (document) => {
    const list = document.context.register(document.context.stream(bits(), {}));
    descendant(document).lookup(of('FontDescriptor'), PDFDict).set(of('CIDSet'), list);
  };
}

const { type } = (await nodeParts()).types;
const face = type.faces.find(({ weight }) => weight === 'text');

type Changes = {
  /** In the font's dictionary; undefined takes one out. */
  readonly entries?: Entries;
  readonly flags?: number;
  /** Platform and encoding of its tables of characters, instead of the true ones; their content stays. */
  readonly tables?: () => readonly (readonly [number, number])[];
  /** What is drawn with it. */
  readonly text?: string;
};

export const renamed = {
  Type: 'Encoding',
  BaseEncoding: 'WinAnsiEncoding',
  Differences: [65, 'B'],
};

/** The typeface once more as a simple font, without fault but for the changes, and a letter drawn with it. */
export function simpleFont({ entries = {}, flags = 32, tables, text = 'A' }: Changes): Damage {
  return (document) => {
    const { context } = document;
    const file = tables ? retabled(tables()) : face?.sfnt;
    const descriptor = {
      Type: 'FontDescriptor',
      FontName: 'Letters',
      Flags: flags,
      FontFile2: context.register(context.flateStream(file ?? new Uint8Array())),
    };
    const font = {
      Type: 'Font',
      Subtype: 'TrueType',
      BaseFont: 'Letters',
      Encoding: 'WinAnsiEncoding',
      FirstChar: 65,
      LastChar: 65,
      Widths: [type.width('A', 'text', 1000)],
      FontDescriptor: context.register(objectOf(document, descriptor)),
    };
    resource(document, 'Font', 'Letters', objectOf(document, { ...font, ...entries }));
    rewritten((drawn) => `${drawn}\n/Artifact BMC BT /Letters 9 Tf (${text}) Tj ET EMC`)(document);
  };
}

function retabled(kinds: readonly (readonly [number, number])[]): Uint8Array {
  const parts = new Map(tablesOf(face?.sfnt ?? new Uint8Array()));
  const old = parts.get('cmap') ?? new Uint8Array();
  const start = new DataView(old.buffer, old.byteOffset, old.byteLength).getUint32(8);
  const cmap = new Uint8Array(4 + 8 * kinds.length + old.length - start);
  const view = new DataView(cmap.buffer);
  view.setUint16(2, kinds.length);
  for (const [at, [platform, encoding]] of kinds.entries()) {
    view.setUint16(4 + 8 * at, platform);
    view.setUint16(6 + 8 * at, encoding);
    view.setUint32(8 + 8 * at, 4 + 8 * kinds.length);
  }
  cmap.set(old.subarray(start), 4 + 8 * kinds.length);
  return sfntOf(0x00010000, parts.set('cmap', cmap));
}
