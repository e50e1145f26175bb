import { pixelsPerMetre, pixelsPerPoint } from './measures.ts';
import { outlines } from './outlines.ts';
import type { Page } from './page.ts';
import { parcelOf } from './parcel.ts';
import type { Attachment } from './print.ts';
import type { Type } from './type.ts';

/** Turns an SVG of a known pixel size into a PNG. Each runtime brings its own. */
export type Raster = (svg: string) => Uint8Array;

export type Picture = {
  readonly dpi: number;
  /** A file that travels inside the picture, once before what is seen and once behind it. */
  readonly carries?: Attachment;
};

/** More than these, and phones and browsers show nothing: 4096 by 4096. */
const mostPixels = 4096 * 4096;

/** The highest resolution, in whole dots per inch, at which a page stays within what every device shows. */
export function finestDpi({ width_pt, height_pt }: Page): number {
  const atOneDpi = width_pt * height_pt * pixelsPerPoint(1) ** 2;
  let dpi = Math.ceil(Math.sqrt(mostPixels / atOneDpi));
  while (pixelsOf(width_pt, dpi) * pixelsOf(height_pt, dpi) > mostPixels) dpi -= 1;
  return Math.min(dpi, 1200);
}

function pixelsOf(length_pt: number, dpi: number): number {
  return Math.round(length_pt * pixelsPerPoint(dpi));
}

/** A page as a PNG on white, of the exact number of pixels for its size and resolution, which the file also tells. */
export function toPng(page: Page, type: Type, { dpi, carries }: Picture, raster: Raster): Uint8Array {
  const finest = finestDpi(page);
  if (!(0 < dpi && dpi <= finest))
    throw new Error(`A picture of this page cannot have ${dpi} dots per inch; 1 to ${finest} can be had.`);
  const [width, height] = [pixelsOf(page.width_pt, dpi), pixelsOf(page.height_pt, dpi)];
  const { definitions, marks } = outlines(page, type);
  const svg = [
    `<svg xmlns="http://www.w3.org/2000/svg" width="${width}" height="${height}"`,
    ` viewBox="0 0 ${page.width_pt} ${page.height_pt}" preserveAspectRatio="none">`,
    `<defs>${definitions.join('')}</defs>`,
    `<path d="M0 0H${page.width_pt}V${page.height_pt}H0Z" fill="#ffffff"/>`,
    `${marks.join('')}</svg>`,
  ].join('');
  const carried = carries ? [chunkOf('tEXt', latin1(`${keyword}\0${parcelOf(carries)}`))] : [];
  const png = raster(svg);
  return joined([
    png.subarray(0, afterHeader),
    resolutionChunk(dpi),
    ...carried,
    png.subarray(afterHeader, png.length - endLength),
    ...carried,
    png.subarray(png.length - endLength),
  ]);
}

/** The PNG signature and its first chunk, IHDR, which is always 25 bytes long (W3C PNG, 5.2 and 11.2.2). */
const afterHeader = 8 + 25;
/** The last chunk, IEND, holds nothing (W3C PNG, 11.2.5). */
const endLength = 12;
/** What the text in the picture is (W3C PNG, 11.3.4.2 and 11.3.4.3). */
const keyword = 'Bedfirst';

/** The pHYs chunk (W3C PNG, 11.3.5.3): pixels per metre across and down. */
function resolutionChunk(dpi: number): Uint8Array {
  const bytes = new Uint8Array(9);
  const view = new DataView(bytes.buffer);
  view.setUint32(0, Math.round(pixelsPerMetre(dpi)));
  view.setUint32(4, Math.round(pixelsPerMetre(dpi)));
  view.setUint8(8, 1);
  return chunkOf('pHYs', bytes);
}

/** Length, name, what it holds, and a checksum of the last two (W3C PNG, 5.3). */
function chunkOf(name: 'pHYs' | 'tEXt', bytes: Uint8Array): Uint8Array {
  const chunk = new Uint8Array(12 + bytes.length);
  const view = new DataView(chunk.buffer);
  view.setUint32(0, bytes.length);
  chunk.set(latin1(name), 4);
  chunk.set(bytes, 8);
  view.setUint32(8 + bytes.length, crc32(chunk.subarray(4, 8 + bytes.length)));
  return chunk;
}

function latin1(text: string): Uint8Array {
  return Uint8Array.from(text, (character) => character.charCodeAt(0));
}

function joined(parts: readonly Uint8Array[]): Uint8Array {
  const whole = new Uint8Array(parts.reduce((sum, part) => sum + part.length, 0));
  let at = 0;
  for (const part of parts) {
    whole.set(part, at);
    at += part.length;
  }
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
