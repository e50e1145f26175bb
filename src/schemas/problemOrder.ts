import type { Problem } from '../core/problem.ts';

/** More than this from one file helps nobody: the first ones say what is wrong. */
const mostPerFile = 50;

/** Problems in the order of file, line and column; of each file the first fifty, and how many more there are. */
export function inOrder(problems: readonly Problem[]): readonly Problem[] {
  const sorted = [...problems].sort(byPlace);
  const files: Problem[][] = [];
  for (const problem of sorted) {
    const last = files.at(-1);
    if (last?.[0]?.at?.file === problem.at?.file && last) last.push(problem);
    else files.push([problem]);
  }
  return files.flatMap(capped);
}

function capped(problems: readonly Problem[]): readonly Problem[] {
  const [kept, rest] = [problems.slice(0, mostPerFile), problems.slice(mostPerFile)];
  const [first] = rest;
  if (!first) return kept;
  const more: Problem = { code: 'moreProblems', place: [], given: String(rest.length) };
  return [...kept, first.at ? { ...more, at: first.at } : more];
}

function byPlace(a: Problem, b: Problem): number {
  const [x, y] = [a.at, b.at];
  if (!x || !y) return x ? 1 : y ? -1 : 0;
  if (x.file !== y.file) return x.file < y.file ? -1 : 1;
  return x.line - y.line || x.column - y.column;
}
