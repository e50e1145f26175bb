import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { md5 } from '../../src/paper/md5.ts';
import { mm, paperSizes, pt, thousandth } from '../../src/paper/measures.ts';
import { readInk } from '../../src/paper/paint.ts';
import { combine, ellipsePath, place, placePath, pointsPath, rectanglePath } from '../../src/paper/path.ts';
import { readPathData } from '../../src/paper/pathData.ts';
import { pdfNumber } from '../../src/paper/pdfText.ts';
import { readTransform } from '../../src/paper/transform.ts';
import { escapeXml, readXml } from '../../src/paper/xml.ts';

describe('the measures of a sheet', () => {
  it('are tenths of a millimetre', () => {
    expect(mm(5)).toBe(50);
    // 1 pt is 1/72 in and 1 in is 25.4 mm: exact by definition.
    expect(pt(72)).toBeCloseTo(254, 10);
    expect(pt(11)).toBeCloseTo(38.8056, 4);
  });

  it('know the papers', () => {
    // ISO 216 gives A4 as 210 x 297 mm; Letter is 8.5 x 11 in by ANSI/ASME Y14.1.
    expect(paperSizes.A4).toEqual({ width_mm: 210, height_mm: 297 });
    expect(paperSizes.Letter.width_mm).toBeCloseTo(8.5 * 25.4, 10);
    expect(paperSizes.Letter.height_mm).toBeCloseTo(11 * 25.4, 10);
  });

  it('are written without exponents and without a negative zero', () => {
    expect([1e-7, -1e-7, 0.0005, 123456.7891, -0].map(pdfNumber)).toEqual([
      '0',
      '0',
      '0.001',
      '123456.789',
      '0',
    ]);
    expect(Object.is(thousandth(-0.0001), 0)).toBe(true);
  });
});

describe('path data', () => {
  it('is read with every command, absolute and relative', () => {
    expect(readPathData('M1 2L3 4h5v-6l1,1H0V0z')).toEqual([
      ['M', 1, 2],
      ['L', 3, 4],
      ['L', 8, 4],
      ['L', 8, -2],
      ['L', 9, -1],
      ['L', 0, -1],
      ['L', 0, 0],
      ['Z'],
    ]);
    expect(readPathData('m1 1 2 2m3 3-1-1')).toEqual([
      ['M', 1, 1],
      ['L', 3, 3],
      ['M', 6, 6],
      ['L', 5, 5],
    ]);
    expect(readPathData('M0 0c1 1 2 2 3 3s1 1 2 2')).toEqual([
      ['M', 0, 0],
      ['C', 1, 1, 2, 2, 3, 3],
      ['C', 4, 4, 4, 4, 5, 5],
    ]);
    expect(readPathData('M.5.5-1e1.5')).toEqual([
      ['M', 0.5, 0.5],
      ['L', -10, 0.5],
    ]);
  });

  it('turns quadratic curves into cubic ones that run alike', () => {
    const [, curve] = readPathData('M0 0Q3 6 6 0');
    expect(curve).toEqual(['C', 2, 4, 4, 4, 6, 0]);
    const [, , next] = readPathData('M0 0Q3 6 6 0T12 0');
    expect(next).toEqual(['C', 8, -4, 10, -4, 12, 0]);
  });

  it('turns arcs into curves that stay on the circle', () => {
    const radius = fc.double({ min: 0.5, max: 500, noNaN: true });
    const angle = fc.double({ min: 0.05, max: 6.2, noNaN: true });
    fc.assert(
      fc.property(radius, angle, angle, (r, start, turn) => {
        const at = (a: number) => `${r * Math.cos(a)} ${r * Math.sin(a)}`;
        const arc = `M${at(start)}A${r} ${r} 0 ${turn > Math.PI ? 1 : 0} 1 ${at(start + turn)}`;
        const [, ...curves] = readPathData(arc);
        expect(curves).toHaveLength(Math.ceil(turn / (Math.PI / 2) - 1e-6));
        let [x, y] = [r * Math.cos(start), r * Math.sin(start)];
        for (const curve of curves) {
          if (curve[0] !== 'C') throw new Error('An arc is made of curves.');
          const [, x1, y1, x2, y2, endX, endY] = curve;
          const middle = [(x + 3 * x1 + 3 * x2 + endX) / 8, (y + 3 * y1 + 3 * y2 + endY) / 8] as const;
          expect(Math.hypot(...middle) / r).toBeCloseTo(1, 3);
          [x, y] = [endX, endY];
        }
        expect(x).toBeCloseTo(r * Math.cos(start + turn), 6);
        expect(y).toBeCloseTo(r * Math.sin(start + turn), 6);
      }),
    );
  });

  it('reads an arc whose flags touch the next number, and one without a radius as a line', () => {
    expect(readPathData('M0 0a5 5 0 0110 0')).toHaveLength(3);
    expect(readPathData('M0 0A0 0 0 0 1 5 5')).toEqual([
      ['M', 0, 0],
      ['L', 5, 5],
    ]);
  });

  it.each(['M0', 'M0 0 X5', 'L', 'M0 0 A1 1 0 2 0 5 5', 'M 0 0 L 1 nan'])('is refused as %s', (source) => {
    expect(() => readPathData(source)).toThrow(/cannot be read/);
  });
});

describe('shapes', () => {
  it('are rectangles, round if they shall be, ellipses and polygons', () => {
    const square = { x: 0, y: 0, width: 10, height: 10 };
    expect(rectanglePath(square)).toHaveLength(5);
    expect(rectanglePath(square, 2)).toHaveLength(10);
    // Radii are at most half of the sides.
    expect(rectanglePath(square, 50)[0]).toEqual(['M', 5, 0]);
    expect(ellipsePath(0, 0, 2, 1)[0]).toEqual(['M', 2, 0]);
    expect(pointsPath('0,0 1 1, 2,0', [['Z']])).toHaveLength(4);
    expect(() => pointsPath('0,0 1', [])).toThrow(/points cannot be read/);
  });

  it('move with a matrix', () => {
    const matrix = readTransform('translate(10 20) rotate(90) scale(2)');
    const [x, y] = place(matrix, 1, 0);
    expect([thousandth(x), thousandth(y)]).toEqual([10, 22]);
    expect(placePath([['M', 1, 0], ['Z']], matrix)).toEqual([['M', 10, 22], ['Z']]);
    expect(combine([1, 0, 0, 1, 5, 5], [2, 0, 0, 2, 1, 1])).toEqual([2, 0, 0, 2, 6, 6]);
    expect(place(readTransform('rotate(180 5 5)'), 0, 0).map(thousandth)).toEqual([10, 10]);
    expect(() => readTransform('skewX(3)')).toThrow('skewX');
    expect(() => readTransform('matrix(1 2 3)')).toThrow('matrix');
  });
});

describe('inks', () => {
  it('are read in each way of writing them', () => {
    const blue = { red: 16, green: 32, blue: 48, alpha_frac: 1 };
    expect(['#102030', '#102030ff', 'rgb(16, 32, 48)', 'rgba(16 32 48 / 100%)'].map(readInk)).toEqual([
      blue,
      blue,
      blue,
      blue,
    ]);
    expect(readInk('#fff')).toEqual({ red: 255, green: 255, blue: 255, alpha_frac: 1 });
    expect(readInk('black')).toEqual({ red: 0, green: 0, blue: 0, alpha_frac: 1 });
    expect(['none', 'transparent', '#00000000', 'rgba(1,2,3,0)'].map(readInk)).toEqual([
      null,
      null,
      null,
      null,
    ]);
    expect(() => readInk('hotpink')).toThrow('no ink "hotpink"');
  });
});

describe('markup', () => {
  it('comes back as it was escaped', () => {
    fc.assert(
      fc.property(fc.string({ unit: 'binary' }), fc.string(), (text, value) => {
        const legal = (given: string) =>
          given.replace(/(?![\t\n\r])\p{Cc}|[\ufffe\uffff]|\p{Surrogate}/gu, '');
        const mark = readXml(`<a b="${escapeXml(value)}">${escapeXml(text)}<c/></a>`);
        expect(mark.text).toBe(legal(text));
        expect(mark.attributes.get('b')).toBe(legal(value));
        expect(mark.children).toHaveLength(1);
      }),
    );
  });

  it.each(['<a>', '<a></b>', '<a', '</a>', '', 'text', '<a b=c/>'])('is refused as %s', (source) => {
    expect(() => readXml(source)).toThrow(/Markup/);
  });
});

describe('the checksum of an attachment', () => {
  // RFC 1321 (Rivest, 1992), appendix A.5, test suite.
  it.each([
    ['', 'd41d8cd98f00b204e9800998ecf8427e'],
    ['a', '0cc175b9c0f1b6a831c399e269772661'],
    ['message digest', 'f96b697d7cb7938d525a2f31aaf161d0'],
    ['abcdefghijklmnopqrstuvwxyz', 'c3fcd3d76192e4007dfb496cca67e13b'],
    [
      '12345678901234567890123456789012345678901234567890123456789012345678901234567890',
      '57edf4a22be3c955ac49da2e2107b67a',
    ],
  ])('of "%s" is the one the standard gives', (text, digest) => {
    expect(Buffer.from(md5(new TextEncoder().encode(text))).toString('hex')).toBe(digest);
  });
});
