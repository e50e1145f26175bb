import { browserPress } from '../../../src/paper/browser.ts';
import { denseSheet } from '../denseSheet.tsx';
import { namesSheet } from '../namesSheet.tsx';
import { printOf } from '../prints.ts';

/** What the browser made, as text that can be handed over. */
export type Made = {
  pdf: string;
  svg: string;
  png: string;
  /** A sheet of names in many scripts, and the packs of fonts that were fetched before it and for it. */
  names: string;
  packsBefore: readonly string[];
  packs: readonly string[];
  milliseconds: Record<string, number>;
};

export async function run(): Promise<Made> {
  const milliseconds: Record<string, number> = {};
  const timed = async <Thing>(name: string, make: () => Promise<Thing> | Thing): Promise<Thing> => {
    const start = performance.now();
    const made = await make();
    milliseconds[name] = performance.now() - start;
    return made;
  };
  const press = await timed('press', browserPress);
  await timed('layOut, first', () => press.layOut(denseSheet()));
  const page = await timed('layOut', () => press.layOut(denseSheet()));
  await timed('toPdf, first', () => press.toPdf(printOf(page)));
  const pdf = await timed('toPdf', () => press.toPdf(printOf(page)));
  await timed('toSvg, first', () => press.toSvg(page));
  const svg = await timed('toSvg', () => press.toSvg(page));
  const png = await timed('toPng at 100 dpi, first', () => press.toPng(page, { dpi: 100 }));
  const packsBefore = fetchedPacks();
  const names = await press.toPdf(printOf(await press.layOut(namesSheet())));
  return {
    ...{ pdf: base64(pdf), svg, png: base64(png), names: base64(names) },
    ...{ packsBefore, packs: fetchedPacks(), milliseconds },
  };
}

function base64(bytes: Uint8Array): string {
  let text = '';
  for (const byte of bytes) text += String.fromCharCode(byte);
  return btoa(text);
}

/** The names of the font files that were fetched, beyond those of every sheet. */
function fetchedPacks(): readonly string[] {
  return performance.getEntriesByType('resource').flatMap(({ name }) => {
    const [, file] =
      /(noto-sans-(?!latin|greek|cyrillic|vietnamese)[a-z]+-(?:[a-z]+|\d+)-\d+)-normal/.exec(name) ?? [];
    return file === undefined ? [] : [file];
  });
}
