/** What a workshop is printed into: the stack to staple, the answers in the same order, one file for each. */

export const workshopParts = ['stack', 'answers', 'each'] as const;
export type WorkshopPart = (typeof workshopParts)[number];

/** The sheets that each part is made of, by their names in a workshop's file; contents alone list nothing. */
const madeOf: Readonly<Record<WorkshopPart, readonly string[]>> = {
  stack: ['facilitator', 'safety', 'signIn', 'nameTags', 'rota', 'worksheet', 'plan'],
  answers: ['key'],
  each: ['worksheet', 'plan'],
};

/**
 * The parts that have pages.
 * Those of whose sheets one at least is wanted and has something to say.
 * @param sheets names of the sheets that are wanted
 * @param rota whether there is a rota to print
 * @returns in the order in which they are printed; none where nothing has pages
 * @valid any names
 * @source commonPractice
 * @example partsOf(['key'], 'none') // ['answers']
 * @example partsOf(['contents', 'rota'], 'none') // []
 */
export function partsOf(sheets: readonly string[], rota: 'rota' | 'none'): readonly WorkshopPart[] {
  const said = sheets.filter((sheet) => sheet !== 'rota' || rota === 'rota');
  return workshopParts.filter((part) => madeOf[part].some((sheet) => said.includes(sheet)));
}
