import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { type BedOutline, placesIn } from '../../src/core/crops/places.ts';

const outlines: fc.Arbitrary<BedOutline> = fc
  .record({
    form: fc.constantFrom('box', 'ellipse', 'obround'),
    length_mm: fc.integer({ min: 100, max: 3000 }),
    width_mm: fc.integer({ min: 100, max: 3000 }),
  })
  .map((one) => ({ ...one, length_mm: Math.max(one.length_mm, one.width_mm) }));
const spacings = fc.integer({ min: 50, max: 600 });
const rows = fc.constantFrom('square', 'offset');

/** Every grid moved to every place within one spacing: slow, and right. */
function byTrying(bed: BedOutline, spacing_mm: number, edge_mm: number): number {
  const half = { x: bed.length_mm / 2 - edge_mm, y: bed.width_mm / 2 - edge_mm };
  const fits = (x: number, y: number): boolean => {
    if (Math.abs(y) > half.y + 1e-6 || Math.abs(x) > half.x + 1e-6) return false;
    if (bed.form === 'box') return true;
    if (bed.form === 'ellipse') return (x / half.x) ** 2 + (y / half.y) ** 2 <= 1 + 1e-6;
    return Math.hypot(Math.max(0, Math.abs(x) - half.x + half.y), y) <= half.y + 1e-6;
  };
  let best = 0;
  for (let i = 0; i < 20; i += 1) {
    for (let j = 0; j < 20; j += 1) {
      let count = 0;
      for (let x = -half.x - spacing_mm + (i / 20) * spacing_mm; x <= half.x + 1; x += spacing_mm) {
        for (let y = -half.y - spacing_mm + (j / 20) * spacing_mm; y <= half.y + 1; y += spacing_mm) {
          if (fits(x, y)) count += 1;
        }
      }
      best = Math.max(best, count);
    }
  }
  return best;
}

describe('places for plants', () => {
  test('in a bed of a metre by a metre: 25 in squares, and offset rows hold fewer', () => {
    const bed = { form: 'box', length_mm: 1000, width_mm: 1000 } as const;
    expect(placesIn(bed, 200, 100, 'square')).toBe(25);
    expect(placesIn(bed, 200, 100, 'offset')).toBe(23);
  });

  test('in a large bed offset rows hold more', () => {
    const bed = { form: 'box', length_mm: 5000, width_mm: 5000 } as const;
    expect(placesIn(bed, 200, 100, 'offset')).toBeGreaterThan(placesIn(bed, 200, 100, 'square'));
  });

  test('in square rows of a bed with corners are as many as trying finds', () => {
    fc.assert(
      fc.property(outlines, fc.integer({ min: 150, max: 600 }), (outline, spacing_mm) => {
        const bed = { ...outline, form: 'box' } as const;
        const found = placesIn(bed, spacing_mm, spacing_mm / 2, 'square');
        expect(found).toBeGreaterThanOrEqual(byTrying(bed, spacing_mm, spacing_mm / 2));
        const most = Math.floor(bed.length_mm / spacing_mm) * Math.floor(bed.width_mm / spacing_mm);
        expect(found).toBe(Math.max(0, most));
      }),
      { numRuns: 40 },
    );
  });

  test('in round beds are within a tenth, or two plants, of what trying finds', () => {
    fc.assert(
      fc.property(outlines, fc.integer({ min: 150, max: 600 }), (bed, spacing_mm) => {
        const found = placesIn(bed, spacing_mm, spacing_mm / 2, 'square');
        const tried = byTrying(bed, spacing_mm, spacing_mm / 2);
        expect(found).toBeGreaterThanOrEqual(Math.min(tried - 2, tried * 0.9));
      }),
      { numRuns: 40 },
    );
  });

  test('never shrink in a wider or longer box', () => {
    fc.assert(
      fc.property(
        outlines,
        spacings,
        rows,
        fc.integer({ min: 0, max: 500 }),
        (outline, spacing, kind, more) => {
          const bed = { ...outline, form: 'box' } as const;
          const places = placesIn(bed, spacing, 50, kind);
          expect(
            placesIn({ ...bed, width_mm: bed.width_mm + more }, spacing, 50, kind),
          ).toBeGreaterThanOrEqual(places);
          expect(
            placesIn({ ...bed, length_mm: bed.length_mm + more }, spacing, 50, kind),
          ).toBeGreaterThanOrEqual(places);
        },
      ),
    );
  });

  test('leave each plant its room: never more than the area with its margin holds', () => {
    fc.assert(
      fc.property(outlines, spacings, rows, (bed, spacing_mm, kind) => {
        const room_mm2 = kind === 'square' ? spacing_mm ** 2 : (spacing_mm ** 2 * Math.sqrt(3)) / 2;
        const around = (bed.length_mm + spacing_mm) * (bed.width_mm + spacing_mm);
        expect(placesIn(bed, spacing_mm, 0, kind)).toBeLessThanOrEqual(around / room_mm2 + 1e-9);
      }),
    );
  });

  test('are none where the margins meet, and refuse what is no spacing', () => {
    const bed = { form: 'ellipse', length_mm: 300, width_mm: 180 } as const;
    expect(placesIn(bed, 100, 100, 'square')).toBe(0);
    expect(() => placesIn(bed, 0, 10, 'square')).toThrow(RangeError);
  });
});
