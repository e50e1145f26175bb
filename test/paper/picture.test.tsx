import { unzlibSync } from 'fflate';
import fc from 'fast-check';
import { beforeAll, describe, expect, it } from 'vitest';
import { paperSizes } from '../../src/paper/measures.ts';
import { nodeParts, nodePress, type Parts } from '../../src/paper/node.ts';
import { layOut } from '../../src/paper/layOut.ts';
import type { Item, Page } from '../../src/paper/page.ts';
import type { Press } from '../../src/paper/press.ts';
import { type Mark, readXml } from '../../src/paper/xml.ts';
import { denseSheet } from './denseSheet.tsx';
import { oneBox } from './oneBox.tsx';

let press: Press;
let parts: Parts;
let dense: Page;
let svg: string;
beforeAll(async () => {
  press = await nodePress();
  parts = await nodeParts();
  dense = await press.layOut(denseSheet());
  svg = press.toSvg(dense);
});

function marksIn(mark: Mark): Mark[] {
  return [mark, ...mark.children.flatMap(marksIn)];
}

describe('an SVG', () => {
  it('is well-formed, in its real size, and says its title', () => {
    const root = readXml(svg);
    expect(Object.fromEntries(root.attributes)).toEqual({
      xmlns: 'http://www.w3.org/2000/svg',
      role: 'img',
      lang: 'en',
      width: '210mm',
      height: '297mm',
      viewBox: '0 0 595.276 841.89',
    });
    expect(root.children[0]).toMatchObject({ name: 'title', text: 'Mill Pond School, east tank' });
  });

  it('has no style, no script, no text and no picture, and names only what is in it', () => {
    const marks = marksIn(readXml(svg));
    const names = new Set(marks.map((mark) => mark.name));
    expect([...names].sort()).toEqual(['clipPath', 'defs', 'g', 'path', 'svg', 'title', 'use']);
    const ids = new Set(marks.map((mark) => mark.attributes.get('id')));
    for (const mark of marks) {
      for (const [name, value] of mark.attributes) {
        expect(name).not.toMatch(/^(style|class|on.*)$/);
        const [, reference] =
          /^(?:url\()?#([\w-]+)\)?$/.exec(name === 'fill' || name === 'stroke' ? '' : value) ?? [];
        if (reference !== undefined) expect(ids).toContain(reference);
      }
    }
  });

  it('draws every letter that the page has', () => {
    const marks = marksIn(readXml(svg));
    const visible = dense.items.flatMap((item) => {
      if (item.kind === 'shape') return [];
      return parts.types.type.shape(item.text, item.weight).flatMap((run) => run.glyphs);
    });
    const drawn = marks.filter((mark) => mark.name === 'use').length;
    expect(drawn).toBe(visible.filter((glyph) => glyph.text.trim() !== '').length);
  });

  it('stays well-formed with any title', async () => {
    const page = await press.layOut(oneBox('a'));
    fc.assert(
      fc.property(fc.string({ unit: 'binary' }), (title) => {
        const root = readXml(press.toSvg({ ...page, title: `${title}<b>"&'\u0000` }));
        expect(root.children[0]?.text).toContain('<b>"&\'');
        expect(root.children[0]?.children).toEqual([]);
      }),
    );
  });

  it('shares ids with another page only where both mean the same', async () => {
    const other = press.toSvg(await press.layOut(denseSheet(paperSizes.Letter)));
    const whole = ({ name, attributes, children }: Mark): string => {
      return `${name} ${JSON.stringify([...attributes])} ${children.map(whole).join()}`;
    };
    const byId = (source: string) => {
      const found = marksIn(readXml(source)).filter((mark) => mark.attributes.has('id'));
      return new Map(found.map((mark) => [mark.attributes.get('id'), whole(mark)]));
    };
    const [one, two] = [byId(svg), byId(other)];
    const shared = [...one.keys()].filter((id) => two.has(id));
    expect(shared.length).toBeGreaterThan(20);
    for (const id of shared) expect(two.get(id)).toBe(one.get(id));
  });
});

/** The header, resolution and rows of a PNG without interlacing, of 8 bits a channel (W3C PNG, 11.2 and 9.2). */
function readPng(png: Uint8Array) {
  const view = new DataView(png.buffer, png.byteOffset, png.byteLength);
  const chunks: { type: string; data: Uint8Array }[] = [];
  for (let at = 8; at < png.length; ) {
    const length = view.getUint32(at);
    const type = new TextDecoder().decode(png.subarray(at + 4, at + 8));
    chunks.push({ type, data: png.subarray(at + 8, at + 8 + length) });
    at += 12 + length;
  }
  const data = (type: string) => chunks.filter((chunk) => chunk.type === type).map((chunk) => chunk.data);
  const viewOf = (bytes: Uint8Array | undefined) => {
    if (!bytes) throw new Error('A chunk is missing.');
    return new DataView(bytes.buffer, bytes.byteOffset, bytes.byteLength);
  };
  const [header, resolution] = [viewOf(data('IHDR')[0]), viewOf(data('pHYs')[0])];
  const packed = Buffer.concat(data('IDAT'));
  return {
    types: chunks.map((chunk) => chunk.type),
    width: header.getUint32(0),
    height: header.getUint32(4),
    perMetre: [resolution.getUint32(0), resolution.getUint32(4), resolution.getUint8(8)],
    unpacked: unzlibSync(packed).length,
  };
}

describe('a PNG', () => {
  it('has the exact number of pixels at 300 dpi, and says so', async () => {
    const read = readPng(await press.toPng(dense, { dpi: 300 }));
    expect([read.width, read.height]).toEqual([2480, 3508]);
    expect(read.perMetre).toEqual([11811, 11811, 1]);
    expect(read.types.slice(0, 2)).toEqual(['IHDR', 'pHYs']);
    expect(read.types.at(-1)).toBe('IEND');
    expect(read.unpacked).toBe((2480 * 4 + 1) * 3508);
  });

  it('fits Letter too', async () => {
    const page = await press.layOut(denseSheet(paperSizes.Letter));
    const read = readPng(await press.toPng(page, { dpi: 100 }));
    expect([read.width, read.height]).toEqual([850, 1100]);
  });

  it('is made though a cut box lies far off the page', async () => {
    const page = await press.layOut(oneBox('a'));
    const path = [['M', 0, -9000], ['L', 50, -9000], ['L', 50, -8900], ['Z']] as const;
    const ink = { red: 0, green: 0, blue: 0, alpha_frac: 1 };
    const far: Item = {
      kind: 'shape',
      node: 0,
      path,
      fill: { ink, rule: 'nonzero' },
      stroke: null,
      clip: { path, rule: 'nonzero', within: null },
    };
    const made = await press.toPng({ ...page, items: [far, ...page.items] }, { dpi: 50 });
    expect(Buffer.from(made).equals(Buffer.from(await press.toPng(page, { dpi: 50 })))).toBe(true);
  });

  it('is refused at a resolution that no paper has', async () => {
    await expect(press.toPng(dense, { dpi: 0 })).rejects.toThrow('0 dots per inch');
    await expect(press.toPng(dense, { dpi: Number.NaN })).rejects.toThrow('NaN dots per inch');
  });

  it('shows what the layout engine itself would draw', async () => {
    // A box in the middle of a small sheet: its corners are where the layout says, to a pixel.
    const root = (
      <div style={{ display: 'flex', width: '100%', height: '100%', padding: 20 }}>
        <div style={{ display: 'flex', width: 60, height: 40, backgroundColor: '#000' }} />
      </div>
    );
    const page = await layOut(
      { width_mm: 10, height_mm: 10, title: 'T', lang: 'en', root },
      parts.types,
      parts.engine,
    );
    const { Resvg } = await import('@resvg/resvg-js');
    const pixels = new Resvg(press.toSvg(page).replace(/mm"/g, 'px"'), {
      fitTo: { mode: 'width', value: 100 },
    }).render();
    const dark = (x: number, y: number) => (pixels.pixels[(y * pixels.width + x) * 4] ?? 255) < 10;
    expect([dark(21, 21), dark(78, 58), dark(18, 21), dark(21, 18), dark(81, 58), dark(78, 61)]).toEqual([
      ...[true, true],
      ...[false, false, false, false],
    ]);
  });
});
