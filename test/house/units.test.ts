import ts from 'typescript';
import { describe, expect, test } from 'vitest';
import { parse } from 'yaml';
import { unitSuffixes } from '../../src/core/units.ts';
import {
  at,
  exportedFunctions,
  filesBelow,
  nodesOf,
  parsedText,
  type SourceFile,
  sources,
  textOf,
} from './sourceFiles.ts';

/** Names of files where an underscore means something else, each with the reason. */
const otherMeaning: Readonly<Record<string, string>> = {
  'src/solver/highs.ts': 'names options of a package',
  'src/schemas/wrongUnit.ts': 'lists units of other people, to tell them ours',
};

/** Exported functions of the core that give a number without a unit, each with the reason. */
const unitless: Readonly<Record<string, string>> = {
  wholeCount: 'a count of whole things',
  pK1: 'pH and pK have no unit',
  pK2: 'pH and pK have no unit',
  pKw: 'pH and pK have no unit',
  pHOfCarbonates: 'pH and pK have no unit',
  pHAtCarbonDioxide: 'pH and pK have no unit',
  numberOf: 'the value of any figure, in the unit of that figure',
  workedValue: 'the value of any step, in the unit of that step',
  placesIn: 'a count of whole places',
  placesOf: 'a count of whole places',
  weekFrom: 'the number of a week',
  weekWith: 'the number of a week',
  restWeeks: 'a count of weeks',
  sizeOf: 'a count of whole places',
  clearedOf: 'a count of whole places',
  widestIn: 'a count of whole places',
  lengthOf: 'a count of whole places',
  worthMet: 'a count of wishes',
  worthIn: 'a count of wishes',
  unitsFor: 'a count of plant units',
  seedsFor: 'a count of whole seeds',
  mostOf: 'a count of whole places',
  gapOf: 'the value of any aim, in its unit',
  cellsOf: 'a count of cells',
  reynolds: 'a ratio',
  frictionFactor: 'a ratio',
  twoK: 'a ratio, in velocity heads',
};

const known: ReadonlySet<string> = new Set(unitSuffixes);

/** Cubic and square millimetres only live inside a formula, before they become litres and square metres. */
const insideFormula: ReadonlySet<string> = new Set(['mm2', 'mm3']);

/** What stands after the first underscore. Constants of a platform in capitals, and units themselves, have none. */
function suffixOf(name: string): string | null {
  if (/^[A-Z0-9_]+$/.test(name) || known.has(name)) return null;
  const from = name.indexOf('_');
  return from <= 0 ? null : name.slice(from + 1);
}

function hasWrongSuffix(name: string, more: ReadonlySet<string>): boolean {
  const suffix = suffixOf(name);
  return suffix !== null && suffix !== '' && !known.has(suffix) && !more.has(suffix);
}

/** Where a name is given: to a variable, a parameter, a field, a function. Uses follow from that. */
function givenNames(file: SourceFile): readonly { readonly name: string; readonly node: ts.Node }[] {
  return nodesOf(file).flatMap((node) => {
    const named =
      ts.isVariableDeclaration(node) ||
      ts.isParameter(node) ||
      ts.isBindingElement(node) ||
      ts.isPropertySignature(node) ||
      ts.isPropertyAssignment(node) ||
      ts.isNamedTupleMember(node) ||
      ts.isFunctionDeclaration(node) ||
      ts.isTypeAliasDeclaration(node);
    if (!named || node.name === undefined) return [];
    const { name } = node;
    return ts.isIdentifier(name) || ts.isStringLiteral(name) ? [{ name: name.text, node }] : [];
  });
}

function suffixProblems(file: SourceFile): readonly string[] {
  return givenNames(file)
    .filter(({ name }) => hasWrongSuffix(name, insideFormula))
    .map(({ name, node }) => `${at(file, node)} ${name}: ends in no unit of core/units.ts`);
}

/** Keys of figures and numbers that sentences name: `'tankFull_L'`, `key: 'feed_g_d'`. */
function keyProblems(file: SourceFile): readonly string[] {
  return nodesOf(file)
    .filter((node) => ts.isStringLiteral(node) && /^[a-z][A-Za-z0-9]*_[A-Za-z0-9_]+$/.test(node.text))
    .filter((node) => ts.isStringLiteral(node) && hasWrongSuffix(node.text, new Set()))
    .map(
      (node) => `${at(file, node)} ${node.getText(file.tree)}: a key that ends in no unit of core/units.ts`,
    );
}

const named = sources.filter((file) => otherMeaning[file.path] === undefined);

describe('a name with an underscore', () => {
  test('ends in a unit of the closed list', () => {
    expect(named.flatMap(suffixProblems)).toEqual([]);
  });

  test('ends in a unit where it is a key of the plan', () => {
    expect(named.filter((file) => file.room === 'core').flatMap(keyProblems)).toEqual([]);
  });

  test('ends in a unit in every file of content that people fill in', () => {
    const files = filesBelow('content').filter(
      (path) => path.endsWith('.yaml') && !path.includes('/wording/'),
    );
    expect(files.length).toBeGreaterThan(20);
    const wrong = files.flatMap((path) =>
      keysOf(parse(textOf(path)))
        .filter((key) => hasWrongSuffix(key, new Set()))
        .map((key) => `${path} ${key}: ends in no unit of core/units.ts`),
    );
    expect(wrong).toEqual([]);
  });
});

function keysOf(value: unknown): readonly string[] {
  if (typeof value !== 'object' || value === null) return [];
  const own = Array.isArray(value) ? [] : Object.keys(value);
  return [...own, ...Object.values(value).flatMap(keysOf)];
}

describe('a function of the core that gives a bare number', () => {
  const core = sources.filter((file) => file.room === 'core');
  const numbers = core.flatMap((file) =>
    exportedFunctions(file)
      .filter(({ node }) => node.type?.kind === ts.SyntaxKind.NumberKeyword)
      .map(({ name, node }) => ({ name, where: at(file, node) })),
  );

  test('says its unit in its name', () => {
    expect(numbers.length).toBeGreaterThan(20);
    const wrong = numbers.filter(
      ({ name }) => !known.has(suffixOf(name) ?? '') && unitless[name] === undefined,
    );
    expect(wrong.map(({ name, where }) => `${where} ${name}: gives a number and names no unit`)).toEqual([]);
  });

  test('is not excused once it is gone', () => {
    const names = numbers.map(({ name }) => name);
    expect(Object.keys(unitless).filter((name) => !names.includes(name))).toEqual([]);
    expect(Object.keys(otherMeaning).filter((path) => sources.every((file) => file.path !== path))).toEqual(
      [],
    );
  });
});

describe('these rules themselves', () => {
  test('know a unit from a word', () => {
    const text =
      'const flow_L_h = 1; const depth_cm = 2; const n = { fish_count: 3, area_mm2: 4 }; type T = { x_mm: 1 };';
    const problems = suffixProblems(parsedText('src/core/x.ts', text));
    expect(problems.map((one) => one.split(' ')[1])).toEqual(['depth_cm:', 'fish_count:']);
    expect(keyProblems(parsedText('src/core/x.ts', "figure({ key: 'tankFull_Litres' })"))).toHaveLength(1);
    expect(keysOf({ tank: [{ depth_in: 3 }] }).filter((key) => hasWrongSuffix(key, new Set()))).toEqual([
      'depth_in',
    ]);
  });
});
