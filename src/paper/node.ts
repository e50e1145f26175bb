import { readFile } from 'node:fs/promises';
import { createRequire } from 'node:module';
import { Resvg } from '@resvg/resvg-js';
import satori, { init } from 'satori/standalone';
import { fontSources } from './fonts.ts';
import { type Engine, layOut } from './layOut.ts';
import type { Press } from './press.ts';
import { toPdf } from './toPdf.ts';
import { type Raster, toPng } from './toPng.ts';
import { toSvg } from './toSvg.ts';
import { type Type, typeFrom } from './type.ts';

const packages = createRequire(import.meta.url);

/** What the press is made of, for those who test its parts. */
export type Parts = { readonly type: Type; readonly engine: Engine; readonly raster: Raster };

/** The parts of the press in Node, from the installed packages. */
export async function nodeParts(): Promise<Parts> {
  const [files] = await Promise.all([
    Promise.all(
      fontSources.map(async ({ file, ...font }) => ({
        ...font,
        woff: await readFile(packages.resolve(file)),
      })),
    ),
    readFile(packages.resolve('satori/layout.wasm')).then(init),
  ]);
  return {
    type: typeFrom(files),
    engine: satori as Engine,
    raster: (svg) => new Resvg(svg, { font: { loadSystemFonts: false } }).render().asPng(),
  };
}

export async function nodePress(): Promise<Press> {
  const { type, engine, raster } = await nodeParts();
  return {
    layOut: (sheet) => layOut(sheet, type, engine),
    toPdf: (print) => toPdf(print, type),
    toSvg: (page) => toSvg(page, type),
    toPng: async (page, options) => toPng(page, type, options, raster),
  };
}
