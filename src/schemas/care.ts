/** One topic of the care of a system: tasks, each with its reason and where it is from. */
import * as z from 'zod';
import {
  type CareTask,
  careFlags,
  careHands,
  careParts,
  careRhythms,
  careTopics,
} from '../core/care/routine.ts';
import type { Problem } from '../core/problem.ts';
import { key, line } from './fields.ts';
import { referenceProblem } from './toSystem.ts';

const task = z.strictObject({
  /** Its own name over all files: small letter first, no spaces, such as `cleanScreens`. */
  id: key(),
  /**
   * anyone: also a child or a sitter. keeper: whoever answers for the fish. adult: no child. trained: somebody who
   * has learnt it, where local law lets them. What hurts people or fish when done wrong is never for anyone.
   */
  who: z.enum(careHands),
  /** One short order in plain words, or two. Metric, with US units in brackets only where a number is needed. */
  do: line(),
  /** One sentence. */
  why: line(),
  /** Citation key of `content/sources/`; `commonPractice` and `fromMemory` where that is the truth. */
  source: line(),
  /** Only for a system that has all of these. Left out: for every system. */
  only: z.array(z.enum(careFlags)).max(careFlags.length).default([]),
});

export const careFile = z.strictObject({
  /** The heading it stands under. */
  topic: z.enum(careTopics),
  /** How often, for the routine; every other topic comes up when something happens, and leaves it out. */
  rhythm: z.enum(careRhythms).default('event'),
  tasks: z.array(task).min(1).max(40),
});

export type CareFile = z.output<typeof careFile>;

/**
 * Checks a file of tasks against the others.
 * @param care the file
 * @param sources the citation keys that there are
 * @param fileOfTask where each task was read so far; the tasks of this file are added
 * @param file where this one was read
 */
export function checkCare(
  care: CareFile,
  sources: readonly string[],
  fileOfTask: Map<string, string>,
  file: string,
): readonly Problem[] {
  return [
    ...rhythmProblems(care),
    ...care.tasks.flatMap(({ id, source }, index) => [
      ...idProblems(id, index, fileOfTask, file),
      ...(sources.includes(source) ? [] : [referenceProblem(source, ['tasks', index, 'source'], sources)]),
    ]),
  ];
}

/** The routine goes by the calendar, and nothing else does. */
function rhythmProblems({ topic, rhythm }: CareFile): readonly Problem[] {
  if ((topic === 'routine') === (rhythm !== 'event')) return [];
  const allowed = topic === 'routine' ? careRhythms.filter((one) => one !== 'event') : ['event'];
  return [{ code: 'notAllowed', place: ['rhythm'], given: rhythm, allowed }];
}

function idProblems(
  id: string,
  index: number,
  fileOfTask: Map<string, string>,
  file: string,
): readonly Problem[] {
  const other = fileOfTask.get(id);
  if (other !== undefined) return [{ code: 'sameTask', place: ['tasks', index, 'id'], given: id, other }];
  fileOfTask.set(id, file);
  return [];
}

/** The tasks of all files in the order of their headings. */
export function tasksOf(files: readonly CareFile[]): readonly CareTask[] {
  const tasks = files.flatMap(({ topic, rhythm, tasks }) =>
    tasks.map((one): CareTask => ({ ...one, topic, rhythm })),
  );
  return careParts(tasks).flatMap((part) => part.tasks);
}
