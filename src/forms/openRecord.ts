/** Opens a printed card or a saved record: finds the system in it, and refuses whatever is not whole or not ours. */
import type { Problem } from '../core/problem.ts';
import { type Unpacked, unpack } from '../paper/parcel.ts';
import type { Facts } from '../schemas/facts.ts';
import type { SystemFile } from '../schemas/systemFile.ts';
import { readRecord } from '../schemas/systemRecord.ts';
import { toSystem } from '../schemas/toSystem.ts';
import { decodeUtf8 } from '../schemas/utf8.ts';
import { recordName } from '../sheets/sheetPrint.ts';

type Opened = { readonly raw: SystemFile } | { readonly problems: readonly Problem[] };

export async function openRecord(bytes: Uint8Array, facts: Facts): Promise<Opened> {
  if (bytes.length === 0) return refused('emptyFile');
  const record = isRecord(bytes) ? ({ state: 'whole', bytes } as const) : await carried(bytes);
  if (record.state !== 'whole') return refused(refusals[record.state]);
  const decoded = decodeUtf8(record.bytes);
  if ('wrongAt' in decoded) return refused('notRecord');
  const read = readRecord(decoded.text);
  if ('problems' in read) return read;
  // Nothing is taken over in part: what does not pass as a whole is refused with its reasons.
  const checked = toSystem(read.raw, facts);
  return 'problems' in checked ? checked : { raw: checked.raw };
}

const refusals = { none: 'notRecord', damaged: 'recordDamaged', different: 'recordsDiffer' } as const;

function refused(code: 'emptyFile' | (typeof refusals)[keyof typeof refusals]): Opened {
  return { problems: [{ code, place: [] }] };
}

/** A record by itself begins like one; everything else is a sheet that may carry one. */
function isRecord(bytes: Uint8Array): boolean {
  return /^\s*\{/.test(startOf(bytes));
}

/** A PDF has a copy that any viewer shows, and like every picture copies that survive what breaks the rest. */
async function carried(bytes: Uint8Array): Promise<Unpacked> {
  if (!startOf(bytes).includes('%PDF-')) return unpack(bytes, recordName);
  // What reads PDF is large, so it is loaded when the first one comes.
  const { readAttachment } = await import('../paper/readAttachment.ts');
  const attached = await readAttachment(bytes, recordName);
  return unpack(bytes, recordName, attached ? [attached] : []);
}

function startOf(bytes: Uint8Array): string {
  return new TextDecoder('latin1').decode(bytes.subarray(0, 1024));
}
