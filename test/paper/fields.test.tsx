import * as harfbuzz from 'harfbuzzjs';
import { decodePDFRawStream, PDFArray, PDFDict, PDFDocument, PDFName, PDFRawStream } from 'pdf-lib';
import { getDocument } from 'pdfjs-dist/legacy/build/pdf.mjs';
import type { JSXNode } from 'satori/jsx';
import { beforeAll, describe, expect, it } from 'vitest';
import { mm, paperSizes } from '../../src/paper/measures.ts';
import { nodeParts, nodePress } from '../../src/paper/node.ts';
import type { Page } from '../../src/paper/page.ts';
import type { Press } from '../../src/paper/press.ts';
import type { Print } from '../../src/paper/print.ts';
import { named, numbers, objectsOf, partsOf } from './readPdf.ts';

let press: Press;
beforeAll(async () => {
  press = await nodePress();
});

function blank(name: string, tip: string, width_mm = 17): JSXNode {
  return (
    <div
      data-field={name}
      data-tip={tip}
      style={{ display: 'flex', width: mm(width_mm), height: mm(7), borderBottom: '3px solid black' }}
    />
  );
}

const step = (
  <div data-role="P" style={{ display: 'flex', alignItems: 'flex-end', columnGap: mm(1), fontSize: 39 }}>
    <div>length</div>
    {blank('length', 'The length in mm')}
    <div>mm × width</div>
    {blank('width', 'The width in mm')}
    <div>mm</div>
  </div>
);

function lay(children: JSXNode): Promise<Page> {
  const root = (
    <div style={{ display: 'flex', flexDirection: 'column', width: '100%', padding: mm(10) }}>{children}</div>
  );
  return press.layOut({ ...paperSizes.A4, title: 'T', lang: 'en', root });
}

async function printed(children: JSXNode, more: Partial<Print> = {}): Promise<Uint8Array> {
  return press.toPdf({ pages: [await lay(children)], title: 'T', lang: 'en', ...more });
}

type Shown = {
  readonly id: string;
  readonly fieldName: string;
  readonly alternativeText: string;
  readonly maxLen: number;
  readonly rect: readonly number[];
};

/** The fields of the first page as a viewer shows them, and what it saves when they are filled in. */
async function viewed(bytes: Uint8Array, typed: Readonly<Record<string, string>> = {}) {
  const reading = getDocument({ data: bytes.slice(), verbosity: 0 });
  const document = await reading.promise;
  const fields = (await (await document.getPage(1)).getAnnotations()) as readonly Shown[];
  for (const { id, fieldName } of fields)
    if (typed[fieldName] !== undefined) document.annotationStorage.setValue(id, { value: typed[fieldName] });
  const saved = Object.keys(typed).length > 0 ? await document.saveDocument() : bytes;
  await reading.destroy();
  return { fields, saved };
}

function dictIn(dict: PDFDict, ...way: readonly string[]): PDFDict {
  return way.reduce((at, key) => at.lookup(PDFName.of(key), PDFDict), dict);
}

function streamText(dict: PDFDict, key: string): { readonly text: string; readonly dict: PDFDict } {
  const stream = dict.lookup(PDFName.of(key));
  if (!(stream instanceof PDFRawStream)) throw new Error(`no ${key}`);
  return { text: new TextDecoder('latin1').decode(decodePDFRawStream(stream).decode()), dict: stream.dict };
}

describe('places to write in', () => {
  it('are fields right above their lines, named, with their tips', async () => {
    const page = await lay(step);
    const { fields } = await viewed(await press.toPdf({ pages: [page], title: 'T', lang: 'en' }));
    expect(fields.map((field) => [field.fieldName, field.alternativeText])).toEqual([
      ['length', 'The length in mm'],
      ['width', 'The width in mm'],
    ]);
    const boxes = page.nodes.filter((node) => node.field).map((node) => node.box);
    for (const [at, { rect }] of fields.entries()) {
      const [box, [left = 0, bottom = 0, right = 0, top = 0]] = [boxes[at], rect];
      if (!box) throw new Error('a field without a box');
      const foot = page.height_pt - box.y_pt - box.height_pt;
      expect(left).toBeCloseTo(box.x_pt, 2);
      expect(right).toBeCloseTo(box.x_pt + box.width_pt, 2);
      expect(bottom - foot).toBeCloseTo(1, 2);
      expect(top - bottom).toBeCloseTo(11 * 1.35, 2);
    }
  });

  it('take no more digits than their line has room for', async () => {
    const { fields } = await viewed(
      await printed(
        <>
          {blank('short', 'Short', 8)}
          {blank('long', 'Long', 40)}
        </>,
      ),
    );
    const { type } = (await nodeParts()).types;
    const digit_pt = Math.max(...[...'0123456789'].map((digit) => type.width(digit, 'text', 11)));
    for (const { maxLen, rect } of fields) {
      const room_pt = (rect[2] ?? 0) - (rect[0] ?? 0) - 4;
      expect(maxLen * digit_pt).toBeLessThanOrEqual(room_pt);
      expect((maxLen + 1) * digit_pt).toBeGreaterThan(room_pt);
    }
    expect(fields).toHaveLength(2);
  });

  it('are read where they stand among the words, each with its tip', async () => {
    const [told] = await partsOf(await printed(step));
    const [length, width] = ['Form[The length in mm](field)', 'Form[The width in mm](field)'];
    expect(told).toBe(`P("length" ${length} "mm × width" ${width} "mm")`);
  });

  it('part words that nothing is drawn between', async () => {
    const [told] = await partsOf(
      await printed(
        <div data-role="P" style={{ display: 'flex', columnGap: mm(1) }}>
          <div>fish</div>
          <div data-field="fish" data-tip="How many" style={{ width: mm(10), height: mm(6) }} />
          <div>a litre</div>
        </div>,
      ),
    );
    expect(told).toBe('P("fish" Form[How many](field) "a litre")');
  });

  it('are walked in the order of the sheet, and lead back to their part', async () => {
    const { document } = await objectsOf(await printed(step));
    const page = document.getPage(0).node;
    expect(named(page, 'Tabs')).toBe('S');
    const widgets = page.lookup(PDFName.of('Annots'), PDFArray).asArray();
    const fields = dictIn(document.catalog, 'AcroForm').lookup(PDFName.of('Fields'), PDFArray).asArray();
    expect(fields.map(String)).toEqual(widgets.map(String));
    const parents = dictIn(document.catalog, 'StructTreeRoot', 'ParentTree').lookup(
      PDFName.of('Nums'),
      PDFArray,
    );
    for (const ref of widgets) {
      const key = String(document.context.lookup(ref, PDFDict).get(PDFName.of('StructParent')));
      const place = parents.asArray().findIndex((each, at) => at % 2 === 0 && String(each) === key);
      const part = parents.lookup(place + 1, PDFDict);
      expect(named(part, 'S')).toBe('Form');
      expect(String(part.lookup(PDFName.of('K'), PDFArray).lookup(0, PDFDict).get(PDFName.of('Obj')))).toBe(
        String(ref),
      );
    }
  });

  it('hold what a viewer types, in the typeface of the sheet', async () => {
    const { saved } = await viewed(await printed(step), { length: '1019.4', width: '-0,5' });
    const { document } = await objectsOf(saved);
    const shown = document
      .getPage(0)
      .node.lookup(PDFName.of('Annots'), PDFArray)
      .asArray()
      .map((ref) => streamText(dictIn(document.context.lookup(ref, PDFDict), 'AP'), 'N'));
    expect(shown.map(({ text }) => /\((.*)\) Tj/.exec(text)?.[1])).toEqual(['1019.4', '-0,5']);
    for (const { text, dict } of shown) {
      expect(text).toContain('/Typed 11 Tf');
      expect(String(dictIn(dict, 'Resources', 'Font', 'Typed').get(PDFName.of('BaseFont')))).toMatch(
        /^\/[A-Z]{6}\+AtkinsonHyperlegibleNext-Regular$/,
      );
    }
  });

  it('are refused where two have one name, or one has no tip', async () => {
    const twins = (
      <>
        {blank('twin', 'One')}
        {blank('twin', 'Other')}
      </>
    );
    await expect(printed(twins)).rejects.toThrow('Two fields of a print are named "twin".');
    await expect(lay(blank('one', ' '))).rejects.toThrow('half a field');
    await expect(lay(blank('one.two', 'Tip'))).rejects.toThrow('a field named "one.two"');
  });
});

describe('the font for what is typed', () => {
  /** The embedded font as another program opens it, and the font dictionary. */
  async function typedFont() {
    const { document } = await objectsOf(await printed(step));
    const font = dictIn(document.catalog, 'AcroForm', 'DR', 'Font', 'Typed');
    const stream = dictIn(font, 'FontDescriptor').lookup(PDFName.of('FontFile2'));
    if (!(stream instanceof PDFRawStream)) throw new Error('no font file');
    const sfnt = decodePDFRawStream(stream).decode();
    const face = new harfbuzz.Face(new harfbuzz.Blob(new Uint8Array(sfnt)));
    return { font, face };
  }

  function glyphsOf(opened: harfbuzz.Font, text: string): readonly number[] {
    const buffer = new harfbuzz.Buffer();
    buffer.addText(text);
    buffer.guessSegmentProperties();
    harfbuzz.shape(opened, buffer);
    return buffer.getGlyphInfos().map(({ codepoint }) => codepoint);
  }

  it('has every letter and sign of plain text, each leading to its own drawing', async () => {
    const { face } = await typedFont();
    const has = new Set(face.collectUnicodes());
    for (let code = 0x20; code < 0x7f; code += 1) expect(has.has(code), String.fromCharCode(code)).toBe(true);
    for (const sign of '°½×äéß€–') expect(has.has(sign.codePointAt(0) ?? 0), sign).toBe(true);
    const outlines = (opened: harfbuzz.Font, text: string) =>
      glyphsOf(opened, text).map((glyph) => opened.glyphToPath(glyph));
    const whole = (await nodeParts()).types.type.faces.find(({ weight }) => weight === 'text');
    if (!whole) throw new Error('no face');
    const text = '0123456789,.-+Az°';
    expect(outlines(new harfbuzz.Font(face), text)).toEqual(outlines(whole.font, text));
  });

  it('says which character each of its letters is, as every font of a print does', async () => {
    const { font, face } = await typedFont();
    const { text } = streamText(font, 'ToUnicode');
    expect(text).toContain('<00> <FF>');
    expect(text).toContain('<80> <20AC>');
    const told = [...text.matchAll(/^<(..)> <(....)>$/gm)].map(([, , unicode = '']) => parseInt(unicode, 16));
    expect(new Set(told)).toEqual(new Set(face.collectUnicodes()));
  });

  it('tells the widths that its letters have', async () => {
    const { font, face } = await typedFont();
    const widths = numbers(font, 'Widths');
    expect(widths).toHaveLength(224);
    const opened = new harfbuzz.Font(face);
    for (let code = 0x20; code < 0x7f; code += 1) {
      const [glyph = 0] = glyphsOf(opened, String.fromCharCode(code));
      expect(widths[code - 0x20]).toBeCloseTo((opened.glyphHAdvance(glyph) * 1000) / face.upem, 2);
    }
    const [euro = 0] = glyphsOf(opened, '€');
    expect(widths[0x80 - 0x20]).toBeCloseTo((opened.glyphHAdvance(euro) * 1000) / face.upem, 2);
  });

  it('is only in prints that have fields', async () => {
    const { document, dicts } = await objectsOf(await printed(<p data-role="P">no field</p>));
    expect(dicts.filter((dict) => named(dict, 'Subtype') === 'TrueType')).toEqual([]);
    expect(document.catalog.has(PDFName.of('AcroForm'))).toBe(false);
  });
});

describe('a print for pencils', () => {
  it('has no fields, and still tells of its blanks', async () => {
    const bytes = await printed(step, { fields: 'printed' });
    const { fields } = await viewed(bytes);
    expect(fields).toEqual([]);
    const { document, dicts } = await objectsOf(bytes);
    expect(document.catalog.has(PDFName.of('AcroForm'))).toBe(false);
    const forms = dicts.filter((dict) => named(dict, 'S') === 'Form');
    expect(forms.map((form) => named(dictIn(form, 'A'), 'O'))).toEqual(['PrintField', 'PrintField']);
    const [told] = await partsOf(bytes);
    expect(told).toBe('P("length" Form[The length in mm]() "mm × width" Form[The width in mm]() "mm")');
  });

  it('draws the same as one for screens', async () => {
    const drawn = async (fields: Print['fields']) => {
      const document = await PDFDocument.load(await printed(step, fields ? { fields } : {}));
      const { text } = streamText(document.getPage(0).node, 'Contents');
      return text
        .split('\n')
        .filter((line) => !/(BDC|BMC|EMC)$/.test(line))
        .join('\n');
    };
    expect(await drawn('printed')).toBe(await drawn('live'));
    expect(await drawn(undefined)).toBe(await drawn('live'));
  });
});
