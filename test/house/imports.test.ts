import { existsSync } from 'node:fs';
import { describe, expect, test } from 'vitest';
import {
  freeNames,
  type Import,
  importsOf,
  parsedText,
  at,
  root,
  sources,
  type SourceFile,
} from './sourceFiles.ts';

const imports = sources.flatMap((file) => importsOf(file));

/** Of paper a sheet may use its measures, what the press says of a page that it laid out, and pages of pages; else only types. */
const sheetsFromPaper = /\/(measures|overflows|enlarge|tiles)\.ts$/;

/** Rooms that a room may take from. */
const mayTakeFrom: Readonly<Record<string, readonly string[]>> = {
  core: ['core'],
  wording: ['wording', 'core'],
  drawing: ['drawing', 'core'],
  schemas: ['schemas', 'core'],
  sheets: ['sheets', 'drawing', 'wording', 'core', 'paper'],
  paper: ['paper'],
  solver: ['solver', 'core'],
};

/** Rooms at the end of the row: they take from those above; of each other only what stands here. */
const ends: Readonly<Record<string, readonly string[]>> = {
  'content.config.ts': [],
  forms: ['styles'],
  print: [],
  terminal: ['print'],
  components: ['forms', 'layouts', 'styles'],
  layouts: ['forms', 'components', 'styles'],
  pages: ['forms', 'components', 'layouts', 'styles'],
};

/** Rooms whose numbers are already made: they know the plan's types, and take no figure from the core themselves. */
const typesOfCoreOnly = ['drawing', 'sheets'];

/** Nobody else may touch the machine they run on. */
const nodeAllowed =
  /^src\/(print\/|terminal\/|pages\/|paper\/node\.ts|content\.config\.ts|schemas\/read(Content|Files)\.ts)/;
const domAllowed = /^src\/(forms\/|paper\/browser\.ts)/;
const workerAllowed = /^src\/forms\//;

function roomOf(path: string): string {
  return path.split('/')[1] ?? '';
}

function said(one: Import, rule: string): string {
  return `${one.from.path}:${one.line} imports ${one.specifier}: ${rule}`;
}

function directionProblems(all: readonly Import[]): readonly string[] {
  return all.flatMap((one) => {
    if (one.target === null || !one.target.startsWith('src/')) return [];
    const { room } = one.from;
    const into = roomOf(one.target);
    const allowed = mayTakeFrom[room] ?? [...Object.keys(mayTakeFrom), room, ...(ends[room] ?? [])];
    if (!allowed.includes(into)) return [said(one, `${room} takes nothing from ${into}`)];
    if (room === 'sheets' && into === 'paper' && one.kind === 'value' && !sheetsFromPaper.test(one.target)) {
      return [
        said(one, 'sheets take values only from measures, overflows, enlarge and tiles of paper, else types'),
      ];
    }
    if (into === 'core' && typesOfCoreOnly.includes(room) && one.kind === 'value') {
      return [said(one, `${room} takes only types from core; a printed number comes with the plan`)];
    }
    return [];
  });
}

function cycles(all: readonly Import[]): readonly string[] {
  const to = new Map<string, readonly string[]>();
  for (const { from, target } of all) {
    if (target !== null) to.set(from.path, [...(to.get(from.path) ?? []), target]);
  }
  const found = new Set<string>();
  const done = new Set<string>();
  const walk = (path: string, way: readonly string[]): void => {
    const start = way.indexOf(path);
    if (start >= 0) found.add([...way.slice(start), path].join(' -> '));
    if (start >= 0 || done.has(path)) return;
    for (const next of to.get(path) ?? []) walk(next, [...way, path]);
    done.add(path);
  };
  for (const path of to.keys()) walk(path, []);
  return [...found];
}

describe('who may import whom', () => {
  test('every relative import means a file that is there', () => {
    const lost = imports.filter((one) => one.target !== null && !existsSync(`${root}${one.target}`));
    expect(lost.map((one) => said(one, 'there is no such file'))).toEqual([]);
  });

  test('nothing flows back: each room takes only from the rooms before it', () => {
    expect(directionProblems(imports)).toEqual([]);
  });

  test('every room has its rule', () => {
    const known = [...Object.keys(mayTakeFrom), ...Object.keys(ends)];
    expect([...new Set(sources.map((file) => file.room))].filter((room) => !known.includes(room))).toEqual(
      [],
    );
  });

  test('inside the core only plan takes from plan, but for the types of a step', () => {
    const wrong = imports.filter(
      (one) =>
        one.from.path.startsWith('src/core/') &&
        !one.from.path.startsWith('src/core/plan/') &&
        one.target?.startsWith('src/core/plan/') &&
        !(one.kind === 'type' && one.target === 'src/core/plan/figure.ts'),
    );
    expect(wrong.map((one) => said(one, 'plan puts the others together, not the other way'))).toEqual([]);
  });

  test('no two files import each other, however long the way round', () => {
    expect(cycles(imports)).toEqual([]);
  });

  test('the three ways of printing a page never import each other', () => {
    const ways = ['toPdf', 'toSvg', 'toPng'].map((name) => `src/paper/${name}.ts`);
    const wrong = imports.filter(
      (one) => ways.includes(one.from.path) && one.target !== null && ways.includes(one.target),
    );
    expect(wrong.map((one) => said(one, 'siblings over one page'))).toEqual([]);
    expect(ways.filter((path) => sources.every((file) => file.path !== path))).toEqual([]);
  });

  test('the core needs no package at all', () => {
    const wrong = imports.filter((one) => one.from.room === 'core' && one.target === null);
    expect(wrong.map((one) => said(one, 'the core is pure arithmetic'))).toEqual([]);
  });

  test('the engines of layout and print stay in paper', () => {
    const engines = /^(satori|pdf-lib|@resvg\/|harfbuzzjs|fflate)(?!\/jsx)/;
    const wrong = imports.filter(
      (one) =>
        !['paper', 'print'].includes(one.from.room) &&
        !(one.specifier.startsWith('satori') && one.kind === 'type') &&
        engines.test(one.specifier),
    );
    expect(wrong.map((one) => said(one, 'paper is the only home of the engines'))).toEqual([]);
  });

  test('zod is imported whole, so that its unused parts fall away', () => {
    const wrong = imports.filter((one) => one.specifier.startsWith('zod') && !one.names.includes('*'));
    expect(wrong.map((one) => said(one, "write import * as z from 'zod'"))).toEqual([]);
  });
});

/** What only exists in Node. `Buffer` and `process` need no import. */
const nodeNames = new Set(['process', 'Buffer', '__dirname', '__filename', 'require']);
const domNames = new Set([
  'window',
  'document',
  'navigator',
  'indexedDB',
  'localStorage',
  'sessionStorage',
  'location',
  'history',
]);

function nodeProblems(file: SourceFile): readonly string[] {
  const taken = importsOf(file).filter((one) => one.specifier.startsWith('node:') && one.kind === 'value');
  const named = freeNames(file).filter((one) => nodeNames.has(one.name));
  return [
    ...taken.map((one) => said(one, 'only print, terminal, pages and the readers touch Node')),
    ...named.map(
      (one) => `${at(file, one.node)} ${one.name}: only print, terminal, pages and the readers touch Node`,
    ),
  ];
}

function browserProblems(file: SourceFile): readonly string[] {
  const dom = domAllowed.test(file.path) ? new Set<string>() : domNames;
  return freeNames(file)
    .filter((one) => dom.has(one.name) || (one.name === 'self' && !workerAllowed.test(file.path)))
    .map(
      (one) => `${at(file, one.node)} ${one.name}: only forms and paper/browser.ts touch the browser's page`,
    );
}

describe('where code runs', () => {
  test('Node is touched only by those who build, print and read', () => {
    expect(sources.filter((file) => !nodeAllowed.test(file.path)).flatMap(nodeProblems)).toEqual([]);
  });

  test("the browser's page is touched only by forms and by the browser's press", () => {
    expect(sources.flatMap(browserProblems)).toEqual([]);
  });
});

describe('these rules themselves', () => {
  const made = (path: string, text: string): SourceFile => parsedText(path, text);

  test('refuse an import against the stream, of a value where only types may pass, and let the others through', () => {
    const problems = (path: string, text: string) => directionProblems(importsOf(made(path, text)));
    expect(problems('src/core/x.ts', "import { a } from '../wording/y.ts';")).toHaveLength(1);
    expect(problems('src/paper/x.ts', "import type { a } from '../core/y.ts';")).toHaveLength(1);
    expect(problems('src/sheets/x.tsx', "import { a } from '../paper/layOut.ts';")).toHaveLength(1);
    expect(problems('src/sheets/x.tsx', "import { type A } from '../paper/layOut.ts';")).toEqual([]);
    expect(problems('src/drawing/x.ts', "import { a } from '../core/y.ts';")).toHaveLength(1);
    expect(problems('src/print/x.ts', "const a = await import('../forms/y.ts');")).toHaveLength(1);
    expect(problems('src/forms/x.ts', "import { a } from '../core/y.ts';")).toEqual([]);
  });

  test('see a round of three files', () => {
    const files = [
      made('src/core/a.ts', "import './b.ts';"),
      made('src/core/b.ts', "import type { C } from './c.ts';"),
      made('src/core/c.ts', "export * from './a.ts';"),
    ];
    expect(cycles(files.flatMap((file) => importsOf(file)))).toHaveLength(1);
  });

  test('tell the page of a browser from a property or a variable of the same name', () => {
    const used = 'document.title = a.window; const x = { navigator: 1 }; self.close();';
    expect(browserProblems(made('src/wording/x.ts', used))).toHaveLength(2);
    expect(
      browserProblems(made('src/paper/x.ts', 'function f(document) { return document.title; }')),
    ).toEqual([]);
    expect(browserProblems(made('src/forms/x.ts', used))).toEqual([]);
    expect(
      nodeProblems(made('src/wording/x.ts', "import { readFile } from 'node:fs'; process.exit();")),
    ).toHaveLength(2);
  });
});
