import { type PDFContext, PDFHexString, type PDFObject, type PDFRef } from 'pdf-lib';
import type { Tag, TaggedPage } from './tags.ts';

/**
 * Writes the structure tree (ISO 32000-1, 14.7): a document of the parts of its pages, each part naming the marked
 * content that it is made of, and for each page the parts that its marks belong to.
 */
export function writeStructure(
  context: PDFContext,
  pages: readonly PDFRef[],
  tagged: readonly TaggedPage[],
): PDFRef {
  const root = context.nextRef();
  const document = context.nextRef();
  const kids: PDFRef[] = [];
  const byMark: PDFObject[] = [];
  for (const [at, { tags, owners }] of tagged.entries()) {
    const page = pages[at];
    if (!page) continue;
    const written = new Map<Tag, PDFRef>();
    for (const tag of tags) kids.push(writeTag(tag, document, { context, page, written }));
    byMark.push(context.obj(at), context.obj(owners.map((owner) => written.get(owner) ?? document)));
  }
  context.assign(document, context.obj({ Type: 'StructElem', S: 'Document', P: root, K: kids }));
  const parents = context.register(context.obj({ Nums: byMark }));
  context.assign(
    root,
    context.obj({
      Type: 'StructTreeRoot',
      K: [document],
      ParentTree: parents,
      ParentTreeNextKey: tagged.length,
    }),
  );
  return root;
}

type Place = { readonly context: PDFContext; readonly page: PDFRef; readonly written: Map<Tag, PDFRef> };

function writeTag(tag: Tag, parent: PDFRef, place: Place): PDFRef {
  const { context, page, written } = place;
  const own = context.nextRef();
  written.set(tag, own);
  const kids = tag.kids.map((kid) =>
    typeof kid === 'number' ? context.obj(kid) : writeTag(kid, own, place),
  );
  const scope = tag.scope && { A: { O: 'Table', Scope: tag.scope } };
  // Notes are told apart by an identifier.
  const id = tag.role === 'Note' && { ID: PDFHexString.fromText(`note-${own.objectNumber}`) };
  const alt = tag.alt !== null && { Alt: PDFHexString.fromText(tag.alt) };
  context.assign(
    own,
    context.obj({ Type: 'StructElem', S: tag.role, P: parent, Pg: page, K: kids, ...scope, ...id, ...alt }),
  );
  return own;
}
