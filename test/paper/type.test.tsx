import { Blob, Face as FontFace, Font } from 'harfbuzzjs';
import fc from 'fast-check';
import { beforeAll, describe, expect, it } from 'vitest';
import { CoverError } from '../../src/paper/cover.ts';
import type { Face, Run } from '../../src/paper/face.ts';
import { type Engine, layOut } from '../../src/paper/layOut.ts';
import { fromPairs } from '../../src/paper/knownPairs.ts';
import { lettersOf } from '../../src/paper/letters.ts';
import { nodeParts, type Parts } from '../../src/paper/node.ts';
import { graphemesOf, isPlain, shapeRun } from '../../src/paper/shape.ts';
import { subsetFont } from '../../src/paper/subset.ts';
import { typeFrom } from '../../src/paper/type.ts';
import { tablesOf } from '../../src/paper/woff.ts';
import { denseSheet } from './denseSheet.tsx';
import { namesSheet } from './namesSheet.tsx';
import { oneBox } from './oneBox.tsx';
import { scriptNames } from './scriptNames.ts';

let parts: Parts;
beforeAll(async () => {
  parts = await nodeParts();
});

/** The fonts a text is set in, in order, each with what is set in it. */
function fontsOf(text: string): string[][] {
  const textOf = (glyphs: readonly { text: string }[]) => glyphs.map((glyph) => glyph.text).join('');
  return parts.types.type.shape(text, 'text').map((run) => [run.face.name, textOf(run.glyphs)]);
}

/** Without all that a face holds, which would be told in full where two differ. */
function glyphsOf(runs: readonly Run[]) {
  return runs.map(({ face, direction, glyphs }) => ({ face: face.index, direction, glyphs }));
}

async function refusedIn(text: string): Promise<CoverError> {
  try {
    await layOut(oneBox(text), parts.types, parts.engine);
  } catch (error) {
    if (error instanceof CoverError) return error;
    throw error;
  }
  throw new Error('Nothing was refused.');
}

describe('the type case', () => {
  it('has every accent, Greek, Cyrillic and the signs of sums', () => {
    const texts = [
      'Łódź Ångström Đặng ñ ç ß Þ ğ ő ș ẽ',
      'Ελληνικά ἀρχή',
      'Кириллица Ґ Ә',
      '½ ¼ ² ³ × ÷ ± − ° · – — … “ ” ‘ ’ № π',
    ];
    expect(() =>
      parts.types.type.mustCover([...texts, 'H₂O NO₃ ≤ ≥ ≈ √2 ∞ ≠', '\u00a0\u2009\u202f']),
    ).not.toThrow();
  });

  it('puts words together from pairs of letters as the shaper sets them', () => {
    const faces = parts.types.type.faces.filter(({ kerning }) => kerning === 'pairs');
    expect(faces).toHaveLength(4);
    for (const face of faces) {
      const all = Array.from({ length: 0x24f }, (_, code) => String.fromCharCode(code));
      const signs = all.filter((sign) => isPlain(sign) && face.has(sign.charCodeAt(0)));
      const letters = signs.filter((sign) => /[ -~]/.test(sign));
      // Every pair is learned once, and so no word is asked of the shaper any more.
      for (const one of signs) for (const next of signs) shapeRun(face, one + next, 'ltr');
      const sign = fc.oneof(
        fc.constantFrom(...signs),
        fc.constantFrom(...(letters.length ? letters : signs)),
      );
      // Of a face whose letters hang on all around them, the shaper is asked for every word.
      const asked: Face = Object.create(face, { kerning: { value: 'all around' } });
      const words = fc.array(sign, { minLength: 1, maxLength: 12 }).map((some) => some.join(''));
      fc.assert(
        fc.property(words, (text) => {
          expect(fromPairs(face, text)).toEqual(shapeRun(asked, text, 'ltr'));
        }),
        { numRuns: 2_000 },
      );
    }
  });

  it('takes each letter from the first font that has it, and a space from the font before it', () => {
    const [latin, latinExt] = ['atkinson-hyperlegible-next-latin', 'atkinson-hyperlegible-next-latin-ext'];
    const [cyrillic, greek] = ['noto-sans-cyrillic', 'noto-sans-greek'];
    expect(fontsOf('Water, 2½ L')).toEqual([[latin, 'Water, 2½ L']]);
    expect(fontsOf('Łódź ok')).toEqual([
      [latinExt, 'Ł'],
      [latin, 'ód'],
      [latinExt, 'ź '],
      [latin, 'ok'],
    ]);
    expect(fontsOf('нора λ, a')).toEqual([
      [cyrillic, 'нора '],
      [greek, 'λ'],
      [latin, ', a'],
    ]);
    expect(fontsOf('≥ 2')).toEqual([
      ['open-sans-math', '≥ '],
      [latin, '2'],
    ]);
  });

  it('kerns: "AV" is narrower than its letters', () => {
    const { width } = parts.types.type;
    expect(width('AV', 'text', 100)).toBeLessThan(width('A', 'text', 100) + width('V', 'text', 100) - 1);
  });

  it('gives the text of a letter once, also where it is made of two signs', () => {
    for (const text of ['Water ½', 'вода\u0301 1', 'Đặng']) {
      const glyphs = parts.types.type.shape(text, 'heavy').flatMap((run) => run.glyphs);
      expect(glyphs.map((glyph) => glyph.text).join('')).toBe(text);
    }
  });
});

describe('a character that no font has', () => {
  it('is named with its code point and its text, and all at once', async () => {
    const error = await refusedIn('Welcome თევზი 🐟 to ዓሣ and ✓');
    expect(error.uncovered.map(({ character, codePoint }) => `${character} ${codePoint}`)).toEqual([
      'თ U+10D7',
      'ე U+10D4',
      'ვ U+10D5',
      'ზ U+10D6',
      'ი U+10D8',
      '🐟 U+1F41F',
      'ዓ U+12D3',
      'ሣ U+1223',
      '✓ U+2713',
    ]);
    expect(error.uncovered[0]?.standsIn).toBe('Welcome თევზი 🐟 to ዓሣ and ✓');
    expect(error.message).toContain('"თ" (U+10D7), in "Welcome');
  });

  it('is named once, wherever it stands in the sheet', async () => {
    const error = await refusedIn('თ თ ე');
    expect(error.uncovered).toHaveLength(2);
  });

  it.each([
    ['half a surrogate pair', '\ud83d', 'U+FFFD'],
    ['a mark that its letter is not made with', 'q\u20dd', 'U+20DD'],
    ['a letter beyond the basic plane', '\u{10400}', 'U+10400'],
    ['a private sign', '\ue000', 'U+E000'],
    ['a letter that its script does not have', 'דג\u05c9', 'U+05C9'],
    ['a Chinese sign beyond the basic plane', '魚\u{20bb7}', 'U+20BB7'],
    ['a sign that neither of its three scripts draws', '\u9fff', 'U+9FFF'],
  ])('is refused too as %s', async (_, text, codePoint) => {
    const error = await refusedIn(text);
    expect(error.uncovered.map((each) => each.codePoint)).toEqual([codePoint]);
  });
});

describe('a subset of a font', () => {
  it('draws the glyphs it was asked for, in order, with the same outlines and widths', () => {
    const face = parts.types.type.faces.find((each) => each.name === 'noto-sans-latin-ext');
    if (!face) throw new Error('There is no such font.');
    // Among them are glyphs composed of a letter and an accent.
    const wanted = parts.types.type
      .shape('ŐőŠšẼǺ', 'text')
      .flatMap((run) => run.glyphs.map((glyph) => glyph.id));
    const glyphs = [...new Set([...wanted, ...Array.from({ length: 300 }, (_, at) => at + 1)])];
    const file = subsetFont(face, [...glyphs, glyphs[0] ?? 0]);
    const font = new Font(new FontFace(new Blob(file)));
    for (const [at, glyph] of glyphs.entries()) {
      expect(font.glyphToPath(at + 1)).toBe(face.font.glyphToPath(glyph));
      expect(font.glyphHAdvance(at + 1)).toBe(face.font.glyphHAdvance(glyph));
    }
    expect(font.glyphToPath(glyphs.length + 1)).toBe(face.font.glyphToPath(glyphs[0] ?? 0));
  });

  it('composes a letter of its glyphs, each at its place', async () => {
    const type = await parts.types.typeFor(['شَ']);
    const [run] = type.shape('شَ', 'text');
    if (!run) throw new Error('Nothing was shaped.');
    const [letter, ...more] = lettersOf(run);
    expect(more).toEqual([]);
    if (!letter?.parts) throw new Error('The letter has one glyph.');
    expect(letter.parts.parts.length).toBeGreaterThan(1);
    const font = new Font(new FontFace(new Blob(subsetFont(run.face, [letter.parts]))));
    expect(font.glyphHAdvance(1)).toBe(letter.parts.advance);
    const moved = letter.parts.parts.map(({ glyph, right, up }) => {
      return run.face.font.glyphToPath(glyph).replace(/(-?[\d.]+),(-?[\d.]+)/g, (_, x, y) => {
        return `${Number(x) + right},${Number(y) + up}`;
      });
    });
    expect(font.glyphToPath(1)).toBe(moved.join(''));
  });

  it('is small, and sums up to what its head table says', () => {
    const [face] = parts.types.type.faces;
    if (!face) throw new Error('There is no font.');
    const file = subsetFont(face, [5, 6, 7]);
    expect(file.length).toBeLessThan(face.sfnt.length / 4);
    const view = new DataView(file.buffer);
    let sum = 0;
    for (let at = 0; at < file.length; at += 4) sum = (sum + view.getUint32(at)) >>> 0;
    // OpenType, head table: the whole file sums up to this number.
    expect(sum).toBe(0xb1b0afba);
    expect([...tablesOf(file).keys()]).toEqual([...tablesOf(file).keys()].sort());
  });
});

describe('what is left away to be faster', () => {
  it('does not change a layout: the engine gets only the fonts that a sheet has letters of', async () => {
    const { types, engine } = parts;
    const everyFont: Engine = (tree, options) => {
      const type = types.typeOf({ packs: fontsGiven.packs });
      const fonts = type.faces.map(({ name, weight, sfnt }) => {
        return { name, weight: weight === 'heavy' ? (800 as const) : (400 as const), data: sfnt.buffer };
      });
      expect(options.fonts.length).toBeLessThan(fonts.length);
      return engine(tree, { ...options, fonts });
    };
    const fontsGiven = { packs: [] as readonly string[] };
    for (const sheet of [denseSheet(), namesSheet(), oneBox('Łódź 12 m² √2 ≥ 1\u2003№')]) {
      const page = await layOut(sheet, types, engine);
      fontsGiven.packs = page.packs;
      expect(await layOut(sheet, types, everyFont)).toEqual(page);
    }
  });

  it('does not change a grapheme', () => {
    const letters = fc.oneof(
      fc.integer({ min: 0x20, max: 0x24f }).map((code) => String.fromCharCode(code)),
      fc.constantFrom('\u0301', '\u200d', '\r', '\n', 'ন', 'ি', '한', '🐟'),
    );
    const segmenter = new Intl.Segmenter('en', { granularity: 'grapheme' });
    fc.assert(
      fc.property(fc.string({ unit: letters, maxLength: 12 }), (text) => {
        const segments = Array.from(segmenter.segment(text), ({ segment }) => segment);
        expect([...graphemesOf(text)]).toEqual(segments);
      }),
      { numRuns: 5000 },
    );
  });

  it('does not change a word: what the fonts of every sheet can set is set alike beside other scripts', async () => {
    const { types } = parts;
    const units = fc.constantFrom(...'AVTo fi1234567890.,°²×\u00a0éŁßЖщΩή\u0301م১한');
    for (const { name } of scriptNames) {
      const { faces, packs, bidi, shape, width } = await types.typeFor([name]);
      const alone = typeFrom(faces, { packs, bidi, usual: null });
      fc.assert(
        fc.property(
          fc.string({ unit: units, maxLength: 12 }),
          fc.constantFrom('text', 'heavy'),
          (text, weight) => {
            expect(glyphsOf(shape(text, weight))).toEqual(glyphsOf(alone.shape(text, weight)));
            expect(width(text, weight, 11)).toBe(alone.width(text, weight, 11));
          },
        ),
      );
    }
  });
});
