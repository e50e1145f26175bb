/**
 * Containers of one's own in one line, as the worksheet prints it and the page that checks work reads it: those of a
 * roster's cell, and the media and the pump where the workshop has others than the exercises.
 */
import type { Problem } from '../core/problem.ts';
import { type ContainersRead, readContainers, writeContainers } from './containersText.ts';
import { nearest } from './nearest.ts';
import type { WorkshopFile } from './workshopFile.ts';

type Equipment = Pick<WorkshopFile, 'media' | 'pump'>;
const kinds = ['media', 'pump'] as const;

/**
 * The line to type.
 * @param file what the workshop plans with
 * @param usual what the exercises are planned with, which goes without saying
 */
export function typedContainers(
  read: Exclude<ContainersRead, { readonly problems: unknown }>,
  file: Equipment,
  usual: Equipment,
): string {
  if ('system' in read) return read.system;
  const other = kinds.filter((kind) => file[kind] !== usual[kind]).map((kind) => `${kind} ${file[kind]}`);
  return [writeContainers(read.containers), ...other].join(' + ');
}

type CheckLine = { readonly containers: ContainersRead; readonly equipment: Partial<Equipment> };

/**
 * What such a line says.
 * @param text not empty
 * @param systems names of the systems that may stand here
 * @param known names of all media and pumps
 */
export function readCheckLine(
  text: string,
  systems: readonly string[],
  known: Readonly<Record<keyof Equipment, readonly string[]>>,
): CheckLine {
  const equipment: Partial<Record<keyof Equipment, string>> = {};
  const problems: Problem[] = [];
  const rest = text.split('+').filter((part) => {
    const [, word = '', name = ''] = /^\s*(media|pump)\s+(\S+)\s*$/i.exec(part) ?? [];
    const kind = kinds.find((one) => one === word.toLowerCase());
    if (kind === undefined) return true;
    if (known[kind].includes(name)) equipment[kind] = name;
    else problems.push(unknown(name, known[kind]));
    return false;
  });
  const containers = readContainers(rest.join('+'), systems);
  if (problems.length === 0) return { containers, equipment };
  const ofContainers = 'problems' in containers ? containers.problems : [];
  return { containers: { problems: [...ofContainers, ...problems] }, equipment };
}

function unknown(given: string, allowed: readonly string[]): Problem {
  const meant = nearest(given, allowed);
  return {
    code: 'containersWord',
    place: [],
    given,
    other: given,
    allowed,
    ...(meant === null ? {} : { meant }),
  };
}
