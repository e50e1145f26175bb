import ts from 'typescript';
import { describe, expect, test } from 'vitest';
import { at, freeNames, nodesOf, parsedText, type SourceFile, sources } from './sourceFiles.ts';

/** A clock, chance, a place, a network, a machine: the same input would not give the same plan. */
const outside = new Set([
  'Date',
  'Intl',
  'Temporal',
  'fetch',
  'process',
  'performance',
  'crypto',
  'console',
  'setTimeout',
  'setInterval',
  'queueMicrotask',
  'globalThis',
]);
const outsideMembers = new Set(['random', 'toLocaleString', 'toLocaleDateString', 'localeCompare']);

function outsideProblems(file: SourceFile): readonly string[] {
  const names = freeNames(file).filter((one) => outside.has(one.name));
  const members = nodesOf(file).filter(
    (node) => ts.isPropertyAccessExpression(node) && outsideMembers.has(node.name.text),
  );
  return [...names.map((one) => one.node), ...members].map(
    (node) =>
      `${at(file, node)} ${node.getText(file.tree)}: the core knows no clock, chance, place or machine`,
  );
}

/** Three words in a row are a sentence, wherever they do not stand in an error about our own mistakes. */
function sentenceProblems(file: SourceFile): readonly string[] {
  return nodesOf(file)
    .filter((node) => ts.isStringLiteralLike(node) || ts.isTemplateExpression(node))
    .filter(
      (node) => /[A-Za-z]{2,} [A-Za-z]{2,} [A-Za-z]{2,}/.test(node.getText(file.tree)) && !isThrown(node),
    )
    .map((node) => `${at(file, node)} ${node.getText(file.tree)}: sentences are made in wording`);
}

function isThrown(node: ts.Node): boolean {
  for (let up: ts.Node | undefined = node; up !== undefined; up = up.parent) {
    if (ts.isThrowStatement(up)) return true;
  }
  return false;
}

const roundings = new Set(['toFixed', 'toPrecision', 'round']);

/** Rounding for people is wording's; the whole count of fish is a rule of the trade and lives in stocking/limits. */
function roundingProblems(file: SourceFile): readonly string[] {
  return nodesOf(file)
    .filter((node) => ts.isPropertyAccessExpression(node) && roundings.has(node.name.text))
    .map((node) => `${at(file, node)} ${node.getText(file.tree)}: the core never rounds for display`);
}

/** `value * 2` in a sheet: a number that no test of the core has seen. Placing and scaling use no `.value`. */
function arithmeticProblems(file: SourceFile): readonly string[] {
  const signs = [
    ts.SyntaxKind.AsteriskToken,
    ts.SyntaxKind.SlashToken,
    ts.SyntaxKind.MinusToken,
    ts.SyntaxKind.PlusToken,
  ];
  const isFigure = (node: ts.Node): boolean => /\.(value|low|high)$/.test(node.getText(file.tree));
  return nodesOf(file)
    .filter(ts.isBinaryExpression)
    .filter(
      (node) => signs.includes(node.operatorToken.kind) && (isFigure(node.left) || isFigure(node.right)),
    )
    .map((node) => `${at(file, node)} ${node.getText(file.tree)}: a printed number comes from the core`);
}

const core = sources.filter((file) => file.room === 'core');

describe('the core', () => {
  test('reads no clock, chance, locale, network or machine', () => {
    expect(core.length).toBeGreaterThan(30);
    expect(core.flatMap(outsideProblems)).toEqual([]);
  });

  test('writes no sentence', () => {
    expect(core.flatMap(sentenceProblems)).toEqual([]);
  });

  test('rounds nothing for display', () => {
    expect(core.flatMap(roundingProblems)).toEqual([]);
  });
});

describe('sheets, pages and components', () => {
  test('do no arithmetic on a figure', () => {
    const shown = sources.filter((file) => ['sheets', 'pages', 'components', 'layouts'].includes(file.room));
    expect(shown.flatMap(arithmeticProblems)).toEqual([]);
  });
});

describe('these rules themselves', () => {
  const made = (text: string): SourceFile => parsedText('src/core/x.ts', text);

  test('see what comes from outside', () => {
    expect(outsideProblems(made('const a = Date.now() + Math.random();'))).toHaveLength(2);
    expect(outsideProblems(made('const a = { Date: 1 }.Date; const b = (1).toLocaleString();'))).toHaveLength(
      1,
    );
  });

  test('see a sentence, a rounding and a sum', () => {
    expect(
      sentenceProblems(made("const a = 'Feed the fish'; throw new Error('not the fish');")),
    ).toHaveLength(1);
    expect(roundingProblems(made('const a = x.toFixed(2);'))).toHaveLength(1);
    expect(arithmeticProblems(made('const a = feed.value / 2; const b = width / 2 + low;'))).toHaveLength(1);
  });
});
