/** Workshops in which teams share a worksheet, rows that are left out, and where workshops and rosters lie. */
import { readFile } from 'node:fs/promises';
import { describe, expect, test } from 'vitest';
import { toWorkshop } from '../../src/schemas/workshops.ts';
import { printablePeople } from '../../src/sheets/handouts/printablePeople.ts';
import { problemLine } from '../../src/wording/problem.ts';
import { content } from '../demoSystems.ts';
import { readWith } from './contentFolder.ts';

const facts = { ...content, bedName: 'Bed' };
const sound = {
  ...{ id: 'w', name: 'W', date: '2031-05-12', starts: '09:30', length_min: 120, level: 'adults' },
  ...{ example: 'hollow-lane-ibc', roster: 'w.csv', worksheets: 'teams' },
};
const small = 'tank box 100 x 90 x 80 cm + bed box 100 x 60 x 35 cm';
const other = 'tank box 110 x 90 x 80 cm + bed box 100 x 60 x 35 cm';

async function read(rows: readonly string[], more: object = {}) {
  const bytes = new TextEncoder().encode(['name;team;containers;notes', ...rows].join('\n'));
  const found = await toWorkshop({ ...sound, ...more }, 'w.yaml', facts, async () => bytes);
  return { ...found, told: found.problems.map((one) => problemLine(one, content.wording['en'])) };
}

describe('containers of a row', () => {
  const places = async (cell: string): Promise<readonly string[]> => {
    const { told } = await read([`Ada;;${cell};`]);
    return told.map((line) => /^w\.csv:2:3(?: ([\w.]+))?:/.exec(line)?.[1] ?? line);
  };
  const tooLong = ['tank.length_mm', 'tank.width_mm', 'tank.depth_mm'];

  test('are told by what somebody wrote, not by what follows from it', async () => {
    expect(await places('tank box 1200 x 60 x 50 m + bed box 100 x 60 x 30 cm')).toEqual(tooLong);
  });

  test('are looked at even where the other one cannot be read', async () => {
    const [first = '', ...others] = await places('bed boks 10 x 20 cm + tank box 1200 x 60 x 50 m');
    expect(first).toContain('the word boks is not known');
    expect(others).toEqual(tooLong);
    expect(await places('tank lying drum 58 x 88 x 99 cm + bed drum 30 x 3')).toEqual([
      expect.stringContaining('has no unit'),
      'tank.depth_mm',
    ]);
  });
});

describe('a team', () => {
  test('keeps every note with the member that it is about', async () => {
    const { people } = await read(['Ada;Heron;;nuts', 'Bo;Heron;;', 'Cleo;;;bees', 'Dov;Heron;;asthma']);
    expect(people).toMatchObject([
      {
        ...{ name: 'Heron', notes: '', line: 2 },
        members: [
          { name: 'Ada', line: 2, notes: 'nuts' },
          { name: 'Bo', line: 3, notes: '' },
          { name: 'Dov', line: 5, notes: 'asthma' },
        ],
      },
      { name: 'Cleo', notes: 'bees', members: [] },
    ]);
  });

  test('has the containers that any of its members brings', async () => {
    const { people } = await read(['Ada;Heron;;', `Bo;Heron;${small};`, `Cleo;Heron;${small};`]);
    expect(people).toHaveLength(1);
    expect(people[0]).toMatchObject({ number: null, system: { tank: { full_mm: 700 } } });
  });

  test('with other containers in two lines is told of both', async () => {
    const { told } = await read(['Ada;Heron;;', `Bo;Heron;${small};`, `Cleo;Heron;${other};`]);
    expect(told).toEqual([
      'w.csv:4:3: the team "Heron" has other containers in line 3 already, and one worksheet for all. Keep those of one line.',
    ]);
  });

  test('is told of containers that make no system at the line that brought them', async () => {
    const { told } = await read([
      'Ada;Heron;;',
      'Bo;Heron;;',
      'Cleo;Heron;tank box 50 x 40 x 30 cm + bed box 200 x 100 x 50 cm;',
    ]);
    expect(told).toHaveLength(1);
    expect(told[0]).toMatch(/^w\.csv:4:3: the bed is too large for this tank/);
  });

  test('goes on without the member whose containers make no system', async () => {
    const tooLarge = 'tank box 50 x 40 x 30 cm + bed box 200 x 100 x 50 cm';
    const rows = ['Ada;Heron;;', `Bo;Heron;${tooLarge};`, `Cleo;Heron;${small};`, `Dov;Otter;${tooLarge};`];
    const told = async (some: readonly string[]) => {
      const { people, workshop } = await read(some, { badRows: 'skip' });
      const lines = workshop?.skipped.map(({ at }) => at?.line);
      return [
        people.map(({ name, number, members }) => [name, number, ...members.map((one) => one.name)]),
        lines,
      ];
    };
    // What Cleo brought can be built, so it is the team's.
    expect(await told(rows)).toEqual([[['Heron', null, 'Ada', 'Cleo']], [3, 5]]);
    expect(await told([`Bo;Heron;${tooLarge};`, `Cleo;Heron;;`, 'Dov;Heron;;'])).toEqual([
      [['Heron', expect.stringMatching(/^3-0001-0001/), 'Cleo', 'Dov']],
      [2],
    ]);
    // The same in two rows is wrong in both.
    expect(await told([`Bo;Heron;${tooLarge};`, `Cleo;Heron;${tooLarge};`, 'Dov;Heron;;'])).toEqual([
      [['Heron', expect.stringMatching(/^3-0001-0001/), 'Dov']],
      [2, 3],
    ]);
  });

  test('is not needed for a rota', async () => {
    const rota = { from: '2031-05-13', to: '2031-06-13' };
    expect((await read(['Ada;;;', 'Bo;;;'], { rota })).told).toEqual([]);
    expect((await read(['Ada;;;', 'Bo;Heron;;'], { rota })).told).toEqual([]);
  });
});

describe('mending a row', () => {
  test.each(['participants', 'teams'])('gives nobody else another exercise: %s', async (worksheets) => {
    const wrong = ['Ada;Heron;;', '=1+1;Otter;;', ';Newt;;', 'Dov;Newt;;', 'Eli;Carp;;'];
    const mended = ['Ada;Heron;;', 'Bo;Otter;;', 'Cleo;Newt;;', 'Dov;Newt;;', 'Eli;Carp;;'];
    const before = (await read(wrong, { badRows: 'skip', worksheets })).people;
    const after = (await read(mended, { badRows: 'skip', worksheets })).people;
    const kept = after.filter(({ name }) => before.some((one) => one.name === name));
    expect(before.map(({ name }) => name)).toEqual(
      worksheets === 'teams' ? ['Heron', 'Newt', 'Carp'] : ['Ada', 'Dov', 'Eli'],
    );
    const exercises = (some: typeof before) => some.map(({ name, number, system }) => [name, number, system]);
    expect(exercises(before)).toEqual(exercises(kept));
    expect(before.at(-1)?.number).toMatch(worksheets === 'teams' ? /^3-0001-0004/ : /^3-0001-0005/);
  });
});

test('mending how a team is written gives no other team another exercise', async () => {
  const numbers = async (team: string) => {
    const rows = ['Ada;Heron;;', `Bo;${team};;`, 'Cleo;Otter;;'];
    const { people } = await read(rows, { badRows: 'skip' });
    return people.map(({ name, number }) => [name, number]);
  };
  expect(await numbers('heron')).toEqual(await numbers('Heron'));
});

test('a file that says what cannot be is told what would be right', async () => {
  const told = async (more: object) => (await read(['Ada;Heron;;'], more)).told;
  expect(await told({ starts: '9:30' })).toEqual(['starts: got "9:30", expected a time of day like 09:30.']);
  for (const roster of ['../w.csv', '/w.csv', 'a/../../w.csv'])
    expect(await told({ roster })).toEqual([
      `roster: got "${roster}", expected the name of a file beside this one or in a folder below, such as private/roster.csv.`,
    ]);
  for (const sheets of [['contents'], ['rota'], ['contents', 'rota']])
    expect((await told({ sheets }))[0]).toMatch(/^sheets: nothing of this has a page/);
});

test('letters that no font has are told with file, line and column, also of the members of a team', async () => {
  const rows = [
    'Ada;Heron;;',
    'B🐟;Heron;;',
    'Cleo;Otter;;fed 🐟',
    'Dov;Heron;;',
    'Eli;Ca🐟rp;;',
    'Fia;Ca🐟rp;;',
  ];
  const { people, roster } = await read(rows);
  if (roster === null) throw new Error('no roster');
  const uncovered = async (texts: readonly string[]) =>
    texts.some((text) => text.includes('🐟')) ? [{ character: '🐟', codePoint: 'U+1F41F' }] : [];
  const { fine, wrong } = await printablePeople(people, roster, { uncovered } as never);
  // Nobody is left out for a letter in another's row.
  expect(fine.map(({ name, members }) => [name, ...members.map((one) => one.name)])).toEqual([
    ['Heron', 'Ada', 'Dov'],
  ]);
  expect(wrong.map((one) => problemLine(one, content.wording['en']))).toEqual([
    'w.csv:3:1: "🐟" (U+1F41F) cannot be printed. Leave it out, or write it in letters.',
    'w.csv:4:4: "🐟" (U+1F41F) cannot be printed. Leave it out, or write it in letters.',
    'w.csv:6:2: "🐟" (U+1F41F) cannot be printed. Leave it out, or write it in letters.',
    'w.csv:7:2: "🐟" (U+1F41F) cannot be printed. Leave it out, or write it in letters.',
  ]);
});

describe('the folder of workshops', () => {
  const yaml = (id: string, roster: string) =>
    Object.entries({ ...sound, id, roster, example: 'hollow-lane-ibc' })
      .map(([key, value]) => `${key}: ${JSON.stringify(value)}`)
      .join('\n');

  test('may keep rosters in a folder below', async () => {
    const { lines, content: found } = await readWith({
      'systems/hollow-lane-ibc.yaml': await demoText(),
      'workshops/w.yaml': yaml('w', 'private/real.csv'),
      'workshops/private/real.csv': 'name,team\nAda,Heron\n',
    });
    expect(lines).toEqual([]);
    expect(found.workshops.map(({ people }) => people.length)).toEqual([1]);
  });

  test('tells of ids that are not the name of the file, or are there twice', async () => {
    const { lines } = await readWith({
      'systems/hollow-lane-ibc.yaml': await demoText(),
      'workshops/r.csv': 'name,team\nAda,Heron\n',
      'workshops/w.yaml': yaml('w', 'r.csv'),
      'workshops/x.yaml': yaml('w', 'r.csv'),
    });
    expect(lines).toEqual([
      'content/workshops/x.yaml:1:5 id: got "w", expected "x", the name of its file; rename one of the two.',
      'content/workshops/x.yaml:1:5 id: the id "w" is already that of content/workshops/w.yaml. Give one of the two another id, and its file the same name.',
    ]);
  });
});

function demoText(): Promise<string> {
  return readFile(new URL('../../content/systems/hollow-lane-ibc.yaml', import.meta.url), 'utf8');
}
