/** What each measured process does at its end. */
import { closeSync, openSync, writeSync } from 'node:fs';

/** Writes as it comes; gives the bytes. */
export async function written(path: string, parts: AsyncIterable<Uint8Array>): Promise<number> {
  const file = openSync(path, 'w');
  let size = 0;
  for await (const part of parts) size += writeSync(file, part);
  closeSync(file);
  return size;
}

/** Tells bytes and peak memory, and ends the process whatever a library still has open. */
export function tell(bytes: number): never {
  const { maxRSS } = process.resourceUsage();
  process.stdout.write(`${JSON.stringify({ bytes, memory_MB: Math.round(maxRSS / 1024) })}\n`);
  process.exit(0);
}
