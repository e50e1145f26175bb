/** Days until seedlings are up, by the warmth of what they are sown into. */

const firstTested_degC = 0;
const step_degC = 5;

/**
 * Days to emerge at 0, 5, 10 … 35 °C, sown 13 mm deep. none: no seedling came up. null: nobody tried.
 * Source: knott1997, the whole table.
 */
const tested = {
  lettuce: [49, 15, 7, 4, 3, 2, 3, 'none'],
  radish: ['none', 29, 11, 6, 4, 4, 3, null],
  onion: [136, 31, 13, 7, 5, 4, 4, 13],
  parsley: [null, null, 29, 17, 14, 13, 12, null],
  cabbage: [null, null, 15, 9, 6, 5, 4, null],
  beet: [null, 42, 17, 10, 6, 5, 5, 5],
  celery: ['none', 41, 16, 12, 7, 'none', 'none', 'none'],
  turnip: ['none', 'none', 5, 3, 2, 1, 1, 1],
  cucumber: ['none', 'none', 'none', 13, 6, 4, 3, 3],
  eggplant: [null, null, null, null, 13, 8, 5, null],
  spinach: [63, 23, 12, 7, 6, 5, 6, 'none'],
  tomato: ['none', 'none', 43, 14, 8, 6, 6, 9],
  pepper: ['none', 'none', 'none', 25, 13, 8, 8, 9],
  bean: ['none', 'none', 'none', 16, 11, 8, 6, 6],
} as const satisfies Readonly<Record<string, readonly (number | 'none' | null)[]>>;

export type TestedSeed = keyof typeof tested;

/**
 * Days until seedlings of a tested crop are up.
 * Between two tested temperatures the speed, one over the days, lies on a straight line.
 * @param seed a crop of the table; beet stands for chard, cabbage for kale and its kin
 * @param soil_degC mean warmth where the seed lies
 * @returns days; null where nobody tried, or where none came up at either of the two temperatures around it
 * @valid within the table; another print of it differs by a day in a few places
 * @source knott1997
 */
export function emergence(seed: TestedSeed, soil_degC: number): number | null {
  const row: readonly (number | 'none' | null)[] = tested[seed];
  const at = (soil_degC - firstTested_degC) / step_degC;
  const before = Math.floor(at);
  const colder = row[before];
  if (typeof colder !== 'number') return null;
  if (at === before) return colder;
  const warmer = row[before + 1];
  if (typeof warmer !== 'number') return null;
  return 1 / (1 / colder + (at - before) * (1 / warmer - 1 / colder));
}
