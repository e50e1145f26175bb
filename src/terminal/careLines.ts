/** The care of one system for the terminal: a part a topic, and in it what to do, why, and the source. */
import { type CareTask, careParts } from '../core/care/routine.ts';
import { careHeading, handName } from '../wording/care.ts';
import type { Catalogue } from '../wording/catalogue.ts';

export function careLines(tasks: readonly CareTask[], catalogue: Catalogue): readonly string[] {
  return careParts(tasks).flatMap((part) => [
    '',
    careHeading(part, catalogue),
    ...part.tasks.flatMap((task) => [
      `    ${handName(task.who, catalogue)}: ${task.do}`,
      `        ${task.why} [${task.source}]`,
    ]),
  ]);
}
