/** What happens between the disk and the schemas. */
import { describe, expect, test } from 'vitest';
import { inOrder } from '../../src/schemas/problemOrder.ts';
import { nearest } from '../../src/schemas/nearest.ts';
import { readContent } from '../../src/schemas/readContent.ts';
import { decodeUtf8 } from '../../src/schemas/utf8.ts';
import { otherUnit } from '../../src/schemas/wrongUnit.ts';
import { readWith, soundSystem } from './contentFolder.ts';

const bytes = (text: string, ...more: number[]) => Uint8Array.from([...Buffer.from(text), ...more]);

describe('strict UTF-8', () => {
  test.each([
    ['a byte of an older encoding', bytes('ab\nž', 0xe9, 0x20), { line: 2, column: 2 }],
    ['a character cut off at the end', bytes('abc', 0xe2, 0x82), { line: 1, column: 4 }],
    ['UTF-16 with its mark', Uint8Array.of(0xff, 0xfe, 0x61, 0), { line: 1, column: 1 }],
    ['half of a surrogate pair', bytes('x', 0xed, 0xa0, 0x80), { line: 1, column: 2 }],
    ['a wrong byte behind a sound replacement character', bytes('\ufffd\n\n', 0x80), { line: 3, column: 1 }],
  ])('%s has its place', (_, given, wrongAt) => {
    expect(decodeUtf8(given)).toEqual({ wrongAt });
  });

  test('every script comes through, and a byte order mark is left out', () => {
    expect(decodeUtf8(bytes('\ufeffČeština Ελληνικά 🐟\n'))).toEqual({ text: 'Čeština Ελληνικά 🐟\n' });
    expect(decodeUtf8(new Uint8Array())).toEqual({ text: '' });
  });
});

describe('lines and columns', () => {
  test('are the same with the line ends of other systems', async () => {
    const broken = soundSystem.replace('full_mm: 700', 'full_mm: 7').replaceAll('\n', '\r\n');
    const { lines } = await readWith({ 'systems/sound.yaml': broken });
    expect(lines).toHaveLength(1);
    expect(lines[0]).toMatch(/^content\/systems\/sound\.yaml:5:12 tank\.full_mm: got 7, /);
  });

  test('a missing key points at its group, an empty one at itself, a missing group at the file', async () => {
    const { lines } = await readWith({
      'systems/sound.yaml': soundSystem.replace('  intake_mm: 100\n', '').replace('full_mm: 700', 'full_mm:'),
      'systems/tankless.yaml': 'id: tankless\nname: No tank\n',
    });
    expect(lines.map((line) => line.split(':').slice(0, 4).join(':'))).toEqual([
      'content/systems/sound.yaml:5:3 tank.full_mm: is missing. Expected a number from 10 to 20000, in millimetres.',
      'content/systems/sound.yaml:14:1 pump.intake_mm: is missing. Expected a number from 0 to 20000, in millimetres.',
      'content/systems/tankless.yaml:1:1 tank: is missing. Expected a value.',
      'content/systems/tankless.yaml:1:1 beds: is missing. Expected a value.',
    ]);
  });

  test('an optional key with nothing behind it counts as left out', async () => {
    const { problems, content } = await readWith({
      'systems/sound.yaml': `${soundSystem}spoon_g:\nwater:\n`,
    });
    expect(problems).toEqual([]);
    expect(content.systems[0]?.system.spoon_g).toBeNull();
  });
});

describe('other files', () => {
  test('a fish with a broken file is told once, and not called unknown', async () => {
    const { lines } = await readWith({
      'systems/sound.yaml': soundSystem,
      'fish/nileTilapia.yaml': 'name: Nile tilapia\nuse: pet\n',
    });
    expect(lines.filter((line) => line.includes('systems/'))).toEqual([]);
    expect(lines).toContain(
      'content/fish/nileTilapia.yaml:2:6 use: got "pet", expected table or ornamental.',
    );
  });

  test('a figure without a source, a range upside down and a badly named file are told', async () => {
    const { lines } = await readWith({
      'media/glass marbles.yaml':
        'name: Glass marbles\nvoid_frac: { low: 0.5, likely: 0.4, high: 0.45 }\nvoidSources: { low: fao598, likely: geometry, high: geometry }\n',
    });
    expect(lines).toEqual([
      'content/media/glass marbles.yaml:1:1: got "glass marbles", expected a name of letters and figures that begins with a letter, such as nileTilapia.yaml.',
      'content/media/glass marbles.yaml:2:32 void_frac.likely: got 0.4, but the lower figure is 0.5. Write the figures from low to high.',
      expect.stringMatching(
        /^content\/media\/glass marbles\.yaml:3:21 voidSources\.low: got "fao598", but there is no such file\. Did you mean "fao589"\?/,
      ),
    ]);
  });

  test('a folder that is not there is told, and the rest is read all the same', async () => {
    const { content, problems } = await readContent('no-such-folder');
    expect(problems.map((problem) => problem.at?.file)).toEqual(
      [
        'care',
        'climates',
        'containers',
        'crops',
        'fish',
        'media',
        'pumps',
        'sources',
        'systems',
        'terms',
        'turnovers',
        'wording',
        'wording/en.yaml',
      ].map((name) => `no-such-folder/${name}`),
    );
    expect(content.systems).toEqual([]);
  });

  test('hidden files and notes to people are no content', async () => {
    const { problems } = await readWith({
      'systems/.hidden.yaml': ': [',
      'systems/README.md': '# How to measure',
      'systems/.git/config.yaml': ': [',
    });
    expect(problems).toEqual([]);
  });
});

test('of one file fifty problems are shown, and how many more there are', () => {
  const at = (line: number) => ({ file: 'a.yaml', line, column: 1 });
  const many = Array.from(
    { length: 60 },
    (_, index) => ({ code: 'missing', place: [], at: at(60 - index) }) as const,
  );
  const shown = inOrder([...many, { code: 'missing', place: [], at: { ...at(1), file: 'b.yaml' } }]);
  expect(shown).toHaveLength(52);
  expect(shown[0]?.at?.line).toBe(1);
  expect(shown[50]).toEqual({ code: 'moreProblems', place: [], given: '10', at: at(51) });
  expect(shown[51]?.at?.file).toBe('b.yaml');
});

describe('what was probably meant', () => {
  test.each([
    ['coarsGravel', 'coarseGravel'],
    ['Coarsegravel', 'coarseGravel'],
    ['tilapia', null],
    ['', null],
    ['x'.repeat(5000), null],
  ])('%s: %s', (typed, meant) => {
    expect(nearest(typed, ['coarseGravel', 'pumice', 'nileTilapia'])).toBe(meant);
  });

  /** Definitions: inch 25.4 mm, US gallon 231 cubic inches, pound 0.45359237 kg (agreement of 1959). */
  test.each([
    ['length_cm', 120, 'length_mm: 1200'],
    ['length_in', 10, 'length_mm: 254'],
    ['length_ft', 1, 'length_mm: 304.8'],
    ['length', 1200, 'length_mm'],
    ['flow_gph', 100, 'flow_L_h: 378.541'],
    ['flow_L_min', 15, 'flow_L_h: 900'],
    ['spoon_oz', 1, 'spoon_g: 28.3495'],
    ['now_degF', 68, 'now_degC: 20'],
    ['length_cm', 'long', 'length_mm'],
    ['length_furlong', 1, undefined],
    ['breadth_cm', 1, undefined],
  ])('%s: %s is %s', (typed, value, write) => {
    expect(otherUnit(typed, value, ['length_mm', 'flow_L_h', 'spoon_g', 'now_degC'])?.write).toBe(write);
  });
});
