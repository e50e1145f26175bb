/** Every key that the core hands out has its words: sources, terms, notes, figures. And no words wait for nothing. */
import fc from 'fast-check';
import ts from 'typescript';
import { describe, expect, test } from 'vitest';
import { surfaceSteps } from '../../src/core/geometry/surfaceSteps.ts';
import { sheetFacts } from '../../src/core/plan/sheetFacts.ts';
import { volumeStep } from '../../src/core/geometry/volumeStep.ts';
import type { Plan, Step } from '../../src/core/plan/figure.ts';
import { planOf } from '../../src/core/plan/planOf.ts';
import type { Note } from '../../src/core/note.ts';
import type { System } from '../../src/core/system.ts';
import type { Sheet } from '../../src/paper/layOut.ts';
import type { Page } from '../../src/paper/page.ts';
import { allSheets } from '../../src/sheets/allSheets.ts';
import { sheetPrint } from '../../src/sheets/sheetPrint.ts';
import type { Catalogue } from '../../src/wording/catalogue.ts';
import { noteSentence } from '../../src/wording/note.ts';
import { containerAndShare, shapes } from '../core/geometryArbitraries.ts';
import { content, english } from '../demoSystems.ts';
import { systems } from '../systemArbitrary.ts';
import { at, nodesOf, type SourceFile, sources } from './sourceFiles.ts';

/** Groups of the catalogue whose sentences only a page or a form asks for are looked after there. */
const plannedGroups = [
  ...['notes', 'card', 'modes', 'words', 'months'],
  ...['sitter', 'waterLog', 'startUpLog', 'dipStrip', 'worksheet', 'build', 'stage', 'systemDrawing'],
  ...['poster', 'large', 'pocket', 'labels', 'template'],
];

/** Sentences that no plan and no card asks for, each with the reason. */
const askedElsewhere: Readonly<Record<string, string>> = {};

const sentences: Catalogue = english;
const demo = content.systems.map((one) => one.system);
const any = fc.sample(systems(), { numRuns: 300, seed: 11 });
const plans: readonly (readonly [System, Plan])[] = [...demo, ...any].map((system) => [
  system,
  planOf(system),
]);
const core = sources.filter((file) => file.room === 'core');

type Literal = { readonly text: string; readonly where: string };

/** Texts that are written down for a field of some name: `source: 'fao589'`, `code: few ? 'a' : 'b'`. */
function literalsOf(file: SourceFile, field: string): readonly Literal[] {
  return nodesOf(file).flatMap((node) => {
    const isField = ts.isPropertyAssignment(node) && node.name.getText(file.tree) === field;
    return isField ? textsIn(file, node.initializer) : [];
  });
}

/** Texts that stand as an argument of a call: `quantity('V', 'waterVolume', …)` at place 1. */
function argumentsOf(file: SourceFile, called: string, place: number): readonly Literal[] {
  return nodesOf(file).flatMap((node) => {
    const isCall = ts.isCallExpression(node) && node.expression.getText(file.tree) === called;
    const argument = isCall ? node.arguments.at(place) : undefined;
    return argument ? textsIn(file, argument) : [];
  });
}

function textsIn(file: SourceFile, node: ts.Expression): readonly Literal[] {
  if (ts.isStringLiteral(node)) return [{ text: node.text, where: at(file, node) }];
  if (ts.isConditionalExpression(node))
    return [...textsIn(file, node.whenTrue), ...textsIn(file, node.whenFalse)];
  return [];
}

function unknown(literals: readonly Literal[], known: object, what: string): readonly string[] {
  return literals
    .filter(({ text }) => !Object.hasOwn(known, text))
    .map(({ text, where }) => `${where} ${text}: ${what}`);
}

describe('a source', () => {
  test('that the core cites has a file', () => {
    const cited = core.flatMap((file) => [
      ...literalsOf(file, 'source'),
      ...argumentsOf(file, 'byHand', -1),
      ...argumentsOf(file, 'lookup', -1),
    ]);
    expect(cited.length).toBeGreaterThan(40);
    expect(unknown(cited, content.sources, 'is no file of content/sources')).toEqual([]);
  });

  test('that a plan cites has a file', () => {
    const cited = new Set(
      plans.flatMap(([, plan]) => Object.values(plan.figures).flatMap((figure) => figure.sources)),
    );
    expect([...cited].filter((key) => !Object.hasOwn(content.sources, key))).toEqual([]);
  });
});

describe('a term', () => {
  const stepsOf = (plan: Plan): readonly Step[] =>
    Object.values(plan.figures).flatMap((figure) => figure.steps);
  const ofShapes = shapes.flatMap((shape) =>
    fc.sample(containerAndShare(shape), { numRuns: 20, seed: 5 }).flatMap(([container, share]) => {
      const depth_mm = container.depth_mm * share;
      return [volumeStep(container, depth_mm), ...surfaceSteps(container, depth_mm)];
    }),
  );
  const steps = [...plans.flatMap(([, plan]) => stepsOf(plan)), ...ofShapes];
  const used = new Set(steps.flatMap((step) => [step.gives, ...step.symbols].map((one) => one.term)));

  test('of every step has a file', () => {
    expect(used.size).toBeGreaterThan(50);
    expect([...used].filter((key) => !Object.hasOwn(content.terms, key))).toEqual([]);
  });

  test('that the core writes down has a file', () => {
    const written = core.flatMap((file) => [
      ...literalsOf(file, 'term'),
      ...argumentsOf(file, 'quantity', 1),
    ]);
    expect(unknown(written, content.terms, 'is no file of content/terms')).toEqual([]);
  });

  test('has a name of its own, so that a step can be read', () => {
    const names = Object.values(content.terms).map((term) => term.name);
    expect(names.filter((name, i) => names.indexOf(name) !== i)).toEqual([]);
  });

  test('with a unit is used in that unit', () => {
    const wrong = steps
      .flatMap((step) => [step.gives, ...step.symbols])
      .filter(({ term, unit }) => {
        const told = content.terms[term]?.unit;
        return told !== undefined && told !== unit;
      });
    expect([
      ...new Set(
        wrong.map(({ term, unit }) => `${term} is in ${unit}, its file says ${content.terms[term]?.unit}`),
      ),
    ]).toEqual([]);
  });
});

/** A group of the catalogue's sentences. */
function group(name: string): Catalogue {
  const found = sentences[name];
  return typeof found === 'object' ? found : {};
}

function leaves(of: unknown, path = ''): readonly string[] {
  if (typeof of !== 'object' || of === null) return [path];
  return Object.entries(of).flatMap(([key, value]) => leaves(value, path === '' ? key : `${path}.${key}`));
}

/** The same catalogue, which remembers what it was asked for. */
function listening(of: Catalogue, asked: Set<string>, path = ''): Catalogue {
  return new Proxy(of, {
    get(target, key) {
      const value = typeof key === 'string' ? target[key] : undefined;
      const here = path === '' ? String(key) : `${path}.${String(key)}`;
      if (typeof value === 'object') return listening(value, asked, here);
      if (value !== undefined) asked.add(here);
      return value;
    },
  });
}

type Element = { readonly type: unknown; readonly props?: { readonly children?: unknown } };

/** Runs every component of a tree, as the layout would. */
function walk(node: unknown): void {
  if (Array.isArray(node)) return void node.forEach(walk);
  if (typeof node !== 'object' || node === null || !('type' in node)) return;
  const { type, props = {} } = node as Element;
  walk(typeof type === 'function' ? type(props) : props.children);
}

/** Looks at a sheet as the press would, and prints nothing. */
async function looking({ root, title, lang }: Sheet): Promise<Page> {
  walk(root);
  return { title, lang, width_pt: 595, height_pt: 842, packs: [], nodes: [], items: [] };
}

describe('a sentence', () => {
  const asked = new Set<string>();
  const catalogue = listening(sentences, asked);
  const { terms, sources: short } = content;
  const words = { catalogue, terms, sources: short };
  const notes = plans.flatMap(([, plan]) => Object.values(plan.figures).flatMap((figure) => figure.notes));

  test('is there for every note, and has all its numbers', () => {
    for (const units of ['metric', 'us'] as const) {
      for (const note of notes)
        expect(noteSentence(note, catalogue, units)).not.toMatch(/[{}]|NaN|undefined/);
    }
  });

  test('is there for every caution of a crop, and none is idle', () => {
    const cautions = new Set(Object.values(content.crops).flatMap((crop) => crop.cautions));
    expect(cautions.size).toBeGreaterThan(3);
    for (const code of cautions) {
      const note: Note = { code, level: 'caution', numbers: {}, words: { crop: 'X' }, source: 'fromMemory' };
      expect(noteSentence(note, catalogue, 'metric')).toContain('X');
    }
  });

  test('is there for every note that the core can write', () => {
    const codes = core
      .filter((file) => /^src\/core\/(plan|turnover)\//.test(file.path))
      .flatMap((file) => literalsOf(file, 'code'));
    expect(codes.length).toBeGreaterThan(15);
    expect(unknown(codes, group('notes'), 'has no sentence under notes')).toEqual([]);
  });

  test('names every figure of every plan', () => {
    const keys = new Set(
      plans.flatMap(([, plan]) => Object.keys(plan.figures).map((key) => key.replace(/^bed\d+\./, ''))),
    );
    const names = Object.keys(group('figures'));
    expect([...keys].filter((key) => !names.includes(key))).toEqual([]);
    // The pattern by which a bed's own figures are named.
    expect(names.filter((key) => !keys.has(key))).toEqual(['ofBed']);
  });

  test('is asked for by some plan, card or piece of code', async () => {
    const months = Array.from({ length: 12 }, (_, i) => String(i + 1).padStart(2, '0'));
    for (const [i, [system]] of plans.slice(0, 100).entries()) {
      for (const units of ['metric', 'us'] as const) {
        const day = `2031-${months[i % 12]}-14`;
        const input = { ...sheetFacts(system, content.care), words, paper: 'A4' as const, units, day };
        for (const kind of allSheets.filter((one) => one.fits(input) === 'yes')) {
          for await (const page of kind.pages(input, looking)) expect(page.items).toEqual([]);
          sheetPrint(kind, input, [], '');
        }
      }
    }
    const keys = plannedGroups.flatMap((name) => leaves(group(name), name));
    const written = new Set(
      sources.flatMap((file) =>
        nodesOf(file)
          .filter(ts.isStringLiteral)
          .map((node) => node.text),
      ),
    );
    const idle = keys.filter(
      (key) => !asked.has(key) && !isWritten(key, written) && askedElsewhere[key] === undefined,
    );
    expect(idle).toEqual([]);
    expect(Object.keys(askedElsewhere).filter((key) => !keys.includes(key))).toEqual([]);
  });
});

/** `card.pdfSubject` is asked for as `card.pdfSubject`, or by `card(input, 'pdfSubject')`; figures by their key. */
function isWritten(key: string, written: ReadonlySet<string>): boolean {
  return written.has(key) || written.has(key.slice(key.indexOf('.') + 1));
}

describe('these rules themselves', () => {
  test('find texts in fields, choices and arguments', () => {
    const file = sources.find((one) => one.path === 'src/core/plan/levels.ts');
    if (file === undefined) throw new Error('no levels.ts');
    expect(literalsOf(file, 'code').map(({ text }) => text)).toEqual([
      'waterUnderTwiceBedSump',
      'tankUnderTwiceBed',
    ]);
    expect(argumentsOf(file, 'quantity', 1).map(({ text }) => text)).toContain('tankPerBed');
  });

  test('hear what a catalogue was asked for', () => {
    const asked = new Set<string>();
    const of = listening({ a: { b: 'c' } }, asked)['a'];
    expect(typeof of === 'object' ? of['b'] : '').toBe('c');
    expect([...asked]).toEqual(['a.b']);
  });
});
