/**
 * A file as a line of plain characters, with its length and checksum. It can stand in an SVG, a PNG or a PDF as it is,
 * is found again by its first word however the file around it was cut or changed, and shows whether it is whole.
 */
import { deflateSync, inflateSync } from 'fflate';
import { checksum } from './md5.ts';
import type { Attachment } from './print.ts';

const opens = 'bedfirst-parcel-1';
const closes = 'end-of-parcel';

export function parcelOf({ name, bytes }: Attachment): string {
  return [
    opens,
    encodeURIComponent(name),
    bytes.length,
    checksum(bytes),
    base64(deflateSync(bytes)),
    closes,
  ].join(' ');
}

/** What the copies of a file inside another say: none is there, none is whole, they say different things, or the file. */
export type Unpacked =
  | { readonly state: 'none' | 'damaged' | 'different' }
  | { readonly state: 'whole'; readonly bytes: Uint8Array };

/** Looks for all parcels of this name, whatever they lie in; `others` are copies that were found in another way. */
export function unpack(inside: Uint8Array, name: string, others: readonly Uint8Array[] = []): Unpacked {
  const text = new TextDecoder('latin1').decode(inside);
  const whole = [...others, ...[...text.matchAll(parcels)].flatMap((found) => opened(found, name))];
  const [first] = whole;
  if (first === undefined) return { state: text.includes(opens) ? 'damaged' : 'none' };
  return whole.every((each) => checksum(each) === checksum(first))
    ? { state: 'whole', bytes: first }
    : { state: 'different' };
}

/** The longest file that is opened: whoever writes a parcel may promise a length, but not fill the memory. */
const most = 4_000_000;
const parcels = new RegExp(`${opens} ([\\w.%-]+) (\\d{1,7}) ([0-9a-f]{32}) ([A-Za-z0-9+/=]+) ${closes}`, 'g');

/** The file, if it is the one that is looked for and nothing of it was changed. */
function opened(
  [, name = '', length = '', sum, packed = '']: RegExpMatchArray,
  wanted: string,
): Uint8Array[] {
  if (name !== encodeURIComponent(wanted) || Number(length) > most) return [];
  try {
    const bytes = inflateSync(fromBase64(packed), { out: new Uint8Array(Number(length)) });
    return bytes.length === Number(length) && checksum(bytes) === sum ? [bytes] : [];
  } catch {
    return [];
  }
}

function base64(bytes: Uint8Array): string {
  return btoa([...bytes].map((byte) => String.fromCharCode(byte)).join(''));
}

function fromBase64(text: string): Uint8Array {
  return Uint8Array.from(atob(text), (character) => character.charCodeAt(0));
}
