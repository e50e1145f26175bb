/** An order that looks like chance and is none: the same seed gives the same order again, on any machine. */

/**
 * The same things in another order.
 * Fisher and Yates's shuffle, with the numbers of a 32-bit generator that mixes a counter (splitmix32).
 * @param items anything
 * @param seed a whole number, 0 or more; another one gives another order
 * @returns all of them, each once
 * @valid fewer than four thousand million things
 * @source commonPractice
 * @example shuffled([1], 7) // [1]
 */
export function shuffled<T>(items: readonly T[], seed: number): readonly T[] {
  const order = [...items];
  let counter = seed >>> 0;
  for (let last = order.length - 1; last > 0; last -= 1) {
    counter = (counter + 0x9e3779b9) >>> 0;
    const other = Math.floor((mixed(counter) / 2 ** 32) * (last + 1));
    [order[last], order[other]] = [order[other] as T, order[last] as T];
  }
  return order;
}

function mixed(counter: number): number {
  let bits = counter;
  bits = Math.imul(bits ^ (bits >>> 16), 0x21f0aaad);
  bits = Math.imul(bits ^ (bits >>> 15), 0x735a2d97);
  return (bits ^ (bits >>> 15)) >>> 0;
}
