import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { csv } from '../../src/wording/csv.ts';

/** A reader of RFC 4180 in its own words: quoted cells with doubled quotes, or cells without quotes. */
function readBack(file: string): readonly (readonly string[])[] {
  const rows: string[][] = [];
  let row: string[] = [];
  const cell = /(?:"((?:[^"]|"")*)"|([^",\r\n]*))(,|\r\n)/y;
  cell.lastIndex = 1;
  while (cell.lastIndex < file.length) {
    const match = cell.exec(file);
    if (match === null) throw new Error('not the form of the standard');
    row.push(match[1]?.replaceAll('""', '"') ?? match[2] ?? '');
    if (match[3] === '\r\n') rows.push(row.splice(0));
    else continue;
    row = [];
  }
  return rows;
}

describe('comma-separated values', () => {
  test('begin with a mark for UTF-8, and end every line', () => {
    expect(csv([['a', 1, null]])).toBe('\ufeffa,1,\r\n');
  });

  test('quote as sections 2.5 to 2.7 of RFC 4180 print it', () => {
    expect(csv([['aaa', 'b\r\nbb', 'ccc']])).toBe('\ufeffaaa,"b\r\nbb",ccc\r\n');
    expect(csv([['aaa', 'b"bb', 'ccc']])).toBe('\ufeffaaa,"b""bb",ccc\r\n');
  });

  test.each(['=1+1', '+1', '-1', '@SUM(A1)', ' =1', '\t=1', '=HYPERLINK("x","y")'])(
    'make the words %s harmless',
    (text) => {
      expect(readBack(csv([[text]]))).toEqual([[`'${text}`]]);
    },
  );

  test('leave numbers numbers, below zero too', () => {
    expect(csv([[-3, 2.5]])).toBe('\ufeff-3,2.5\r\n');
  });

  test('are read back as they were, whatever was typed', () => {
    const words = fc.string({ unit: 'grapheme' });
    fc.assert(
      fc.property(fc.array(fc.array(words, { minLength: 2, maxLength: 4 }), { minLength: 1 }), (rows) => {
        const expected = rows.map((row) =>
          row.map((text) => (/^\s*[=+\-@\t\r]/.test(text) ? `'${text}` : text)),
        );
        expect(readBack(csv(rows))).toEqual(expected);
      }),
    );
  });
});
