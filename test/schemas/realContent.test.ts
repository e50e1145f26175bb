import { readFile } from 'node:fs/promises';
import { join } from 'node:path';
import { beforeAll, expect, test } from 'vitest';
import { problemCodes } from '../../src/core/problem.ts';
import { volume_L } from '../../src/core/geometry/container.ts';
import { readContent, readSystem } from '../../src/schemas/readContent.ts';
import { problemLine } from '../../src/wording/problem.ts';
import { english, realContent } from './contentFolder.ts';

let read: Awaited<ReturnType<typeof readContent>>;
beforeAll(async () => {
  read = await readContent(realContent);
});

test('our own content has no problem', () => {
  expect(read.problems.map((problem) => problemLine(problem, english(read.content)))).toEqual([]);
});

test('there are twelve systems or more, of every shape and every way of flooding, shared and not', () => {
  const { systems } = read.content;
  const containers = systems.flatMap(({ system: { tank, sump, beds } }) =>
    [tank, ...(sump ? [sump] : []), ...beds].map(({ container }) => container.shape),
  );
  expect(systems.length).toBeGreaterThanOrEqual(12);
  expect([...new Set(containers)].sort()).toEqual([
    'box',
    'cylinder',
    'dipTable',
    'ellipse',
    'lyingCylinder',
    'obround',
    'taperedBox',
    'taperedRound',
  ]);
  const modes = systems.flatMap(({ system }) => system.beds.map((bed) => bed.mode));
  expect([...new Set(modes)].sort()).toEqual(['constantFlood', 'inTank', 'siphon', 'timer']);
  expect(systems.filter((one) => !one.shared).length).toBeGreaterThanOrEqual(2);
  expect(new Set(systems.map((one) => `${one.sheet.paper} ${one.sheet.units}`))).toEqual(
    new Set(['A4 metric', 'Letter us']),
  );
});

test('the bed of the big tank holds 300 L of wet media over 700 L of water', () => {
  const system = read.content.systems.find((one) => one.id === 'hollow-lane-ibc')?.system;
  const [bed] = system?.beds ?? [];
  if (!system || !bed) throw new Error('the big tank is gone');
  expect(volume_L(bed.container, bed.waterLine_mm)).toBe(300);
  expect(volume_L(system.tank.container, system.tank.full_mm)).toBe(700);
});

test('a system file can be read by itself, from anywhere, with the same result', async () => {
  const [first] = read.content.systems;
  const path = join(realContent, 'systems', `${first?.id}.yaml`);
  const alone = await readSystem(path, read.content);
  expect(alone).toMatchObject({ system: { raw: first?.raw, system: first?.system } });
});

test('a file that is not there is a problem, not a crash', async () => {
  const alone = await readSystem('nowhere/none.yaml', read.content);
  expect('problems' in alone && alone.problems.map((one) => problemLine(one, english(read.content)))).toEqual(
    [
      'nowhere/none.yaml:1:1: "nowhere/none.yaml" is not there or cannot be opened. Put it back, or allow it to be read.',
    ],
  );
});

test('English has a sentence for every kind of problem, none of them with a placeholder left or a word of blame', async () => {
  const { en } = read.content.wording;
  for (const code of problemCodes) {
    expect(en?.problems.line[code].length).toBeGreaterThan(10);
    expect(en?.problems.sentence[code].length).toBeGreaterThan(10);
    const line = problemLine({ code, place: ['beds', 0], given: '1', min: 0, max: 2, unit: 'mm' }, en);
    expect(line).not.toMatch(/[{}]|undefined|invalid|oops|error/i);
  }
  expect(await readFile(join(realContent, 'wording', 'en.yaml'), 'utf8')).not.toMatch(/invalid|oops/i);
});

test('without the file of sentences a problem still says where it is', () => {
  const at = { file: 'content/wording/en.yaml', line: 3, column: 1 };
  expect(problemLine({ code: 'missing', place: ['problems'], at }, undefined)).toBe(
    'content/wording/en.yaml:3:1 problems: missing',
  );
});
