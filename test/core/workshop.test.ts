import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { handoutFacts } from '../../src/core/plan/handoutFacts.ts';
import { planOf } from '../../src/core/plan/planOf.ts';
import { dayNumber_d } from '../../src/core/calendar.ts';
import { agrees } from '../../src/core/workshop/agrees.ts';
import { inDecimetres } from '../../src/core/workshop/decimetres.ts';
import { exercises, levels } from '../../src/core/workshop/exercise.ts';
import { firstLevels } from '../../src/core/workshop/firstLevels.ts';
import { programme } from '../../src/core/workshop/programme.ts';
import { careRota, turnsWithoutTeam } from '../../src/core/workshop/rota.ts';
import { checkPair, readSheetNumber, sheetNumber } from '../../src/core/workshop/sheetNumber.ts';
import { shuffled } from '../../src/core/workshop/shuffle.ts';
import { toSystem } from '../../src/schemas/toSystem.ts';
import { content } from '../demoSystems.ts';
import { workedOut } from './workedOut.ts';

const most_frac = content.media['coarseGravel']?.void_frac.high ?? 0;
const anyLevel = fc.constantFrom(...levels);
const anySeed = fc.integer({ min: 0, max: 9_999 });

describe('exercises', () => {
  test('are the same again for the same seed, and others for another', () => {
    fc.assert(
      fc.property(anyLevel, anySeed, (level, seed) => {
        const once = exercises(level, seed, 24, most_frac);
        expect(exercises(level, seed, 24, most_frac)).toEqual(once);
        expect(exercises(level, seed + 1, 24, most_frac)).not.toEqual(once);
        // A larger class begins with the same sheets: a number stands for one exercise.
        expect(exercises(level, seed, 40, most_frac).slice(0, 24)).toEqual(once);
      }),
      { numRuns: 20 },
    );
  });

  test('give neighbours other litres, and bind in different places across the class', () => {
    fc.assert(
      fc.property(anyLevel, anySeed, (level, seed) => {
        const all = exercises(level, seed, 60, most_frac).map(systemOf).map(planOf);
        const litres = all.map(({ figures }) => [
          figures['tankFull_L']?.value,
          figures['bed1.wetMedia_L']?.value,
        ]);
        for (const [at, [full, wet]] of litres.entries())
          for (const [otherFull, otherWet] of litres.slice(at + 1, at + 4)) {
            expect(otherFull).not.toBe(full);
            expect(otherWet).not.toBe(wet);
          }
        const binding = all.map(({ figures }) => figures['fishPlanned']?.notes[0]?.code);
        expect(new Set(binding).size).toBe(level === 'primary' ? 1 : 3);
      }),
      { numRuns: 12 },
    );
  });

  test('are all different, as large as a class can be', () => {
    for (const level of levels)
      for (const seed of [1, 417, 9_999]) {
        const class_ = exercises(level, seed, 200, most_frac).map((one) => JSON.stringify(one));
        expect(new Set(class_).size, `${level} ${seed}`).toBe(200);
      }
  });

  test('bind where the class was told, as the whole plan sees it', () => {
    for (const level of levels)
      for (const one of exercises(level, 3, 300, most_frac)) {
        const note = planOf(systemOf(one)).figures['fishPlanned']?.notes[0]?.code;
        expect(note).toBe(`binds.${one.binds}`);
      }
  });

  test('give children whole litres in whole decimetres, and steps without a million', () => {
    for (const one of exercises('primary', 11, 300, most_frac)) {
      const { figures } = planOf(systemOf(one));
      for (const key of ['tankFull_L', 'bed1.wetMedia_L']) {
        const step = figures[key]?.steps[0];
        if (step === undefined) throw new Error(key);
        const easy = inDecimetres(step);
        if (easy === null) throw new Error(step.formula);
        expect(easy.formula).not.toContain('1000000');
        expect(easy.symbols.every(({ unit, value }) => unit === 'dm' && Number.isInteger(value))).toBe(true);
        expect(easy.gives.value).toBeCloseTo(Math.round(easy.gives.value), 9);
        expect(workedOut(easy)).toBeCloseTo(easy.gives.value, 9);
      }
    }
  });

  test('come round again where the class is larger than there are any', () => {
    expect(exercises('primary', 1, 9_999, most_frac)).toHaveLength(9_999);
    expect(exercises('adults', 1, 0, most_frac)).toEqual([]);
  });
});

function systemOf({ tank, full_mm, bed, waterLine_mm, mediaDepth_mm }: ReturnType<typeof exercises>[number]) {
  const read = toSystem(
    {
      ...{ id: 'x', name: 'x', tank: { container: tank, full_mm } },
      beds: [
        {
          ...{
            name: 'x',
            container: bed,
            mode: 'siphon',
            media: 'coarseGravel',
            mediaDepth_mm,
            waterLine_mm,
          },
          above_mm: tank.depth_mm + 100,
        },
      ],
      pump: { flow_L_h: 500, intake_mm: 60 },
    },
    content,
  );
  if (!('system' in read)) throw new Error(JSON.stringify(read.problems));
  return read.system;
}

describe('the number of a sheet', () => {
  test('ends in the check digits of ISO 7064, MOD 97-10', () => {
    // The example of the standard, as encyclopedias quote it: 794 becomes 79444.
    expect(checkPair('794')).toBe('44');
  });

  test('reads back as it was written, however it was copied', () => {
    const index = fc.integer({ min: 0, max: 9_998 });
    fc.assert(
      fc.property(anyLevel, anySeed, index, (level, seed, at) => {
        const printed = sheetNumber({ level, seed, index: at });
        expect(printed).toMatch(/^[123]-\d{4}-\d{4}-\d{2}$/);
        for (const copied of [printed, printed.replaceAll('-', ''), printed.replaceAll('-', ' – ')])
          expect(readSheetNumber(copied)).toEqual({ level, seed, index: at });
      }),
    );
  });

  test('is refused where one digit is wrong, or two neighbours were exchanged', () => {
    const digits = sheetNumber({ level: 'adults', seed: 417, index: 11 }).replaceAll('-', '');
    for (let at = 0; at < digits.length; at += 1) {
      for (const other of '0123456789')
        if (other !== digits[at])
          expect(readSheetNumber(digits.slice(0, at) + other + digits.slice(at + 1))).toBeNull();
      const [a, b] = [digits[at], digits[at + 1]];
      if (b !== undefined && a !== b)
        expect(readSheetNumber(`${digits.slice(0, at)}${b}${a}${digits.slice(at + 2)}`)).toBeNull();
    }
    for (const none of ['', 'Ada', '12', '4-0001-0001-00']) expect(readSheetNumber(none)).toBeNull();
  });
});

test('a shuffle keeps everything, once', () => {
  fc.assert(
    fc.property(fc.array(fc.integer()), anySeed, (items, seed) => {
      const sorted = (some: readonly number[]) => [...some].sort((a, b) => a - b);
      expect(sorted(shuffled(items, seed))).toEqual(sorted(items));
    }),
  );
});

test('a programme fills the time without a gap, in steps of five minutes', () => {
  fc.assert(
    fc.property(anyLevel, fc.integer({ min: 40, max: 600 }), (level, length_min) => {
      const parts = programme(level, length_min);
      let from_min = 0;
      for (const part of parts) {
        expect(part.from_min).toBe(from_min);
        expect(part.from_min % 5).toBe(0);
        expect(part.takes_min).toBeGreaterThanOrEqual(5);
        from_min += part.takes_min;
      }
      expect(from_min).toBe(length_min);
    }),
  );
  expect(() => programme('adults', 39)).toThrow(RangeError);
});

describe('a care rota', () => {
  const wish = {
    from: '2031-05-12',
    to: '2031-06-30',
    teams: 8,
    away: [{ from: '2031-05-26', to: '2031-05-30' }],
    weekends: 'keeper',
  } as const;

  test('has every day once, and gives all teams as many but for one', () => {
    const { days } = careRota(wish);
    expect(days).toHaveLength(dayNumber_d(wish.to) - dayNumber_d(wish.from) + 1);
    const turns = Array.from({ length: 8 }, (_, team) => days.filter((day) => day.team === team).length);
    expect(Math.max(...turns) - Math.min(...turns)).toBeLessThanOrEqual(1);
  });

  test('sends nobody on weekends and holidays, and tells the longest gap', () => {
    const { days } = careRota(wish);
    for (const { date, weekday, team, why } of days) {
      // 12 May 2031 is a Monday.
      expect(weekday).toBe(((dayNumber_d(date) - dayNumber_d('2031-05-12')) % 7) + 1);
      const isAway = '2031-05-26' <= date && date <= '2031-05-30';
      expect(why).toBe(isAway ? 'away' : weekday > 5 ? 'weekend' : 'class');
      expect(team === null).toBe(why !== 'class');
    }
    // Saturday 24 May to Sunday 1 June.
    expect(careRota(wish).longestGap_d).toBe(9);
  });

  test('has those without a team come together, two at least, about as many as in a team', () => {
    const count = fc.nat({ max: 300 });
    fc.assert(
      fc.property(count, count, fc.nat({ max: 40 }), (alone, inTeams, some) => {
        const teams = Math.min(some, inTeams);
        const turns = turnsWithoutTeam(alone, inTeams, teams);
        expect(turns.reduce((sum, one) => sum + one, 0)).toBe(alone);
        if (alone < 2) return;
        expect(Math.min(...turns)).toBeGreaterThanOrEqual(2);
        expect(Math.max(...turns) - Math.min(...turns)).toBeLessThanOrEqual(1);
        const usual = teams === 0 ? 2 : inTeams / teams;
        // Of few people nobody can be left over for two.
        expect(Math.max(...turns)).toBeLessThanOrEqual(Math.max(3, Math.ceil(usual)));
      }),
    );
    expect(turnsWithoutTeam(1, 9, 3)).toEqual([1]);
    expect(turnsWithoutTeam(4, 24, 8)).toEqual([2, 2]);
    expect(turnsWithoutTeam(3, 6, 6)).toEqual([3]);
  });

  test('sends teams on weekends where they come then', () => {
    expect(careRota({ ...wish, away: [], weekends: 'teams' }).longestGap_d).toBe(0);
  });
});

test('a first plan keeps its lines in their order, in containers of any depth', () => {
  const depth = fc.integer({ min: 60, max: 3_000 });
  fc.assert(
    fc.property(depth, depth, (tank_mm, bed_mm) => {
      const { full_mm, mediaDepth_mm, waterLine_mm } = firstLevels(tank_mm, bed_mm);
      expect(0 < full_mm && full_mm < tank_mm).toBe(true);
      expect(0 < waterLine_mm && waterLine_mm < mediaDepth_mm && mediaDepth_mm < bed_mm).toBe(true);
    }),
  );
  expect(firstLevels(800, 350)).toEqual({ full_mm: 700, mediaDepth_mm: 300, waterLine_mm: 250 });
  // Shares of their depth would be 467.5, 255 and 205 mm: nobody marks those.
  expect(firstLevels(550, 300)).toEqual({ full_mm: 460, mediaDepth_mm: 250, waterLine_mm: 200 });
});

test('a worksheet asks for all that the whole plan knows of what its level asks for, by the same steps', () => {
  const always = ['wetMedia_L', 'tankFull_L', 'fishByBed', 'fishPlanned', 'placesSquare'];
  const further = ['tankLow_L', 'fishByTank', 'fishByDensity'];
  const wanted = {
    primary: always,
    secondary: [...always, ...further],
    adults: [...always, ...further, 'turnover'],
  };
  const systems = [
    ...content.systems.map(({ system }) => system),
    ...exercises('adults', 7, 20, most_frac).map(systemOf),
  ];
  for (const level of levels)
    for (const system of systems) {
      const asked = handoutFacts(system, level).asked;
      const { figures } = planOf(system);
      const known = Object.values(figures).filter(({ key, value, steps }) => {
        const [bed, rest = ''] = key.split('.');
        const kind = /^bed\d+$/.test(bed ?? '') ? rest : key;
        if (key === 'wetMedia_L' && system.beds.length < 2) return false;
        return wanted[level].includes(kind) && value !== null && steps.length > 0;
      });
      expect([...asked].map(({ key }) => key).sort()).toEqual(known.map(({ key }) => key).sort());
      for (const { key, steps } of asked) {
        expect(steps.at(-1)?.gives.value).toBe(figures[key]?.value);
        for (const { number, gives } of steps) {
          // One of several equal containers is called so where its volume comes out, too.
          const term = gives.term === 'oneContainer' ? 'waterVolume' : gives.term;
          expect({ ...gives, term }).toEqual(figures[key]?.steps[number - 1]?.gives);
        }
      }
    }
});

describe('an answer', () => {
  test('that is counted is right or wrong', () => {
    expect(agrees(12, 12, 'whole')).toBe(true);
    expect(agrees(12, 11, 'whole')).toBe(false);
    expect(agrees(0, 0, 'whole')).toBe(true);
    expect(agrees(0, 1, 'whole')).toBe(false);
  });

  test('that is measured may be off by half a per cent, and one of two digits by five', () => {
    for (const side of [-1, 1]) {
      expect(agrees(700, 700 + side * 3.5, 'measured')).toBe(true);
      expect(agrees(700, 700 + side * 3.6, 'measured')).toBe(false);
      expect(agrees(0.875, 0.875 * (1 + side * 0.05), 'rough')).toBe(true);
      expect(agrees(0.875, 0.875 * (1 + side * 0.06), 'rough')).toBe(false);
    }
  });
});
