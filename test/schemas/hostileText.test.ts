import { beforeAll, describe, expect, test } from 'vitest';
import type { Content } from '../../src/schemas/content.ts';
import { readRecord, writeRecord } from '../../src/schemas/systemRecord.ts';
import { toSystem } from '../../src/schemas/toSystem.ts';
import { problemLine } from '../../src/wording/problem.ts';
import { english, readWith, soundSystem } from './contentFolder.ts';

let content: Content;
let sound: object;
beforeAll(async () => {
  ({ content } = await readWith({ 'systems/sound.yaml': soundSystem }));
  sound = content.systems[0]?.raw ?? {};
});

const welcome = {
  markup: '<script>alert(1)</script>',
  quotes: `"It's" & \`that\``,
  emoji: '🐟👩‍🌾🇬🇷',
  rightToLeft: 'حوض السمك \u202eabc\u202c',
  zeroWidth: 'a\u200bb\ufeffc',
  combining: 'Źre\u0301bię \u0301',
  formula: '=1+1',
  path: '../../etc/passwd',
  long: '𝔘'.repeat(500),
};

describe('names that look dangerous are only names', () => {
  test.each(Object.entries(welcome))('%s passes unchanged, through a record and back', (_, name) => {
    const result = toSystem({ ...sound, name, place: name }, content);
    if ('problems' in result) throw new Error(JSON.stringify(result.problems));
    expect(result.system.name).toBe(name);
    const record = readRecord(writeRecord(result.raw));
    expect('raw' in record && record.raw).toMatchObject({ name, place: name });
  });

  test('they pass through a file too', async () => {
    const quoted = JSON.stringify(welcome.rightToLeft);
    const { content: read, lines } = await readWith({
      'systems/sound.yaml': soundSystem.replace('name: Sound', `name: ${quoted}`),
    });
    expect(lines).toEqual([]);
    expect(read.systems[0]?.system.name).toBe(welcome.rightToLeft);
  });
});

describe('names that no sheet can carry are refused by name', () => {
  const refused: Record<string, [string, string]> = {
    bell: [
      'a\u0007b',
      'name: the text holds the character "U+0007", which cannot be printed. Delete it and type the words anew.',
    ],
    nothing: [
      'a\u0000',
      'name: the text holds the character "U+0000", which cannot be printed. Delete it and type the words anew.',
    ],
    newLine: [
      'a\nb',
      'name: the text holds the character "U+000A", which cannot be printed. Delete it and type the words anew.',
    ],
    half: [
      'a\ud800',
      'name: the text holds the character "U+D800", which cannot be printed. Delete it and type the words anew.',
    ],
    nonCharacter: [
      '\uffff',
      'name: the text holds the character "U+FFFF", which cannot be printed. Delete it and type the words anew.',
    ],
    tooLong: ['x'.repeat(501), 'name: the text has more than 500 characters. Shorten it.'],
    blank: [' \u00a0 ', 'name: is missing. Expected a value.'],
  };
  test.each(Object.entries(refused))('%s', (_, [name, sentence]) => {
    const result = toSystem({ ...sound, name }, content);
    expect('problems' in result && result.problems.map((one) => problemLine(one, english(content)))).toEqual([
      sentence,
    ]);
  });
});

describe('names of the program itself', () => {
  test.each(['__proto__', 'constructor', 'toString'])('%s is no fish, no media and no key', (name) => {
    const raw = JSON.parse(`{"${name}": 1}`) as object;
    const [bed] = (sound as { beds: object[] }).beds;
    const result = toSystem({ ...sound, ...raw, beds: [{ ...bed, media: name }] }, content);
    expect('problems' in result && result.problems.map((one) => one.code)).toContain('reference');
  });

  test('a key called __proto__ in a file is an unknown key', async () => {
    const { lines } = await readWith({ 'systems/sound.yaml': `${soundSystem}__proto__: { shared: true }\n` });
    expect(lines).toEqual([
      'content/systems/sound.yaml:21:1 __proto__: the key "__proto__" is not known here. The keys here are id, name, place, shared, sheet, tank, sump, beds, pump, fish, spoon_g, water, climate, altitude_m, air, tap, feedProtein_frac, absence, pricePerKWh and labels.',
    ]);
  });
});

test('what came is shortened, and cannot drive a terminal or turn the line around', async () => {
  const { lines } = await readWith({
    'systems/sound.yaml': soundSystem
      .replace('media: coarseGravel', `media: "\u202e${'x'.repeat(300)}"`)
      .replace('flow_L_h', '"\\e[31m\\n"'),
  });
  expect(lines).toMatchInlineSnapshot(`
    [
      "content/systems/sound.yaml:10:12 beds[0].media: got "U+202Exxxxxxxxxxxxxxxxxxxxxxxxxxxxxxxxxxxxxxxxxxxxxxxxxxxxx…", but there is no such file. The files there are coarseGravel, crushedBrick, expandedClay, pumice and roundedGravel.",
      "content/systems/sound.yaml:14:1 pump.flow_L_h: is missing. Expected a number from 10 to 100000, in litres an hour.",
      "content/systems/sound.yaml:15:3 pump.U+001B[31mU+000A: the key "U+001B[31mU+000A" is not known here. The keys here are flow_L_h, intake_mm, curve, power_W, pipe and timer.",
    ]
  `);
});
