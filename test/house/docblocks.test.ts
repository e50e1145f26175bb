import ts from 'typescript';
import { describe, expect, test } from 'vitest';
import {
  filesBelow,
  parsedText,
  at,
  exportedFunctions,
  root,
  type SourceFile,
  sources,
} from './sourceFiles.ts';
import { unitSuffixes } from '../../src/core/units.ts';

type Docblock = {
  readonly prose: string;
  readonly params: readonly string[];
  readonly tags: ReadonlyMap<string, readonly string[]>;
};

const citationKeys = filesBelow('content/sources').map((path) => path.replace(/^.*\/|\.yaml$/g, ''));

const core = sources.filter((file) => file.room === 'core');
const functions = core.flatMap((file) => exportedFunctions(file).map((one) => ({ file, ...one })));

function docblockOf(node: ts.FunctionDeclaration): Docblock | null {
  const docs = ts.getJSDocCommentsAndTags(node).filter((one) => ts.isJSDoc(one));
  const doc = docs.at(-1);
  if (doc === undefined) return null;
  const tags = new Map<string, readonly string[]>();
  const params: string[] = [];
  for (const tag of doc.tags ?? []) {
    if (ts.isJSDocParameterTag(tag)) params.push(tag.name.getText());
    const name = tag.tagName.text;
    tags.set(name, [...(tags.get(name) ?? []), textOfTag(tag)]);
  }
  return { prose: ts.getTextOfJSDocComment(doc.comment)?.trim() ?? '', params, tags };
}

/** As it is written, since the parser takes braces of an example for a type. */
function textOfTag(tag: ts.JSDocTag): string {
  return tag
    .getText()
    .replace(/^@\w+\s*/, '')
    .replace(/\s*\n\s*\*\s?/g, ' ')
    .trim();
}

function isFormula(name: string, node: ts.FunctionDeclaration): boolean {
  const ends = unitSuffixes.some((suffix) => name.endsWith(`_${suffix}`));
  return ends || node.type?.kind === ts.SyntaxKind.NumberKeyword;
}

function docblockProblems(file: SourceFile): readonly string[] {
  return exportedFunctions(file).flatMap(({ name, node }) => {
    const doc = docblockOf(node);
    const problem = (text: string): string => `${at(file, node)} ${name}: ${text}`;
    if (doc === null || doc.prose === '') return [problem('says nothing about what it gives')];
    const params = node.parameters.map((one) => one.name.getText());
    const wantedTags = isFormula(name, node) ? ['returns', 'valid', 'source', 'example'] : [];
    const written = doc.params.length > 0 || isFormula(name, node);
    return [
      ...wantedTags.filter((tag) => !doc.tags.get(tag)?.[0]).map((tag) => problem(`has no @${tag}`)),
      ...(written && doc.params.join() !== params.join()
        ? [problem(`names the parameters ${doc.params.join(', ')}, but takes ${params.join(', ')}`)]
        : []),
      ...(isFormula(name, node) && !/^[^\n]{5,140}[.:]/.test(doc.prose)
        ? [problem('begins with no single line')]
        : []),
      ...(doc.tags.get('source') ?? []).flatMap((source) => sourceProblems(source).map(problem)),
    ];
  });
}

/** "key place; key place". The first word of the first part is a citation key; `see the figures` points on. */
function sourceProblems(source: string): readonly string[] {
  const [first = ''] = source.split(/[\s,;]/);
  const pointsOn = source === 'see the figures';
  return pointsOn || citationKeys.includes(first) ? [] : [`@source ${first} is no file of content/sources`];
}

type Example = { readonly file: SourceFile; readonly name: string; readonly text: string };

function examplesOf(file: SourceFile): readonly Example[] {
  return exportedFunctions(file).flatMap(({ name, node }) =>
    (docblockOf(node)?.tags.get('example') ?? []).map((text) => ({ file, name, text })),
  );
}

async function ran(example: Example): Promise<{ readonly got: unknown; readonly expected: unknown }> {
  const [expression = '', expected] = example.text.split(/\s\/\/\s/);
  if (expected === undefined)
    throw new Error(`${example.name}: the example "${example.text}" tells no result`);
  const module: Record<string, unknown> = await import(`${root}${example.file.path}`);
  const names = Object.keys(module);
  const values = names.map((name) => module[name]);
  const work = (text: string): unknown => new Function(...names, `return (${text})`)(...values);
  return { got: work(expression), expected: work(expected) };
}

function expectClose(got: unknown, expected: unknown): void {
  if (typeof expected !== 'number') {
    expect(got).toEqual(expected);
    return;
  }
  const within = 1e-6 * Math.max(Math.abs(expected), 1e-12);
  expect(Math.abs(Number(got) - expected), `got ${got}, the docblock says ${expected}`).toBeLessThanOrEqual(
    within,
  );
}

describe('the docblock of a function of the core', () => {
  test('says what the function gives, from what, where it holds and who says so', () => {
    expect(functions.length).toBeGreaterThan(40);
    expect(core.flatMap(docblockProblems)).toEqual([]);
  });
});

describe('the example of', () => {
  const examples = core.flatMap(examplesOf);
  test.each(examples.map((one) => [`${one.name}: ${one.text}`, one] as const))(
    '%s',
    async (_title, example) => {
      const { got, expected } = await ran(example);
      expectClose(got, expected);
    },
  );
});

describe('these rules themselves', () => {
  const made = (doc: string) =>
    parsedText('src/core/x.ts', `${doc}\nexport function a_mm(b_mm: number): number { return b_mm; }`);
  const whole = [
    '/**',
    ' * Length of a thing.',
    ' * @param b_mm its length',
    ' * @returns mm',
    ' * @valid always',
    ' * @source geometry',
    ' * @example a_mm(1) // 1',
    ' */',
  ];

  test('miss every line that is not there', () => {
    expect(docblockProblems(made(whole.join('\n')))).toEqual([]);
    for (const line of whole.slice(1, -1)) {
      expect(docblockProblems(made(whole.filter((one) => one !== line).join('\n'))), line).not.toEqual([]);
    }
  });

  test('refuse a source that is not there, and a result that is not so', async () => {
    expect(docblockProblems(made(whole.join('\n').replace('geometry', 'hearsay')))).toHaveLength(1);
    const [file] = core.filter((one) => one.path.endsWith('/box.ts'));
    if (file === undefined) throw new Error('no box.ts');
    const { got, expected } = await ran({
      file,
      name: 'boxVolume_L',
      text: 'boxVolume_L(1000, 800, 300) // 241',
    });
    expect(() => expectClose(got, expected)).toThrow();
  });
});
