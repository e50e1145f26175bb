import { readFile } from 'node:fs/promises';
import { createRequire } from 'node:module';
import { deflateSync, inflateSync } from 'node:zlib';
import type { Resvg } from '@resvg/resvg-js';
import { fontSources } from './fonts.ts';
import { type Engine, layOut } from './layOut.ts';
import { outlines } from './outlines.ts';
import { type Deflate, pdfFile } from './pdfFile.ts';
import type { Press } from './press.ts';
import { asLaidOut, fillStencil, stencilOf } from './stencil.ts';
import { toPdf } from './toPdf.ts';
import { type Raster, toPng } from './toPng.ts';
import { toStackPdf } from './toStackPdf.ts';
import { toSvg } from './toSvg.ts';
import { type TypeCase, typeCase } from './typeCase.ts';
import { packFile } from './packs.ts';
import { uncoveredIn } from './uncovered.ts';
import { zipOf } from './zip.ts';

const packages = createRequire(import.meta.url);

/** What the press is made of, for those who test its parts. */
export type Parts = {
  readonly types: TypeCase;
  readonly engine: Engine;
  readonly raster: Raster;
  readonly deflate: Deflate;
};

/** The parts of the press in Node, from the installed packages. */
export async function nodeParts(): Promise<Parts> {
  const files = await Promise.all(
    fontSources.map(async ({ file, ...font }) => ({ ...font, woff: await readFile(packages.resolve(file)) })),
  );
  return {
    types: typeCase(files, {
      inflate: (packed) => inflateSync(packed),
      woff: (pack, weight) => readFile(packages.resolve(packFile(pack, weight))),
      slices: async (family) =>
        JSON.parse(await readFile(packages.resolve(`@fontsource/${family}/unicode.json`), 'utf8')),
    }),
    deflate: deflated,
    engine: async (tree, options) => (await theEngine())(tree, options),
    raster: (svg) => {
      // Few prints have pictures, and it is slow to load.
      const { Resvg: Raster_ } = packages('@resvg/resvg-js') as { readonly Resvg: typeof Resvg };
      return new Raster_(svg, { font: { loadSystemFonts: false } }).render().asPng();
    },
  };
}

let engine: Promise<Engine> | undefined;

/** Loaded for the first sheet that has to be laid out. */
function theEngine(): Promise<Engine> {
  const load = async (): Promise<Engine> => {
    const { default: satori, init } = await import('satori/standalone');
    await init(await readFile(packages.resolve('satori/layout.wasm')));
    return satori as Engine;
  };
  engine ??= load();
  return engine;
}

/**
 * Node's own is several times as fast. Most of what is packed is short, and large tables and buffers take longer to make
 * than to use; in what is long, a longer search finds hardly anything more.
 */
const deflated: Deflate = (bytes) =>
  deflateSync(
    bytes,
    bytes.length > 20_000 ? { level: 3 } : { level: 6, memLevel: 3, windowBits: 12, chunkSize: 4096 },
  );

export async function nodePress(): Promise<Press> {
  const { types, engine, raster, deflate } = await nodeParts();
  return {
    layOut: (sheet) => layOut(sheet, types, engine),
    layOutAnew: (sheet) => layOut(sheet, types, engine),
    toPdf: async (print) => {
      await types.read(print.pages);
      return toPdf(print, types.typeOf);
    },
    uncovered: (texts) => uncoveredIn(texts, types),
    stencilOf,
    fill: (stencil, values, pictures) => fillStencil(stencil, { values, pictures }, types),
    asLaidOut: (page) => asLaidOut(page, types.typeOf(page)),
    toStackPdf: (stack) => toStackPdf(stack, types, pdfFile(deflate)),
    toZip: zipOf,
    draw: (page) => outlines(page, types.typeOf(page)),
    toSvg: (page, carries) => toSvg(page, types.typeOf(page), carries),
    toPng: async (page, options) => {
      await types.read([page]);
      return toPng(page, types.typeOf(page), options, raster);
    },
  };
}
