import { describe, expect, test } from 'vitest';
import type { System } from '../../src/core/system.ts';
import { overflows } from '../../src/paper/overflows.ts';
import type { Page } from '../../src/paper/page.ts';
import { tagPage } from '../../src/paper/tags.ts';
import { careCardLarge } from '../../src/sheets/careCardLarge.tsx';
import type { SheetInput } from '../../src/sheets/sheet.ts';
import { cardPages, content, faultsOf, inputOf, press, textOf, wordsOf } from './laidOut.ts';

async function largePages(input: SheetInput): Promise<readonly Page[]> {
  const pages = [];
  for await (const page of careCardLarge.pages(input, press.layOut)) pages.push(page);
  return pages;
}

function system(id: string): System {
  const found = content.systems.find((one) => one.id === id);
  if (found === undefined) throw new Error(`no system ${id}`);
  return found.system;
}

async function largeText(input: SheetInput): Promise<string> {
  return (await largePages(input))
    .map(textOf)
    .join(' ')
    .replace(/\u00a0/g, ' ');
}

describe('the card in large print', () => {
  for (const paper of ['A4', 'Letter'] as const) {
    test(`has nothing smaller than 18 pt, nothing on anything else and nothing outside the safe box on ${paper}`, async () => {
      for (const { id, system: one, sheet } of content.systems) {
        const pages = await largePages(inputOf(one, paper, sheet.units));
        const small = pages.flatMap(wordsOf).filter((word) => word.size_pt < 17.99);
        expect(
          small.map(({ text }) => text),
          id,
        ).toEqual([]);
        expect(pages.flatMap(faultsOf), id).toEqual([]);
        expect(
          pages.flatMap((page) => tagPage(page).faults),
          id,
        ).toEqual([]);
      }
    }, 120_000);
  }

  test('says in the order of the card what the card says', async () => {
    const text = await largeText(inputOf(system('hollow-lane-ibc')));
    const parts = [
      ...[
        'The big tank',
        'Hollow Lane Growers, Quillbeck',
        'Feed each day',
        '21',
        'never double',
        'bed empty: 700 L',
        'Every day',
        'Every week',
      ],
      ...[
        'Look for',
        'Water temperature today',
        'Something wrong?',
        'Children: fetch an adult.',
        'Level falling',
      ],
      ...[
        'Fish gasping',
        'Power out',
        'Air back within 11 min',
        'Dead fish',
        'Never add salt',
        'Never release a fish.',
      ],
      ...[
        'For the keeper',
        'Readings',
        'Ammonia, total: up to 1 mg/L',
        'Water change',
        'Weighing',
        'Look at this',
      ],
      ...['Worked steps', 'Wet media:', 'common practice, no source'],
    ];
    let at = 0;
    for (const part of parts) {
      const found = text.indexOf(part, at);
      expect(found, part).toBeGreaterThanOrEqual(0);
      at = found + part.length;
    }
  });

  test('leaves none of the worked steps of the card out', async () => {
    for (const id of ['hollow-lane-ibc', 'old-tank-as-sump']) {
      const input = inputOf(system(id));
      const steps = (pages: readonly Page[]) =>
        pages
          .map(textOf)
          .join(' ')
          .replace(/.*?Worked steps/, '')
          .match(/= [\d.]+/g);
      const card = steps(await cardPages(input)) ?? [];
      const large = steps(await largePages(input)) ?? [];
      expect(card.length).toBeGreaterThan(10);
      expect([...large].sort()).toEqual(expect.arrayContaining([...new Set(card)].sort()));
    }
  });

  test('ends no page with a heading', async () => {
    for (const { system: one } of content.systems) {
      for (const page of await largePages(inputOf(one))) {
        const named = page.nodes.filter(({ role }) => role !== null && role !== 'Sect');
        expect(named.at(-1)?.role).not.toBe('H2');
      }
    }
  });

  test('of a system with fifty beds or a name of 500 letters flows on and keeps its words in their boxes', async () => {
    const plain = system('hollow-lane-ibc');
    const [bed] = plain.beds;
    if (bed === undefined) throw new Error('a bed');
    const beds = Array.from({ length: 50 }, () => ({ ...bed, mode: 'constantFlood' as const }));
    for (const one of [
      { ...plain, beds },
      { ...plain, name: 'W'.repeat(500), place: 'a wordy place '.repeat(35) },
    ]) {
      const pages = await largePages(inputOf(one));
      expect(pages.flatMap(overflows)).toEqual([]);
      expect(pages.flatMap(faultsOf)).toEqual([]);
    }
  }, 60_000);

  test('names letters that the drawing bears', async () => {
    const [first] = await largePages(inputOf(system('hollow-lane-ibc')));
    const letters = first ? wordsOf(first).filter(({ text }) => /^[A-H]$/.test(text.trim())) : [];
    // Each twice: at the drawing and before its words.
    expect(
      letters
        .map(({ text }) => text.trim())
        .sort()
        .join(''),
    ).toBe('AABBCCDD');
  });
});
