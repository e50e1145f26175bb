/** Where plants stand: laws of the places, and the templates of whole systems. */
import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { bedRim_mm } from '../../src/core/crops/bedRim.ts';
import { type BedOutline, placesIn, plantPlaces_mm } from '../../src/core/crops/places.ts';
import { bedTemplates } from '../../src/core/plan/plantingTemplate.ts';
import { planOf } from '../../src/core/plan/planOf.ts';
import type { System } from '../../src/core/system.ts';
import { content } from '../demoSystems.ts';
import { systems } from '../systemArbitrary.ts';

const outlines = fc
  .record({
    form: fc.constantFrom('box' as const, 'ellipse' as const, 'obround' as const),
    length_mm: fc.double({ min: 100, max: 2500, noNaN: true }),
    share: fc.double({ min: 0.1, max: 1, noNaN: true }),
  })
  .map(({ form, length_mm, share }): BedOutline => ({ form, length_mm, width_mm: length_mm * share }));

const planted = fc.record({
  bed: outlines,
  spacing_mm: fc.double({ min: 60, max: 500, noNaN: true }),
  edge_mm: fc.double({ min: 0, max: 250, noNaN: true }),
  rows: fc.constantFrom('square' as const, 'offset' as const),
});

/** How far outside an outline a place lies, as a share of it; 0 or less is inside. */
function outside({ form, length_mm, width_mm }: BedOutline, along_mm: number, across_mm: number): number {
  const [a, b] = [length_mm / 2, width_mm / 2];
  if (form === 'box') return Math.max(Math.abs(along_mm) - a, Math.abs(across_mm) - b);
  if (form === 'ellipse') {
    if (a === 0 || b === 0) return Math.max(Math.abs(along_mm) - a, Math.abs(across_mm) - b);
    return Math.hypot(along_mm / a, across_mm / b) - 1;
  }
  return Math.hypot(Math.max(0, Math.abs(along_mm) - (a - b)), across_mm) - b;
}

describe('the places of plants', () => {
  test('are as many as are counted, apart by the spacing, and the margin away from the wall', () => {
    fc.assert(
      fc.property(planted, ({ bed, spacing_mm, edge_mm, rows }) => {
        const places = plantPlaces_mm(bed, spacing_mm, edge_mm, rows);
        expect(places).toHaveLength(placesIn(bed, spacing_mm, edge_mm, rows));
        const inner = {
          ...bed,
          length_mm: bed.length_mm - 2 * edge_mm,
          width_mm: bed.width_mm - 2 * edge_mm,
        };
        for (const [index, one] of places.entries()) {
          expect(outside(inner, one.along_mm, one.across_mm)).toBeLessThan(1e-5);
          for (const other of places.slice(index + 1)) {
            const apart_mm = Math.hypot(one.along_mm - other.along_mm, one.across_mm - other.across_mm);
            expect(apart_mm).toBeGreaterThan(spacing_mm - 1e-5);
          }
        }
      }),
      { numRuns: 150 },
    );
  });

  test('of a square bed of 1 m at 200 mm stand where a tape would put them', () => {
    const bed = { form: 'box', length_mm: 1000, width_mm: 1000 } as const;
    const places = plantPlaces_mm(bed, 200, 100, 'square');
    const sorted = places
      .map(({ along_mm, across_mm }) => `${Math.round(along_mm)} ${Math.round(across_mm)}`)
      .sort();
    const wanted = [-400, -200, 0, 200, 400].flatMap((x) =>
      [-400, -200, 0, 200, 400].map((y) => `${x} ${y}`),
    );
    expect(sorted).toEqual(wanted.sort());
  });

  test('are none in a bed narrower than its margins', () => {
    expect(plantPlaces_mm({ form: 'box', length_mm: 1000, width_mm: 150 }, 200, 100, 'offset')).toEqual([]);
  });
});

describe('the rim of a bed', () => {
  test('follows its form to a tenth of a millimetre', () => {
    fc.assert(
      fc.property(outlines, (bed) => {
        const rim = bedRim_mm(bed);
        const scale = bed.form === 'ellipse' ? Math.max(bed.length_mm, bed.width_mm) / 2 : 1;
        for (const [index, one] of rim.entries()) {
          expect(Math.abs(outside(bed, one.along_mm, one.across_mm)) * scale).toBeLessThan(0.01);
          if (bed.form === 'box') continue;
          const next = rim[(index + 1) % rim.length] ?? one;
          const middle = [(one.along_mm + next.along_mm) / 2, (one.across_mm + next.across_mm) / 2] as const;
          expect(Math.abs(outside(bed, ...middle)) * scale).toBeLessThan(0.1);
        }
        const reach = (key: 'along_mm' | 'across_mm') => Math.max(...rim.map((one) => one[key]));
        expect(Math.abs(reach('along_mm') - bed.length_mm / 2)).toBeLessThan(0.1);
        expect(Math.abs(reach('across_mm') - bed.width_mm / 2)).toBeLessThan(0.1);
      }),
    );
  });
});

describe('the templates of a system', () => {
  function agrees(system: System): void {
    const { figures } = planOf(system);
    const templates = bedTemplates(system);
    for (const [index, bed] of system.beds.entries()) {
      const of = templates.find(({ number }) => number === index + 1);
      const [square, offset] = ['placesSquare', 'placesOffset'].map(
        (key) => figures[`bed${index + 1}.${key}`]?.value ?? 0,
      );
      expect((of?.count ?? 0) * bed.count).toBe(Math.max(square ?? 0, offset ?? 0));
      expect(of?.places.length ?? 0).toBe(of?.count ?? 0);
      if (of !== undefined) expect(of.rows).toBe((offset ?? 0) > (square ?? 0) ? 'offset' : 'square');
    }
  }

  test('hold as many plants as the plan counts', () => {
    for (const { system } of content.systems) agrees(system);
    fc.assert(fc.property(systems(), agrees), { numRuns: 100 });
  });

  test('leave out beds of which only the litres are known', () => {
    const tubs = content.systems.find(({ id }) => id === 'two-bathtubs')?.system;
    expect(tubs && bedTemplates(tubs)).toEqual([]);
  });
});
