import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { handoutFacts } from '../../src/core/plan/handoutFacts.ts';
import { sheetOfContainers } from '../../src/forms/check/checkWork.ts';
import { typedContainers } from '../../src/schemas/checkLine.ts';
import { readContainers, writeContainers } from '../../src/schemas/containersText.ts';
import { peopleOf } from '../../src/schemas/people.ts';
import { workshopFile } from '../../src/schemas/workshopFile.ts';
import { content } from '../demoSystems.ts';

const facts = { ...content, bedName: 'Bed' };
const systems = content.systems.map(({ id }) => id);
const usual = { media: 'coarseGravel', pump: 'medium' };

function readOf(cell: string) {
  const read = readContainers(cell, systems);
  if ('problems' in read) throw new Error(JSON.stringify(read.problems));
  return read;
}

describe('containers', () => {
  const length = fc.integer({ min: 100, max: 200_000 }).map((tenths) => tenths / 10);
  const unit = fc.constantFrom('mm', 'cm', 'in');
  const shape = fc.constantFrom(
    ...[['box', 3] as const, ['drum', 2] as const, ['lying drum', 3] as const],
    ...[['oval', 3] as const, ['trough', 3] as const, ['bucket', 3] as const],
  );
  const part = fc
    .tuple(shape, fc.array(length, { minLength: 3, maxLength: 3 }), unit)
    .map(([[word, count], measures, in_]) => `${word} ${measures.slice(0, count).join(' x ')} ${in_}`);

  test('are written as they are read, to the last digit', () => {
    fc.assert(
      fc.property(part, part, (tank, bed) => {
        const read = readOf(`tank ${tank} + bed ${bed}`);
        if (!('containers' in read)) throw new Error('no containers');
        expect(readOf(writeContainers(read.containers))).toEqual(read);
      }),
    );
  });
});

test('containers are written in the unit in which somebody measured them', () => {
  for (const cell of [
    'tank box 47.2 x 39.4 x 39.4 in + bed box 47.25 x 39.5 x 12 in',
    'tank drum 58 x 88 cm + bed lying drum 58.5 x 88 x 29 cm',
    'tank box 40 x 30 x 30 in + bed bucket 60 x 50 x 40 cm',
    'tank box 40.125 x 30 x 30 in + bed box 40.125 x 30 x 12.5 in',
    // 1.234 cm could be 1234.
    'tank box 12.34 x 60 x 50 mm + bed box 10 x 6 x 3 cm',
  ]) {
    const read = readOf(cell);
    expect('containers' in read && writeContainers(read.containers)).toBe(cell);
  }
});

describe('the line that a sheet tells to type', () => {
  const rosters = [
    'tank box 100 x 60 x 55 cm + bed box 100 x 60 x 30 cm',
    'tank drum 58 x 88 cm + bed lying drum 58 x 88 x 29 cm',
    'tank trough 180 x 90 x 60 cm + bed oval 90 x 60 x 35 cm',
    'tank box 40 x 30 x 30 in + bed bucket 60 x 50 x 40 cm',
    ...systems,
  ];

  test.each([usual, { media: 'expandedClay', pump: 'small' }, { media: 'pumice', pump: 'medium' }])(
    'gives the very sheet again, whatever the workshop plans with: %o',
    (planned) => {
      const file = workshopFile.parse({ ...content.workshops[0]?.raw, ...planned });
      const rows = rosters.map((cell, at) => ({
        ...{ line: at + 2, name: `Person ${at}`, team: '', notes: '' },
        containers: readOf(cell),
      }));
      const { people } = peopleOf(file, rows, facts, () => undefined);
      expect(people.length).toBeGreaterThan(systems.length);
      for (const { typed, system } of people) {
        const sheet = sheetOfContainers(typed ?? '', 'secondary', facts);
        if (sheet.kind !== 'facts') throw new Error(`${typed}: ${JSON.stringify(sheet)}`);
        expect(sheet.facts.asked).toEqual(handoutFacts(system, 'secondary').asked);
      }
    },
  );

  test('names media and pump only where they are not those of the exercises', () => {
    const read = readOf(rosters[0] ?? '');
    expect(typedContainers(read, usual, usual)).toBe(rosters[0]);
    expect(typedContainers(read, { media: 'washedClay', pump: 'small' }, usual)).toBe(
      `${rosters[0]} + media washedClay + pump small`,
    );
  });

  test('is told what is wrong with it', () => {
    const told = (text: string, known = facts) => {
      const sheet = sheetOfContainers(text, 'secondary', known);
      return sheet.kind === 'problems' ? sheet.problems.map(({ code, other }) => [code, other]) : sheet.kind;
    };
    expect(told(`${rosters[0]} + media gavel`)).toEqual([['containersWord', 'gavel']]);
    expect(told('no-such-system')).toEqual([['containersName', undefined]]);
    // Nobody is shown an empty list of systems.
    expect(told('no-such-system', { ...facts, systems: [] })).toEqual([['containersForm', undefined]]);
    expect(told('')).toBe('none');
  });
});
