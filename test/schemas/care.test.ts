/** Files of `content/care/`: what is refused, and where the finger points. */
import { describe, expect, test } from 'vitest';
import { content } from '../demoSystems.ts';
import { readWith } from './contentFolder.ts';

const sound = `topic: solids
tasks:
  - id: stirMud
    who: keeper
    do: Stir it.
    why: It settles.
    source: commonPractice
`;

/** The lines about one added file, with one text of the sound one replaced. */
async function linesFor(from: string, to: string): Promise<readonly string[]> {
  if (!sound.includes(from)) throw new Error(`the sound file has no "${from}"`);
  const { lines } = await readWith({ 'care/more.yaml': sound.replace(from, to) });
  return lines;
}

describe('a file of tasks', () => {
  test('is read into the list of all tasks, under its topic, for every system', async () => {
    const { problems, content: read } = await readWith({ 'care/more.yaml': sound });
    expect(problems).toEqual([]);
    expect(read.care).toHaveLength(content.care.length + 1);
    expect(read.care.find((task) => task.id === 'stirMud')).toEqual({
      id: 'stirMud',
      topic: 'solids',
      rhythm: 'event',
      who: 'keeper',
      do: 'Stir it.',
      why: 'It settles.',
      source: 'commonPractice',
      only: [],
    });
  });

  test.each([
    ['source: commonPractice', 'source: comonPractice', '7:13 tasks[0].source: got "comonPractice"'],
    ['    source: commonPractice\n', '', '3:5 tasks[0].source: is missing.'],
    ['    why: It settles.\n', '', '3:5 tasks[0].why: is missing.'],
    ['do: Stir it.', 'do: ""', '5:5 tasks[0].do: is missing.'],
    ['who: keeper', 'who: sitter', '4:10 tasks[0].who: got "sitter"'],
    ['id: stirMud', 'id: Stir the mud', '3:9 tasks[0].id: got "Stir the mud"'],
    ['source: commonPractice', 'source: geometry\n    only: [fisch]', '8:12 tasks[0].only[0]: got "fisch"'],
    ['source: commonPractice', 'source: geometry\n    when: now', '8:5 tasks[0].when: the key "when"'],
    ['topic: solids', 'topic: mud', '1:8 topic: got "mud"'],
    ['topic: solids', 'topic: routine', 'rhythm: got "event"'],
    ['topic: solids', 'topic: solids\nrhythm: day', '2:9 rhythm: got "day", expected event.'],
    [
      'id: stirMud',
      'id: shutLid',
      'tasks[10].id: the id "shutLid" is already that of a task in content/care/more',
    ],
  ])('with "%s" turned into "%s" is refused at its place', async (from, to, told) => {
    const lines = await linesFor(from, to);
    expect(lines).toHaveLength(1);
    expect(lines[0]?.startsWith('content/care/')).toBe(true);
    expect(lines[0]).toContain(told);
  });

  test('without tasks, or empty, is refused', async () => {
    const { lines } = await readWith({
      'care/none.yaml': 'topic: solids\ntasks: []\n',
      'care/void.yaml': '',
    });
    expect(lines).toEqual([
      expect.stringMatching(/^content\/care\/none\.yaml:2:8 tasks: got 0 entries, expected at least 1/),
      expect.stringMatching(/^content\/care\/void\.yaml:1:1: the file has nothing in it/),
    ]);
  });

  test('with a broken task tells all that is wrong at once', async () => {
    const broken = sound.replace('who: keeper', 'who: nobody').replace('commonPractice', '');
    const { lines } = await readWith({ 'care/more.yaml': broken });
    expect(lines).toHaveLength(2);
  });
});
