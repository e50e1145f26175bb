/** What is wrong with a roster, line by line, under the name that its file has on the device. */
import type { Problem } from '../../core/problem.ts';
import { inOrder } from '../../schemas/problemOrder.ts';
import type { Catalogue } from '../../wording/catalogue.ts';
import { problemLine, problemSentence } from '../../wording/problem.ts';
import { isolated, shortened } from '../../wording/problemText.ts';

export function rosterLines(problems: readonly Problem[], file: string, catalogue: Catalogue): string[] {
  const name = shortened(isolated(file));
  return inOrder(problems).map((one) =>
    one.at
      ? problemLine({ ...one, at: { ...one.at, file: name } }, catalogue)
      : problemSentence(one, catalogue),
  );
}
