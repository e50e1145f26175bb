/** The same sheets by other means, each as its makers would have it done. What they load is not one of our packages. */
import { writeFileSync } from 'node:fs';
import { createRequire } from 'node:module';
import { join } from 'node:path';
import type { Plain, PlainWords } from './plain.ts';

export type Peer = (plain: Plain, folder: string) => Promise<Uint8Array>;

/** The packages that each is made of; Chromium is there already. */
export const peerPackages: Readonly<Record<string, readonly string[]>> = {
  chromium: [],
  pdfkit: ['pdfkit@0.17.2'],
  pdfmake: ['pdfmake@0.2.20'],
  reactPdf: ['@react-pdf/renderer@4.3.1', 'react@19.2.0'],
  typst: ['@myriaddreamin/typst-ts-node-compiler@0.6.0'],
};

/* biome-ignore lint/suspicious/noExplicitAny: packages that are only there while they are measured have no types here. */
type Any = any;

function from(folder: string): (name: string) => Any {
  return createRequire(join(folder, 'package.json'));
}

function each(plain: Plain): readonly { readonly words: readonly PlainWords[]; readonly sheet: number }[] {
  return plain.pages.map(({ sheet, words }) => ({
    sheet,
    words: [...(plain.sheets[sheet]?.words ?? []), ...words],
  }));
}

function fontFiles(plain: Plain, folder: string): Readonly<Record<string, string>> {
  return Object.fromEntries(
    Object.entries(plain.fonts).map(([name, base64]) => {
      const path = join(folder, `${name}.ttf`);
      writeFileSync(path, Buffer.from(base64, 'base64'));
      return [name, path];
    }),
  );
}

function escaped(text: string): string {
  return text.replace(/&/g, '&amp;').replace(/</g, '&lt;');
}

export const peers: Readonly<Record<string, Peer>> = {
  chromium: async (plain) => {
    const faces = Object.entries(plain.fonts).map(
      ([name, base64]) => `@font-face{font-family:${name};src:url(data:font/ttf;base64,${base64})}`,
    );
    const pages = each(plain).map(({ words, sheet }) => {
      const lines = (plain.sheets[sheet]?.lines ?? []).map(
        ({ from: [x], to: [x2, y], width }) =>
          `<i style="left:${Math.min(x, x2)}pt;top:${y}pt;width:${Math.abs(x2 - x)}pt;height:${width}pt"></i>`,
      );
      const spans = words.map(
        ({ text, x, y, size, font }) =>
          `<span style="left:${x}pt;top:${y - size}pt;font:${size}pt/1 ${font}">${escaped(text)}</span>`,
      );
      return `<section>${lines.join('')}${spans.join(' ')}</section>`;
    });
    const css = `${faces.join('')}@page{size:${plain.width}pt ${plain.height}pt;margin:0}section{position:relative;height:${plain.height - 1}pt;break-after:page}span,i{position:absolute;white-space:pre}i{background:black}body{margin:0}`;
    const { openBrowser } = await import('../../browser.ts');
    const browser = await openBrowser();
    const page = await browser.newPage();
    await page.setContent(`<html lang="en"><title>Worksheets</title><style>${css}</style>${pages.join('')}`, {
      timeout: 0,
    });
    const bytes = await page.pdf({ preferCSSPageSize: true, tagged: true, printBackground: true });
    await browser.close();
    return bytes;
  },
  pdfkit: async (plain, folder) => {
    const PDFDocument = from(folder)('pdfkit');
    const document = new PDFDocument({ size: [plain.width, plain.height], margin: 0, autoFirstPage: false });
    const parts: Uint8Array[] = [];
    document.on('data', (part: Uint8Array) => parts.push(part));
    const ended = new Promise((done) => document.on('end', done));
    for (const [name, path] of Object.entries(fontFiles(plain, folder))) document.registerFont(name, path);
    for (const { words, sheet } of each(plain)) {
      document.addPage();
      for (const {
        from: [x, y],
        to: [x2, y2],
        width,
      } of plain.sheets[sheet]?.lines ?? [])
        document.lineWidth(width).moveTo(x, y).lineTo(x2, y2).stroke();
      for (const { text, x, y, size, font } of words)
        document.font(font).fontSize(size).text(text, x, y, { lineBreak: false, baseline: 'alphabetic' });
    }
    document.end();
    await ended;
    return Buffer.concat(parts);
  },
  pdfmake: async (plain, folder) => {
    const Printer = from(folder)('pdfmake');
    const files = fontFiles(plain, folder);
    const printer = new Printer(
      Object.fromEntries(Object.entries(files).map(([name, normal]) => [name, { normal }])),
    );
    const content = each(plain).flatMap(({ words, sheet }, at): Any[] => [
      { text: ' ', ...(at === 0 ? {} : { pageBreak: 'before' }) },
      {
        canvas: (plain.sheets[sheet]?.lines ?? []).map(
          ({ from: [x1, y1], to: [x2, y2], width: lineWidth }) => {
            return { type: 'line', x1, y1, x2, y2, lineWidth };
          },
        ),
        absolutePosition: { x: 0, y: 0 },
      },
      ...words.map(({ text, x, y, size, font }) => {
        return { text, font, fontSize: size, noWrap: true, absolutePosition: { x, y: y - size } };
      }),
    ]);
    const [font = ''] = Object.keys(files);
    const document = printer.createPdfKitDocument({
      ...{ pageSize: { width: plain.width, height: plain.height }, pageMargins: 0, content },
      defaultStyle: { font },
    });
    const parts: Uint8Array[] = [];
    document.on('data', (part: Uint8Array) => parts.push(part));
    const ended = new Promise((done) => document.on('end', done));
    document.end();
    await ended;
    return Buffer.concat(parts);
  },
  reactPdf: async (plain, folder) => {
    const load = from(folder);
    const { createElement } = load('react');
    const { pathToFileURL } = await import('node:url');
    const { Document, Page, Text, View, Font, renderToBuffer }: Any = await import(
      pathToFileURL(
        load.call(null, 'module').createRequire(join(folder, 'package.json')).resolve('@react-pdf/renderer'),
      ).href
    );
    for (const [family, src] of Object.entries(fontFiles(plain, folder))) Font.register({ family, src });
    const pages = each(plain).map(({ words, sheet }, at) =>
      createElement(
        Page,
        { key: at, size: [plain.width, plain.height] },
        ...(plain.sheets[sheet]?.lines ?? []).map(({ from: [x], to: [x2, y], width: height }, line) =>
          createElement(View, {
            key: `l${line}`,
            style: {
              position: 'absolute',
              left: Math.min(x, x2),
              top: y,
              width: Math.abs(x2 - x),
              height,
              backgroundColor: 'black',
            },
          }),
        ),
        ...words.map(({ text, x, y, size, font }, word) =>
          createElement(
            Text,
            {
              key: word,
              wrap: false,
              style: {
                position: 'absolute',
                left: x,
                top: y - size,
                width: 400,
                fontSize: size,
                fontFamily: font,
              },
            },
            text,
          ),
        ),
      ),
    );
    return renderToBuffer(createElement(Document, { title: 'Worksheets', language: 'en' }, ...pages));
  },
  typst: async (plain, folder) => {
    const { NodeCompiler } = from(folder)('@myriaddreamin/typst-ts-node-compiler');
    fontFiles(plain, folder);
    const compiler = NodeCompiler.create({ fontArgs: [{ fontPaths: [folder] }] });
    const quoted = (text: string) => JSON.stringify(text);
    const families = (font: string) => familyOf(font);
    const pages = each(plain).map(({ words, sheet }) =>
      [
        ...(plain.sheets[sheet]?.lines ?? []).map(
          ({ from: [x, y], to: [x2, y2], width }) =>
            `#place(line(start: (${x}pt, ${y}pt), end: (${x2}pt, ${y2}pt), stroke: ${width}pt))`,
        ),
        ...words.map(({ text, x, y, size, font }) => {
          const { family, weight } = families(font);
          return `#place(dx: ${x}pt, dy: ${y - size}pt, text(font: ${quoted(family)}, weight: ${weight}, size: ${size}pt, ${quoted(text)}))`;
        }),
      ].join('\n'),
    );
    const source = `#set page(width: ${plain.width}pt, height: ${plain.height}pt, margin: 0pt)\n#set document(title: "Worksheets")\n${pages.join('\n#pagebreak()\n')}`;
    return compiler.pdf({ mainFileContent: source });
  },
};

/** Typst finds fonts by the names in their files. */
function familyOf(font: string): { readonly family: string; readonly weight: number } {
  const weight = font.includes('ExtraBold') ? 800 : 400;
  const family = font.startsWith('Atkinson')
    ? 'Atkinson Hyperlegible Next'
    : font.startsWith('OpenSans')
      ? 'Open Sans'
      : (
          /^NotoSans(Arabic|Hebrew|Devanagari|Bengali|Tamil|Thai|SC|JP|KR)?/.exec(font)?.[0] ?? 'NotoSans'
        ).replace(/([a-z])([A-Z])/g, '$1 $2');
  return { family, weight };
}
