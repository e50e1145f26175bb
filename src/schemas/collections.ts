/** Files that were read, into checked things by name; every problem stays at its file and line. */
import type * as z from 'zod';
import type { Problem } from '../core/problem.ts';
import type { Content, ReadSystem, ReadTurnover } from './content.ts';
import { type CropFile, toCrop } from './crop.ts';
import type { CropFacts, Facts } from './facts.ts';
import { keyPattern } from './fields.ts';
import { readBySchema } from './issues.ts';
import { valueAt } from './schemaAt.ts';
import type { Beside } from './plansBeside.ts';
import { toSystem } from './toSystem.ts';
import { toTurnover } from './toTurnover.ts';
import { withoutNulls } from './withoutNulls.ts';
import type { YamlFile } from './yamlFile.ts';

export type ReadFile = YamlFile & { readonly file: string; readonly name: string };

type Collection<T> = { readonly entries: Readonly<Record<string, T>>; readonly names: readonly string[] };

/** A folder of named things. `names` has those whose file is broken too: they exist, and are not "unknown". */
export function collection<T extends z.ZodType>(
  files: readonly ReadFile[],
  schema: T,
  check: (value: z.output<T>, file: string) => readonly Problem[],
  problems: Problem[],
): Collection<z.output<T>> {
  const entries: Record<string, z.output<T>> = {};
  for (const { file, name, raw, locate } of files) {
    if (!keyPattern.test(name)) {
      problems.push({ code: 'fileName', place: [], given: name, at: { file, line: 1, column: 1 } });
    }
    const read = readBySchema(schema, withoutNulls(raw), []);
    const found = 'problems' in read ? read.problems : check(read.value, file);
    problems.push(...found.map(locate));
    if ('value' in read && found.length === 0) entries[name] = read.value;
  }
  return { entries, names: files.map((file) => file.name) };
}

export function systemsOf(
  files: readonly ReadFile[],
  facts: Facts,
  existing: readonly string[],
  problems: Problem[],
): readonly ReadSystem[] {
  const fileOfId = new Map<string, string>();
  const systems = files.flatMap(({ file, name, raw, locate }) => {
    const result = toSystem(raw, facts);
    const found = [
      ...nameProblems(raw, name, file, fileOfId),
      ...('problems' in result ? result.problems : []),
    ];
    problems.push(...found.filter((problem) => !namesBrokenFile(problem, existing)).map(locate));
    if ('problems' in result) return [];
    const { system, raw: filled } = result;
    return [{ id: system.id, file, shared: filled.shared, sheet: filled.sheet, raw: filled, system }];
  });
  return systems.sort((a, b) => (a.id < b.id ? -1 : 1));
}

export function cropsOf(files: Readonly<Record<string, CropFile>>): Content['crops'] {
  return Object.fromEntries(Object.entries(files).map(([id, file]) => [id, toCrop(id, file)]));
}

export function turnoversOf(
  files: readonly ReadFile[],
  facts: CropFacts,
  existing: readonly string[],
  problems: Problem[],
  plans: (season: ReadFile) => Beside,
): readonly ReadTurnover[] {
  const fileOfId = new Map<string, string>();
  const turnovers = files.flatMap((season) => {
    const { file, name, raw, locate } = season;
    const result = toTurnover(raw, facts, plans(season));
    const found = [
      ...nameProblems(raw, name, file, fileOfId),
      ...('problems' in result ? result.problems : []),
    ];
    const told = found.filter((problem) => !namesBrokenFile(problem, existing));
    problems.push(...told.map((problem) => (problem.at ? problem : locate(problem))));
    if ('problems' in result) return [];
    const { task, raw: filled, again } = result;
    return [{ id: task.id, file, shared: filled.shared, sheet: filled.sheet, raw: filled, task, again }];
  });
  return turnovers.sort((a, b) => (a.id < b.id ? -1 : 1));
}

/** A fish or media whose own file has a problem is there all the same: one problem, told once. */
export function namesBrokenFile(problem: Problem, existing: readonly string[]): boolean {
  return problem.code === 'reference' && existing.includes(problem.given ?? '');
}

/** An id that is not the name of its file, or that another file has already. */
export function nameProblems(
  raw: unknown,
  name: string,
  file: string,
  fileOfId: Map<string, string>,
): readonly Problem[] {
  const id = valueAt(raw, ['id']);
  if (typeof id !== 'string' || id === '') return [];
  const problems: Problem[] = [];
  if (id !== name) problems.push({ code: 'fileName', place: ['id'], given: id, meant: name });
  const other = fileOfId.get(id);
  if (other !== undefined) problems.push({ code: 'sameId', place: ['id'], given: id, other });
  else fileOfId.set(id, file);
  return problems;
}
