import { Zip, ZipPassThrough } from 'fflate';

/** A file on its way into a zip. */
export type ZipEntry = { readonly name: string; readonly bytes: AsyncIterable<Uint8Array> };

/** Files as one zip, piece by piece, each as it is: a PDF is packed already. */
export async function* zipOf(entries: AsyncIterable<ZipEntry>): AsyncGenerator<Uint8Array, void, void> {
  const waiting: Uint8Array[] = [];
  const zip = new Zip((error, bytes) => {
    if (error) throw error;
    waiting.push(bytes);
  });
  for await (const { name, bytes } of entries) {
    const entry = new ZipPassThrough(name);
    // No clock: the same files give the same zip.
    entry.mtime = new Date(1980, 0, 1);
    zip.add(entry);
    for await (const some of bytes) entry.push(some);
    entry.push(new Uint8Array(), true);
    yield* waiting.splice(0);
  }
  zip.end();
  yield* waiting.splice(0);
}
