/** Our own process of the bench: `ours.ts ours|first|plans|alive|prepare COUNT FOLDER`. */
import { writeFileSync } from 'node:fs';
import { join } from 'node:path';
import { setFlagsFromString } from 'node:v8';
import { runInNewContext } from 'node:vm';
import { nodeParts, nodePress } from '../../../src/paper/node.ts';
import { type PdfFile, pdfFile } from '../../../src/paper/pdfFile.ts';
import { type StackSet, toStackPdf } from '../../../src/paper/toStackPdf.ts';
import { aboutStack } from './aboutStack.ts';
import { keepPages } from './givenPages.ts';
import { plainOf } from './plain.ts';
import { handoutSets } from './roster.ts';
import { tell, written } from './told.ts';

const [kind = '', counted = '1', folder = '.'] = process.argv.slice(2);
const count = Number(counted);

if (kind === 'prepare') await prepared();
else if (kind === 'alive') await toldAlive();
else {
  const press = await nodePress();
  const sets = await handoutSets(press, count, kind === 'plans' ? 'with' : 'without');
  tell(await written(join(folder, 'ours.pdf'), press.toStackPdf({ ...aboutStack, sets })));
}

/** What is still needed when the last page is written: all else was let go of, whether or not Node has cleared it away. */
async function toldAlive(): Promise<void> {
  setFlagsFromString('--expose-gc');
  const clear = runInNewContext('gc') as () => void;
  const press = await nodePress();
  const all = await handoutSets(press, count);
  let [at, alive_MB] = [0, 0];
  async function* counted_(): AsyncGenerator<StackSet, void, void> {
    for await (const set of all) {
      at += 1;
      yield set;
      if (at < count) continue;
      clear();
      const { heapUsed, external } = process.memoryUsage();
      alive_MB = Math.round((heapUsed + external) / 1e6);
    }
  }
  await written(join(folder, 'ours.pdf'), press.toStackPdf({ ...aboutStack, sets: counted_() }));
  process.stdout.write(`${JSON.stringify({ alive_MB })}\n`);
  process.exit(0);
}

/** What the floors write and what the peers draw, made beforehand and not timed. */
async function prepared(): Promise<void> {
  const { types, deflate } = await nodeParts();
  const press = await nodePress();
  const log: string[] = [];
  const recording = (file: PdfFile): PdfFile => ({
    ...file,
    object: (number, text) => {
      log.push(JSON.stringify(['o', file.last(), number, text]));
      file.object(number, text);
    },
    stream: (number, entries, data) => {
      log.push(JSON.stringify(['s', file.last(), number, entries, Buffer.from(data).toString('latin1')]));
      return file.stream(number, entries, data);
    },
    asWritten: (number, data) => {
      log.push(JSON.stringify(['w', file.last(), number, Buffer.from(data).toString('latin1')]));
      file.asWritten(number, data);
    },
    end: (entries) => {
      log.push(JSON.stringify(['e', file.last(), 0, entries]));
      file.end(entries);
    },
  });
  const stack = { ...aboutStack, sets: await handoutSets(press, count) };
  for await (const _ of toStackPdf(stack, types, recording(pdfFile(deflate)))) {
    // Only what is written is wanted here.
  }
  writeFileSync(join(folder, 'objects.jsonl'), log.join('\n'));
  await keepPages(await handoutSets(press, count), folder);
  writeFileSync(
    join(folder, 'plain.json'),
    JSON.stringify(await plainOf(await handoutSets(press, count), types.typeOf)),
  );
}
