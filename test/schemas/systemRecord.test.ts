import fc from 'fast-check';
import { beforeAll, expect, test } from 'vitest';
import type { Content } from '../../src/schemas/content.ts';
import { readContent } from '../../src/schemas/readContent.ts';
import { readRecord, writeRecord } from '../../src/schemas/systemRecord.ts';
import { toSystem } from '../../src/schemas/toSystem.ts';
import { realContent } from './contentFolder.ts';

let content: Content;
beforeAll(async () => {
  ({ content } = await readContent(realContent));
});

function reopened(text: string) {
  const record = readRecord(text);
  if ('problems' in record) throw new Error('the record did not open');
  return toSystem(record.raw, content);
}

test('every system comes back from its record as it was', () => {
  for (const { raw, system } of content.systems) {
    expect(reopened(writeRecord(raw))).toEqual({ raw, system });
  }
});

test('the same system gives the same text, whatever the order it was written in', () => {
  const [first] = content.systems;
  if (!first) throw new Error('there are no systems');
  const turned = Object.fromEntries(Object.entries(first.raw).reverse()) as typeof first.raw;
  expect(writeRecord(turned)).toBe(writeRecord(first.raw));
  expect(writeRecord(first.raw).startsWith('{"bedfirst":1,"system":{')).toBe(true);
});

test('a record of a newer version is refused with its number', () => {
  expect(readRecord('{"bedfirst":2,"system":{}}')).toEqual({
    problems: [{ code: 'recordNewer', place: [], given: '2', max: 1 }],
  });
});

test('anything else is refused without a crash', () => {
  const notOurs = { problems: [{ code: 'notRecord', place: [] }] };
  for (const text of [
    '',
    '{',
    'null',
    '[]',
    '{"bedfirst":1}',
    '{"bedfirst":"1","system":{}}',
    '['.repeat(100_000),
  ]) {
    expect(readRecord(text)).toEqual(notOurs);
  }
});

test('a record changed by anybody opens, or says what is wrong, and never throws', () => {
  fc.assert(
    fc.property(fc.json(), (json) => {
      const record = readRecord(`{"bedfirst":1,"system":${json}}`);
      if ('problems' in record) return true;
      return 'problems' in toSystem(record.raw, content);
    }),
    { seed: 20311, numRuns: 500 },
  );
});
