/**
 * What every system, season and workshop refers to by name, and the words of all sheets: the same for everybody who
 * prints, with nothing personal in it. Plain data.
 */
import type { Problem } from '../core/problem.ts';
import { type CareFile, careFile, checkCare, tasksOf } from './care.ts';
import {
  checkClimate,
  checkFish,
  checkMedia,
  checkStartContainer,
  checkStartPump,
  checkTerm,
} from './checkFacts.ts';
import { climateFile } from './climate.ts';
import { collection, cropsOf, type ReadFile } from './collections.ts';
import type { Content } from './content.ts';
import { checkCrop, cropFile } from './crop.ts';
import { fishFile } from './fish.ts';
import { mediaFile } from './media.ts';
import { sourceFile } from './source.ts';
import { startContainerFile, startPumpFile } from './starts.ts';
import { termFile } from './term.ts';
import { wordingFile } from './wording.ts';

export type Handbook = Omit<Content, 'turnovers' | 'systems' | 'workshops'> & {
  /** What there is, also where its file is broken. */
  readonly names: Readonly<Record<'facts' | 'crops' | 'wording', readonly string[]>>;
};

/**
 * Reads and checks it; every problem goes to the others.
 * @param filesIn reads one of its folders
 */
export async function readHandbook(
  filesIn: (folder: string) => Promise<readonly ReadFile[]>,
  problems: Problem[],
): Promise<Handbook> {
  const sources = collection(await filesIn('sources'), sourceFile, () => [], problems);
  const check = <T>(rule: (value: T, sources: readonly string[]) => readonly Problem[]) => {
    return (value: T) => rule(value, sources.names);
  };
  const fish = collection(await filesIn('fish'), fishFile, check(checkFish), problems);
  const media = collection(await filesIn('media'), mediaFile, check(checkMedia), problems);
  const climates = collection(await filesIn('climates'), climateFile, check(checkClimate), problems);
  const crops = collection(await filesIn('crops'), cropFile, check(checkCrop), problems);
  const containers = collection(
    await filesIn('containers'),
    startContainerFile,
    check(checkStartContainer),
    problems,
  );
  const pumps = collection(await filesIn('pumps'), startPumpFile, check(checkStartPump), problems);
  const terms = collection(await filesIn('terms'), termFile, check(checkTerm), problems);
  const fileOfTask = new Map<string, string>();
  const checkTasks = (file: CareFile, name: string) => checkCare(file, sources.names, fileOfTask, name);
  const care = collection(await filesIn('care'), careFile, checkTasks, problems);
  const wording = collection(await filesIn('wording'), wordingFile, () => [], problems);
  return {
    ...{ fish: fish.entries, media: media.entries, climates: climates.entries },
    crops: cropsOf(crops.entries),
    starts: { containers: containers.entries, pumps: pumps.entries },
    ...{ sources: sources.entries, terms: terms.entries, wording: wording.entries },
    care: tasksOf(Object.values(care.entries)),
    names: {
      facts: [...fish.names, ...media.names, ...climates.names],
      crops: [...crops.names, ...climates.names],
      wording: wording.names,
    },
  };
}
