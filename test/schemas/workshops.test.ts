import { describe, expect, test } from 'vitest';
import { rowsIn } from '../../src/schemas/rowsIn.ts';
import { toWorkshop } from '../../src/schemas/workshops.ts';
import { problemLine } from '../../src/wording/problem.ts';
import { content } from '../demoSystems.ts';

const facts = { ...content, bedName: 'Bed' };
const sound = {
  ...{ id: 'w', name: 'W', date: '2031-05-12', starts: '09:30', length_min: 120, level: 'adults' },
  ...{ example: 'hollow-lane-ibc', roster: 'w.csv' },
};

async function read(roster: string | null, more: object = {}) {
  const bytes = roster === null ? null : new TextEncoder().encode(roster);
  const { workshop, problems } = await toWorkshop(
    { ...sound, ...more },
    'content/workshops/w.yaml',
    facts,
    async () => bytes,
  );
  return { workshop, told: problems.map((one) => problemLine(one, content.wording['en'])) };
}

describe('a workshop', () => {
  test('gives everybody a system: their own, one by name, or an exercise with its number', async () => {
    const { workshop, told } = await read(
      'name,containers\nAda,\nBo,hollow-lane-ibc\nCleo,tank box 100 x 90 x 80 cm + bed box 100 x 60 x 35 cm\n',
    );
    expect(told).toEqual([]);
    const [ada, bo, cleo] = workshop?.people ?? [];
    expect(ada?.number).toMatch(/^3-0001-0001-\d\d$/);
    expect([bo?.number, cleo?.number]).toEqual([null, null]);
    expect(bo?.system.id).toBe('hollow-lane-ibc');
    // 80 cm to the rim: full at 70. 35 cm: media to 30, water to 25.
    expect(cleo?.system.tank.full_mm).toBe(700);
    expect(cleo?.system.beds[0]).toMatchObject({ mediaDepth_mm: 300, waterLine_mm: 250 });
    expect(cleo?.system.fish).toBeNull();
  });

  test('tells what its file lacks, and names that are nowhere', async () => {
    expect((await read(null)).told).toEqual([
      'roster: "content/workshops/w.csv" is not there or cannot be opened. Put it back, or allow it to be read.',
    ]);
    const { told } = await read('name\nAda\n', {
      example: 'hollow-lane-ibcc',
      media: 'gravel',
      pump: 'huge',
    });
    expect(told.map((line) => line.split(':')[0])).toEqual(['example', 'media', 'pump']);
    expect(told[0]).toContain('Did you mean "hollow-lane-ibc"?');
    expect((await read('name\nAda\n', { starts: '9.30', length_min: 20 })).told).toHaveLength(2);
    expect((await read('name\nAda\nAda\n', { starts: '9.30' })).told).toHaveLength(2);
    expect((await read('name\n\n')).told[0]).toContain('there is nobody in this roster');
  });

  test('tells a rota that ends before it begins, lasts for years, or has holidays the wrong way round', async () => {
    const told = async (rota: object) => (await read('name,team\nAda,Newt\n', { rota })).told.join(' ');
    const year = { from: '2031-05-13', to: '2032-06-15' };
    expect(await told(year)).toBe('');
    expect(await told({ from: '2031-05-13', to: '2031-05-12' })).toMatch(/^rota\.to: got "2031-05-12"/);
    expect(await told({ ...year, to: '2131-05-12' })).toMatch(
      /^rota\.to: these are "?36,?\d+"? days, and 400/,
    );
    const away = [{ from: '2031-06-09', to: '2031-06-02' }];
    expect(await told({ ...year, away })).toMatch(/^rota\.away\[0\]\.to: got "2031-06-02"/);
  });

  test('stops for containers that make no system, or leaves them out and says so', async () => {
    const roster = 'name,containers\nAda,\nBo,tank box 50 x 40 x 30 cm + bed box 200 x 100 x 50 cm\nCleo,\n';
    const { workshop, told } = await read(roster);
    expect(workshop).toBeNull();
    expect(told).toEqual([
      'content/workshops/w.csv:3:2: the bed is too large for this tank: it would take up so much water that the pump runs dry. Bring a smaller bed or a larger tank.',
    ]);
    const { workshop: rest } = await read(roster, { badRows: 'skip' });
    expect(rest?.people.map(({ name }) => name)).toEqual(['Ada', 'Cleo']);
    expect(rest?.skipped.length).toBe(told.length);
  });

  test('leaves nothing to print where every row has a mistake', async () => {
    expect((await read('name\n=1\n', { badRows: 'skip' })).workshop).toBeNull();
  });
});

test('rows are read as people write them', () => {
  expect(rowsIn('', 3)).toEqual([0, 1, 2]);
  expect(rowsIn(' 3, 1-2 ', 3)).toEqual([2, 0, 1]);
  for (const written of ['2,4-6', '2;4–6', '2 4-6', ' 2 , 4 - 6 ', '2; 4 — 6', '2\u00a04−6', '2\n4\t5 6'])
    expect(rowsIn(written, 9), written).toEqual([1, 3, 4, 5]);
  for (const wrong of ['0', '4', '2-1', 'a', '1,,2', '1;,2', '1-', '-1', '1--2', '1-2-3', ',1', '1.2'])
    expect(rowsIn(wrong, 3), wrong).toBeNull();
});
