import { type PDFContext, PDFHexString, type PDFObject, type PDFRef } from 'pdf-lib';
import type { Leaf, Widgets } from './pdfFields.ts';
import type { Tag } from './tags.ts';

/**
 * Writes the structure tree (ISO 32000-1, 14.7): a document of the parts of its pages, each part naming the marked
 * content that it is made of, and for each page the parts that its marks belong to. A field's part names its widget.
 */
export function writeStructure(context: PDFContext, leaves: readonly Leaf[], widgets: Widgets): PDFRef {
  const root = context.nextRef();
  const document = context.nextRef();
  const kids: PDFRef[] = [];
  const byMark: PDFObject[] = [];
  const written = new Map<Tag, PDFRef>();
  for (const [at, { tagged, ref: page }] of leaves.entries()) {
    for (const tag of tagged.tags) kids.push(writeTag(tag, document, { context, page, widgets, written }));
    const owners = tagged.owners.map((owner) => written.get(owner) ?? document);
    byMark.push(context.obj(at), context.obj(owners));
  }
  for (const [tag, { key }] of widgets) byMark.push(context.obj(key), written.get(tag) ?? document);
  context.assign(document, context.obj({ Type: 'StructElem', S: 'Document', P: root, K: kids }));
  const parents = context.register(context.obj({ Nums: byMark }));
  context.assign(
    root,
    context.obj({
      Type: 'StructTreeRoot',
      K: [document],
      ParentTree: parents,
      ParentTreeNextKey: leaves.length + widgets.size,
    }),
  );
  return root;
}

type Place = {
  readonly context: PDFContext;
  readonly page: PDFRef;
  readonly widgets: Widgets;
  readonly written: Map<Tag, PDFRef>;
};

function writeTag(tag: Tag, parent: PDFRef, place: Place): PDFRef {
  const { context, page, written, widgets } = place;
  const own = context.nextRef();
  written.set(tag, own);
  const widget = widgets.get(tag);
  const kids: PDFObject[] = tag.kids.map((kid) =>
    typeof kid === 'number' ? context.obj(kid) : writeTag(kid, own, place),
  );
  if (widget) kids.push(context.obj({ Type: 'OBJR', Obj: widget.ref, Pg: page }));
  const scope = tag.scope && { A: { O: 'Table', Scope: tag.scope } };
  // A field on paper says by itself that it is one (ISO 32000-1, 14.8.5.6).
  const line = tag.field &&
    !widget && { A: { O: 'PrintField', Role: 'tv', Desc: PDFHexString.fromText(tag.field.of.tip) } };
  // Notes are told apart by an identifier.
  const id = tag.role === 'Note' && { ID: PDFHexString.fromText(`note-${own.objectNumber}`) };
  const alt = tag.alt !== null && { Alt: PDFHexString.fromText(tag.alt) };
  context.assign(
    own,
    context.obj({
      Type: 'StructElem',
      S: tag.role,
      P: parent,
      Pg: page,
      K: kids,
      ...scope,
      ...line,
      ...id,
      ...alt,
    }),
  );
  return own;
}
