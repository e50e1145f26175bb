import { readFile } from 'node:fs/promises';
import { createRequire } from 'node:module';
import { describe, expect, it } from 'vitest';
import { fontSources } from '../../src/paper/fonts.ts';
import { nodePress } from '../../src/paper/node.ts';
import { eastAsianFamilies, packFile, packNamed, slicePacks, wholePacks } from '../../src/paper/packs.ts';
import { typeCase } from '../../src/paper/typeCase.ts';
import { denseSheet } from './denseSheet.tsx';
import { namesSheet } from './namesSheet.tsx';
import { printOf } from './prints.ts';

const packages = createRequire(import.meta.url);

/** A type case that writes down what is taken off the shelf. */
async function watchedCase() {
  const files = await Promise.all(
    fontSources.map(async ({ file, ...font }) => ({ ...font, woff: await readFile(packages.resolve(file)) })),
  );
  const taken: string[] = [];
  const types = typeCase(files, {
    woff: (pack, weight) => {
      taken.push(`${pack.name} ${weight}`);
      return readFile(packages.resolve(packFile(pack, weight)));
    },
    slices: async (family) => {
      taken.push(family);
      return JSON.parse(await readFile(packages.resolve(`@fontsource/${family}/unicode.json`), 'utf8'));
    },
  });
  return { types, taken };
}

describe('the packs of a sheet', () => {
  it('are none for Latin, Greek, Cyrillic and the signs of sums', async () => {
    const { types, taken } = await watchedCase();
    expect(await types.typeFor(['Łódź 12 °C', 'Λίμνη', 'Пруд', 'H₂O ≥ 2½ · …'])).toBe(types.type);
    expect(taken).toEqual([]);
  });

  it('are those of its letters, read once', async () => {
    const { types, taken } = await watchedCase();
    const type = await types.typeFor(['Pond மீன் 3', 'דגים']);
    expect(type.packs).toEqual(['noto-sans-hebrew-hebrew', 'noto-sans-tamil-tamil']);
    expect(type.bidi).not.toBeNull();
    await types.typeFor(['மீன்']);
    expect(taken.sort()).toEqual(
      ['hebrew', 'tamil'].flatMap((part) => ['heavy', 'text'].map((w) => `noto-sans-${part}-${part} ${w}`)),
    );
  });

  it('are asked for again after one did not load', async () => {
    let broken = true;
    const { types } = await watchedCase();
    const fragile = typeCase([], {
      woff: async (pack, weight) => {
        if (broken) throw new Error('no network');
        return readFile(packages.resolve(packFile(pack, weight)));
      },
      slices: async () => ({}),
    });
    await expect(fragile.typeFor(['மீன்'])).rejects.toThrow('no network');
    broken = false;
    expect((await fragile.typeFor(['மீன்'])).packs).toEqual((await types.typeFor(['மீன்'])).packs);
  });

  it('leave a sheet in Latin letters as it is without them, to the byte', async () => {
    const [fresh, used] = await Promise.all([nodePress(), nodePress()]);
    const before = await fresh.layOut(denseSheet());
    await used.toPdf(printOf(await used.layOut(namesSheet())));
    const after = await used.layOut(denseSheet());
    expect(after).toEqual(before);
    expect(Buffer.from(await used.toPdf(printOf(after))).equals(await fresh.toPdf(printOf(before)))).toBe(
      true,
    );
  });

  it('are read for a page that another press laid out', async () => {
    const [one, other] = await Promise.all([nodePress(), nodePress()]);
    const page = structuredClone(await one.layOut(namesSheet()));
    const print = printOf(page);
    expect(Buffer.from(await other.toPdf(print)).equals(await one.toPdf(print))).toBe(true);
    expect(other.toSvg(page)).toBe(one.toSvg(page));
  });
});

describe('the choice of packs', () => {
  const names = (characters: string) => wholePacks([...characters]).map(({ family }) => family);

  it('takes a sign that scripts share from a script that is there anyhow', () => {
    // The danda ends sentences in Devanagari and in Bengali.
    expect(names('ক।')).toEqual(['noto-sans-bengali']);
    expect(names('क।')).toEqual(['noto-sans-devanagari']);
    expect(names('।')).toEqual(['noto-sans-devanagari']);
    expect(names('٣')).toEqual(['noto-sans-arabic']);
    expect(names('฿')).toEqual(['noto-sans-thai']);
  });

  it('draws Chinese signs as kana or hangul on the sheet tell, else as in Chinese', () => {
    expect(eastAsianFamilies([...'養魚'])[0]).toBe('noto-sans-sc');
    expect(eastAsianFamilies([...'養魚タンク'])[0]).toBe('noto-sans-jp');
    expect(eastAsianFamilies([...'養魚물고기'])[0]).toBe('noto-sans-kr');
    expect(eastAsianFamilies([...'மீன்'])).toEqual([]);
  });

  it('takes each sign from the slice that has it, and tells what none has', () => {
    const slices = { '[4]': 'U+4e00-4e0f,U+9c7c', '[110]': 'U+6c60', latin: 'U+0-ff' };
    const { packs, rest } = slicePacks('noto-sans-sc', slices, ['鱼', '池', '一', '魚']);
    expect(packs.map(({ name }) => name)).toEqual(['noto-sans-sc-4', 'noto-sans-sc-110']);
    expect(rest).toEqual(['魚']);
  });

  it('finds every pack again by its name', () => {
    for (const name of ['noto-sans-arabic-arabic', 'noto-sans-thai-thai', 'noto-sans-kr-119']) {
      expect(packNamed(name).name).toBe(name);
    }
    expect(() => packNamed('noto-sans-klingon-klingon')).toThrow('noto-sans-klingon-klingon');
  });
});
