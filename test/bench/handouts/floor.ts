/** The lowest floor: `floor.ts replayed COUNT FOLDER` packs the same objects once more, and loads nothing else. */
import { readFileSync } from 'node:fs';
import { join } from 'node:path';
import { pdfFile } from '../../../src/paper/pdfFile.ts';
import { deflateSync } from 'node:zlib';
import { tell, written } from './told.ts';

const [, , folder = '.'] = process.argv.slice(2);
tell(await written(join(folder, 'floor.pdf'), replayed()));

/** As ours are packed. */
function deflated(bytes: Uint8Array): Uint8Array {
  const short = { level: 6, memLevel: 3, windowBits: 12, chunkSize: 4096 };
  return deflateSync(bytes, bytes.length > 20_000 ? { level: 3 } : short);
}

/** What was done, the highest number before it, the object's own, and what it holds. */
type Logged = [string, number, number, string, string];

async function* replayed(): AsyncGenerator<Uint8Array, void, void> {
  const file = pdfFile(deflated);
  let waiting = 0;
  for (const line of readFileSync(join(folder, 'objects.jsonl'), 'utf8').split('\n')) {
    const [what, last, number, first, second] = JSON.parse(line) as Logged;
    file.last(last);
    if (what === 'o') file.object(number, first);
    else if (what === 's') file.stream(number, first, Buffer.from(second, 'latin1'));
    else if (what === 'w') file.asWritten(number, Buffer.from(first, 'latin1'));
    else file.end(first);
    waiting += line.length;
    if (waiting < 64_000 && what !== 'e') continue;
    waiting = 0;
    yield file.taken();
  }
}
