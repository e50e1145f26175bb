import { expect, test } from 'vitest';
import { nodePress } from '../../src/paper/node.ts';
import { printable } from '../../src/print/printWorkshop.ts';
import { readContent } from '../../src/schemas/readContent.ts';

test('a name that cannot be printed stops a workshop with its line, or is left out where that is wished', async () => {
  const { content } = await readContent('content');
  const [of] = content.workshops;
  const [first, ...others] = of?.people ?? [];
  if (of === undefined || first === undefined) throw new Error('no workshop');
  const words = { catalogue: content.wording['en'] ?? {}, terms: content.terms, sources: content.sources };
  const people = [{ ...first, name: 'Ada \u{13000}' }, ...others];
  const press = await nodePress();
  const stop = { ...of, raw: { ...of.raw, badRows: 'stop' as const }, people };
  await expect(printable(stop, words, press)).rejects.toThrow(`${of.roster.file}:${first.line}:`);
  const skip = { ...stop, raw: { ...of.raw, badRows: 'skip' as const } };
  const fine = await printable(skip, words, press);
  expect(fine.people).toEqual(others);
  expect(fine.skipped.map(({ at }) => at?.line)).toEqual([first.line]);
});
