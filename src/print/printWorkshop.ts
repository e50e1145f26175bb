/** Prints one part of a workshop into a file. */
import { once } from 'node:events';
import { createWriteStream } from 'node:fs';
import { mkdir, rename, rm } from 'node:fs/promises';
import { join } from 'node:path';
import { finished } from 'node:stream/promises';
import { classFacts, handoutFacts } from '../core/plan/handoutFacts.ts';
import type { Press } from '../paper/press.ts';
import type { ReadWorkshop } from '../schemas/workshops.ts';
import type { WorkshopPart } from '../core/workshop/parts.ts';
import { printablePeople } from '../sheets/handouts/printablePeople.ts';
import { partFiles, workshopPrint } from '../sheets/handouts/workshopPrint.ts';
import { problemLine } from '../wording/problem.ts';
import type { PrintAnswer } from './order.ts';
import type { PrintJob } from './printSystem.ts';

/**
 * Writes one part into a folder of the workshop's own. Returns the number of its pages, and which rows are not in it.
 * @throws Error with the lines of all names that cannot be printed, unless the workshop leaves such rows out
 */
export async function printWorkshop(
  of: ReadWorkshop,
  part: WorkshopPart,
  job: PrintJob,
  press: Press,
): Promise<Pick<PrintAnswer, 'pages' | 'leftOut'>> {
  const into = join(job.folder, 'workshops', of.id);
  const own = { ...job, core: { classFacts, handoutFacts } };
  const asked = await printable(of, job.words, press);
  const { bytes, pages } = await workshopPrint(asked, part, own, press);
  await mkdir(into, { recursive: true });
  await writeAll(join(into, partFiles[part]), bytes);
  const leftOut = asked.skipped.map((one) => problemLine(one, job.words.catalogue));
  return { pages: pages(), leftOut };
}

/**
 * The workshop with everybody whose names can be printed; all prints count their rows alike.
 * @throws Error with the lines of all names that cannot be printed, unless the workshop leaves such rows out
 */
export async function printable(
  of: ReadWorkshop,
  words: PrintJob['words'],
  press: Press,
): Promise<ReadWorkshop> {
  const { fine, wrong } = await printablePeople(of.people, of.roster, press);
  if (wrong.length > 0 && (of.raw.badRows === 'stop' || fine.length === 0))
    throw new Error(wrong.map((one) => problemLine(one, words.catalogue)).join('\n'));
  return { ...of, people: fine, skipped: [...of.skipped, ...wrong] };
}

/**
 * Bytes as they come, so that a long stack takes little memory; beside the file that may be there already, whose place
 * they take when they are whole.
 */
export async function writeAll(path: string, bytes: AsyncIterable<Uint8Array>): Promise<void> {
  const beside = `${path}.part`;
  const file = createWriteStream(beside);
  try {
    await once(file, 'open');
    for await (const some of bytes) if (!file.write(some)) await once(file, 'drain');
    file.end();
    await finished(file);
    await rename(beside, path);
  } catch (error) {
    file.destroy();
    await rm(beside, { force: true });
    throw error;
  }
}
