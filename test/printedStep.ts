/**
 * Reads the printed line of a worked step and works it out again, as somebody with a pencil would: from the words and
 * digits on the paper alone. Every printed number stands for all numbers that are printed like it.
 */

/** All numbers from the lowest to the highest that the printed digits allow. */
export type Span = { readonly low: number; readonly high: number };

export type Language = {
  /** Names of terms that may stand before a number. */
  readonly names: readonly string[];
  readonly roundDown: string;
  readonly leastOf: string;
};

type Token =
  | { readonly kind: 'number'; readonly span: Span }
  | { readonly kind: 'sign'; readonly text: string };

/** Five significant digits are printed, and never more than eight decimals. */
function printedSpan(text: string): Span {
  const value = numberOf(text);
  if (!Number.isFinite(value)) throw new Error(`"${text}" is no number`);
  const decimals = value === 0 ? 8 : Math.min(8, Math.max(0, 4 - Math.floor(Math.log10(Math.abs(value)))));
  const half = 0.5 * 10 ** -decimals * (1 + 1e-9);
  return { low: value - half, high: value + half };
}

/** A printed number, whose digits may stand in threes. */
function numberOf(text: string): number {
  return Number(text.replace('−', '-').replaceAll('\u00a0', ''));
}

/** What the two sides of a printed line say: what its formula comes to, and the result behind the last "=". */
export function readLine(
  line: string,
  language: Language,
): { readonly worked: Span; readonly printed: Span } {
  const cut = line.lastIndexOf(' = ');
  if (cut < 0) throw new Error(`"${line}" has no result`);
  const result = /^(−?\d+(?:\u00a0\d{3})*(?:\.\d+)?)(?:\u00a0\S+)?$/.exec(line.slice(cut + 3));
  if (result?.[1] === undefined) throw new Error(`"${line}" has no number as its result`);
  return { worked: workOut(tokensOf(line.slice(0, cut), language), line), printed: printedSpan(result[1]) };
}

const number = /^(−?\d+(?:\u00a0\d{3})*(?:\.\d+)?)(\u00a0[^\s()+×÷−^;]+)?/;

function tokensOf(text: string, language: Language): readonly Token[] {
  const names = [...language.names].sort((a, b) => b.length - a.length);
  const tokens: Token[] = [];
  let rest = text;
  while (rest !== '') {
    const name = names.find((one) => rest.startsWith(`${one} `) && number.test(rest.slice(one.length + 1)));
    if (name !== undefined) rest = rest.slice(name.length + 1);
    const found = number.exec(rest);
    if (found?.[1] !== undefined) {
      const isMeasured = name !== undefined || found[2] !== undefined;
      const exact = numberOf(found[1]);
      tokens.push({ kind: 'number', span: isMeasured ? printedSpan(found[1]) : { low: exact, high: exact } });
      rest = rest.slice(found[0].length);
      continue;
    }
    const sign = [language.roundDown, language.leastOf].find((one) => rest.startsWith(`${one}(`));
    const text_ = sign ?? /^[\s\u00a0]+|^[-+×÷−^();π√]/.exec(rest)?.[0];
    if (text_ === undefined) throw new Error(`cannot read "${rest}" in "${text}"`);
    if (text_.trim() !== '') tokens.push({ kind: 'sign', text: text_ });
    rest = rest.slice(text_.length);
  }
  return tokens.map((token) => named(token, language));
}

function named(token: Token, { roundDown, leastOf }: Language): Token {
  if (token.kind === 'number') return token;
  const text = { [roundDown]: 'floor', [leastOf]: 'min' }[token.text] ?? token.text;
  return { kind: 'sign', text };
}

/** Sums of products of powers, in the order of school. */
function workOut(tokens: readonly Token[], line: string): Span {
  let at = 0;
  const isNext = (text: string): boolean => {
    const token = tokens[at];
    return token?.kind === 'sign' && token.text === text;
  };
  const takes = (text: string): boolean => {
    if (!isNext(text)) return false;
    at += 1;
    return true;
  };
  const wants = (text: string): void => {
    if (!takes(text)) throw new Error(`expected "${text}" as part ${at + 1} of "${line}"`);
  };
  const sum = (): Span => {
    let total = product();
    for (;;) {
      if (takes('+')) total = plus(total, product());
      else if (takes('−')) total = plus(total, negative(product()));
      else return total;
    }
  };
  const product = (): Span => {
    let total = power();
    for (;;) {
      if (takes('×')) total = corners(total, power(), (a, b) => a * b);
      else if (takes('÷')) total = corners(total, power(), (a, b) => a / b);
      else return total;
    }
  };
  const power = (): Span => {
    const base = atom();
    return takes('^') ? corners(base, atom(), (a, b) => a ** b) : base;
  };
  const atom = (): Span => {
    const token = tokens[at];
    if (token?.kind === 'number') {
      at += 1;
      return token.span;
    }
    if (takes('π')) return { low: Math.PI, high: Math.PI };
    if (takes('floor')) return each(inBrackets(), (a) => Math.floor(a * (1 + 1e-9)));
    if (takes('√')) return each(inBrackets(), Math.sqrt);
    if (takes('min')) return leastInBrackets();
    return inBrackets();
  };
  const inBrackets = (): Span => {
    wants('(');
    const inside = sum();
    wants(')');
    return inside;
  };
  const leastInBrackets = (): Span => {
    wants('(');
    let least = sum();
    while (takes(';')) least = corners(least, sum(), Math.min);
    wants(')');
    return least;
  };
  const all = sum();
  if (at !== tokens.length) throw new Error(`did not read "${line}" to its end`);
  return all;
}

function plus(a: Span, b: Span): Span {
  return { low: a.low + b.low, high: a.high + b.high };
}

function negative({ low, high }: Span): Span {
  return { low: -high, high: -low };
}

function each({ low, high }: Span, rule: (value: number) => number): Span {
  return { low: rule(low), high: rule(high) };
}

/** For rules that rise or fall all the way between the ends. */
function corners(a: Span, b: Span, rule: (a: number, b: number) => number): Span {
  const ends = [rule(a.low, b.low), rule(a.low, b.high), rule(a.high, b.low), rule(a.high, b.high)];
  return { low: Math.min(...ends), high: Math.max(...ends) };
}
