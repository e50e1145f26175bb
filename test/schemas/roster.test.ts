import { describe, expect, test } from 'vitest';
import { readRoster } from '../../src/schemas/readRoster.ts';
import { problemLine } from '../../src/wording/problem.ts';
import { content } from '../demoSystems.ts';

const systems = ['drum-corner', 'room-seven-totes'];
const utf8 = (text: string): Uint8Array => new TextEncoder().encode(text);
const read = (text: string | Uint8Array) =>
  readRoster(typeof text === 'string' ? utf8(text) : text, 'r.csv', systems);

/** Problems as they are printed, without the file's name. */
function told(text: string | Uint8Array): readonly string[] {
  return read(text).problems.map((one) => problemLine(one, content.wording['en']).replace(/^r\.csv:/, ''));
}

const sound =
  'name,team,containers,notes\nJosé Ñu,Otter,"tank box 120,5 x 60 x 50 cm + bed box 100 x 60 x 30 cm",\nÖzge,Newt,,"two\nlines"\n';

describe('a sound roster', () => {
  test('says the same however the spreadsheet program saved it', () => {
    const [first, second] = read(sound).rows;
    expect(read(sound).problems).toEqual([]);
    expect(first).toMatchObject({ line: 2, name: 'José Ñu', team: 'Otter' });
    expect(first?.containers).toEqual({
      containers: {
        tank: { shape: 'box', length_mm: 1205, width_mm: 600, depth_mm: 500 },
        bed: { shape: 'box', length_mm: 1000, width_mm: 600, depth_mm: 300 },
      },
    });
    expect(second).toMatchObject({ line: 3, name: 'Özge', containers: null, notes: 'two\nlines' });
    const other = (delimiter: string) => sound.replaceAll(/,(?=(?:[^"]*"[^"]*")*[^"]*$)/g, delimiter);
    const latin = Uint8Array.from(sound, (letter) => letter.charCodeAt(0));
    const wide = new Uint8Array(2 + 2 * sound.length);
    wide.set([0xff, 0xfe]);
    for (const [at, letter] of [...sound].entries()) {
      wide[2 + 2 * at] = letter.charCodeAt(0) & 0xff;
      wide[3 + 2 * at] = letter.charCodeAt(0) >> 8;
    }
    const saved = [
      ...[utf8(`\ufeff${sound}`), latin, wide],
      ...['\r\n', '\r'].map((end) => utf8(sound.replaceAll('\n', end))),
      ...[';', '\t'].map((delimiter) => utf8(other(delimiter))),
    ];
    for (const bytes of saved) expect(read(bytes).rows).toEqual(read(sound).rows);
  });

  test('may have its columns in any order, rows that are empty, and nothing but names', () => {
    expect(read('Notes;NAME\n;Ada\n;\n\n;Bo\n').rows.map(({ name, line }) => [name, line])).toEqual([
      ['Ada', 2],
      ['Bo', 5],
    ]);
    expect(read('name\nAda').problems).toEqual([]);
  });

  test('may have notes that begin with a dash, a plus or an at sign, but no formulas', () => {
    const told = (text: string) => read(`name;notes\nAda;${text}\n`).problems.map(({ code }) => code);
    const called = ['+SUM(A1)', '@NOW()', '@SUM(A1:A9)', "+cmd|'/C calc'!A0"];
    for (const formula of ['=1+1', '=A1', '-2+3', '+A1*2', '-A1', '+$B$7', '@B2:C9', '+49-2', ...called])
      expect(told(formula), formula).toEqual(['rosterFormula']);
    const more = ['+1', '+ 1 helper', '+1 (sister)', '-2 brothers', '+49 555 0143', '+49-555-0143'];
    const words = [
      '+ brings gloves',
      '@ back row',
      '@home on Fridays',
      '- allergic (nuts)',
      '-allergic(nuts)',
    ];
    const signs = ['- 2 cups', '+H2O, please', '- B2 is her seat', '+MP3 player', '-', '@', '-B-', 'x=y'];
    for (const note of [...more, ...words, ...signs]) expect(told(note), note).toEqual([]);
  });

  test('may begin with the line by which spreadsheet programs tell each other what parts the cells', () => {
    for (const first of ['sep=;', '"sep=;"', 'SEP=;']) {
      const { rows, problems } = read(`\ufeff${first}\r\nname;notes\r\nAda;x, y\r\n=1;\r\n`);
      expect(rows).toMatchObject([{ line: 3, name: 'Ada', notes: 'x, y' }]);
      expect(problems).toMatchObject([{ code: 'rosterFormula', at: { line: 4, column: 1 } }]);
    }
  });

  test('takes measures as tapes and people have them', () => {
    const tank = (cell: string) => {
      const read_ = read(`name;containers\nAda;"${cell.replaceAll('"', '""')} + bed box 1 x 1 x 1 m"\n`);
      const { containers } = read_.rows[0] ?? {};
      return containers && 'containers' in containers ? containers.containers.tank : read_.problems[0]?.code;
    };
    // A foot is 304.8 mm, an inch 25.4 mm.
    const box = { shape: 'box', length_mm: 1219.2, width_mm: 609.6, depth_mm: 508 };
    for (const cell of [
      'tank box 48 x 24 x 20"',
      'tank box 48" x 24" x 20”',
      'tank box 48 in. x 24 in. x 20 in.',
      'tank box 48 x 24 x 20 inches',
      'tank box 48 x 24" x 20 in',
      'tank box 4 ft x 2 feet x 20 inch',
      'tank box 121.92 cm x 60.96cm x 508mm',
      'tank box 121,92x60,96x50,8CM',
    ])
      expect(tank(cell), cell).toEqual(box);
    for (const cell of [
      'tank box 48 x 24 x 20 constructor',
      'tank box 48 x 24 x 20 gal',
      'tank box 48 yd x 24 x 20 in',
      'tank box 48 x 24 x 20',
    ])
      expect(tank(cell), cell).toBe('containersUnit');
    for (const cell of [
      'tank box 48 in 24 in 20 in',
      'tank box 4 x 2 ft x 18 in',
      'tank box 120 x 60 cm x 500 mm',
    ])
      expect(tank(cell), cell).toBe('containersForm');
    // However long, it is refused at once.
    for (const long of ['1 x ', '1  cm  x  ', '1 ', '1x'])
      expect(tank(`tank box ${long.repeat(440 / long.length)}!`), long).toBe('containersForm');
  });

  test('takes a mark for thousands as one where no container has the decimals', () => {
    const lengthOf = (measures: string, unit: string) => {
      const cell = `tank box ${measures} x 2 x 2 ${unit} + bed box 1 x 1 x 1 m`;
      const { rows, problems } = read(`name;containers\nAda;${cell}\n`);
      const { containers } = rows[0] ?? {};
      const tank = containers && 'containers' in containers ? containers.containers.tank : null;
      return tank?.shape === 'box' ? tank.length_mm : (problems[0]?.allowed ?? problems[0]?.code);
    };
    for (const written of ['1.200', '1,200', '1200', '1200.0', '1.200,0', '1,200.0'])
      expect(lengthOf(written, 'mm'), written).toBe(1200);
    // What is 1.2 or 1200 long: the other is smaller than a finger, or longer than a shed.
    for (const written of ['1.200', '1,200', '1,2', '1.20']) {
      expect(lengthOf(written, 'm'), written).toBe(1200);
      expect(lengthOf(written, 'ft'), written).toBe(365.76);
    }
    expect(lengthOf('120.500', 'cm')).toBe(1205);
    expect(lengthOf('47,125', 'in')).toBe(1196.975);
    expect(lengthOf('0.500', 'm')).toBe(500);
    expect(lengthOf('1.200,5', 'mm')).toBe(1200.5);
    // A bed for cress and one for a whole hall.
    expect(lengthOf('1.200', 'cm')).toEqual(['1.2', '1200']);
    expect(lengthOf('12,500', 'mm')).toEqual(['12.5', '12500']);
    for (const wrong of ['1.2.5', '1.2000.500', '1,200,5', '1.200.5', '0.500.000', '1,,2'])
      expect(lengthOf(wrong, 'mm'), wrong).toBe('containersNumber');
  });

  test('takes a system by its name, and shapes of every word', () => {
    const of = (cell: string) => read(`name;containers\nAda;${cell}\n`).rows[0]?.containers;
    expect(of('drum-corner')).toEqual({ system: 'drum-corner' });
    expect(of('Tank drum 23 x 35 in + bed lying  drum 58×88×29 cm')).toEqual({
      containers: {
        tank: { shape: 'cylinder', diameter_mm: 584.2, depth_mm: 889 },
        bed: { shape: 'lyingCylinder', diameter_mm: 580, length_mm: 880, depth_mm: 290 },
      },
    });
    expect(of('bed bucket 30 x 25 x 30 cm + tank trough 1.8 x 0.6 x 0.6 m')).toEqual({
      containers: {
        tank: { shape: 'obround', length_mm: 1800, width_mm: 600, depth_mm: 600 },
        bed: { shape: 'taperedRound', topDiameter_mm: 300, floorDiameter_mm: 250, depth_mm: 300 },
      },
    });
  });
});

describe('a roster with mistakes', () => {
  test('tells every one of them at once, each with its line and column', () => {
    const text = [
      'name;team;shoe;team;containers',
      'Ada;Otter;;;',
      ';Otter;;;',
      'ada ;Otter;;;',
      '=1+1;;;;',
      'Cleo;;;;tank boks 1 x 1 x 1 m + bed box 1 x 1 x 1',
      'Dov;;;;tank box 100 x 60 cm',
      'Eli;;;;tank box 100 x 60 x 50 cm',
      'Fia;;;;drum-cornr',
      'Gus;;;;tank box 1.20.5 x 60 x 50 mm + bed box 1.200 x 1 x 1 cm',
      'Hana;;;;;beyond',
      'I\u0007vo;;;;',
    ].join('\n');
    expect(told(text)).toMatchInlineSnapshot(`
      [
        "1:3: a column is called "shoe". The columns are name, team, containers and notes. Rename it, or take it out.",
        "1:4: the column "team" stands here a second time. Keep one of the two.",
        "3:1: this row has no name. Fill it in, or take the row out.",
        "4:1: "ada" stands in line 2 already. Add an initial to one of the two, or take one out.",
        "5:1: "=1+1" looks like a sum of a spreadsheet program. Write what it stands for.",
        "6:5: in "tank boks 1 x 1 x 1 m" the word boks is not known. The words here are box, drum, lying drum, oval, trough and bucket.",
        "6:5: "bed box 1 x 1 x 1" has no unit that is known here. Write one of mm, cm, m, in and ft behind the numbers.",
        "7:5: "tank box 100 x 60 cm" has 2 measures, but a box has 3. Measure inside, the height last.",
        "8:5: "tank box 100 x 60 x 50 cm" has 0 times a bed, but must have one. Write it like: tank box 120 x 60 x 50 cm + bed box 100 x 60 x 30 cm.",
        "9:5: got "drum-cornr", but there is no such system. Did you mean "drum-corner"? The systems there are drum-corner and room-seven-totes. Or write containers like: tank box 120 x 60 x 50 cm + bed box 100 x 60 x 30 cm.",
        "10:5: "tank box 1.20.5 x 60 x 50 mm": 1.20.5 is no number. Write numbers like 58.5 or 58,5, without marks for thousands.",
        "10:5: "bed box 1.200 x 1 x 1 cm": 1.200 can stand for 1.2 or 1200. Write the one that you mean, without marks for thousands.",
        "11:6: "beyond" stands in a column without a name. Put it into quotation marks with the cell before it, or take it out.",
        "12:1: the text holds the character "U+0007", which cannot be printed. Delete it and type the words anew.",
      ]
    `);
    expect(read(text).rows.map(({ name }) => name)).toEqual(['Ada']);
    expect(read(text).whole).toBe('broken');
  });

  test('of one row leaves the others whole', () => {
    const { rows, whole, problems } = read('name;containers\nAda;\nBo;tank tub 1 x 1 x 1 m\nCleo;\n');
    expect(rows.map(({ name }) => name)).toEqual(['Ada', 'Cleo']);
    expect(whole).toBe('sound');
    expect(problems.map(({ at }) => at)).toEqual([{ file: 'r.csv', line: 3, column: 2 }]);
  });

  test('that cannot be read at all says why', () => {
    expect(told('')).toMatchInlineSnapshot(`
      [
        "1:1: the file has nothing in it. Write it, or delete it.",
      ]
    `);
    expect(told('Ada,Otter\nBo,Newt\n')).toMatchInlineSnapshot(`
      [
        "1:1: a column is called "Ada". The columns are name, team, containers and notes. Rename it, or take it out.",
        "1:1: there is no column "name". The first line must name the columns: name, team, containers and notes.",
        "1:2: a column is called "Otter". The columns are name, team, containers and notes. Rename it, or take it out.",
      ]
    `);
    expect(told('name,notes\nAda,"never closed\nBo,\n')).toMatchInlineSnapshot(`
      [
        "2:2: a quotation mark in this row is not closed. Put another one at the end of its cell.",
      ]
    `);
    const mixed = Uint8Array.from([...utf8('name\nÖzge\n'), 0xd6, 0x7a, 0x67, 0x65, 0x0a]);
    expect(told(mixed)).toMatchInlineSnapshot(`
      [
        "3:1: up to here the text is UTF-8, and from here on it is not. Two files were put together. Save the whole roster anew from one program.",
      ]
    `);
    expect(told(new Uint8Array(5_000_001))).toMatchInlineSnapshot(`
      [
        "1:1: the roster has 5000001 bytes, and 5000000 are the most. Take out what is no row of names, such as pictures.",
      ]
    `);
    expect(told(`name\n${'a\n'.repeat(10_000)}`)).toMatchInlineSnapshot(`
      [
        "1:1: the roster has 10000 rows, and 9999 are the most. Make two workshops of it.",
      ]
    `);
  });

  test('that is a workbook, a document or a picture is told so', () => {
    const begins = (...bytes: readonly number[]) => Uint8Array.from([...bytes, ...utf8('name\nAda\n')]);
    const wide = Uint8Array.from([...'name\nÅsa\n'].flatMap((letter) => [letter.charCodeAt(0), 0]));
    const files = [
      ...[begins(0x50, 0x4b, 3, 4), utf8('%PDF-1.7\n'), begins(0x89, 0x50, 0x4e, 0x47)],
      ...[begins(0xff, 0xd8, 0xff, 0xe0), begins(0xd0, 0xcf, 0x11, 0xe0), wide],
    ];
    for (const file of files)
      expect(told(file)).toEqual([
        '1:1: this is no CSV file but a workbook, a picture or something else that is no plain text. Open it in its program and save it as CSV.',
      ]);
    // One empty byte in a text is a slip in a cell, and told there.
    expect(told('name\nA\u0000da, who comes with the long train from the hills\n')[0]).toContain('2:1: ');
  });

  test('of two ways to write one team says where the other stands', () => {
    expect(told('name;team\nAda;Heron\nBo;heron\nCleo;Heron\nDov;otter\n')).toEqual([
      '3:2: the team "heron" is written "Heron" in line 2. Write both alike, or call one of them something else.',
    ]);
  });

  test('of fifty megabytes is refused without being read', () => {
    expect(read(new Uint8Array(50_000_000)).whole).toBe('broken');
  });

  test('of five thousand people is read', () => {
    const rows = Array.from({ length: 5_000 }, (_, at) => `Person ${at};Team ${at % 90}`);
    expect(read(`name;team\n${rows.join('\n')}`).rows).toHaveLength(5_000);
  });
});
