/** One measured process of the bench: `one.ts KIND COUNT FOLDER`. Tells its bytes, pages and peak memory as JSON. */
import { closeSync, openSync, readFileSync, writeFileSync, writeSync } from 'node:fs';
import { join } from 'node:path';
import { nodeParts, nodePress } from '../../../src/paper/node.ts';
import { type PdfFile, pdfFile } from '../../../src/paper/pdfFile.ts';
import { toStackPdf } from '../../../src/paper/toStackPdf.ts';
import { peers } from './peers.ts';
import { plainOf } from './plain.ts';
import { handoutSets } from './roster.ts';

const [kind = '', counted = '1', folder = '.'] = process.argv.slice(2);
const count = Number(counted);
const about = { title: 'Worksheets', lang: 'en', date: '2031-05-12' };
const out = join(folder, `${kind}.pdf`);

const bytes = await made();
const { maxRSS } = process.resourceUsage();
process.stdout.write(`${JSON.stringify({ bytes, memory_MB: Math.round(maxRSS / 1024) })}\n`);
process.exit(0);

async function made(): Promise<number> {
  if (kind === 'ours') {
    const press = await nodePress();
    return written(press.toStackPdf({ ...about, sets: await handoutSets(press, count) }));
  }
  if (kind === 'prepare') return prepared();
  if (kind === 'floor') return replayed();
  const peer = peers[kind];
  if (peer === undefined) throw new RangeError(`there is no peer ${kind}`);
  const made = await peer(JSON.parse(readFileSync(join(folder, 'plain.json'), 'utf8')), folder);
  writeFileSync(out, made);
  return made.length;
}

async function written(parts: AsyncIterable<Uint8Array>): Promise<number> {
  const file = openSync(out, 'w');
  let size = 0;
  for await (const part of parts) size += writeSync(file, part);
  closeSync(file);
  return size;
}

/** What the floor writes and what the peers draw, made beforehand and not timed. */
async function prepared(): Promise<number> {
  const { types } = await nodeParts();
  const press = await nodePress();
  const log: string[] = [];
  const recording = (file: PdfFile): PdfFile => ({
    ...file,
    object: (number, text) => {
      log.push(JSON.stringify(['o', number, text]));
      file.object(number, text);
    },
    stream: (number, entries, data) => {
      log.push(JSON.stringify(['s', number, entries, Buffer.from(data).toString('latin1')]));
      return file.stream(number, entries, data);
    },
    asWritten: (number, data) => {
      log.push(JSON.stringify(['w', number, Buffer.from(data).toString('latin1')]));
      file.asWritten(number, data);
    },
    end: (entries) => {
      log.push(JSON.stringify(['e', file.last(), entries]));
      file.end(entries);
    },
  });
  const stack = { ...about, sets: await handoutSets(press, count) };
  for await (const _ of toStackPdf(stack, types, recording(pdfFile()))) {
    // Only what is written is wanted here.
  }
  writeFileSync(join(folder, 'objects.jsonl'), log.join('\n'));
  writeFileSync(
    join(folder, 'plain.json'),
    JSON.stringify(await plainOf(await handoutSets(press, count), types.typeOf)),
  );
  return 0;
}

/** The same objects, written without laying anything out. */
async function replayed(): Promise<number> {
  const file = pdfFile();
  async function* parts(): AsyncGenerator<Uint8Array, void, void> {
    let waiting = 0;
    for (const line of readFileSync(join(folder, 'objects.jsonl'), 'utf8').split('\n')) {
      const [what, number, first, second] = JSON.parse(line) as [string, number, string, string];
      file.last(number);
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
  return written(parts());
}
