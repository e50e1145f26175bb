import fc from 'fast-check';
import { expect, it } from 'vitest';
import { lately } from '../../src/paper/lately.ts';

it('what was asked for lately is still known, and what was not is forgotten', () => {
  fc.assert(
    fc.property(
      fc.integer({ min: 1, max: 5 }),
      fc.array(fc.integer({ min: 0, max: 12 }), { maxLength: 60 }),
      (most, names) => {
        const kept = lately<number, string>(most);
        const asked: number[] = [];
        for (const name of names) {
          const others = new Set(asked.slice(asked.lastIndexOf(name) + 1));
          const known = kept.get(name);
          if (asked.includes(name) && others.size < most) expect(known).toBe(`thing ${name}`);
          if (!asked.includes(name) || others.size > 2 * most) expect(known).toBeUndefined();
          if (known === undefined) kept.set(name, `thing ${name}`);
          asked.push(name);
        }
      },
    ),
  );
});

it('another thing takes the place of the one before', () => {
  const kept = lately<string, number>(2);
  kept.set('one', 1);
  kept.set('one', 2);
  expect(kept.get('one')).toBe(2);
});
