/** What a person must know about a plan, as notes. */
import { dateOf, dayNumber_d } from '../calendar.ts';
import { frostChances } from '../crops/frostDates.ts';
import type { Note } from '../note.ts';
import { bedKinds, mayGrow } from './bedKinds.ts';
import { feedFit } from './feedWeeks.ts';
import type { Shortfall } from './cropWeeks.ts';
import type { PlantedWeek, PulseAway, Sowing, TurnoverTask } from './turnover.ts';

type Made = {
  readonly sowings: readonly Sowing[];
  readonly short: readonly Shortfall[];
  readonly planted: readonly PlantedWeek[];
};

/**
 * Notes of a plan: crops that may not grow here, amounts asked for where nobody is there, roots that stay, heat, feed that does not fit, and cautions of crops.
 * @param task a checked task
 * @param made what the plan says
 * @returns notes, the weightiest first
 * @valid every plan
 * @source commonPractice
 */
export function turnoverNotes(task: TurnoverTask, made: Made): readonly Note[] {
  return [
    ...refusals(task, made),
    ...away(task),
    ...longRoots(task),
    ...bolting(task, made),
    ...feed(task, made),
    ...cautions(task),
    frost(task),
  ];
}

function refusals(task: TurnoverTask, { short }: Made): readonly Note[] {
  const refused = new Set(short.filter(({ why }) => why === 'refused').map(({ crop }) => crop));
  const kinds = bedKinds(task);
  return task.wishes
    .filter(({ crop }) => refused.has(crop.id))
    .map(({ crop }) => ({
      code: kinds.some((kind) => mayGrow(crop, kind)) ? 'cropTooWide' : 'cropRefusedStill',
      level: 'stop',
      numbers: {},
      words: { crop: crop.name },
      source: 'commonPractice',
    }));
}

/** What is asked for in holidays is left out: whoever asked may have thought of a market, and not of the holidays. */
function away({ wishes, pulsesAway = [] }: TurnoverTask): readonly Note[] {
  return [
    ...pulsesAway.map((one) => awayNote(one, ['pulsesInHoliday', 'pulsesNoWorkday'], {})),
    ...wishes.flatMap(({ crop, pulsesAway: own = [] }) =>
      own.map((one) => awayNote(one, ['pulseInHoliday', 'pulseNoWorkday'], { crop: crop.name })),
    ),
  ];
}

function awayNote(
  { day, holiday }: PulseAway,
  [inHoliday, noWorkday]: readonly [string, string],
  crop: Readonly<Record<string, string>>,
): Note {
  const told = { level: 'caution', numbers: {}, source: 'commonPractice' } as const;
  return holiday === null
    ? { ...told, code: noWorkday, words: { ...crop, day } }
    : { ...told, code: inHoliday, words: { ...crop, day, holiday } };
}

/** Roots that stay for months clog a bed that drains, too; there it is the person's choice. */
function longRoots(task: TurnoverTask): readonly Note[] {
  const kinds = bedKinds(task);
  return task.wishes
    .filter(({ crop }) => crop.stays === 'long' && kinds.some((kind) => mayGrow(crop, kind)))
    .map(({ crop }) => ({
      code: 'cropLongRoots',
      level: 'caution',
      numbers: {},
      words: { crop: crop.name },
      source: 'commonPractice',
    }));
}

function bolting(task: TurnoverTask, { sowings }: Made): readonly Note[] {
  return task.wishes.flatMap(({ crop }): readonly Note[] => {
    const hot = sowings.filter((one) => one.crop === crop.id && one.mayBolt === 'yes').length;
    if (hot === 0 || crop.bolts_degC === null) return [];
    const numbers = { sowings: hot, bolts_degC: crop.bolts_degC };
    return [
      {
        code: 'cropMayBolt',
        level: 'caution',
        numbers,
        words: { crop: crop.name },
        source: crop.sources['bolts_degC'] ?? 'fromMemory',
      },
    ];
  });
}

function feed({ feed_g_d }: TurnoverTask, { planted }: Made): readonly Note[] {
  if (feed_g_d === null) return [];
  const fits = planted.map((week) => feedFit(week, feed_g_d));
  const more = fits.filter((fit) => fit === 'moreFeed').length;
  const less = fits.filter((fit) => fit === 'morePlants').length;
  return [
    ...(more > 0 ? [feedNote('feedMoreThanPlants', more, feed_g_d)] : []),
    ...(less > 0 ? [feedNote('plantsMoreThanFeed', less, feed_g_d)] : []),
  ];
}

function feedNote(code: string, weeks: number, feed_g_d: number): Note {
  return { code, level: 'caution', numbers: { weeks, feed_g_d }, source: 'fao589' };
}

/** From the means of the nights, so that nobody plants tender crops by a likely day alone. */
function frost({ place }: TurnoverTask): Note {
  const { tenPercent, half } = frostChances(place.night_degC);
  const told = { level: 'info', numbers: {}, source: 'fromMemory' } as const;
  if (tenPercent.state !== 'dates' || half.state !== 'dates') {
    const isRare = tenPercent.state === 'never' || half.state === 'never';
    return { ...told, code: isRare ? 'frostRare' : 'frostAnyTime' };
  }
  // Days of any year, as ISO 8601 (2000) writes them: a season may lie in two.
  const date = (into_d: number): string => `-${dateOf(dayNumber_d('2031-01-01') + into_d).slice(4)}`;
  const words = {
    lastHalf: date(half.last_d),
    lastSafe: date(tenPercent.last_d),
    firstSafe: date(tenPercent.first_d),
    firstHalf: date(half.first_d),
  };
  return { ...told, code: 'frostDates', words };
}

function cautions({ wishes }: TurnoverTask): readonly Note[] {
  return wishes.flatMap(({ crop }) =>
    crop.cautions.map(
      (code): Note => ({
        code,
        level: 'caution',
        numbers: {},
        words: { crop: crop.name },
        source: crop.sources['cautions'] ?? 'commonPractice',
      }),
    ),
  );
}
