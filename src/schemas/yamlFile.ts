/** One YAML text: its plain data, and the line and column of everything in it. */
import {
  type Document,
  isAlias,
  isMap,
  isNode,
  isScalar,
  isSeq,
  LineCounter,
  type Pair,
  parseDocument,
  visit,
} from 'yaml';
import type { Problem } from '../core/problem.ts';
import type { Path } from './schemaAt.ts';

export type YamlFile = {
  readonly raw: unknown;
  /** The problem with its line and column. */
  readonly locate: (problem: Problem) => Problem;
};

/** Deeper than any of our files goes. */
const mostDeep = 40;

/** A few repeated containers are welcome; a file that unfolds into thousands is not. */
const mostAliases = 100;

/** Codes that are about a key, so that the finger points at the key and not at the value behind it. */
const aboutKeys: ReadonlySet<Problem['code']> = new Set(['missing', 'unknownKey', 'wrongUnit']);

export function readYaml(text: string, file: string): YamlFile | { readonly problems: readonly Problem[] } {
  const lines = new LineCounter();
  const document = parseDocument(text, {
    lineCounter: lines,
    prettyErrors: false,
    stringKeys: true,
    logLevel: 'error',
  });
  const at = (offset: number) => placed(lines, file, offset);
  const found = [...syntaxProblems(document, text), ...graphProblems(document)];
  if (found.length > 0) {
    return {
      problems: onePerPlace(found.map(({ offset, ...rest }) => ({ ...rest, place: [], at: at(offset) }))),
    };
  }
  if (document.contents === null || (isScalar(document.contents) && document.contents.value === null)) {
    return { problems: [{ code: 'emptyFile', place: [], at: at(0) }] };
  }
  return {
    raw: document.toJS({ maxAliasCount: -1 }),
    locate: (problem) => ({ ...problem, at: at(offsetOf(document, problem)) }),
  };
}

type Found = Pick<Problem, 'code' | 'given' | 'other'> & { readonly offset: number };

function syntaxProblems(document: Document.Parsed, text: string): readonly Found[] {
  return [...document.errors, ...document.warnings].map((error): Found => {
    const offset = error.pos[0];
    if (error.code === 'DUPLICATE_KEY') {
      return { code: 'duplicateKey', given: /^[^:\n]*/.exec(text.slice(offset))?.[0].trim() ?? '', offset };
    }
    return { code: 'notYaml', given: error.message, other: error.code, offset };
  });
}

/** Aliases that lead nowhere, into themselves, or are too many; and nesting without end. */
function graphProblems(document: Document.Parsed): readonly Found[] {
  const found: Found[] = [];
  let aliases = 0;
  visit(document, {
    Alias(_, alias) {
      const offset = alias.range?.[0] ?? 0;
      aliases++;
      const target = alias.resolve(document);
      if (aliases > mostAliases) {
        found.push({ code: 'notYaml', given: alias.source, other: 'TOO_MANY_ALIASES', offset });
        return visit.BREAK;
      }
      if (target === undefined || surrounds(target, offset)) {
        found.push({ code: 'notYaml', given: alias.source, other: 'BAD_ALIAS', offset });
      }
      return undefined;
    },
    Collection(_, node, path) {
      if (path.length <= mostDeep) return undefined;
      found.push({ code: 'notYaml', given: '', other: 'RESOURCE_EXHAUSTION', offset: node.range?.[0] ?? 0 });
      return visit.BREAK;
    },
  });
  return found;
}

function surrounds(
  target: { range?: readonly [number, number, number] | null | undefined },
  offset: number,
): boolean {
  const { range } = target;
  return range !== null && range !== undefined && range[0] <= offset && offset < range[1];
}

/** The parser goes on after an error, and then finds the same spot wrong again. */
function onePerPlace(problems: readonly Problem[]): readonly Problem[] {
  const seen = new Set<string>();
  return problems.filter(({ at }) => {
    const key = `${at?.line}:${at?.column}`;
    if (seen.has(key)) return false;
    seen.add(key);
    return true;
  });
}

function placed(lines: LineCounter, file: string, offset: number): NonNullable<Problem['at']> {
  const { line, col } = lines.linePos(offset);
  return { file, line: Math.max(1, line), column: Math.max(1, col) };
}

function offsetOf(document: Document.Parsed, problem: Problem): number {
  let node: unknown = document.contents;
  let keyOffset = startOf(node);
  for (const [depth, step] of problem.place.entries()) {
    const next = stepInto(resolved(node, document), step);
    if (next === null) return keyOffset;
    keyOffset = next.keyOffset;
    node = next.value;
    const last = depth === problem.place.length - 1;
    if (last && !aboutKeys.has(problem.code) && hasText(node)) return startOf(node);
  }
  return keyOffset;
}

function stepInto(
  node: unknown,
  step: Path[number],
): { readonly keyOffset: number; readonly value: unknown } | null {
  if (isSeq(node) && typeof step === 'number') {
    const value = node.items[step];
    return value === undefined ? null : { keyOffset: startOf(value), value };
  }
  if (!isMap(node)) return null;
  const pair = node.items.find((item: Pair) => isScalar(item.key) && String(item.key.value) === String(step));
  return pair ? { keyOffset: startOf(pair.key), value: pair.value } : null;
}

function resolved(node: unknown, document: Document.Parsed): unknown {
  return isAlias(node) ? node.resolve(document) : node;
}

function startOf(node: unknown): number {
  return isNode(node) ? (node.range?.[0] ?? 0) : 0;
}

/** Whether something stands in the file for this value; `spoon_g:` alone has nothing to point at. */
function hasText(node: unknown): boolean {
  return isNode(node) && node.range !== null && node.range !== undefined && node.range[0] < node.range[1];
}
