import { expect, test } from 'vitest';
import { withTree } from '../../src/forms/draft.ts';
import { firstDraft, rawOf, sheetsIn, withSheet } from '../../src/forms/class/classDraft.ts';
import { workshopFile, workshopSheets } from '../../src/schemas/workshopFile.ts';

const first = firstDraft('2031-05-12', 'hollow-lane-ibc');
const named = withTree(first, ['name'], { text: 'An evening of tanks' });

test('a class says what a file would say, once it has a name', () => {
  expect(workshopFile.safeParse(rawOf(first)).success).toBe(false);
  expect(workshopFile.parse(rawOf(named))).toMatchObject({ length_min: 120, seed: 1 });
  expect(rawOf(named)).not.toHaveProperty('rota');
  const none = withTree(named, ['seed'], { text: '0' });
  expect(workshopFile.parse(rawOf(none)).seed).toBe(0);
});

test('a number that is none stays as it was typed', () => {
  expect(rawOf(withTree(named, ['length_min'], { text: 'two hours' }))).toMatchObject({
    length_min: 'two hours',
  });
});

test('a rota is there as soon as one of its days is', () => {
  const begun = withTree(named, ['rota', 'from'], { text: '2031-05-13' });
  expect(rawOf(begun)).toMatchObject({ rota: { from: '2031-05-13', to: undefined, away: [] } });
  const whole = withTree(begun, ['rota', 'to'], { text: '2031-07-18' });
  const day = withTree(whole, ['rota', 'away', 0, 'from'], { text: '2031-05-26' });
  const away = withTree(day, ['rota', 'away', 0, 'to'], { text: '2031-05-30' });
  expect(workshopFile.parse(rawOf(away)).rota).toEqual({
    ...{ from: '2031-05-13', to: '2031-07-18', weekends: 'keeper' },
    away: [{ from: '2031-05-26', to: '2031-05-30' }],
  });
});

test('sheets that are ticked again stand where they are stapled', () => {
  const less = withSheet(withSheet(named, 'safety', 'no'), 'key', 'no');
  expect(sheetsIn(less)).toEqual(workshopSheets.filter((one) => one !== 'safety' && one !== 'key'));
  expect(sheetsIn(withSheet(less, 'safety', 'yes'))).toEqual(workshopSheets.filter((one) => one !== 'key'));
});
