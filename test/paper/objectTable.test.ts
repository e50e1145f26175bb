import fc from 'fast-check';
import { expect, it } from 'vitest';
import { type Found, objectTable } from '../../src/paper/objectTable.ts';

const found: fc.Arbitrary<Found> = fc.record({
  kind: fc.constantFrom(1 as const, 2 as const),
  at: fc.oneof(fc.integer({ min: 0, max: 3 }), fc.integer({ min: 0, max: 0xffffffff })),
  index: fc.oneof(fc.integer({ min: 0, max: 3 }), fc.integer({ min: 0, max: 0xffff })),
});

/** Numbers mostly one after the other, as the objects of a page are. */
const next = fc.constantFrom('behind', 'elsewhere', 'own');
const told = fc.array(fc.tuple(fc.constantFrom(0, 0, 0, 1, 3), found, next), { maxLength: 80 });

it('gives back every object where it was noted, as a reader takes the rows (ISO 32000-1, 7.5.8; predictor "up")', () => {
  fc.assert(
    fc.property(told, (steps) => {
      const table = objectTable();
      const noted = new Map<number, Found>();
      let [number, before] = [0, null as Found | null];
      for (const [skipped, own, where] of steps) {
        number += 1 + skipped;
        // Packed right behind the one before, as most are; or as far back in another stream.
        const at = ((before?.at ?? 0) + (where === 'elsewhere' ? 1 : 0)) % 0x100000000;
        const place: Found =
          where === 'own' || before === null ? own : { ...before, at, index: (before.index + 1) % 0x10000 };
        table.set(number, place);
        noted.set(number, place);
        before = place;
      }
      const rows = read(table.bytes(number + 1), number + 1);
      expect(rows[0]).toEqual({ kind: 0, at: 0, index: 0xffff });
      for (const [of, one] of noted) expect(rows[of]).toEqual(one);
      for (let of = 1; of <= number; of += 1) if (!noted.has(of)) expect(rows[of]?.kind).toBe(0);
    }),
  );
});

function read(bytes: Uint8Array, count: number) {
  const above = new Uint8Array(7);
  return Array.from({ length: count }, (_, row) => {
    expect(bytes[row * 8]).toBe(2);
    for (let column = 0; column < 7; column += 1)
      above[column] = (above[column] ?? 0) + (bytes[row * 8 + 1 + column] ?? 0);
    const view = new DataView(above.buffer);
    return { kind: view.getUint8(0), at: view.getUint32(1), index: view.getUint16(5) };
  });
}
