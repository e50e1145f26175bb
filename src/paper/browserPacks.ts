/// <reference types="vite/client" />
import { type Pack, packFile, type SlicedFamily, type Slices } from './packs.ts';
import type { Weight } from './page.ts';

/** Where the bundler put the files of the packs. A bundler finds files by a pattern only from where they lie. */
const urls = import.meta.glob<string>(
  [
    '../../node_modules/@fontsource/noto-sans-{arabic,hebrew,devanagari,bengali,tamil,thai}/files/*-{400,800}-normal.woff',
    '!**/*-{latin,latin-ext,greek-ext,cyrillic-ext,math,symbols}-{400,800}-normal.woff',
    '../../node_modules/@fontsource/noto-sans-{sc,jp,kr}/files/noto-sans-{sc,jp,kr}-[0-9]*-{400,800}-normal.woff',
  ],
  { query: '?url', import: 'default', eager: true },
);

export function packUrl(pack: Pack, weight: Weight): string {
  const file = packFile(pack, weight);
  const url = urls[`../../node_modules/${file}`];
  if (url === undefined) throw new Error(`There is no font file ${file}.`);
  return url;
}

/** Which slice has what, as the packages tell. */
export const packSlices: Readonly<Record<SlicedFamily, () => Promise<Slices>>> = {
  'noto-sans-sc': async () => (await import('@fontsource/noto-sans-sc/unicode.json')).default,
  'noto-sans-jp': async () => (await import('@fontsource/noto-sans-jp/unicode.json')).default,
  'noto-sans-kr': async () => (await import('@fontsource/noto-sans-kr/unicode.json')).default,
};
