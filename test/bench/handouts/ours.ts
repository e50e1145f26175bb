/** Our own process of the bench: `ours.ts ours|first|plans|prepare COUNT FOLDER`. */
import { writeFileSync } from 'node:fs';
import { join } from 'node:path';
import { nodeParts, nodePress } from '../../../src/paper/node.ts';
import { type PdfFile, pdfFile } from '../../../src/paper/pdfFile.ts';
import { toStackPdf } from '../../../src/paper/toStackPdf.ts';
import { plainOf } from './plain.ts';
import { handoutSets } from './roster.ts';
import { tell, written } from './told.ts';

const [kind = '', counted = '1', folder = '.'] = process.argv.slice(2);
const count = Number(counted);
const about = { title: 'Worksheets', lang: 'en', date: '2031-05-12' };

if (kind === 'prepare') await prepared();
else {
  const press = await nodePress();
  const sets = await handoutSets(press, count, kind === 'plans' ? 'with' : 'without');
  tell(await written(join(folder, 'ours.pdf'), press.toStackPdf({ ...about, sets })));
}

/** What the floor writes and what the peers draw, made beforehand and not timed. */
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
  const stack = { ...about, sets: await handoutSets(press, count) };
  for await (const _ of toStackPdf(stack, types, recording(pdfFile(deflate)))) {
    // Only what is written is wanted here.
  }
  writeFileSync(join(folder, 'objects.jsonl'), log.join('\n'));
  writeFileSync(
    join(folder, 'plain.json'),
    JSON.stringify(await plainOf(await handoutSets(press, count), types.typeOf)),
  );
}
