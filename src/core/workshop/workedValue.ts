/** What a step of a worksheet comes to with the numbers that somebody put into it. */

/** Slack of a whole count, relative, as for the plan's own counts. */
const slack = 1e-9;

const functions: Readonly<Record<string, (...values: readonly number[]) => number>> = {
  floor: (value = 0) => Math.floor(value * (1 + slack)),
  min: (...values) => Math.min(...values),
};

/** Two numbers and what stands between them; what binds closer comes first. */
const between: readonly Readonly<Record<string, (one: number, other: number) => number>>[] = [
  { '^': (one, other) => one ** other },
  { '×': (one, other) => one * other, '÷': (one, other) => one / other },
  { '+': (one, other) => one + other, '−': (one, other) => one - other },
];

/**
 * The value of a formula that a pencil can follow.
 * Powers, then products and quotients, then sums and differences, each from left to right; brackets, π, rounding down,
 * the least of several.
 * @param formula of a worked step
 * @param values the numbers, by the signs that stand for them
 * @returns what it comes to
 * @valid formulas of worksheets
 * @throws RangeError for a sign without a number, or where it is no formula
 * @source geometry
 * @example workedValue('floor(W ÷ v)', { W: 299, v: 25 }) // 11
 * @example workedValue('a + b × 2^3', { a: 1, b: 2 }) // 17
 */
export function workedValue(formula: string, values: Readonly<Record<string, number>>): number {
  const tokens = formula.match(/\d+(?:\.\d+)?|[A-Za-zπ][A-Za-z0-9]*|\S/gu) ?? [];
  let at = 0;
  const wrong = (): RangeError => new RangeError(`workedValue(${formula}) at ${tokens[at] ?? 'its end'}`);
  const take = (token: string): void => {
    if (tokens[at] !== token) throw wrong();
    at += 1;
  };
  const joined = (level: number): number => {
    const signs = between[level];
    if (signs === undefined) return single();
    let value = joined(level - 1);
    for (let sign = signs[tokens[at] ?? '']; sign !== undefined; sign = signs[tokens[at] ?? '']) {
      at += 1;
      value = sign(value, joined(level - 1));
    }
    return value;
  };
  const bracket = (): readonly number[] => {
    take('(');
    const inside = [joined(between.length - 1)];
    while (tokens[at] === ';') {
      at += 1;
      inside.push(joined(between.length - 1));
    }
    take(')');
    return inside;
  };
  const single = (): number => {
    const token = tokens[at] ?? '';
    if (token === '(') return bracket()[0] ?? Number.NaN;
    const known =
      token === 'π' ? Math.PI : (values[token] ?? (/^\d/.test(token) ? Number(token) : undefined));
    const of = functions[token];
    if (known === undefined && of === undefined) throw wrong();
    at += 1;
    return known ?? of?.(...bracket()) ?? Number.NaN;
  };
  const value = joined(between.length - 1);
  if (at < tokens.length) throw wrong();
  return value;
}
