/** Files broken at random: whatever happens to a file, there is a list of problems with lines, never a crash. */
import fc from 'fast-check';
import { readdir, readFile } from 'node:fs/promises';
import { join } from 'node:path';
import { beforeAll, expect, test } from 'vitest';
import type { Content } from '../../src/schemas/content.ts';
import { readContent } from '../../src/schemas/readContent.ts';
import { toSystem } from '../../src/schemas/toSystem.ts';
import { readYaml } from '../../src/schemas/yamlFile.ts';
import { pathOf, problemLine, problemSentence } from '../../src/wording/problem.ts';
import { english, realContent, soundSystem } from './contentFolder.ts';

let content: Content;
let texts: readonly string[];
beforeAll(async () => {
  ({ content } = await readContent(realContent));
  const folder = join(realContent, 'systems');
  const names = (await readdir(folder)).filter((name) => name.endsWith('.yaml')).sort();
  texts = await Promise.all(names.map((name) => readFile(join(folder, name), 'utf8')));
});

const junk = fc.oneof(
  fc.constantFrom(
    '\t',
    ':',
    ': ',
    '- ',
    '[',
    ']',
    '{',
    '}',
    '"',
    "'",
    '&a ',
    '*a',
    '*none',
    '!!js ',
    '|',
    '>',
    '#',
    '\n',
    '---\n',
  ),
  fc.constantFrom(
    'null',
    '~',
    'true',
    '-1',
    '.inf',
    '.nan',
    '1e99',
    '0x1F',
    '1,200',
    '12,5',
    '45 days',
    '"300"',
    '[]',
    '{}',
    '? [a]',
  ),
  fc.string({ unit: 'binary', maxLength: 8 }),
);

type Mutation = {
  readonly file: number;
  readonly from: number;
  readonly length: number;
  readonly put: string;
};
const mutation = fc.record({ file: fc.nat(), from: fc.nat(), length: fc.nat({ max: 12 }), put: junk });

function mutated({ file, from, length, put }: Mutation): string {
  const text = texts[file % texts.length] ?? '';
  const start = from % text.length;
  return text.slice(0, start) + put + text.slice(start + length);
}

function problemsOf(text: string) {
  const yaml = readYaml(text, 'content/systems/x.yaml');
  if ('problems' in yaml) return yaml.problems;
  const result = toSystem(yaml.raw, content);
  return 'problems' in result ? result.problems.map(yaml.locate) : [];
}

test('a thousand broken files: every problem has its line in the file and its sentence, and most files have one', () => {
  let broken = 0;
  const en = english(content);
  fc.assert(
    fc.property(mutation, (change) => {
      const text = mutated(change);
      const problems = problemsOf(text);
      if (problems.length > 0) broken++;
      const lines = text.split(/\r\n|\r|\n/).length;
      for (const problem of problems) {
        expect(problem.at?.file).toBe('content/systems/x.yaml');
        expect(problem.at?.line).toBeGreaterThanOrEqual(1);
        expect(problem.at?.line).toBeLessThanOrEqual(lines);
        expect(problem.at?.column).toBeGreaterThanOrEqual(1);
        expect(problemLine(problem, en)).toMatch(/^content\/systems\/x\.yaml:\d+:\d+.*: .*[.?)]$/);
        expect(problemSentence(problem, en)).not.toMatch(
          /\{(?:given|min|max|field|how|hint|expected)\}|undefined/,
        );
      }
    }),
    { seed: 20310, numRuns: 1000 },
  );
  expect(broken).toBeGreaterThan(500);
});

test('deep nesting, repetitions and loops are refused with their place', () => {
  const hostile = [
    `id: ${'['.repeat(5000)}`,
    `id: ${'['.repeat(100)}${']'.repeat(100)}`,
    'a: &a [*a]',
    'a: *nowhere',
    `a: &a [1, 2]\nb: [${Array(101).fill('*a').join(', ')}]`,
    'a: &a [1]\nb: &b [*a, *a]\nc: &c [*b, *b]\nd: { <<: *c }',
  ];
  for (const text of hostile) {
    const problems = problemsOf(text);
    expect(problems.length).toBeGreaterThan(0);
    for (const problem of problems) expect(problem.at?.line).toBeGreaterThanOrEqual(1);
  }
});

test('a container written once and repeated by name is welcome, and a fault in it is told where it was written', () => {
  const repeated = soundSystem
    .replace('container: {', 'container: &tub {')
    .replace(/container: \{[^}]*\}/, 'container: *tub');
  expect(repeated).toContain('&tub');
  expect(repeated).toContain('*tub');
  expect(problemsOf(repeated)).toEqual([]);
  const faults = problemsOf(repeated.replace('depth_mm: 800', 'depth_mm: 8'));
  expect(faults.map((one) => `${pathOf(one.place)} ${one.at?.line}`)).toEqual([
    'tank.container.depth_mm 4',
    'beds[0].container.depth_mm 4',
  ]);
});
