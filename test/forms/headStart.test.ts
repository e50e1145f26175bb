/** What is laid out of a class before somebody waits for it. */
import { setTimeout as pause } from 'node:timers/promises';
import { describe, expect, test } from 'vitest';
import { classFacts, handoutFacts } from '../../src/core/plan/handoutFacts.ts';
import { headStart } from '../../src/forms/class/headStart.ts';
import type { Press } from '../../src/paper/press.ts';
import { toWorkshop } from '../../src/schemas/workshops.ts';
import { type ClassDesk, classDesk } from '../../src/sheets/handouts/classDesk.ts';
import { partPrint } from '../../src/sheets/handouts/workshopPrint.ts';
import { content, press, words } from '../sheets/laidOut.ts';

const [demo] = content.workshops;
const roster = new TextEncoder().encode('name;team\nAda;Heron\nBo;Heron\nCleo;Otter\n');
const raw = { ...demo?.raw, rota: undefined };
const of = { raw, roster, day: '2031-05-04' };
const facts = { ...content, bedName: 'Bed' };
const { workshop } = await toWorkshop(raw, 'w.yaml', facts, async () => roster);

function deskOf(own: Press): ClassDesk {
  if (workshop === null) throw new Error('no workshop');
  return classDesk(workshop, { words, day: of.day, core: { classFacts, handoutFacts } }, own);
}

/** A head start, and the titles of what was laid out up to now. */
function begun() {
  const laidOut: string[] = [];
  const done = { count: 0 };
  const counting: Press = {
    ...press,
    layOutAnew: async (sheet) => {
      laidOut.push(sheet.title);
      try {
        return await press.layOutAnew(sheet);
      } finally {
        done.count += 1;
      }
    },
  };
  let failures = 0;
  const start = headStart(of, deskOf, counting, () => {
    failures += 1;
  });
  return { laidOut, done, start, failures: () => failures };
}

/** Until all that was begun is laid out, and nothing more has been begun for a while; however long a layout takes. */
async function settled({ laidOut, done }: ReturnType<typeof begun>): Promise<void> {
  for (let before = -1; before < done.count || done.count < laidOut.length; ) {
    before = done.count;
    await pause(900);
  }
}

async function bytesOf(desk: ClassDesk | null, part: 'stack' | 'answers' = 'stack'): Promise<Buffer> {
  if (desk === null) throw new Error('no desk');
  const parts: Uint8Array[] = [];
  for await (const some of (await partPrint(desk, part)).bytes) parts.push(some);
  return Buffer.concat(parts);
}

const fresh = await bytesOf(deskOf(press));

describe('a head start', () => {
  test('leaves little to lay out when the stack is asked for, and changes nothing on it', async () => {
    const head = begun();
    const { laidOut, start, failures } = head;
    while (laidOut.length === 0) await pause(20);
    await settled(head);
    const ahead = laidOut.splice(0);
    expect(ahead.filter((title) => title.startsWith('Who is here')).length).toBeGreaterThan(0);
    expect((await bytesOf(start.take('stack'))).equals(fresh)).toBe(true);
    // The contents tell of rows that are only known now, and every plan has a drawing of its own.
    const left = laidOut.filter((title) => !/^(Contents|Plan)/.test(title));
    expect(left).toEqual([]);
    expect(failures()).toBe(0);
  }, 60_000);

  test('goes on with the stack that somebody comes to wait for, and gives the same one', async () => {
    const { laidOut, start } = begun();
    while (laidOut.length === 0) await pause(20);
    expect((await bytesOf(start.take('stack'))).equals(fresh)).toBe(true);
    const once = laidOut.filter((title) => title.startsWith('Safety first'));
    expect(once).toHaveLength(1);
  }, 60_000);

  test('gives way to whoever waits for something else, and to another class', async () => {
    for (const leave of ['take', 'end'] as const) {
      const head = begun();
      const { laidOut, start, failures } = head;
      while (laidOut.length === 0) await pause(20);
      if (leave === 'take') expect(start.take('answers')).toBe(null);
      else start.end();
      const until = laidOut.length;
      await settled(head);
      expect(laidOut.length - until, leave).toBe(0);
      expect(failures()).toBe(1);
    }
  }, 60_000);

  test('is for the same fields, the same file and the same day', () => {
    const { start } = begun();
    start.end();
    expect(start.isFor({ ...of, roster: roster.slice() })).toBe(true);
    expect(start.isFor({ ...of, raw: { ...raw, place: 'elsewhere' } })).toBe(false);
    expect(start.isFor({ ...of, roster: roster.map((byte) => (byte === 65 ? 66 : byte)) })).toBe(false);
    expect(start.isFor({ ...of, roster: null })).toBe(false);
    expect(start.isFor({ ...of, day: '2031-05-05' })).toBe(false);
  });
});
