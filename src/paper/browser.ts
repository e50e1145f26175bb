/// <reference types="vite/client" />
import rasterUrl from '@resvg/resvg-wasm/index_bg.wasm?url';
import layoutUrl from 'satori/layout.wasm?url';
import { fontUrls } from './browserFonts.ts';
import { fontSources } from './fonts.ts';
import type { Engine } from './layOut.ts';
import type { PackShelf } from './openPacks.ts';
import type { Press } from './press.ts';
import { asLaidOut, fillStencil, stencilOf } from './stencil.ts';
import type { Raster } from './toPng.ts';

/**
 * The press in a page or a worker. It fetches only from where the page itself comes from. What writes PDF and PNG is
 * loaded when first asked for.
 */
export async function browserPress(): Promise<Press> {
  // Imported here and not above, so that a page can show itself before the press arrives.
  const [{ typeCase }, { layOut }, { refilling }, { outlines }, { toSvg }, satori, layoutWasm, files] =
    await Promise.all([
      import('./typeCase.ts'),
      import('./layOut.ts'),
      import('./refill.ts'),
      import('./outlines.ts'),
      import('./toSvg.ts'),
      import('satori/standalone'),
      load(layoutUrl),
      Promise.all(
        fontSources.map(async ({ file: _, ...font }) => ({
          ...font,
          woff: await load(fontUrls[font.name][font.weight]),
        })),
      ),
    ]);
  await satori.init(layoutWasm);
  const types = typeCase(files, packShelf);
  const raster = once(loadRaster);
  return {
    layOut: refilling(types, satori.default as Engine),
    layOutAnew: (sheet) => layOut(sheet, types, satori.default as Engine),
    draw: (page) => outlines(page, types.typeOf(page)),
    toPdf: async (print) => {
      const [{ toPdf }] = await Promise.all([import('./toPdf.ts'), types.read(print.pages)]);
      return toPdf(print, types.typeOf);
    },
    uncovered: async (texts) => (await import('./uncovered.ts')).uncoveredIn(texts, types),
    stencilOf,
    fill: (stencil, values, pictures) => fillStencil(stencil, { values, pictures }, types),
    asLaidOut: (page) => asLaidOut(page, types.typeOf(page)),
    toStackPdf: async function* (stack) {
      const { toStackPdf } = await import('./toStackPdf.ts');
      yield* toStackPdf(stack, types);
    },
    toZip: async function* (entries) {
      const { zipOf } = await import('./zip.ts');
      yield* zipOf(entries);
    },
    toSvg: (page, carries) => toSvg(page, types.typeOf(page), carries),
    toPng: async (page, options) => {
      const [{ toPng }, turn] = await Promise.all([import('./toPng.ts'), raster(), types.read([page])]);
      return toPng(page, types.typeOf(page), options, turn);
    },
  };
}

/** The list of packs is long, and itself loaded only for sheets that need one. */
const packShelf: PackShelf = {
  woff: (pack, weight) => later(async () => load((await import('./browserPacks.ts')).packUrl(pack, weight))),
  slices: (family) => later(async () => (await import('./browserPacks.ts')).packSlices[family]()),
};

/** Packs are asked for long after the page was opened, perhaps where there is no network. */
async function later<Thing>(read: () => Promise<Thing>): Promise<Thing> {
  try {
    return await read();
  } catch (cause) {
    throw new Error('The fonts for these letters did not load. They need a network once.', { cause });
  }
}

async function load(url: string): Promise<Uint8Array<ArrayBuffer>> {
  const answer = await fetch(url);
  if (!answer.ok) throw new Error(`A part of the press did not load: ${url} (${answer.status}).`);
  return new Uint8Array(await answer.arrayBuffer());
}

function once<Thing>(make: () => Promise<Thing>): () => Promise<Thing> {
  let made: Promise<Thing> | undefined;
  return () => {
    made ??= make();
    return made;
  };
}

async function loadRaster(): Promise<Raster> {
  const [{ initWasm, Resvg }, wasm] = await Promise.all([import('@resvg/resvg-wasm'), load(rasterUrl)]);
  await initWasm(wasm);
  return (svg) => {
    const drawing = new Resvg(svg, { font: { loadSystemFonts: false } });
    const picture = drawing.render();
    const png = picture.asPng();
    // What WebAssembly holds is not freed by itself.
    picture.free();
    drawing.free();
    return png;
  };
}
