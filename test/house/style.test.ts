import ts from 'typescript';
import { describe, expect, test } from 'vitest';
import {
  at,
  exportsOf,
  filesBelow,
  type Import,
  importsOf,
  lineOf,
  nodesOf,
  parsedText,
  type SourceFile,
  sources,
  textOf,
} from './sourceFiles.ts';

/** Longest file that a reader keeps in the head. */
const mostLines = (path: string): number => (path.startsWith('src/core/') ? 200 : 250);

/** Longer ones, each with the reason. */
const longFiles: Readonly<Record<string, string>> = {};

/** Names that end like an empty one, but stand for a thing that a standard calls so. */
const standardWords: Readonly<Record<string, string>> = {
  readPathData: 'path data is what the SVG standard calls the letters and numbers of a path',
  writeInfo: 'the Info dictionary is what the PDF standard calls title, author and dates',
  // Astro looks for this name.
  getStaticPaths: 'the site generator asks for the pages by this name',
};

/** Exports that nothing in `src` imports, each with the reason. */
const usedFromOutside: Readonly<Record<string, string>> = {
  'src/paper/node.ts nodeParts': 'tests of the press look at its parts one by one',
  'src/wording/iCalendar.ts escaped': 'how a text stands in the file is held to the examples of the standard',
  'src/wording/iCalendar.ts folded': 'how a line is cut is tested by itself',
};

function anyProblems(file: SourceFile): readonly string[] {
  return nodesOf(file)
    .filter((node) => node.kind === ts.SyntaxKind.AnyKeyword)
    .map((node) => `${at(file, node)} any: say what it is, or unknown`);
}

function booleanProblems(file: SourceFile): readonly string[] {
  return nodesOf(file)
    .filter((node) => ts.isParameter(node) && !ts.isFunctionTypeNode(node.parent))
    .filter((node) => ts.isParameter(node) && saysBoolean(node))
    .map((node) => `${at(file, node)} ${node.getText(file.tree)}: no boolean parameter; name both cases`);
}

function saysBoolean(node: ts.ParameterDeclaration): boolean {
  const literal = node.initializer?.kind;
  if (literal === ts.SyntaxKind.TrueKeyword || literal === ts.SyntaxKind.FalseKeyword) return true;
  const types = node.type && ts.isUnionTypeNode(node.type) ? node.type.types : [node.type];
  return types.some((type) => type?.kind === ts.SyntaxKind.BooleanKeyword);
}

function onlyReexports(file: SourceFile): boolean {
  const { statements } = file.tree;
  const passesOn = (one: ts.Statement): boolean => ts.isExportDeclaration(one) || ts.isImportDeclaration(one);
  return (
    statements.length > 0 &&
    statements.every(passesOn) &&
    statements.some((one) => ts.isExportDeclaration(one))
  );
}

/** Exports that no other file of `src` takes. A type may be exported to name what an export beside it gives. */
function deadExports(
  files: readonly SourceFile[],
  outsiders: readonly Import[],
): readonly { readonly id: string; readonly line: number }[] {
  const taken = new Set<string>();
  for (const one of [...files.flatMap((file) => importsOf(file)), ...outsiders]) {
    for (const name of one.names) taken.add(`${one.target} ${name}`);
  }
  const isTaken = (file: SourceFile, name: string): boolean =>
    taken.has(`${file.path} ${name}`) || taken.has(`${file.path} *`);
  return files.filter(isOurOwnToImport).flatMap((file) =>
    exportsOf(file)
      .filter(({ name, node }) => !isTaken(file, name) && !(isType(node) && isNamedInside(file, name)))
      .map(({ name, node }) => ({ id: `${file.path} ${name}`, line: lineOf(file, node) })),
  );
}

/** Pages and the content's settings are asked for by the site generator, not by a file of ours. */
function isOurOwnToImport(file: SourceFile): boolean {
  return /\.tsx?$/.test(file.path) && file.room !== 'pages' && file.room !== 'content.config.ts';
}

function isType(node: ts.Node): boolean {
  return ts.isTypeAliasDeclaration(node) || ts.isInterfaceDeclaration(node);
}

function isNamedInside(file: SourceFile, name: string): boolean {
  const uses = nodesOf(file).filter(
    (node) => ts.isTypeReferenceNode(node) && node.typeName.getText() === name,
  );
  return uses.length > 0;
}

/** A formula may wait for its figure, if a test holds it against the world. */
function importsOfCoreByTests(): readonly Import[] {
  return filesBelow('test')
    .filter((path) => /\.(ts|tsx)$/.test(path))
    .flatMap((path) => importsOf(parsedText(path, textOf(path))))
    .filter((one) => one.target?.startsWith('src/core/') && one.names.every((name) => name !== '*'));
}

describe('how a file is written', () => {
  test('nothing is any', () => {
    expect(sources.flatMap(anyProblems)).toEqual([]);
  });

  test('no function takes a boolean', () => {
    expect(sources.flatMap(booleanProblems)).toEqual([]);
  });

  test('no file only passes on what others export', () => {
    expect(sources.filter(onlyReexports).map((file) => `${file.path}: import from where it is made`)).toEqual(
      [],
    );
  });

  test('no file or folder is a drawer for odds and ends', () => {
    const drawers = /(^|\/)(utils?|helpers?|common|misc|shared|lib|index)(\/|\.)/i;
    const all = [...filesBelow('src'), ...filesBelow('test')];
    // The address of a page is fixed by the web: `index` is its word, not ours.
    expect(all.filter((path) => drawers.test(path) && !/index\.(astro|mdx|html)$/.test(path))).toEqual([]);
  });

  test('files are named in camelCase for their main export, components with a capital', () => {
    const fine = /^[A-Za-z][A-Za-z0-9]*(\.(config|worker|d))?\.(ts|tsx|js|astro|css)$/;
    const all = filesBelow('src').filter((path) => !/^src\/(pages|styles)\//.test(path));
    expect(all.filter((path) => !fine.test(path.split('/').at(-1) ?? ''))).toEqual([]);
  });

  test('no file is longer than a reader keeps in the head', () => {
    const long = sources
      .map((file) => ({ path: file.path, lines: textOf(file.path).trimEnd().split('\n').length }))
      .filter(({ path, lines }) => lines > mostLines(path) && longFiles[path] === undefined);
    expect(long.map(({ path, lines }) => `${path}:${lines} is longer than ${mostLines(path)} lines`)).toEqual(
      [],
    );
  });

  test('names say what a thing is, not that it is data', () => {
    const empty = /^(get|calculate|compute|handle|process)[A-Z]|(Manager|Helper|Utils?|Info|Data)$/;
    const wrong = sources.flatMap((file) =>
      exportsOf(file)
        .filter(({ name }) => empty.test(name) && standardWords[name] === undefined)
        .map(({ name, node }) => `${at(file, node)} ${name}: what gives is a noun, what acts is a verb`),
    );
    expect(wrong).toEqual([]);
  });
});

describe('what is exported', () => {
  const dead = deadExports(sources, importsOfCoreByTests());

  test('is imported somewhere', () => {
    const wrong = dead.filter(({ id }) => usedFromOutside[id] === undefined);
    expect(wrong.map(({ id, line }) => `${id.replace(' ', `:${line} `)}: no other file imports it`)).toEqual(
      [],
    );
  });

  test('and no exception outlives its reason', () => {
    const ids = dead.map(({ id }) => id);
    expect(Object.keys(usedFromOutside).filter((id) => !ids.includes(id))).toEqual([]);
    expect(
      Object.keys(longFiles).filter((path) => textOf(path).trimEnd().split('\n').length <= mostLines(path)),
    ).toEqual([]);
  });
});

describe('these rules themselves', () => {
  const made = (text: string): SourceFile => parsedText('src/core/x.ts', text);

  test('see any and boolean parameters, and nothing else', () => {
    expect(anyProblems(made("const a: any = 'any';"))).toHaveLength(1);
    expect(
      booleanProblems(made('function f(a: boolean, b = true, c?: boolean | null, d: string) {}')),
    ).toHaveLength(3);
    expect(booleanProblems(made('function f(a: string): boolean { return true; }'))).toEqual([]);
  });

  test('see a file that only passes on, and an export that nobody takes', () => {
    expect(onlyReexports(made("export * from './y.ts';"))).toBe(true);
    expect(onlyReexports(made("export * from './y.ts'; export const a = 1;"))).toBe(false);
    const files = [
      made('export const a = 1; export const b = 2;'),
      parsedText('src/core/y.ts', "import { a } from './x.ts';"),
    ];
    expect(deadExports(files, []).map(({ id }) => id)).toEqual(['src/core/x.ts b']);
  });
});
