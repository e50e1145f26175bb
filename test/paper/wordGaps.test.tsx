import type { JSXNode } from 'satori/jsx';
import { beforeAll, expect, it } from 'vitest';
import { mm, paperSizes } from '../../src/paper/measures.ts';
import { nodePress } from '../../src/paper/node.ts';
import type { Press } from '../../src/paper/press.ts';
import { tagPage } from '../../src/paper/tags.ts';
import { withGaps } from '../../src/paper/wordGaps.ts';

let press: Press;
beforeAll(async () => {
  press = await nodePress();
});

/** What a reader copies, word for word, as the page is written. */
async function copied(children: JSXNode): Promise<string> {
  const root = (
    <div style={{ display: 'flex', flexDirection: 'column', width: '100%', fontSize: 40 }}>{children}</div>
  );
  const page = await press.layOut({ ...paperSizes.A4, title: 'T', lang: 'en', root });
  const { items } = withGaps(page, tagPage(page));
  return items.map((item) => (item.kind === 'words' ? item.text : '')).join('');
}

it('keeps the words of boxes side by side apart, where they are told as one part', async () => {
  const step = (
    <div data-role="P" style={{ display: 'flex', columnGap: mm(1) }}>
      <div>water for one fish</div>
      <div>25 L</div>
    </div>
  );
  expect(await copied(step)).toBe('water for one fish 25 L');
});

it('keeps the lines of a part apart', async () => {
  const lines = (
    <div data-role="P" style={{ display: 'flex', flexDirection: 'column' }}>
      <div>wet media</div>
      <div>full line</div>
    </div>
  );
  expect(await copied(lines)).toBe('wet media full line');
});

it('puts nothing between boxes that touch, nor behind the last words of a part', async () => {
  const bracket = (
    <div data-role="P" style={{ display: 'flex' }}>
      <div>(</div>
      <div>wet</div>
    </div>
  );
  expect(await copied([bracket, <div data-role="P">next</div>])).toBe('(wetnext');
});
