/**
 * The bytes of a PDF, written on as it grows: objects without data are packed together, and what is written can be
 * handed on at once, so that a print of any length takes little memory (ISO 32000-1, 7.5.7 and 7.5.8).
 */
import { zlibSync } from 'fflate';
import { objectTable } from './objectTable.ts';

/** Packs bytes (RFC 1950). A runtime may have a faster way than ours. */
export type Deflate = (bytes: Uint8Array) => Uint8Array;

export type PdfFile = {
  /** A number for a new object. */
  readonly next: () => number;
  /** The highest number so far; raised where somebody else counted on. */
  readonly last: (raised?: number) => number;
  /** An object that is no stream, such as `<</Type/Page>>`. */
  readonly object: (number: number, text: string) => void;
  /**
   * An object with data, packed; `entries` stand in its dictionary beside its length. Gives the checksum that deflate
   * makes of the data anyhow (RFC 1950, ADLER32).
   */
  readonly stream: (number: number, entries: string, bytes: Uint8Array) => string;
  /** An object as it is to be written, its data with it. */
  readonly asWritten: (number: number, bytes: Uint8Array) => void;
  /** Packs what others make streams of, as its own are packed. */
  readonly deflate: Deflate;
  /** All that was written since the last time. */
  readonly taken: () => Uint8Array;
  /** Ends the file; `entries` stand in its trailer. */
  readonly end: (entries: string) => void;
};

/** Objects are packed together up to this size: near the window in which deflate finds what it has seen. */
const mostPacked = 60_000;

const encoder = new TextEncoder();

function deflated(bytes: Uint8Array): Uint8Array {
  // Small tables: most of what is packed is short, and large ones take longer to make than to use.
  return zlibSync(bytes, { level: 6, mem: bytes.length > 20_000 ? 8 : 3 });
}

export function pdfFile(deflate: Deflate = deflated): PdfFile {
  let last = 0;
  let written = 0;
  let chunks: Uint8Array[] = [];
  let packed: { readonly number: number; readonly text: string }[] = [];
  let packedSize = 0;
  const found = objectTable();
  const next = (): number => {
    last += 1;
    return last;
  };
  const put = (bytes: Uint8Array): void => {
    chunks.push(bytes);
    written += bytes.length;
  };
  const asWritten = (number: number, bytes: Uint8Array): void => {
    found.set(number, { kind: 1, at: written, index: 0 });
    put(encoder.encode(`${number} 0 obj\n`));
    put(bytes);
    put(encoder.encode('\nendobj\n'));
  };
  const stream = (number: number, entries: string, bytes: Uint8Array): string => {
    const data = deflate(bytes);
    const head = `<<${entries}/Filter/FlateDecode/Length ${data.length}>>\nstream\n`;
    asWritten(number, joined([encoder.encode(head), data, encoder.encode('\nendstream')]));
    return [...data.subarray(-4)].map((byte) => byte.toString(16).padStart(2, '0')).join('');
  };
  const pack = (): void => {
    if (packed.length === 0) return;
    const own = next();
    let offset = 0;
    const places = packed.map(({ number, text }, index) => {
      found.set(number, { kind: 2, at: own, index });
      const place = `${number} ${offset}`;
      offset += text.length + 1;
      return place;
    });
    const head = `${places.join(' ')}\n`;
    const body = packed.map(({ text }) => text).join('\n');
    const entries = `/Type/ObjStm/N ${packed.length}/First ${head.length}`;
    [packed, packedSize] = [[], 0];
    stream(own, entries, encoder.encode(head + body));
  };
  put(new Uint8Array([...encoder.encode('%PDF-1.7\n%'), 0xe2, 0xe3, 0xcf, 0xd3, 0x0a]));
  return {
    next,
    last: (raised = 0) => {
      last = Math.max(last, raised);
      return last;
    },
    object: (number, text) => {
      packed.push({ number, text });
      packedSize += text.length;
      if (packedSize > mostPacked) pack();
    },
    stream,
    deflate,
    asWritten,
    taken: () => {
      const all = joined(chunks);
      chunks = [];
      return all;
    },
    end: (entries) => {
      pack();
      const own = next();
      const start = written;
      found.set(own, { kind: 1, at: start, index: 0 });
      stream(
        own,
        `/Type/XRef/Size ${last + 1}/W[1 4 2]/DecodeParms<</Predictor 12/Columns 7>>${entries}`,
        found.bytes(last + 1),
      );
      put(encoder.encode(`startxref\n${start}\n%%EOF\n`));
    },
  };
}

function joined(parts: readonly Uint8Array[]): Uint8Array {
  const all = new Uint8Array(parts.reduce((sum, part) => sum + part.length, 0));
  let at = 0;
  for (const part of parts) {
    all.set(part, at);
    at += part.length;
  }
  return all;
}
