import { pixelsPerMetre, pixelsPerPoint } from './measures.ts';
import { outlines } from './outlines.ts';
import type { Page } from './page.ts';
import type { Type } from './type.ts';

/** Turns an SVG of a known pixel size into a PNG. Each runtime brings its own. */
export type Raster = (svg: string) => Uint8Array;

/** A page as a PNG on white, of the exact number of pixels for its size and resolution, which the file also tells. */
export function toPng(page: Page, type: Type, { dpi }: { readonly dpi: number }, raster: Raster): Uint8Array {
  if (!(0 < dpi && dpi <= 1200))
    throw new Error(`A picture cannot have ${dpi} dots per inch; 1 to 1200 can be had.`);
  const pixels = (length_pt: number) => Math.round(length_pt * pixelsPerPoint(dpi));
  const [width, height] = [pixels(page.width_pt), pixels(page.height_pt)];
  const { definitions, marks } = outlines(page, type);
  const svg = [
    `<svg xmlns="http://www.w3.org/2000/svg" width="${width}" height="${height}"`,
    ` viewBox="0 0 ${page.width_pt} ${page.height_pt}" preserveAspectRatio="none">`,
    `<defs>${definitions}</defs>`,
    `<path d="M0 0H${page.width_pt}V${page.height_pt}H0Z" fill="#ffffff"/>`,
    `${marks}</svg>`,
  ].join('');
  return withResolution(raster(svg), dpi);
}

/** The PNG signature and its first chunk, IHDR, which is always 25 bytes long (W3C PNG, 5.2 and 11.2.2). */
const afterHeader = 8 + 25;

/** Adds the pHYs chunk (W3C PNG, 11.3.5.3): pixels per metre across and down. */
function withResolution(png: Uint8Array, dpi: number): Uint8Array {
  const chunk = new Uint8Array(21);
  const view = new DataView(chunk.buffer);
  view.setUint32(0, 9);
  chunk.set(new TextEncoder().encode('pHYs'), 4);
  view.setUint32(8, Math.round(pixelsPerMetre(dpi)));
  view.setUint32(12, Math.round(pixelsPerMetre(dpi)));
  view.setUint8(16, 1);
  view.setUint32(17, crc32(chunk.subarray(4, 17)));
  const whole = new Uint8Array(png.length + chunk.length);
  whole.set(png.subarray(0, afterHeader));
  whole.set(chunk, afterHeader);
  whole.set(png.subarray(afterHeader), afterHeader + chunk.length);
  return whole;
}

/** W3C PNG, annex D. */
function crc32(bytes: Uint8Array): number {
  let crc = 0xffffffff;
  for (const byte of bytes) {
    crc ^= byte;
    for (let bit = 0; bit < 8; bit++) crc = crc & 1 ? (crc >>> 1) ^ 0xedb88320 : crc >>> 1;
  }
  return (crc ^ 0xffffffff) >>> 0;
}
