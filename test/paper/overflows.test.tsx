import type { JSXNode } from 'satori/jsx';
import { beforeAll, describe, expect, it } from 'vitest';
import { mm, paperSizes, pt } from '../../src/paper/measures.ts';
import { nodePress } from '../../src/paper/node.ts';
import { overflows } from '../../src/paper/overflows.ts';
import type { Press } from '../../src/paper/press.ts';
import { denseSheet } from './denseSheet.tsx';

let press: Press;
beforeAll(async () => {
  press = await nodePress();
});

/** What goes wrong on a 100 x 100 mm sheet with these children, as `why: text`. */
async function wrongWith(children: JSXNode): Promise<string[]> {
  const root = (
    <div
      style={{ display: 'flex', flexDirection: 'column', width: '100%', height: '100%', fontSize: pt(11) }}
    >
      {children}
    </div>
  );
  const page = await press.layOut({ width_mm: 100, height_mm: 100, title: 'T', lang: 'en', root });
  return overflows(page).map(({ why, text }) => `${why}: ${text}`);
}

const long = 'a line of words that is much too long for the narrow box it was given here';

describe('words that do not fit', () => {
  it('are none on a sheet where all fits, on either paper', async () => {
    for (const paper of [paperSizes.A4, paperSizes.Letter]) {
      expect(overflows(await press.layOut(denseSheet(paper)))).toEqual([]);
    }
  });

  it('are found where they run off the page', async () => {
    const style = { position: 'absolute', left: mm(90), top: mm(5), width: mm(30) } as const;
    expect(await wrongWith(<div style={style}>across the edge</div>)).toEqual(['off the page: across']);
    const foot = { position: 'absolute', left: 0, top: mm(97) } as const;
    expect(await wrongWith(<div style={foot}>foot</div>)).toEqual(['off the page: foot']);
  });

  it('are found where they lie wholly off the page, which the layout engine leaves out', async () => {
    const below = { position: 'absolute', left: 0, top: mm(130) } as const;
    expect(await wrongWith(<div style={below}>far below</div>)).toEqual(['lost: far below']);
  });

  it('are found where a box cuts them', async () => {
    const [wrong] = await wrongWith(
      <div style={{ width: mm(30), height: mm(10), overflow: 'hidden' }}>{long}</div>,
    );
    expect(wrong).toMatch(/^cut: /);
  });

  it('are found where one long word leaves its box', async () => {
    const box = { width: mm(20), border: '2px solid #000' };
    expect(await wrongWith(<div style={box}>unbreakableunbreakable</div>)).toEqual([
      'out of its box: unbreakableunbreakable',
    ]);
    const breaking = { ...box, wordBreak: 'break-word' };
    expect(await wrongWith(<div style={breaking}>unbreakableunbreakable</div>)).toEqual([]);
  });

  it('are found where they run over the foot of a box further out', async () => {
    const box = {
      display: 'flex',
      flexDirection: 'column',
      width: mm(60),
      height: mm(8),
      flexShrink: 0,
    } as const;
    const wrong = await wrongWith(
      <div style={box}>
        <div style={{ flexShrink: 0 }}>first line</div>
        <div style={{ flexShrink: 0 }}>second line</div>
      </div>,
    );
    expect(wrong).toEqual(['out of its box: second']);
  });

  it('are none where lines are set tight, and where a box is turned', async () => {
    expect(await wrongWith(<div style={{ fontSize: pt(60), lineHeight: 0.95 }}>32 gy</div>)).toEqual([]);
    const turned = { transform: 'rotate(-90deg)', width: mm(40), marginTop: mm(30) };
    expect(await wrongWith(<div style={turned}>up the side</div>)).toEqual([]);
  });

  it('are none where they were shortened on purpose', async () => {
    const short = { display: 'block', width: mm(30), lineClamp: 1 };
    expect(await wrongWith(<div style={short}>{long}</div>)).toEqual([]);
  });
});
