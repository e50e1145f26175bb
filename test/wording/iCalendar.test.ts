import { describe, expect, test } from 'vitest';
import { type CalendarEvent, escaped, folded, iCalendar } from '../../src/wording/iCalendar.ts';

const event: CalendarEvent = {
  uid: 'season.lettuceHead-2031W14-1.sow@bedfirst.example',
  date: '2031-04-05',
  summary: 'Sow lettuce, head: 24 seeds',
  description: 'One seed to a cell; keep them damp.\nThe rest is for sowing again.',
  location: 'Nursery',
  category: 'Sow',
};

function fileOf(events: readonly CalendarEvent[]): string {
  return iCalendar({ name: 'Season', day: '2031-03-01', events }) ?? '';
}

/** Section 3.1: what a reader does first. */
function unfolded(text: string): string {
  return text.replace(/\r\n[ \t]/g, '');
}

/** Examples that RFC 5545 itself prints. */
describe('the examples of the standard', () => {
  test('a folded line of section 3.1 is unfolded to one line, and so is ours', () => {
    const printed = 'DESCRIPTION:This is a lo\r\n ng description\r\n  that exists on a long line.';
    const whole = 'DESCRIPTION:This is a long description that exists on a long line.';
    expect(unfolded(printed)).toBe(whole);
    expect(unfolded(folded(whole))).toBe(whole);
  });

  test('a text of several lines is written as in section 3.3.11', () => {
    expect(escaped('Project XYZ Final Review\nConference Room - 3B\nCome Prepared.')).toBe(
      'Project XYZ Final Review\\nConference Room - 3B\\nCome Prepared.',
    );
  });

  test('a comma in a location is written as in section 3.8.1.7', () => {
    expect(`LOCATION:${escaped('Conference Room - F123, Bldg. 002')}`).toBe(
      'LOCATION:Conference Room - F123\\, Bldg. 002',
    );
  });

  test('a whole day is written as in section 3.6.1, without an end', () => {
    const file = fileOf([{ ...event, date: '1997-11-02' }]);
    expect(file).toContain('\r\nDTSTART;VALUE=DATE:19971102\r\n');
    expect(file).toContain('\r\nTRANSP:TRANSPARENT\r\n');
    expect(file).not.toContain('DTEND');
  });

  test('backslash, semicolon and comma are escaped, a colon is not', () => {
    expect(escaped('a\\b;c,d:e')).toBe('a\\\\b\\;c\\,d:e');
  });
});

describe('a calendar', () => {
  test('made twice on the same day is the same file', () => {
    expect(fileOf([event])).toBe(fileOf([event]));
  });

  test('without events is none, since the standard knows no empty one', () => {
    expect(iCalendar({ name: 'Season', day: '2031-03-01', events: [] })).toBeNull();
  });

  test('drops control characters, which the standard forbids in a text', () => {
    expect(escaped('a\u0000b\u0007c\td\r\ne')).toBe('abc\td\\ne');
  });
});

describe('a folded line', () => {
  test.each([
    ['of 75 octets stays whole', 'A'.repeat(75), 1],
    ['of 76 octets is two', 'A'.repeat(76), 2],
    ['of 149 octets is two', 'A'.repeat(149), 2],
    ['of 150 octets is three', 'A'.repeat(150), 3],
    ['of two-octet letters breaks before the 38th', 'é'.repeat(38), 2],
    ['of signs beyond the basic plane breaks before the 19th', '🌱'.repeat(19), 2],
  ])('%s', (_, line, pieces) => {
    expect(folded(line).split('\r\n')).toHaveLength(pieces);
    expect(unfolded(folded(line))).toBe(line);
  });
});
