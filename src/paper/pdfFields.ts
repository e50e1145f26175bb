/**
 * Form fields (ISO 32000-1, 12.7): a text field at each live form part, in the order in which they are read. A field
 * shows nothing but what is typed; the line to write on is printed on the page.
 */
import { type PDFContext, PDFDict, PDFHexString, PDFName, type PDFRef, PDFString } from 'pdf-lib';
import type { Face } from './face.ts';
import { thousandth } from './measures.ts';
import type { Page } from './page.ts';
import { type TypedFont, writeTypedFont } from './pdfTypedFont.ts';
import type { Tag, TaggedPage } from './tags.ts';
import type { Type } from './type.ts';

/** The widget of each form part that has one, and its key in the parent tree. */
export type Widgets = ReadonlyMap<Tag, { readonly ref: PDFRef; readonly key: number }>;

export type WrittenFields = {
  readonly widgets: Widgets;
  /** What the catalog names as the form; null where there is no field. */
  readonly form: PDFRef | null;
};

/** A page, its parts, and its number in the file. */
export type Leaf = { readonly page: Page; readonly tagged: TaggedPage; readonly ref: PDFRef };
type Place = { readonly tag: Tag; readonly leaf: Leaf };

/** Name of the font in the form's resources. */
const typed = 'Typed';
/** Printed whenever the page is (ISO 32000-1, table 165, bit 3). */
const printed = 4;
/** Not checked for spelling, and not scrolled: no more is typed than the line has room for (table 228, bits 23, 24). */
const flags = (1 << 22) | (1 << 23);

const largest_pt = 11;
/** A line of type is so much higher than its size, and leaves so much at either end. */
const line_frac = 1.35;
const margin_pt = 2;
/** The line to write on is not written over. */
const rule_pt = 1;

/** Puts widgets on the pages. Call it once all pages have their numbers. */
export function writeFields(
  context: PDFContext,
  leaves: readonly Leaf[],
  typeOf: (page: Page) => Type,
): WrittenFields {
  const places = leaves.flatMap((leaf) => formParts(leaf.tagged.tags).map((tag): Place => ({ tag, leaf })));
  const [first] = places;
  if (first === undefined) return { widgets: new Map(), form: null };
  refuseTwins(places);
  const font = fontOf(context, typeOf(first.leaf.page));
  const widgets = new Map(
    places.map((place, at) => {
      const key = leaves.length + at;
      return [place.tag, { ref: writeWidget(context, place, { font, key }), key }] as const;
    }),
  );
  for (const leaf of leaves) {
    const own = places
      .filter((place) => place.leaf === leaf)
      .flatMap(({ tag }) => widgets.get(tag)?.ref ?? []);
    if (own.length > 0) context.lookup(leaf.ref, PDFDict).set(PDFName.of('Annots'), context.obj(own));
  }
  return {
    widgets,
    form: writeForm(
      context,
      [...widgets.values()].map(({ ref }) => ref),
      font,
    ),
  };
}

/** In reading order. */
function formParts(tags: readonly Tag[]): readonly Tag[] {
  return tags.flatMap((tag) => {
    return tag.field ? [tag] : formParts(tag.kids.filter((kid) => typeof kid !== 'number'));
  });
}

/** Fields of one name would be one field: what is typed into one would stand in both. */
function refuseTwins(places: readonly Place[]): void {
  const names = places.map(({ tag }) => tag.field?.of.name);
  const twin = names.find((name, at) => names.indexOf(name) < at);
  if (twin !== undefined) throw new Error(`Two fields of a print are named "${twin}".`);
}

function fontOf(context: PDFContext, type: Type): TypedFont {
  const face = type.faces.find(({ weight }) => weight === 'text') as Face;
  return writeTypedFont(context, face, (character) => {
    const [run] = type.shape(String.fromCharCode(character), 'text', 'ltr');
    return run?.glyphs[0]?.id ?? 0;
  });
}

type Rect = { readonly x: number; readonly y: number; readonly width: number; readonly height: number };

/** One line of type, right above the line at the foot of the box. */
function rectOf({ tag, leaf: { page } }: Place): Rect {
  const box = page.nodes[tag.field?.node ?? -1]?.box;
  if (box === undefined) throw new Error(`The field "${tag.field?.of.name}" has no place.`);
  const height = Math.min(box.height_pt - rule_pt, largest_pt * line_frac);
  const y = page.height_pt - box.y_pt - box.height_pt + rule_pt;
  return { x: box.x_pt, y: thousandth(y), width: box.width_pt, height: thousandth(height) };
}

type Means = { readonly font: TypedFont; readonly key: number };

function writeWidget(context: PDFContext, place: Place, { font, key }: Means): PDFRef {
  const { x, y, width, height } = rectOf(place);
  const { name, tip } = place.tag.field?.of ?? { name: '', tip: '' };
  const size = thousandth(height / line_frac);
  const digits = Math.floor((width - 2 * margin_pt) / (font.digit_frac * size));
  return context.register(
    context.obj({
      Type: 'Annot',
      Subtype: 'Widget',
      FT: 'Tx',
      T: PDFString.of(name),
      TU: PDFHexString.fromText(tip),
      Ff: flags,
      F: printed,
      MaxLen: Math.max(1, digits),
      Q: 1,
      DA: appearance(size),
      Rect: [x, y, thousandth(x + width), thousandth(y + height)].map(thousandth),
      P: place.leaf.ref,
      StructParent: key,
      AP: { N: writeEmpty(context, [0, 0, width, height], font) },
    }),
  );
}

function appearance(size: number): PDFString {
  return PDFString.of(`/${typed} ${size} Tf 0 g`);
}

/** What an empty field looks like: nothing, in a form of its own, as some viewers write what is typed right into it. */
function writeEmpty(context: PDFContext, box: readonly number[], { ref }: TypedFont): PDFRef {
  const resources = { Font: { [typed]: ref } };
  return context.register(
    context.stream('/Tx BMC EMC', {
      Type: 'XObject',
      Subtype: 'Form',
      BBox: [...box],
      Resources: resources,
    }),
  );
}

function writeForm(context: PDFContext, fields: readonly PDFRef[], { ref }: TypedFont): PDFRef {
  return context.register(
    context.obj({
      Fields: [...fields],
      DR: { Font: { [typed]: ref } },
      DA: appearance(largest_pt),
      NeedAppearances: false,
    }),
  );
}
