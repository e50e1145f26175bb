import { expect, test } from 'vitest';
import { rosterLines } from '../../src/forms/class/rosterLines.ts';
import { mostRosterBytes, readRoster } from '../../src/schemas/readRoster.ts';
import { content } from '../demoSystems.ts';

const catalogue = content.wording['en'] ?? {};

test('mistakes of a roster stand in their order, under the name of the file that was chosen', () => {
  const { problems } = readRoster(new TextEncoder().encode('name\nAda\nAda\n=1\n'), 'roster', []);
  const lines = rosterLines([...problems].reverse(), 'Form 7b, spring.csv', catalogue);
  expect(lines.map((line) => line.split(': ')[0])).toEqual([
    'Form 7b, spring.csv:3:1',
    'Form 7b, spring.csv:4:1',
  ]);
  // A file may be called anything.
  const [turned = ''] = rosterLines(problems, '7b\u202evsc.exe', catalogue);
  expect(turned).toMatch(/^7bU\+202Evsc\.exe:3:1: /);
});

test('what is wrong with the whole file is said in a sentence', () => {
  const problem = {
    code: 'rosterTooLarge',
    place: ['roster'],
    given: '6000000',
    max: mostRosterBytes,
  } as const;
  expect(rosterLines([problem], 'class.csv', catalogue)).toEqual([
    'The roster has 6000000 bytes, and 5000000 are the most. Take out what is no row of names, such as pictures.',
  ]);
});
