/** What stands on the sheets of a whole class, read off their pages. */
import { describe, expect, test } from 'vitest';
import { classFacts, handoutFacts } from '../../src/core/plan/handoutFacts.ts';
import type { Words } from '../../src/paper/page.ts';
import { partsOf, workshopParts } from '../../src/core/workshop/parts.ts';
import { type WorkshopSheet, workshopSheets } from '../../src/schemas/workshopFile.ts';
import { toWorkshop } from '../../src/schemas/workshops.ts';
import { printable } from '../../src/print/printWorkshop.ts';
import { classDesk } from '../../src/sheets/handouts/classDesk.ts';
import { workshopPrint } from '../../src/sheets/handouts/workshopPrint.ts';
import { readPdf } from '../paper/readPdf.ts';
import { content, faultsOf, press, textOf, words } from './laidOut.ts';

const core = { classFacts, handoutFacts };
const job = { words, day: '2031-05-04', core };
const allergy =
  'Allergic to fish, shellfish and latex: carries a pen in the green bag by the door, call the office first, then an ambulance, never hands in water or feed';

const roster = [
  'name;team;notes',
  'Ada Quist;Heron;',
  `Bo Farrow;Heron;${allergy}`,
  'Cleo Marsh;Otter;comes at ten',
  'Dov Ember;Otter;',
  'Eli Harrow;;sits near',
].join('\n');

async function workshopOf(more: object = {}, text = roster) {
  const [demo] = content.workshops;
  const raw = { ...demo?.raw, rota: { from: '2031-05-13', to: '2031-06-30' }, ...more };
  const bytes = async () => new TextEncoder().encode(text);
  const { workshop, problems } = await toWorkshop(raw, 'w.yaml', { ...content, bedName: 'Bed' }, bytes);
  if (workshop === null) throw new Error(JSON.stringify(problems));
  return workshop;
}

/** The pages of one sheet of the class, as text; every page keeps its words apart. */
async function sheetText(id: string, more: object = {}, text = roster): Promise<readonly string[]> {
  const desk = classDesk(await workshopOf(more, text), job, press);
  const pages = (await desk.ofClass()).find(({ sheet }) => sheet.id === id)?.pages ?? [];
  for (const page of pages) expect(faultsOf(page)).toEqual([]);
  return pages.map(textOf);
}

async function pdfOf(
  sheets: readonly WorkshopSheet[],
  part: 'stack' | 'answers' | 'each',
  more: object = {},
  text = roster,
) {
  const chunks: Uint8Array[] = [];
  const { bytes } = await workshopPrint(await workshopOf({ ...more, sheets }, text), part, job, press);
  for await (const some of bytes) chunks.push(some);
  return new Uint8Array(Buffer.concat(chunks));
}

describe('the list to sign in', () => {
  test.each(['participants', 'teams'])(
    'has everybody with their own notes, whole: %s',
    async (worksheets) => {
      const [text = ''] = await sheetText('sign-in', { worksheets });
      expect(text).toContain(
        `2 Bo Farrow Heron ${allergy} 3 Cleo Marsh Otter comes at ten 4 Dov Ember Otter 5 Eli`,
      );
      expect(text).toContain('1 Ada Quist Heron 2 Bo');
      expect(text).toContain('5 Eli Harrow sits near');
      expect(text.split(allergy)).toHaveLength(2);
    },
  );

  test('keeps the lines of a note apart', async () => {
    const desk = classDesk(
      await workshopOf({ rota: undefined }, 'name;notes\nAda;"no nuts\nbees fine"\n'),
      job,
      press,
    );
    const [page] = (await desk.ofClass()).find(({ sheet }) => sheet.id === 'sign-in')?.pages ?? [];
    const lineOf = (word: string) =>
      page?.items.find((item) => item.kind === 'words' && item.text.trim() === word) as Words | undefined;
    const [nuts, bees] = [lineOf('nuts'), lineOf('bees')];
    expect(nuts?.x_pt).toBeGreaterThan(bees?.x_pt ?? Number.NaN);
    expect(nuts?.baseline_pt).toBeLessThan(bees?.baseline_pt ?? Number.NaN);
  });

  test('keeps the longest note that a roster takes', async () => {
    const long = `${'peanuts '.repeat(61)}and bees`;
    const text = (await sheetText('sign-in', { rota: undefined }, `name;notes\nAda;${long}\nBo;\n`)).join(
      ' ',
    );
    expect(text).toContain(long);
  });
});

describe('name tags', () => {
  test('have a tag for everybody, with their team; of a team not its name alone', async () => {
    for (const worksheets of ['participants', 'teams']) {
      const text = (await sheetText('name-tags', { worksheets })).join(' ');
      for (const name of [
        'Ada Quist Heron',
        'Bo Farrow Heron',
        'Cleo Marsh Otter',
        'Dov Ember Otter',
        'Eli Harrow',
      ])
        expect(text, worksheets).toContain(name);
    }
  });
});

const longName =
  'Iseult-Marguerite Vandenberghe-Oyelaran of Great Whinney Bottom, near Little Hope, where the three becks meet';

test.each(['name-tags', 'sign-in', 'rota'])(
  'nobody’s name or team is cut on what all see: %s',
  async (id) => {
    const letters = (text: string): string => text.replace(/\s/g, '');
    const text = letters((await sheetText(id, {}, `name;team\n${longName};The ${longName}\n`)).join(''));
    const name = letters(longName);
    expect(text.split(name).length - 1).toBeGreaterThanOrEqual(id === 'rota' ? 1 : 2);
    expect(text).toContain(`The${name}`);
  },
);

describe('the contents', () => {
  test('tell of every set on which page of the file it begins', async () => {
    for (const worksheets of ['participants', 'teams']) {
      const { pages } = await readPdf(await pdfOf(workshopSheets, 'stack', { worksheets }));
      const [contents] = pages;
      const firsts: readonly (readonly [string, RegExp])[] = [
        ['For the facilitator', /When/],
        ['Safety first', /Read this aloud/],
        ['Who is here', /One line for everybody/],
        ['Care rota', /The team of the day/],
        ...(worksheets === 'teams' ? ['Heron', 'Otter'] : ['Ada Quist', 'Bo Farrow', 'Dov Ember']).map(
          (name) => [name, new RegExp(`Worksheet[\\s\\S]*${name}`)] as const,
        ),
      ];
      for (const [what, shows] of firsts) {
        const line = new RegExp(`${what}(?: Heron| Otter)? (?:\\d-\\d{4}-\\d{4}-\\d\\d )?(\\d+)`);
        const page = Number(line.exec(contents?.text ?? '')?.[1]);
        expect(pages[page - 1]?.text, `${what} on page ${page}`).toMatch(shows);
        // The first page of its set: the one before it is another's, or empty.
        expect(pages[page - 2]?.text ?? '', `${what} before page ${page}`).not.toMatch(shows);
      }
    }
  });

  test('of more than a leaf count their own pages too', async () => {
    const many = Array.from({ length: 90 }, (_, at) => `Person ${at + 1}`);
    const text = ['name', ...many].join('\n');
    const { pages } = await readPdf(
      await pdfOf(['contents', 'worksheet'], 'stack', { rota: undefined }, text),
    );
    const contents = pages.filter((page) => page.text.includes('In the order of the stack'));
    expect(contents.length).toBeGreaterThan(2);
    const told = contents.map((page) => page.text).join(' ');
    for (const name of ['Person 1', 'Person 45', 'Person 90']) {
      const page = Number(new RegExp(`${name} (?:\\d-\\d{4}-\\d{4}-\\d\\d )(\\d+)`).exec(told)?.[1]);
      expect(pages[page - 1]?.text, `${name} on page ${page}`).toMatch(
        new RegExp(`Worksheet[\\s\\S]*${name}`),
      );
    }
  }, 60_000);

  test('list nobody who has no page in the stack', async () => {
    const { pages } = await readPdf(await pdfOf(['contents', 'safety', 'key'], 'stack'));
    expect(pages[0]?.text).toContain('Safety first');
    expect(pages[0]?.text).not.toContain('Ada Quist');
  });
});

describe('the rota', () => {
  test('goes from team to team, each by its name, and says on every page what is done', async () => {
    const pages = await sheetText('rota');
    expect(pages.length).toBeGreaterThan(1);
    for (const page of pages) expect(page).toContain('Every day: count the fish');
    const [first = ''] = pages;
    // 13 May 2031 is a Tuesday.
    const days = ['Tue 13 May 2031 Heron', 'Wed 14 May 2031 Otter', 'Thu 15 May 2031 Eli Harrow'];
    for (const day of [...days, 'Fri 16 May 2031 Heron']) expect(first).toContain(day);
    expect(first).toContain('takes somebody along');
    expect(first).toContain('Sat 17 May 2031 keeper (weekend)');
  });

  test('has those without a team come together, and goes on when every team has a name without letters', async () => {
    const alone = ['Ada Quist;', 'Bo Farrow;', 'Cleo Marsh;', 'Dov Ember;', 'Eli Harrow;'];
    const days = [
      'Tue 13 May 2031 Ada Quist, Bo Farrow, Cleo Marsh',
      'Wed 14 May 2031 Dov Ember, Eli Harrow',
    ];
    const [first = ''] = await sheetText('rota', {}, ['name;team', ...alone].join('\n'));
    for (const day of [...days, 'Thu 15 May 2031 Ada Quist']) expect(first).toContain(day);
    expect(first).not.toContain('takes somebody along');
    const rows = ['name;team', 'Fia Holm;🐟', ...alone, 'Gus Arden;🐟'].join('\n');
    const { people, skipped } = await printable(await workshopOf({ badRows: 'skip' }, rows), words, press);
    expect(skipped.map(({ code, at }) => [code, at?.line])).toEqual([
      ['rosterUncovered', 2],
      ['rosterUncovered', 8],
    ]);
    const desk = classDesk({ ...(await workshopOf({}, rows)), people }, job, press);
    expect((await desk.ofClass()).map(({ sheet }) => sheet.id)).toContain('rota');
    expect(desk.input.turns).toEqual(['Ada Quist, Bo Farrow, Cleo Marsh', 'Dov Ember, Eli Harrow']);
  });

  test('warns of days in a row on which nobody comes, from three on', async () => {
    const gap = async (from: string, to: string) => {
      const rota = { from: '2031-05-13', to: '2031-06-30', away: [{ from, to }] };
      return (await sheetText('rota', { rota }))[0];
    };
    // Friday, then the weekend.
    expect(await gap('2031-05-23', '2031-05-23')).toContain('Up to 3 days in a row without the class');
    expect((await sheetText('rota'))[0]).not.toContain('in a row without the class');
  });
});

describe('the facilitator’s sheet', () => {
  test('has the counts of the class, its times, and the example step by step', async () => {
    const text = (await sheetText('facilitator', { worksheets: 'teams' })).join(' ');
    expect(text).toContain('5 people, 2 teams.');
    // Eli Harrow is in none, and has to measure as well.
    expect(text).toContain('1 person has no team');
    for (const line of ['09:30 10 min Arrive', '10:15 35 min Measure', '10:50 35 min Calculate'])
      expect(text).toContain(line);
    for (const ready of [
      '3 worksheets, and the answers',
      '5 pencils',
      '3 tape measures',
      '6 clean containers',
    ])
      expect(text).toContain(ready);
    // 1000 mm by 1000 mm, water to 300 mm in the bed and 700 mm in the tank; 25 L of wet media for a fish.
    expect(text).toContain('Bed: length 1000 mm, width 1000 mm, water depth 300 mm');
    expect(text).toMatch(/rounded down \(wet media 300 L ÷ media for one fish 25 L\) = 12/);
    expect(text).not.toContain('This example has nothing for');
    expect(text).not.toContain('Too short for that');
  });

  test('says of one person and no team what is true of them', async () => {
    const [text = ''] = await sheetText('facilitator', { rota: undefined }, 'name\nAda\n');
    for (const one of ['1 person. Everybody', '1 worksheet, and its answers', '1 pencil ', '1 tape measure '])
      expect(text).toContain(one);
    expect(text).not.toContain('team');
  });

  test('warns of time that is too short, and of an example that lacks what is asked', async () => {
    const text = (await sheetText('facilitator', { length_min: 40, example: 'room-seven-totes' })).join(' ');
    expect(text.split('Too short for that')).toHaveLength(3);
    expect(text).toMatch(
      /This example has nothing for: Fish that the wet media carries, .*Fish to plan for\./,
    );
  });
});

describe('the safety sheet', () => {
  test('speaks to those who come', async () => {
    const of = async (level: string) => (await sheetText('safety', { level })).join(' ');
    for (const level of ['primary', 'secondary']) {
      expect(await of(level)).toContain('Pupils never');
      expect(await of(level)).toContain('lift anything with water in it');
    }
    expect(await of('adults')).toContain('Nobody');
    expect(await of('adults')).not.toContain('Pupils');
  });
});

test('whatever sheets are chosen, every part that is printed has pages', async () => {
  const choices: readonly (readonly WorkshopSheet[])[] = [
    ...workshopSheets.filter((sheet) => sheet !== 'contents').map((sheet) => [sheet]),
    ['worksheet', 'plan'],
    ['contents', 'key', 'facilitator'],
  ];
  const made: string[] = [];
  for (const sheets of choices)
    for (const part of partsOf(sheets, 'rota')) {
      made.push(part);
      expect((await pdfOf(sheets, part)).length, `${sheets.join()} ${part}`).toBeGreaterThan(100);
    }
  expect(new Set(made)).toEqual(new Set(workshopParts));
}, 60_000);
