import type { Step } from '../../src/core/plan/figure.ts';

const spoken: Readonly<Record<string, string>> = {
  '×': '*',
  '÷': '/',
  '−': '-',
  '^': '**',
  π: 'Math.PI',
  sqrt: 'Math.sqrt',
  acos: 'Math.acos',
};

/** What a printed formula comes to when its signs are replaced by their numbers; knows nothing of our code. */
export function workedOut(step: Step): number {
  const values = new Map(step.symbols.map((symbol) => [symbol.sign, symbol.value]));
  const script = step.formula.replace(/[A-Za-zπ][A-Za-z0-9]*|[×÷−^]/gu, (word) => {
    const value = values.get(word);
    if (value !== undefined) return `(${value})`;
    const known = spoken[word];
    if (known === undefined) throw new Error(`"${word}" in "${step.formula}" is neither a symbol nor a sign`);
    return known;
  });
  return Number(new Function(`return ${script}`)());
}
