import { PDFArray, PDFDict, PDFHexString, PDFName, PDFRawStream, decodePDFRawStream } from 'pdf-lib';
import { beforeAll, describe, expect, it } from 'vitest';
import { mm, paperSizes } from '../../src/paper/measures.ts';
import { nodeParts, nodePress } from '../../src/paper/node.ts';
import type { Page } from '../../src/paper/page.ts';
import type { Press } from '../../src/paper/press.ts';
import { denseSheet } from './denseSheet.tsx';
import { oneBox } from './oneBox.tsx';
import { attached, printOf } from './prints.ts';
import { named, numbers, objectsOf, readPdf } from './readPdf.ts';

let press: Press;
let dense: Page;
let pdf: Uint8Array;
beforeAll(async () => {
  press = await nodePress();
  dense = await press.layOut(denseSheet());
  pdf = await press.toPdf(printOf(dense));
});

async function textOf(...pages: Page[]): Promise<string> {
  const read = await readPdf(await press.toPdf(printOf(...pages)));
  return read.pages.map((page) => page.text).join('\n');
}

/** All drawing commands of a print. */
async function commandsOf(bytes: Uint8Array): Promise<string> {
  const { document } = await objectsOf(bytes);
  const streams = document.getPages().map((page) => page.node.Contents());
  return streams
    .map((stream) =>
      stream instanceof PDFRawStream ? new TextDecoder().decode(decodePDFRawStream(stream).decode()) : '',
    )
    .join('\n');
}

describe('the text of a PDF', () => {
  it('reads as the sheet was written, in order', async () => {
    const words = (text: string) => text.split(/\s+/).filter(Boolean);
    const written = dense.items.map((item) => (item.kind === 'words' ? item.text : '')).join(' ');
    const { pages } = await readPdf(pdf);
    const letters = (text: string) => words(text).join('');
    expect(letters(pages[0]?.text ?? '')).toBe(letters(written));
  });

  it('has spaces between words, in plain text, mixed text and over line ends', async () => {
    const children = (
      <>
        Shake the inlet <b>sponge clean,</b> twice a week; “never” with soap. Then <b>call</b> – and wait.
      </>
    );
    const text = await textOf(await press.layOut(oneBox(children, { width: mm(45) })));
    expect(text.replace(/\s+/g, ' ').trim()).toBe(
      'Shake the inlet sponge clean, twice a week; “never” with soap. Then call – and wait.',
    );
  });

  it.each([
    'Łódź, Ångström, Đặng',
    'Ελληνικά ἀρχή',
    'Кириллица Ґ',
    'H₂O ≥ 2½ × 10³ m² ± 5 °C',
    'office fluffy',
    'вода\u0301 моря\u0301',
  ])('keeps %s', async (given) => {
    expect((await textOf(await press.layOut(oneBox(given)))).trim()).toBe(given);
  });

  it('stays text, whatever it looks like', async () => {
    const hostile = `<script>alert("1")</script> & 'two' \\( ) Tj ET Q endstream ${'y'.repeat(300)}`;
    const text = await textOf(await press.layOut(oneBox(hostile, { wordBreak: 'break-word' })));
    expect(text.replace(/\s/g, '')).toBe(hostile.replace(/\s/g, ''));
  });
});

/** Where each glyph stands, from the start of its words: by the widths the PDF tells and the moves between. */
async function placesIn(bytes: Uint8Array): Promise<number[]> {
  const { dicts } = await objectsOf(bytes);
  const fonts = dicts.find((dict) => dict.has(PDFName.of('Font')))?.lookup(PDFName.of('Font'), PDFDict);
  const widths = (name: string): number[] => {
    const font = fonts?.lookup(PDFName.of(name), PDFDict);
    const inner = font?.lookup(PDFName.of('DescendantFonts'), PDFArray).lookup(0, PDFDict);
    const list = inner?.lookup(PDFName.of('W'), PDFArray).lookup(1, PDFArray);
    return list?.asArray().map((each) => Number(String(each))) ?? [];
  };
  const places: number[] = [];
  let [x, size, font] = [0, 0, [0]];
  for (const line of (await commandsOf(bytes)).split('\n')) {
    const [, name, points] = /^\/(F\d+) (\S+) Tf$/.exec(line) ?? [];
    if (name !== undefined) [font, size] = [widths(name), Number(points)];
    if (line === 'BT') x = 0;
    if (!line.endsWith(' TJ')) continue;
    for (const [part] of line.matchAll(/<[0-9A-F]+>|-?[\d.]+/g)) {
      if (!part.startsWith('<')) x -= (Number(part) / 1000) * size;
      else {
        for (const code of part.match(/[0-9A-F]{4}/g) ?? []) {
          places.push(x);
          x += ((font[Number.parseInt(code, 16) - 1] ?? 0) / 1000) * size;
        }
      }
    }
  }
  return places;
}

describe('the letters of a PDF', () => {
  it.each(['AVATAR, To. Ty', 'вода\u0301 моря\u0301, AV', 'Łódź ≥ AV'])(
    'stand where they were shaped to stand: %s',
    async (given) => {
      const { types } = await nodeParts();
      const { type } = types;
      const page = await press.layOut(oneBox(given, { fontWeight: 800 }));
      const expected = page.items.flatMap((item) => {
        if (item.kind === 'shape') return [];
        let x = 0;
        return type.shape(item.text, item.weight).flatMap((run) => {
          const scale = item.size_pt / run.face.unitsPerEm;
          return run.glyphs.map((glyph) => {
            const place = x + glyph.right * scale;
            x += glyph.advance * scale;
            return place;
          });
        });
      });
      const places = await placesIn(await press.toPdf(printOf(page)));
      expect(places).toHaveLength(expected.length);
      for (const [at, place] of places.entries())
        expect(Math.abs(place - (expected[at] ?? 0))).toBeLessThan(0.01);
    },
  );

  it('stand for their own text, also where two look alike', async () => {
    const { document } = await objectsOf(
      await press.toPdf(printOf(await press.layOut(oneBox('≥ ≤\u202f≥')))),
    );
    const streams = document.context.enumerateIndirectObjects().flatMap(([, object]) => {
      return object instanceof PDFRawStream
        ? [new TextDecoder().decode(decodePDFRawStream(object).decode())]
        : [];
    });
    const table = streams.find((stream) => stream.includes('beginbfchar')) ?? '';
    expect(table).toMatch(/<0020>$/m);
    expect(table).toMatch(/<202F>$/m);
  });
});

describe('the pages of a PDF', () => {
  it('have the exact size of their paper, each its own', async () => {
    const letter = await press.layOut({ ...oneBox('a'), ...paperSizes.Letter });
    const read = await readPdf(await press.toPdf(printOf(dense, letter)));
    expect(read.pages.map((page) => [page.width_pt, page.height_pt])).toEqual([
      [595.276, 841.89],
      [612, 792],
    ]);
  });

  it('use only embedded subset fonts, each with a table back to text', async () => {
    const { dicts, document } = await objectsOf(pdf);
    const fonts = dicts.filter((dict) => named(dict, 'Type') === 'Font');
    const outer = fonts.filter((font) => named(font, 'Subtype') === 'Type0');
    expect(outer.length).toBeGreaterThanOrEqual(6);
    expect(fonts.length).toBe(outer.length * 2);
    for (const font of outer) {
      expect(named(font, 'BaseFont')).toMatch(/^[A-Z]{6}\+(AtkinsonHyperlegibleNext|NotoSans|OpenSans)-/);
      expect(font.lookup(PDFName.of('ToUnicode'))).toBeInstanceOf(PDFRawStream);
      const inner = font.lookup(PDFName.of('DescendantFonts'), PDFArray).lookup(0, PDFDict);
      const descriptor = inner.lookup(PDFName.of('FontDescriptor'), PDFDict);
      const file = descriptor.lookup(PDFName.of('FontFile2'));
      if (!(file instanceof PDFRawStream)) throw new Error('A font without its file.');
      expect(decodePDFRawStream(file).decode().length).toBe(
        Number(String(file.dict.get(PDFName.of('Length1')))),
      );
    }
    expect(document.getPageCount()).toBe(1);
  });

  it('show drawings as drawings', async () => {
    const { dicts } = await objectsOf(pdf);
    expect(dicts.filter((dict) => named(dict, 'Subtype') === 'Image')).toEqual([]);
    const commands = await commandsOf(pdf);
    expect(commands.match(/ c\b/g)?.length).toBeGreaterThan(100);
    expect(commands).toMatch(/\[\S+ \S+\] 0 d/);
    expect(commands).toContain('W n');
  });

  it('write every number plainly, and leave the graphics state as they found it', async () => {
    const commands = await commandsOf(pdf);
    expect(commands).not.toMatch(/\de[-+]?\d|NaN|Infinity|undefined/);
    const count = (word: string) => commands.split('\n').filter((line) => line === word).length;
    expect(count('q')).toBe(count('Q'));
    expect(count('q')).toBeGreaterThan(0);
    expect(count('BT')).toBe(count('ET'));
  });

  it('show see-through ink with the alpha that was asked for', async () => {
    const page = await press.layOut(oneBox('a', { backgroundColor: 'rgba(0, 0, 0, 0.25)' }));
    const bytes = await press.toPdf(printOf(page));
    const { dicts } = await objectsOf(bytes);
    const resources = dicts.find((dict) => dict.has(PDFName.of('ExtGState')));
    const state = resources?.lookup(PDFName.of('ExtGState'), PDFDict).lookup(PDFName.of('A250'), PDFDict);
    expect(String(state?.get(PDFName.of('ca')))).toBe('0.25');
    // The words after it are opaque again.
    expect(await commandsOf(bytes)).toMatch(/\/A250 gs.*\/A1000 gs.*TJ/s);
  });
});

describe('what a PDF says of itself', () => {
  it('is its title, subject, maker and day, and never the time', async () => {
    const { info } = await readPdf(pdf);
    expect(info).toMatchObject({
      Title: 'Mill Pond School, east tank: Łódź & “Ελλ”',
      Subject: 'Care of a tank',
      Creator: 'Bedfirst',
      Language: 'en',
      CreationDate: 'D:20260504',
    });
  });

  it('is shown: the title in the window, the metadata also as XMP', async () => {
    const { document } = await objectsOf(pdf);
    const { catalog } = document;
    const preferences = catalog.lookup(PDFName.of('ViewerPreferences'), PDFDict);
    expect(String(preferences.get(PDFName.of('DisplayDocTitle')))).toBe('true');
    expect(catalog.lookup(PDFName.of('Lang'), PDFHexString).decodeText()).toBe('en');
    const stream = catalog.lookup(PDFName.of('Metadata'));
    const xmp = stream instanceof PDFRawStream ? new TextDecoder().decode(stream.contents) : '';
    expect(xmp).toContain('east tank: Łódź &amp; “Ελλ”</rdf:li>');
    expect(xmp).toContain('<dc:language><rdf:Bag><rdf:li>en</rdf:li>');
  });

  it('carries its attachment unchanged', async () => {
    const { attachments } = await readPdf(pdf);
    expect(attachments).toHaveLength(1);
    expect(attachments[0]?.filename).toBe('east tank.json');
    expect(attachments[0]?.description).toBe('The system this card was made from');
    expect(new TextDecoder().decode(attachments[0]?.content)).toBe(attached);
    const { dicts, document } = await objectsOf(pdf);
    const file = dicts.find((dict) => named(dict, 'Type') === 'Filespec');
    expect(file && named(file, 'AFRelationship')).toBe('Source');
    expect(document.catalog.has(PDFName.of('AF'))).toBe(true);
    const stream = dicts.find((dict) => named(dict, 'Type') === 'EmbeddedFile');
    expect(stream && named(stream, 'Subtype')).toBe('application/json');
  });

  it('has no attachment and no date where none is given', async () => {
    const bytes = await press.toPdf({ pages: [dense], title: 'A', lang: 'en' });
    const read = await readPdf(bytes);
    expect(read.attachments).toEqual([]);
    expect(read.info).not.toHaveProperty('CreationDate');
  });

  it('is refused for a day that is none, and for no pages', async () => {
    await expect(press.toPdf({ ...printOf(dense), date: '4 May' })).rejects.toThrow('not "4 May"');
    await expect(press.toPdf(printOf())).rejects.toThrow('at least one page');
  });
});

describe('the bytes of a PDF', () => {
  it('are the same for the same sheet, laid out anew by another press', async () => {
    const another = await nodePress();
    const again = await another.toPdf(printOf(await another.layOut(denseSheet())));
    expect(Buffer.from(again).equals(Buffer.from(pdf))).toBe(true);
  });

  it('differ where the sheet differs', async () => {
    const [one, two] = await Promise.all(['one', 'two'].map((text) => press.layOut(oneBox(text))));
    if (!one || !two) throw new Error('Two pages were laid out.');
    const files = await Promise.all([one, two].map((page) => press.toPdf(printOf(page))));
    expect(Buffer.from(files[0] ?? '').equals(Buffer.from(files[1] ?? ''))).toBe(false);
  });

  it('are the same for a page that was handed over by a worker', async () => {
    const copied = await press.toPdf(printOf(structuredClone(dense)));
    expect(Buffer.from(copied).equals(Buffer.from(pdf))).toBe(true);
  });
});

describe('the boxes of a PDF', () => {
  it('say the trimmed size as well', async () => {
    const { dicts } = await objectsOf(pdf);
    const page = dicts.find((dict) => named(dict, 'Type') === 'Page');
    expect(page && numbers(page, 'TrimBox')).toEqual([0, 0, 595.276, 841.89]);
  });
});
