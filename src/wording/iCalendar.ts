/** Days to remember as an iCalendar file (RFC 5545), which telephones and calendars read. */
import { dayNumber_d } from '../core/calendar.ts';

/** Something to do on a day, all day long. */
export type CalendarEvent = {
  /** The same in every file that tells of the same thing, so that a file read again replaces what is there. */
  readonly uid: string;
  /** ISO 8601. */
  readonly date: string;
  readonly summary: string;
  readonly description: string;
  readonly location: string;
  readonly category: string;
};

type Calendar = {
  readonly name: string;
  /** The day on which the file is made, ISO 8601. Given, never read from a clock. */
  readonly day: string;
  readonly events: readonly CalendarEvent[];
};

/** What makes the file, as section 3.7.3 wants it told. */
const maker = '-//Bedfirst//Crop turnover//EN';

/** So many octets a line has at most, without its end (section 3.1). */
const most = 75;

/**
 * The file. A calendar without events is no calendar to the standard: then it is null.
 *
 * A reader keeps the event of the higher SEQUENCE, then of the later DTSTAMP; both follow from the day that the file is
 * made on, so that a file of a later day replaces the events of an earlier one. On the same day both are equal, and the
 * UID alone makes readers replace.
 */
export function iCalendar({ name, day, events }: Calendar): string | null {
  if (events.length === 0) return null;
  const lines = [
    'BEGIN:VCALENDAR',
    'VERSION:2.0',
    `PRODID:${maker}`,
    'CALSCALE:GREGORIAN',
    `NAME:${escaped(name)}`,
    ...events.flatMap((event) => eventLines(event, day)),
    'END:VCALENDAR',
  ];
  return lines.map((line) => `${folded(line)}\r\n`).join('');
}

function eventLines(event: CalendarEvent, day: string): readonly string[] {
  return [
    'BEGIN:VEVENT',
    `UID:${escaped(event.uid)}`,
    `DTSTAMP:${basic(day)}T000000Z`,
    `SEQUENCE:${Math.max(0, dayNumber_d(day))}`,
    // No end: then it lasts the one day (section 3.6.1).
    `DTSTART;VALUE=DATE:${basic(event.date)}`,
    `SUMMARY:${escaped(event.summary)}`,
    `DESCRIPTION:${escaped(event.description)}`,
    `LOCATION:${escaped(event.location)}`,
    `CATEGORIES:${escaped(event.category)}`,
    // A day with something to do in it is not a day on which one is away.
    'TRANSP:TRANSPARENT',
    'END:VEVENT',
  ];
}

/** "20310504" from "2031-05-04". */
function basic(iso: string): string {
  return iso.replaceAll('-', '');
}

/** A text as section 3.3.11 wants it; control characters, which it forbids, are dropped. */
export function escaped(text: string): string {
  return text
    .replace(/\r\n?/g, '\n')
    .replace(/(?![\t\n])\p{Cc}/gu, '')
    .replace(/[\\;,]/g, (sign) => `\\${sign}`)
    .replaceAll('\n', '\\n');
}

/** A line in pieces of at most 75 octets, never cut inside a character; a piece after the first begins with a space. */
export function folded(line: string): string {
  const pieces: string[] = [];
  let piece = '';
  let octets = 0;
  for (const character of line) {
    const more = octetsOf(character);
    if (octets + more > most) {
      pieces.push(piece);
      piece = ' ';
      octets = 1;
    }
    piece += character;
    octets += more;
  }
  return [...pieces, piece].join('\r\n');
}

/** Octets of a character in UTF-8. */
function octetsOf(character: string): number {
  const code = character.codePointAt(0) ?? 0;
  return code < 0x80 ? 1 : code < 0x800 ? 2 : code < 0x1_0000 ? 3 : 4;
}
