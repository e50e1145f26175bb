import fc from 'fast-check';
import { beforeAll, describe, expect, it } from 'vitest';
import { nodePress } from '../../src/paper/node.ts';
import type { Page } from '../../src/paper/page.ts';
import { parcelOf, unpack } from '../../src/paper/parcel.ts';
import type { Press } from '../../src/paper/press.ts';
import type { Attachment } from '../../src/paper/print.ts';
import { readAttachment } from '../../src/paper/readAttachment.ts';
import { finestDpi } from '../../src/paper/toPng.ts';
import { readXml } from '../../src/paper/xml.ts';
import { oneBox } from './oneBox.tsx';

const plan: Attachment = {
  name: 'plan.json',
  mime: 'application/json',
  bytes: new TextEncoder().encode(JSON.stringify({ tank: 'Łódź & <quince>', litres: [700, 300, 28] })),
  description: 'The plan',
};

let press: Press;
let page: Page;
let files: Readonly<Record<'pdf' | 'svg' | 'png', Uint8Array>>;
beforeAll(async () => {
  press = await nodePress();
  page = await press.layOut(oneBox('One line'));
  files = {
    pdf: await press.toPdf({ pages: [page], title: 'T', lang: 'en', attachment: plan }),
    svg: new TextEncoder().encode(press.toSvg(page, plan)),
    png: await press.toPng(page, { dpi: 40, carries: plan }),
  };
});

const kinds = ['pdf', 'svg', 'png'] as const;

/** As the planner opens it: the copy that a viewer shows, where there is one, and all others. */
async function open(bytes: Uint8Array, kind: (typeof kinds)[number]) {
  const attached = kind === 'pdf' ? await readAttachment(bytes, plan.name) : null;
  return unpack(bytes, plan.name, attached ? [attached] : []);
}

const whole = expect.objectContaining({ state: 'whole', bytes: plan.bytes });

describe('a file that travels inside a print', () => {
  it.each(kinds)('comes out of a %s as it went in', async (kind) => {
    expect(await open(files[kind], kind)).toEqual(whole);
  });

  it.each(kinds)('is in a %s more than once: each copy may be lost', async (kind) => {
    const text = new TextDecoder('latin1').decode(files[kind]);
    const copies = text.split('bedfirst-parcel-1').length - 1;
    expect(copies).toBe(kind === 'pdf' ? 1 : 2);
    const first = text.indexOf('bedfirst-parcel-1') + 60;
    const hurt = files[kind].slice();
    hurt[first] = (hurt[first] ?? 0) ^ 1;
    expect(await open(hurt, kind)).toEqual(whole);
  });

  it('is found in a PDF that nothing else can read', async () => {
    const cut = files.pdf.slice(0, files.pdf.length - 900);
    expect(await readAttachment(cut, plan.name)).toBeNull();
    expect(await open(cut, 'pdf')).toEqual(whole);
  });

  it.each(kinds)('is given whole or not at all, whatever happens to a %s', async (kind) => {
    const damage = fc.record({
      at: fc.array(fc.nat({ max: files[kind].length - 1 }), { minLength: 1, maxLength: 40 }),
      to: fc.nat({ max: 255 }),
      from: fc.nat({ max: files[kind].length }),
      length: fc.nat({ max: files[kind].length }),
    });
    const seen = new Set<string>();
    await fc.assert(
      fc.asyncProperty(damage, async ({ at, to, from, length }) => {
        const hurt = files[kind].slice(from, from + length);
        for (const one of at) if (one < hurt.length) hurt[one] = to;
        const opened = await open(hurt, kind);
        seen.add(opened.state);
        if (opened.state === 'whole') expect(opened.bytes).toEqual(plan.bytes);
        else expect(['none', 'damaged']).toContain(opened.state);
      }),
      { numRuns: 150 },
    );
    expect(seen.size).toBeGreaterThan(1);
  });

  it('is refused when two copies say different things, for nobody knows which of them is right', () => {
    const other = { ...plan, bytes: new TextEncoder().encode('{"tank":"another"}') };
    const both = new TextEncoder().encode(`${parcelOf(plan)} ${parcelOf(other)}`);
    expect(unpack(both, plan.name)).toEqual({ state: 'different' });
  });

  it('is told damaged where its checksum is not its own, and none where there never was one', () => {
    const parcel = parcelOf(plan);
    const forged = parcel.replace(/ [0-9a-f]{32} /, ` ${'0'.repeat(32)} `);
    expect(unpack(new TextEncoder().encode(forged), plan.name)).toEqual({ state: 'damaged' });
    const promised = parcel.replace(` ${plan.bytes.length} `, ' 3999999 ');
    expect(unpack(new TextEncoder().encode(promised), plan.name)).toEqual({ state: 'damaged' });
    expect(unpack(new TextEncoder().encode('nothing here'), plan.name)).toEqual({ state: 'none' });
  });

  it('leaves the picture well-formed', async () => {
    const names = readXml(new TextDecoder().decode(files.svg)).children.map(({ name }) => name);
    expect(names.filter((name) => name === 'metadata')).toHaveLength(2);
    expect(chunksOf(files.png)).toEqual(['IHDR', 'pHYs', 'tEXt', 'IDAT', 'tEXt', 'IEND']);
  });
});

/** Names of the chunks of a PNG; neighbouring IDAT count once. */
function chunksOf(png: Uint8Array): readonly string[] {
  const view = new DataView(png.buffer, png.byteOffset);
  const names: string[] = [];
  for (let at = 8; at < png.length; at += 12 + view.getUint32(at)) {
    const name = String.fromCharCode(...png.subarray(at + 4, at + 8));
    if (names.at(-1) !== name) names.push(name);
  }
  return names;
}

describe('a picture', () => {
  it('has no more pixels than every device shows, and says what can be had', async () => {
    const a1: Page = { ...page, width_pt: 1683.78, height_pt: 2383.94 };
    const finest = finestDpi(a1);
    expect(finest).toBe(147);
    await expect(press.toPng(a1, { dpi: finest + 1 })).rejects.toThrow(/cannot have 148 .* 1 to 147/);
    expect(finestDpi({ ...page, width_pt: 10, height_pt: 10 })).toBe(1200);
  });
});
