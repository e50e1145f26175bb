import { describe, expect, test } from 'vitest';
import type { Step } from '../../src/core/plan/figure.ts';
import type { Note } from '../../src/core/note.ts';
import { type Catalogue, say } from '../../src/wording/catalogue.ts';
import { dayText } from '../../src/wording/date.ts';
import { noteSentence } from '../../src/wording/note.ts';
import { shorten } from '../../src/wording/shorten.ts';
import { stepLine } from '../../src/wording/step.ts';

/** A language of our own, so that a change of words in `content/` changes nothing here. */
const words: Catalogue = {
  words: { roundDown: 'whole of ', leastOf: 'least of ', tank: 'pond' },
  notes: {
    raise: 'At {left_L} raise it to {intake_mm}; {bed}, {share_frac}, pH {pH}.',
    spills: 'The {vessel} spills {over_L} of {fish}.',
    binds: { bed: 'The bed binds.' },
  },
  months: { '02': 'Feb' },
};

const terms = {
  wetMedia: { name: 'wet media' },
  share: { name: 'media for one fish' },
  depth: { name: 'depth' },
};

function note(code: string, numbers: Note['numbers'], named?: Note['words']): Note {
  return { code, level: 'info', numbers, source: 'geometry', ...(named ? { words: named } : {}) };
}

const plain = (text: string): string => text.replaceAll('\u00a0', ' ');

describe('the catalogue', () => {
  test('fills in what a sentence wants', () => {
    expect(say(words, 'notes.binds.bed')).toBe('The bed binds.');
    expect(say({ a: '{x} and {y}, {x}' }, 'a', { x: '1', y: '2' })).toBe('1 and 2, 1');
  });

  test('leaves what was filled in alone, braces and all', () => {
    expect(say({ a: '{x} {y}' }, 'a', { x: '{y}', y: '$&' })).toBe('{y} $&');
  });

  test('refuses a sentence that is not there, and one that wants more', () => {
    expect(() => say(words, 'notes.nothing')).toThrow('no sentence notes.nothing');
    expect(() => say(words, 'notes')).toThrow('no sentence notes');
    expect(() => say(words, 'notes.spills')).toThrow('{vessel}');
  });
});

describe('a note', () => {
  test('says its numbers in the units of the reader, limits up and stocks down', () => {
    const raise = note(
      'raise',
      { left_L: 40.9, intake_mm: 99.2, share_frac: 0.35, pH: 6.84 },
      { bed: 'Long bed' },
    );
    expect(plain(noteSentence(raise, words, 'metric'))).toBe(
      'At 40 L raise it to 100 mm; Long bed, 35 %, pH 6.8.',
    );
    expect(plain(noteSentence(raise, words, 'us'))).toBe(
      'At 10 gal raise it to 4 in; Long bed, 35 %, pH 6.8.',
    );
  });

  test('takes the names of vessels from the catalogue, and counts without a unit', () => {
    const spills = note('spills', { over_L: 34.2, fish: 12 }, { vessel: 'tank' });
    expect(plain(noteSentence(spills, words, 'metric'))).toBe('The pond spills 35 L of 12.');
  });

  test('shortens the long name of a bed', () => {
    const raise = note('raise', { left_L: 1, intake_mm: 1, share_frac: 1, pH: 7 }, { bed: 'b'.repeat(200) });
    expect(noteSentence(raise, words, 'metric')).toContain(`${'b'.repeat(39)}…`);
  });
});

describe('a worked step', () => {
  const step = (formula: string, symbols: Step['symbols']): Step => ({
    kind: 'formula',
    gives: { sign: 'n', term: 'fish', value: 12, unit: 'fish' },
    formula,
    symbols,
    byHand: 'yes',
    source: 'commonPractice',
  });
  const wet = { sign: 'W', term: 'wetMedia', value: 300, unit: 'L' } as const;
  const share = { sign: 'v', term: 'share', value: 25, unit: 'L' } as const;

  test('names every number once and ends in its result', () => {
    expect(plain(stepLine(step('floor(W ÷ v)', [wet, share]), words, terms))).toBe(
      'whole of (wet media 300 L ÷ media for one fish 25 L) = 12',
    );
    expect(plain(stepLine(step('W ÷ v + W', [wet, share]), words, terms))).toBe(
      'wet media 300 L ÷ media for one fish 25 L + 300 L = 12',
    );
  });

  test('shows as many digits as a count just under a whole needs', () => {
    const under = { ...wet, value: 299.9984 };
    expect(plain(stepLine(step('floor(W ÷ v)', [under, share]), words, terms))).toBe(
      'whole of (wet media 299.998 L ÷ media for one fish 25 L) = 12',
    );
    const kilos = { sign: 'k', term: 'depth', value: 11.9999996, unit: 'kg' } as const;
    const mass = { ...share, value: 500 };
    expect(plain(stepLine(step('floor(k × 1000 ÷ v)', [kilos, mass]), words, terms))).toContain(
      '11.9999996 kg',
    );
    const slack = { ...wet, value: 299.99999999999 };
    expect(plain(stepLine(step('floor(W ÷ v)', [slack, share]), words, terms))).toContain('wet media 300 L');
  });

  test('says the names of its functions in the reader’s language', () => {
    expect(plain(stepLine(step('min(W; v)', [wet, share]), words, terms))).toBe(
      'least of (wet media 300 L; media for one fish 25 L) = 12',
    );
    expect(plain(stepLine(step('sqrt(W)', [wet]), words, terms))).toBe('√(wet media 300 L) = 12');
  });

  test('shows the key of a term without a file, for a house test to find', () => {
    const strange = { sign: 'x', term: 'unheardOf', value: 0.5, unit: 'frac' } as const;
    expect(stepLine(step('x', [strange]), words, terms)).toBe('unheardOf 0.5 = 12');
  });

  test('that was looked up is only its value', () => {
    expect(stepLine({ ...step('', []), kind: 'lookup' }, words, terms)).toBe('12');
  });
});

describe('a long text', () => {
  test('is cut with a mark, counted as a reader counts', () => {
    expect(shorten('The big tank', 20)).toBe('The big tank');
    expect(shorten('The big tank', 8)).toBe('The big…');
    expect([...shorten('x'.repeat(50), 10)]).toHaveLength(10);
  });

  test('is never cut inside a letter of several parts', () => {
    const family = '👩‍👩‍👧';
    expect(shorten(family.repeat(3), 2)).toBe(`${family}…`);
    expect(shorten('e\u0301e\u0301e\u0301', 2)).toBe('e\u0301…');
  });

  test('leaves no space before the mark', () => {
    expect(shorten('ab cd', 4)).toBe('ab…');
  });
});

describe('a day', () => {
  test('is written as people write it', () => {
    expect(dayText('2031-02-03', words)).toBe('3 Feb 2031');
  });
});
