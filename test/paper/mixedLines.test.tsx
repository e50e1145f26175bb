import { beforeAll, describe, expect, it } from 'vitest';
import type { JSXNode } from 'satori/jsx';
import { mm } from '../../src/paper/measures.ts';
import { nodeParts, nodePress, type Parts } from '../../src/paper/node.ts';
import { overflows } from '../../src/paper/overflows.ts';
import type { Page, Words } from '../../src/paper/page.ts';
import type { Press } from '../../src/paper/press.ts';
import { oneBox } from './oneBox.tsx';
import { fromLeft, placedByUs } from './placed.ts';

let press: Press;
let parts: Parts;
beforeAll(async () => {
  [press, parts] = await Promise.all([nodePress(), nodeParts()]);
});

const wordsOf = (page: Page): Words[] => page.items.filter((item) => item.kind === 'words');

/** The text of each line as it is read, and its letters as they stand from left to right. */
async function linesOf(children: JSXNode, style: Record<string, string | number> = {}) {
  const sheet = oneBox(children, style);
  const page = await press.layOut(sheet);
  await parts.types.read([page]);
  const type = parts.types.typeOf(page);
  const baselines = [...new Set(wordsOf(page).map((words) => words.baseline_pt))];
  return baselines.map((baseline_pt) => {
    const items = wordsOf(page).filter((words) => words.baseline_pt === baseline_pt);
    const seen = fromLeft(placedByUs({ ...page, items }, type));
    return {
      read: items.map((words) => words.text).join(''),
      seen: seen.map(({ text }) => text).join(''),
      left_pt: Math.min(...items.map((words) => words.x_pt)),
    };
  });
}

describe('a line that mixes directions', () => {
  it('keeps the order of reading, and puts what runs to the left in place, also where the weight changes', async () => {
    const [line] = await linesOf(
      <>
        שלום <b>עולם (abc) טוב</b> 12
      </>,
    );
    expect(line?.read).toBe('שלום עולם (abc) טוב 12');
    // From the left: the number, then the last word turned, the Latin word in its brackets, then the first words turned.
    expect(line?.seen).toBe('12בוט)abc(םלועםולש');
  });

  it('turns no Latin word, and only the letters between, in a line that starts with Latin', async () => {
    const [line] = await linesOf('Tank דגים 7, left');
    expect(line?.seen).toBe('Tank7םיגד,left');
  });

  it('holds its direction on every line, and stands at the left like all words of the sheet', async () => {
    const lines = await linesOf('שלום עולם טוב מאוד abc 12, (def) ghi 3!', { width: mm(35) });
    expect(lines.length).toBeGreaterThan(1);
    expect(lines.map(({ read }) => read).join('')).toBe('שלום עולם טוב מאוד abc 12, (def) ghi 3!');
    // The last line has Latin letters only, yet belongs to a text to the left: so what ends it stands at its left.
    expect(lines.at(-1)?.read).toBe('abc 12, (def) ghi 3!');
    expect(lines.at(-1)?.seen).toBe('!abc12,(def)ghi3');
    const plain = await linesOf('plain');
    for (const { left_pt } of lines) expect(left_pt).toBeCloseTo(plain[0]?.left_pt ?? 0, 1);
  });

  it('stands where the sheet wants it, at the right or in the middle', async () => {
    for (const textAlign of ['right', 'center']) {
      const [line] = await linesOf('שלום 12', { textAlign });
      const [latin] = await linesOf('plain words', { textAlign });
      const [left] = await linesOf('שלום 12');
      expect(line?.left_pt ?? 0).toBeGreaterThan((left?.left_pt ?? 0) + 150);
      expect(latin?.left_pt ?? 0).toBeGreaterThan(150);
    }
  });

  it('loses its end, not its beginning, where it is cut short', async () => {
    const name = 'בריכת הדגים הגדולה ליד הנהר הישן בקצה השביל';
    const [line, ...more] = await linesOf(name, { width: mm(40), lineClamp: 1 });
    expect(more).toEqual([]);
    expect(line?.read.startsWith('בריכת הדגים')).toBe(true);
    expect(line?.read.endsWith('…')).toBe(true);
    expect(line?.seen.startsWith('…')).toBe(true);
  });

  it('sticks out of no box, however narrow that is', async () => {
    const text = 'حوض السمك الكبير (Tank 3) في مدرسة الوادي 12.5 kg עם דגים';
    for (const width of [30, 45, 60, 100]) {
      const sheet = oneBox(text, { width: mm(width), wordBreak: 'break-word' });
      expect(overflows(await press.layOut(sheet)), `${width} mm`).toEqual([]);
    }
  });

  it('keeps the boxes of the sheet in their order', async () => {
    const row = (name: string) => (
      <div style={{ display: 'flex', width: mm(100) }}>
        <div style={{ display: 'block', width: mm(50) }}>{name}</div>
        <div style={{ display: 'block', width: mm(50) }}>second</div>
      </div>
    );
    const x_pt = async (name: string) => {
      const words = wordsOf(await press.layOut(oneBox(row(name), { display: 'flex' })));
      return words.find(({ text }) => text.trim() === 'second')?.x_pt;
    };
    expect(await x_pt('דגים')).toBe(await x_pt('first'));
  });
});

describe('what has no shape of its own', () => {
  it('is kept where letters join differently for it, and else is not', async () => {
    const textOf = async (text: string) =>
      wordsOf(await press.layOut(oneBox(text)))
        .map((one) => one.text)
        .join('');
    expect(await textOf('می\u200cخواهم')).toBe('می\u200cخواهم');
    expect(await textOf('क्\u200dष')).toBe('क्\u200dष');
    expect(await textOf('Tank\u200c 3\u200d')).toBe('Tank 3');
    expect(await textOf('\u202eדגים\u202c\u200f')).toBe('דגים');
  });
});
