/** Prints all that belongs to one workshop: the stack to staple, the answers in the same order, one file for each. */
import { once } from 'node:events';
import { createWriteStream } from 'node:fs';
import { mkdir } from 'node:fs/promises';
import { join } from 'node:path';
import { finished } from 'node:stream/promises';
import { Zip, ZipPassThrough } from 'fflate';
import { classFacts, handoutFacts } from '../core/plan/handoutFacts.ts';
import type { Press } from '../paper/press.ts';
import type { Person } from '../schemas/people.ts';
import type { ReadWorkshop } from '../schemas/workshops.ts';
import { handoutWords } from '../sheets/handouts/handout.ts';
import { classDesk } from '../sheets/handouts/classDesk.ts';
import { workshopStack } from '../sheets/handouts/workshopStack.ts';
import type { PrintJob } from './printSystem.ts';

/** What is printed by itself, so that several cores can work on one workshop. */
export const workshopParts = ['stack', 'answers', 'each'] as const;
export type WorkshopPart = (typeof workshopParts)[number];

/** Writes one part into a folder of the workshop's own. Returns the number of its pages. */
export async function printWorkshop(
  of: ReadWorkshop,
  part: WorkshopPart,
  job: PrintJob,
  press: Press,
): Promise<number> {
  const into = join(job.folder, 'workshops', of.id);
  await mkdir(into, { recursive: true });
  const people = await printable(of, job, press);
  const desk = classDesk({ ...of, people }, { ...job, core: { classFacts, handoutFacts } }, press);
  if (part !== 'each') {
    const stack = await workshopStack(desk, part === 'stack' ? 'everything' : 'answers');
    return writeAll(join(into, `${part}.pdf`), press.toStackPdf(stack.print), stack.pages);
  }
  return writeZip(join(into, 'each.zip'), desk, press);
}

/**
 * Everybody whose name can be printed. Where somebody's cannot, that is told with the line of the roster; the others
 * are printed if the workshop says so.
 */
async function printable(
  { raw, people }: ReadWorkshop,
  { words }: PrintJob,
  press: Press,
): Promise<ReadWorkshop['people']> {
  const wrong: string[] = [];
  const fine: Person[] = [];
  for (const person of people) {
    const uncovered = await press.uncovered([person.name, person.team, person.notes, ...person.members]);
    if (uncovered.length === 0) fine.push(person);
    for (const { character, codePoint } of uncovered) {
      const values = { line: String(person.line), character, code: codePoint };
      wrong.push(handoutWords({ words }, 'uncovered', values));
    }
  }
  if (wrong.length > 0 && (raw.badRows === 'stop' || fine.length === 0)) throw new Error(wrong.join(' '));
  return fine;
}

/** Bytes as they come, so that a long stack takes little memory. */
async function writeAll(
  path: string,
  bytes: AsyncIterable<Uint8Array>,
  pages: () => number,
): Promise<number> {
  const file = createWriteStream(path);
  for await (const some of bytes) if (!file.write(some)) await once(file, 'drain');
  file.end();
  await finished(file);
  return pages();
}

/** One PDF for each person, packed as they are: a PDF is packed already. */
async function writeZip(path: string, desk: ReturnType<typeof classDesk>, press: Press): Promise<number> {
  const waiting: Uint8Array[] = [];
  const zip = new Zip((error, bytes) => {
    if (error) throw error;
    waiting.push(bytes);
  });
  let pages = 0;
  async function* files(): AsyncGenerator<Uint8Array, void, void> {
    for (const [at, person] of desk.people.entries()) {
      const one = await workshopStack(desk, 'one', [at]);
      const entry = new ZipPassThrough(`${String(at + 1).padStart(4, '0')}-${fileName(person.name)}.pdf`);
      zip.add(entry);
      for await (const bytes of press.toStackPdf(one.print)) entry.push(bytes);
      entry.push(new Uint8Array(), true);
      pages += one.pages();
      yield* waiting.splice(0);
    }
    zip.end();
    yield* waiting.splice(0);
  }
  return writeAll(path, files(), () => pages);
}

/** Letters and figures of any script; nothing that a file system or a shell takes for more than a letter. */
function fileName(name: string): string {
  const plain = name
    .normalize('NFC')
    .replace(/[^\p{L}\p{M}\p{N}]+/gu, '-')
    .replace(/^-|-$/g, '');
  return [...plain].slice(0, 60).join('').toLowerCase() || 'sheet';
}
