import { beforeAll, describe, expect, it } from 'vitest';
import { mm, paperSizes, pt } from '../../src/paper/measures.ts';
import { nodePress } from '../../src/paper/node.ts';
import type { Press } from '../../src/paper/press.ts';

let press: Press;
beforeAll(async () => {
  press = await nodePress();
});

describe('the press', () => {
  it('turns a sheet into PDF, SVG and PNG', async () => {
    const root = (
      <div
        style={{ display: 'flex', flexDirection: 'column', width: '100%', padding: mm(15), fontSize: pt(11) }}
      >
        <h1 data-role="H1">Lantern Yard</h1>
      </div>
    );
    const page = await press.layOut({ ...paperSizes.A4, title: 'A card', lang: 'en', root });
    expect(page.items.map((item) => (item.kind === 'words' ? item.text : ''))).toEqual(['Lantern ', 'Yard']);
    expect(page.nodes[1]).toMatchObject({ path: '0', tag: 'h1', role: 'H1', parent: 0 });
    const pdf = await press.toPdf({ pages: [page], title: 'A card', lang: 'en' });
    expect(new TextDecoder('latin1').decode(pdf.subarray(0, 8))).toBe('%PDF-1.7');
    expect(press.toSvg(page)).toContain('<title>A card</title>');
    expect((await press.toPng(page, { dpi: 72 })).length).toBeGreaterThan(1000);
  });
});
