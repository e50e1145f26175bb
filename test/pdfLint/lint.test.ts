import { PDFDocument } from 'pdf-lib';
import { beforeAll, describe, expect, test } from 'vitest';
import { allSheets } from '../../src/sheets/allSheets.ts';
import type { PaperName } from '../../src/sheets/sheet.ts';
import type { SheetKind } from '../../src/sheets/sheetKind.ts';
import { sheetPrint } from '../../src/sheets/sheetPrint.ts';
import { content, inputOf, press } from '../sheets/laidOut.ts';
import { damages, intruders } from './damages.ts';
import type { Damage } from './damageTools.ts';
import { simpleFont } from './damagedParts.ts';
import { lint } from './lint.ts';
import { absent, covered, forPeople, scope, withoutTest } from './rules.ts';

/** Beds of every kind, with and without sump; the first on the other paper, too. */
const looked: readonly (readonly [string, PaperName])[] = [
  ['hollow-lane-ibc', 'A4'],
  ['hollow-lane-ibc', 'Letter'],
  ['basket-tub', 'A4'],
  ['room-seven-totes', 'Letter'],
];

/** null where the system has nothing to put on the sheet. */
async function printed(kind: SheetKind, id: string, paper: PaperName): Promise<Uint8Array | null> {
  const of = content.systems.find((one) => one.id === id);
  if (!of) throw new Error(`no system ${id}`);
  const input = inputOf(of.system, paper, of.sheet.units);
  if (kind.fits(input) === 'no') return null;
  const pages = [];
  for await (const page of kind.pages(input, press.layOut)) pages.push(page);
  return press.toPdf(sheetPrint(kind, input, pages, '{}'));
}

describe('the sheets', () => {
  test.each(allSheets.map((kind) => [kind.id, kind] as const))(
    '%s has nothing that a machine finds fault with',
    async (_, kind) => {
      let seen = 0;
      for (const [id, paper] of looked) {
        const bytes = await printed(kind, id, paper);
        if (bytes === null) continue;
        seen += 1;
        expect((await lint(bytes)).findings, `${id} on ${paper}`).toEqual([]);
      }
      expect(seen).toBeGreaterThan(0);
    },
    120_000,
  );
});

let good: Uint8Array;
beforeAll(async () => {
  const [card] = allSheets;
  const bytes = card && (await printed(card, 'hollow-lane-ibc', 'A4'));
  if (!bytes) throw new Error('no sheet');
  good = bytes;
});

async function damaged(damage: Damage): Promise<readonly string[]> {
  const document = await PDFDocument.load(good, { updateMetadata: false });
  damage(document);
  return (await lint(await document.save({ useObjectStreams: false }))).findings.map(({ rule }) => rule);
}

describe('the lint', () => {
  test('finds nothing in a good sheet that was only read and written again', async () => {
    expect(await damaged(() => undefined)).toEqual([]);
  });

  test('finds nothing in a simple font that is whole', async () => {
    expect(await damaged(simpleFont({}))).toEqual([]);
  });

  test.each(Object.entries(damages))('tells %s', async (rule, damage) => {
    expect(await damaged(damage)).toContain(rule);
  });

  test.each(Object.entries(absent))('tells %s', async (what, { toldBy }) => {
    expect(await damaged(intruders[what as keyof typeof absent])).toContain(toldBy);
  });

  test('says where the fault is', async () => {
    const document = await PDFDocument.load(good, { updateMetadata: false });
    damages['13-004'](document);
    const { findings } = await lint(await document.save({ useObjectStreams: false }));
    expect(findings).toEqual([
      { rule: '13-004', where: expect.stringMatching(/^Figure in \w+, page 1$/), what: covered['13-004'] },
    ]);
  });
});

/**
 * How many conditions each of the 31 checkpoints has, and how many of all a machine can decide: Matterhorn Protocol 1.1
 * (PDF Association, 2021), as quoted in public lists.
 */
const conditions = [
  ...[7, 4, 3, 1, 3, 4, 2, 2, 8, 1, 7, 1, 8, 7, 5, 3],
  ...[3, 2, 4, 3, 1, 1, 1, 1, 1, 2, 1, 18, 1, 2, 30],
];
const forMachines = 87;

const numbered = (value: number, digits: number) => String(value).padStart(digits, '0');

describe('the conditions', () => {
  const answered = Object.values(absent).flatMap((one): readonly string[] => one.conditions);
  const people = Object.values(forPeople).flat();

  test('are each covered, told when they occur, or left to people, and only once', () => {
    const published = conditions.flatMap((count, at) =>
      Array.from({ length: count }, (_, i) => `${numbered(at + 1, 2)}-${numbered(i + 1, 3)}`),
    );
    expect([...Object.keys(covered), ...answered, ...people, ...withoutTest].sort()).toEqual(published);
  });

  test('that a machine can check are all looked at', () => {
    expect(Object.keys(covered).length + answered.length).toBe(forMachines);
  });

  test('are told with what a look is worth, and never as a certificate', async () => {
    const { scope: told } = await lint(good);
    expect(told).toBe(scope);
    expect(told).toMatch(
      /^79 of 87 .* 8 are .* 48 are for a person\. Machine checks only; not a certificate\.$/,
    );
    const words = [...Object.values(covered), ...Object.keys(absent), ...Object.keys(forPeople)].join(' ');
    expect(words).not.toMatch(/certif|conform/i);
  });
});
