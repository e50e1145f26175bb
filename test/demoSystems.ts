/** The systems of `content/`, with the words that sheets are made of, for tests that look at what people will see. */
import { fileURLToPath } from 'node:url';
import { readContent } from '../src/schemas/readContent.ts';
import { problemLine } from '../src/wording/problem.ts';

const read = await readContent(fileURLToPath(new URL('../content', import.meta.url)));

/** Everything in `content/`; a test may only rely on it where `contentProblems` is empty. */
export const content = read.content;

export const english = content.wording['en'] ?? {};

/** One line a problem, as `npm run plan` prints it. */
export const contentProblems = read.problems.map((problem) => problemLine(problem, content.wording['en']));

/** A demo system by its id. */
export function demoSystem(id: string): (typeof content.systems)[number] {
  const found = content.systems.find((one) => one.id === id);
  if (found === undefined) throw new Error(`content/systems/${id}.yaml is not there or has problems`);
  return found;
}
