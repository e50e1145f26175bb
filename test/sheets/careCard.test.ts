import { describe, expect, test } from 'vitest';
import type { System } from '../../src/core/system.ts';
import { CoverError } from '../../src/paper/cover.ts';
import { tagPage } from '../../src/paper/tags.ts';
import { cardPages, content, faultsOf, inputOf, textOf, wordsOf } from './laidOut.ts';

function system(id: string): System {
  const found = content.systems.find((one) => one.id === id);
  if (found === undefined) throw new Error(`no system ${id}`);
  return found.system;
}

function inOrder(text: string, parts: readonly string[]): void {
  let at = 0;
  for (const part of parts) {
    const found = text.indexOf(part, at);
    expect(found, `"${part}" after "${text.slice(Math.max(0, at - 40), at)}"`).toBeGreaterThanOrEqual(0);
    at = found + part.length;
  }
}

describe('the front of the care card', () => {
  test('says today’s work first, then what to do when something is wrong, in the order that harms least', async () => {
    const [front] = await cardPages(inputOf(system('hollow-lane-ibc')));
    if (front === undefined) throw new Error('no front');
    inOrder(textOf(front), [
      'The big tank',
      'Feed each day',
      '21',
      'Missed a day: never double.',
      'Every day',
      'Every week',
      'Look for',
      'Water temperature today',
      'Something wrong?',
      'Children: fetch an adult.',
      'touch nothing wet',
      'Level falling',
      'pump OFF, air ON, call',
      'Fish gasping',
      'Power out',
      'Dead fish',
      'Never add salt, medicine or pH liquid.',
      'Call',
      'Never release a fish.',
    ]);
  });

  test('prints the plan’s own figures', async () => {
    const input = inputOf(system('hollow-lane-ibc'));
    const [front] = await cardPages(input);
    if (front === undefined) throw new Error('no front');
    const text = textOf(front).replace(/\u00a0/g, ' ');
    const figure = (key: string): number => input.plan.figures[key]?.value ?? Number.NaN;
    expect(text).toContain(`${Math.floor(figure('tankFull_L'))} L`);
    expect(text).toContain(`bed full: ${Math.floor(figure('tankLow_L') + 1e-6)} L`);
    expect(text).toContain(`${Math.floor(figure('wetMedia_L') + 1e-6)} L wet media`);
    expect(text).toContain(`at most ${Math.floor(figure('topUpLimit_L_d'))} L`);
    expect(Math.floor(figure('feed_g_d'))).toBe(21);
  });

  test('sets the feed figure so that it is read from a metre', async () => {
    const [front] = await cardPages(inputOf(system('hollow-lane-ibc')));
    const feed = front && wordsOf(front).find((one) => one.text.trim() === '21');
    // 20 minutes of arc at 1 m are 5.8 mm of capital height, about 23 pt of this face (NUREG-0700: 0.006 of the distance).
    expect(feed?.size_pt ?? 0).toBeGreaterThan(25);
  });

  test('rounds each limit under the bar of the water’s warmth to its safe side, as everywhere else', async () => {
    // 32 °C are 89.6 °F: whoever calls at 90 °F calls too late.
    const input = inputOf(system('kitchen-frame'), 'Letter', 'us');
    const [front] = await cardPages(input);
    if (front === undefined) throw new Error('no front');
    const words = wordsOf(front).map((one) => one.text.replaceAll('\u00a0', ' '));
    expect(words).toEqual(expect.arrayContaining(['50 °F', '72 °F', '86 °F', '89 °F']));
  });

  test('never shows a child or a sitter how to dose anything', async () => {
    for (const { system: one } of content.systems) {
      const [front] = await cardPages(inputOf(one));
      if (front === undefined) throw new Error('no front');
      const text = textOf(front).replace('Never add salt, medicine or pH liquid.', '');
      expect(text).not.toMatch(/\bsalt\b|\bmedicine\b|\bdose\b|chlor|ammonia/i);
    }
  });

  test('asks for the keeper’s word where no source carries a ration', async () => {
    const [front] = await cardPages(inputOf(system('two-bathtubs')));
    if (front === undefined) throw new Error('no front');
    expect(textOf(front)).toContain('Ask the keeper');
    expect(textOf(front)).toContain('never double');
  });
});

describe('the time in hand on the card', () => {
  const airOf = async (one: System): Promise<readonly string[]> =>
    (await cardPages(inputOf(one))).map((page) => textOf(page).replace(/\u00a0/g, ' '));

  test('is the plan’s figure rounded down, and is called no safe waiting time on both sides', async () => {
    const one = system('hollow-lane-ibc');
    const minutes = inputOf(one).plan.figures['timeInHand_min']?.value ?? Number.NaN;
    const [front, back] = await airOf(one);
    inOrder(front ?? '', [
      'Power out',
      'battery air',
      `Air back within ${Math.floor(minutes)} min: not a safe waiting time.`,
    ]);
    expect(back).toContain(
      `When pump and air stop: ${Math.floor(minutes)} min. Air within this time; it is not a safe waiting time.`,
    );
  });

  test('is a reason and no figure in green water', async () => {
    const [front, back] = await airOf(system('pond-and-tray'));
    expect(front).toContain('in green water no time can be told');
    expect(back).toContain('When pump and air stop: Air back at once');
    for (const side of [front, back]) expect(side).not.toMatch(/\d min\b/);
  });

  test('is never told as 0 minutes', async () => {
    const one = system('bent-fork-stock-tank');
    expect(inputOf(one).plan.figures['timeInHand_min']?.value).toBeLessThan(1);
    const sides = await airOf(one);
    expect(sides[0]).toContain('Air back at once: there is less than a minute.');
    for (const side of sides) expect(side).not.toMatch(/\b0 min\b/);
  });

  test('is not there without fish', async () => {
    for (const side of await airOf(system('basket-tub'))) expect(side).not.toContain('Air back');
  });
});

describe('this month’s feed', () => {
  const on = async (id: string, day: string): Promise<readonly string[]> => {
    const pages = await cardPages({ ...inputOf(system(id)), day });
    return pages.map((page) => textOf(page).replace(/\u00a0/g, ' '));
  };

  test('stands on the keeper’s side only, and leaves the ration of the front alone', async () => {
    const [front, back] = await on('kitchen-frame', '2027-06-10');
    const figures = inputOf(system('kitchen-frame')).plan.figures;
    const ration = String(Math.floor(figures['feed_g_d']?.value ?? Number.NaN));
    expect(front).toContain(`Feed each day ${ration}`);
    expect(front).not.toContain('This month');
    expect(back).toContain('This month, Jun 2027');
    expect(back).toContain(`the ${ration} g of the front hold until ten fish were weighed`);
  });

  test('is that of the plan’s own month', async () => {
    const { plan } = inputOf(system('kitchen-frame'));
    const rows = plan.tables.find((table) => table.key === 'fishMonths')?.rows ?? [];
    const june = rows.find(([month]) => month === '2027-06') ?? [];
    const [, back] = await on('kitchen-frame', '2027-06-10');
    expect(back).toContain(`want ${Math.floor(Number(june[5]))} to ${Math.floor(Number(june[6]))} g a day`);
  });

  test('is none in water in which the front lets nobody feed', async () => {
    const [, back] = await on('kitchen-frame', '2026-12-10');
    expect(back).toContain('In such water no feed. The thermometer decides');
    expect(back).not.toContain('By growth all fish want');
  });

  test('is not told where the plan does not know the month', async () => {
    for (const [id, day] of [
      ['hollow-lane-ibc', '2026-12-10'],
      ['kitchen-frame', '2050-01-10'],
    ] as const) {
      const [, back] = await on(id, day);
      expect(back).not.toContain('This month');
    }
  });
});

describe('every card', () => {
  for (const { id, system: one } of content.systems) {
    for (const paper of ['A4', 'Letter'] as const) {
      for (const units of ['metric', 'us'] as const) {
        test(`of ${id} keeps its words apart and inside the safe box on ${paper} in ${units} units`, async () => {
          const pages = await cardPages(inputOf(one, paper, units));
          expect(pages.length).toBeGreaterThanOrEqual(2);
          expect(pages.flatMap(faultsOf)).toEqual([]);
        });
      }
    }
  }

  test('is set in 11 pt or more on the front, and nowhere in less than 8.5 pt', async () => {
    for (const { system: one } of content.systems) {
      const [front, ...others] = await cardPages(inputOf(one));
      const small = (page: typeof front, least: number) =>
        (page ? wordsOf(page) : []).filter((word) => word.size_pt < least - 0.01).map((word) => word.text);
      expect(small(front, 11)).toEqual([]);
      for (const page of others) expect(small(page, 8.5)).toEqual([]);
    }
  });

  test('is put together so that a screen reader finds its parts', async () => {
    for (const { system: one } of content.systems) {
      const pages = await cardPages(inputOf(one));
      expect(
        pages.flatMap((page) => tagPage(page).faults),
        one.id,
      ).toEqual([]);
      const [front] = pages;
      const roles = (front?.nodes ?? []).map((node) => node.role);
      expect(roles.filter((role) => role === 'H1')).toHaveLength(1);
      expect(roles.filter((role) => role === 'H2').length).toBeGreaterThanOrEqual(4);
    }
  });

  test('needs no more than a sheet of paper for a system with one bed', async () => {
    for (const { system: one } of content.systems.filter(({ system: each }) => each.beds.length === 1)) {
      expect((await cardPages(inputOf(one))).length, one.id).toBe(2);
    }
  });
});

describe('the keeper’s side', () => {
  test('names no quarter where tank and tap water differ too much for one, but the most that the plan allows', async () => {
    const input = inputOf(system('hollow-lane-ibc-two-beds'));
    const [, back] = await cardPages(input);
    const text = back ? textOf(back).replace(/\u00a0/g, ' ') : '';
    const most = Math.floor(input.plan.figures['largestChange_L']?.value ?? Number.NaN);
    expect(most).toBeLessThan(input.plan.figures['waterChange_L']?.value ?? 0);
    expect(text).toContain(`At most ${most} L in a day`);
    expect(text).not.toContain('A quarter is');
  });

  test('names a quarter and a tenth, and what to test first, where no tap water was given', async () => {
    const [, back] = await cardPages(inputOf(system('hollow-lane-ibc')));
    expect(back && textOf(back).replace(/\u00a0/g, ' ')).toContain('A quarter is 175 L, a tenth 70 L.');
  });
});

describe('at the edges', () => {
  const plain = system('hollow-lane-ibc');
  const named = (name: string): System => ({
    ...plain,
    name,
    place: name,
    beds: plain.beds.map((bed) => ({ ...bed, name })),
  });

  test('a name of 500 letters is cut with a mark and pushes nothing off the sheet', async () => {
    for (const name of ['W'.repeat(500), 'a wordy name '.repeat(38), 'ÅŁŻ·'.repeat(125)]) {
      const pages = await cardPages(inputOf(named(name)));
      expect(pages.flatMap(faultsOf), name.slice(0, 20)).toEqual([]);
      const [front] = pages;
      expect(front && textOf(front)).toContain('…');
    }
  });

  test('a name of markup and quotes stands there as text', async () => {
    const hostile = '<script>alert("x")</script> & \'y\' %0A {name}';
    const [front] = await cardPages(inputOf(named(hostile)));
    expect(front && textOf(front)).toContain('<script>alert("x")</script>');
  });

  test('an emoji or a letter that no font has is refused with its character named', async () => {
    for (const name of ['Tank 🐟', 'თევზი']) {
      await expect(cardPages(inputOf(named(name)))).rejects.toThrow(CoverError);
      await expect(cardPages(inputOf(named(name)))).rejects.toThrow(/U\+/);
    }
  });

  test('forty fish, no fish, no beds and no pump all give a card', async () => {
    const fish = plain.fish;
    if (fish === null) throw new Error('the big tank has fish');
    const edges: readonly System[] = [
      { ...plain, fish: { ...fish, present: 40, massNow_g: 900 } },
      { ...plain, fish: null },
      { ...plain, beds: [], pump: null },
      { ...plain, spoon_g: null },
      { ...plain, spoon_g: 90 },
    ];
    for (const edge of edges) {
      const pages = await cardPages(inputOf(edge));
      expect(pages.flatMap(faultsOf)).toEqual([]);
    }
  });
});
