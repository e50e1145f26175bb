/** Opens a printed card or a saved record: finds the system in it, and refuses whatever is not whole or not ours. */
import type { Problem } from '../core/problem.ts';
import type { Facts } from '../schemas/facts.ts';
import type { SystemFile } from '../schemas/systemFile.ts';
import { readRecord } from '../schemas/systemRecord.ts';
import { toSystem } from '../schemas/toSystem.ts';
import { decodeUtf8 } from '../schemas/utf8.ts';
import { recordName } from '../sheets/sheetPrint.ts';

type Opened = { readonly raw: SystemFile } | { readonly problems: readonly Problem[] };

export async function openRecord(bytes: Uint8Array, facts: Facts): Promise<Opened> {
  if (bytes.length === 0) return refused('emptyFile');
  const record = isPdf(bytes) ? await attached(bytes) : bytes;
  const decoded = record === null ? null : decodeUtf8(record);
  if (decoded === null || 'wrongAt' in decoded) return refused('notRecord');
  const read = readRecord(decoded.text);
  if ('problems' in read) return read;
  // Nothing is taken over in part: what does not pass as a whole is refused with its reasons.
  const checked = toSystem(read.raw, facts);
  return 'problems' in checked ? checked : { raw: checked.raw };
}

function refused(code: 'emptyFile' | 'notRecord'): Opened {
  return { problems: [{ code, place: [] }] };
}

function isPdf(bytes: Uint8Array): boolean {
  return new TextDecoder('latin1').decode(bytes.subarray(0, 1024)).includes('%PDF-');
}

/** What reads PDF is large, so it is loaded when the first one comes. */
async function attached(bytes: Uint8Array): Promise<Uint8Array | null> {
  const { readAttachment } = await import('../paper/readAttachment.ts');
  return readAttachment(bytes, recordName);
}
