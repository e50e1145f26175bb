import fc from 'fast-check';
import { PDFDocument } from 'pdf-lib';
import { beforeAll, describe, expect, test } from 'vitest';
import type { Sheet } from '../../src/paper/layOut.ts';
import { mm, paperSizes, pt } from '../../src/paper/measures.ts';
import { nodePress } from '../../src/paper/node.ts';
import type { Item, Page, Words } from '../../src/paper/page.ts';
import type { Press } from '../../src/paper/press.ts';
import { type Filled, type Stencil, stencilOf, type Values } from '../../src/paper/stencil.ts';
import type { StackSet } from '../../src/paper/toStackPdf.ts';
import { lint } from '../pdfLint/lint.ts';
import { paintedOn, partsOf, readPdf } from './readPdf.ts';
import { scriptNames } from './scriptNames.ts';

let press: Press;
beforeAll(async () => {
  press = await nodePress();
});

const row = { display: 'flex', alignItems: 'flex-end' } as const;

/** What is drawn for one person: a box with a word in it. */
function Drawn({ litres = '' }: Values) {
  return (
    <div style={{ display: 'flex', width: mm(25), height: mm(15), border: '3px solid black' }}>{litres}</div>
  );
}

function pictureFor(values: Values): Sheet {
  const style = { display: 'flex', fontSize: pt(11), lineHeight: 1.25 } as const;
  const root = <div style={style}>{Drawn(values)}</div>;
  return { width_mm: 30, height_mm: 20, title: 'Tank', lang: 'en', root };
}

/** A sheet with everything that handouts have: a name, numbers among words, a table, a list, a blank, a drawing. */
function sheetFor({ name = '', length = '', litres = '' }: Values, is: 'own' | 'shared' = 'own'): Sheet {
  const figure = { display: 'flex', width: mm(30), height: mm(20) } as const;
  const root = (
    <div
      style={{
        display: 'flex',
        flexDirection: 'column',
        width: '100%',
        height: '100%',
        padding: mm(20),
        fontSize: pt(11),
        lineHeight: 1.25,
      }}
    >
      <div data-role="H1" style={{ display: 'flex', fontWeight: 800 }}>
        Worksheet
      </div>
      <div data-role="P" style={row}>
        <div style={{ display: 'flex', marginRight: mm(2) }}>Name</div>
        <div
          data-slot="name"
          style={{ display: 'block', width: mm(90), fontWeight: 800, borderBottom: '2px solid black' }}
        >
          {name}
        </div>
      </div>
      <div data-role="P" style={row}>
        <div style={{ display: 'flex', marginRight: mm(1) }}>inside length</div>
        <div data-slot="length" style={{ display: 'flex', minWidth: mm(20) }}>
          {length}
        </div>
        <div style={{ display: 'flex', marginRight: mm(1) }}>holds</div>
        <div data-slot="litres" style={{ display: 'flex', minWidth: mm(20) }}>
          {litres}
        </div>
        <div style={{ display: 'flex' }}>of water</div>
      </div>
      <div data-role="Table" style={{ display: 'flex', flexDirection: 'column' }}>
        <div data-role="TR" style={row}>
          <div data-role="TH" style={{ display: 'flex', width: mm(40) }}>
            Whose
          </div>
          <div data-role="TH" style={{ display: 'flex', width: mm(40) }}>
            Litres
          </div>
        </div>
        <div data-role="TR" style={row}>
          <div data-role="TH" data-slot="name" style={{ display: 'block', width: mm(90) }}>
            {name}
          </div>
          <div data-role="TD" data-slot="litres" style={{ display: 'flex', width: mm(40) }}>
            {litres}
          </div>
        </div>
      </div>
      <div data-role="P" style={row}>
        <div style={{ display: 'flex' }}>Your answer</div>
        <div
          data-field="answer"
          data-tip="Your answer in litres"
          style={{ display: 'flex', width: mm(20), height: mm(7), borderBottom: '2px solid black' }}
        />
        <div style={{ display: 'flex' }}>L</div>
      </div>
      {is === 'own' ? (
        <div data-role="Figure" data-alt="A tank" style={figure}>
          <Drawn litres={litres} />
        </div>
      ) : (
        <div
          data-role="Figure"
          data-alt="A tank"
          data-slot="drawing"
          style={{ ...figure, border: '2px solid black' }}
        />
      )}
    </div>
  );
  return { ...paperSizes.A4, title: 'Worksheet', lang: 'en', root };
}

const sample = { name: 'Ada', length: '1000 mm', litres: '300 L' };

async function sharedStencil(): Promise<Stencil> {
  return stencilOf(await press.layOutAnew(sheetFor(sample, 'shared')));
}

async function fillWith(stencil: Stencil, values: Values): Promise<Filled | null> {
  return press.fill(stencil, values, { drawing: await press.layOutAnew(pictureFor(values)) });
}

async function filledFor(values: Values): Promise<Filled> {
  const filled = await fillWith(await sharedStencil(), values);
  if (filled === null) throw new Error(`no room for ${JSON.stringify(values)}`);
  return filled;
}

async function stackOf(sets: readonly StackSet[]): Promise<Uint8Array> {
  const parts: Uint8Array[] = [];
  for await (const part of press.toStackPdf({ title: 'Worksheets', lang: 'en', date: '2031-05-04', sets }))
    parts.push(part);
  return new Uint8Array(Buffer.concat(parts));
}

async function anew(values: readonly Values[]): Promise<Uint8Array> {
  const pages: Page[] = [];
  for (const one of values) pages.push(await press.layOutAnew(sheetFor(one)));
  return press.toPdf({ pages, title: 'Worksheets', lang: 'en', date: '2031-05-04', fields: 'printed' });
}

const everybody: readonly Values[] = scriptNames.map(({ name }, at) => ({
  name,
  length: `${900 + 7 * at} mm`,
  litres: `${200 + at} L`,
}));

/** What is placed twice may differ by a thousandth of a point; a blank behind a word is not seen. */
function rounded(_: string, value: unknown): unknown {
  if (typeof value === 'number') return Math.round(value * 50) / 50;
  return typeof value === 'string' ? value.trim() : value;
}

function isInFigure({ nodes }: Page, node: number | null): boolean {
  if (node === null) return false;
  return nodes[node]?.role === 'Figure' || isInFigure({ nodes } as Page, nodes[node]?.parent ?? null);
}

function wordsOf(page: Page, slots: ReadonlySet<number>): readonly Words[] {
  return page.items.filter((item) => item.kind === 'words').filter(({ node }) => slots.has(node));
}

describe('a filled sheet', () => {
  test.each(scriptNames)('has its words where a layout of its own has them: $script', async ({ name }) => {
    const words = name.split(' ');
    const texts = fc.record({
      name: fc.subarray(words, { minLength: 1 }).map((some) => some.join(' ')),
      length: fc.integer({ min: 1, max: 99_999 }).map((length) => `${length} mm`),
      litres: fc.constantFrom('', '7 L', '12.5 L', '1111 L'),
    });
    const stencil = await sharedStencil();
    const slots = new Set([...stencil.slots.values()].flat().map(({ node }) => node));
    await fc.assert(
      fc.asyncProperty(texts, async (values) => {
        const filled = await fillWith(stencil, values);
        const own = wordsOf(await press.layOutAnew(sheetFor(values)), slots);
        expect(filled).not.toBeNull();
        const line = (some: readonly Words[], node: number) =>
          some.filter((one) => one.node === node).map((one) => ({ ...one, text: one.text.trimEnd() }));
        for (const node of slots) {
          const [ours, theirs] = [
            line(filled?.items.filter((item) => item.kind === 'words') ?? [], node),
            line(own, node),
          ];
          expect(ours.map(({ text }) => text).join(' ')).toBe(theirs.map(({ text }) => text).join(' '));
          if (theirs.length === 0) continue;
          const left = (some: readonly Words[]) => Math.min(...some.map(({ x_pt }) => x_pt));
          const right = (some: readonly Words[]) =>
            Math.max(...some.map(({ x_pt, width_pt }) => x_pt + width_pt));
          expect(left(ours)).toBeCloseTo(left(theirs), 1);
          expect(Math.abs(right(ours) - right(theirs))).toBeLessThan(0.7);
          // The line is that of the sample; the engine sets a line a little higher or lower for some fonts.
          const [line_pt = 0, own_pt = 0] = [ours, theirs].map(([first]) => first?.baseline_pt);
          expect(Math.abs(line_pt - own_pt)).toBeLessThan(2);
          expect(new Set(ours.map(({ baseline_pt }) => baseline_pt)).size).toBe(1);
        }
      }),
      { numRuns: 8 },
    );
  });

  test('is refused where a value has no room, and where a character cannot be printed', async () => {
    const stencil = await sharedStencil();
    expect(await fillWith(stencil, { ...sample, name: 'Ada '.repeat(30) })).toBeNull();
    await expect(fillWith(stencil, { ...sample, name: '🐟' })).rejects.toThrow('cannot be printed');
    await expect(fillWith(stencil, { name: 'Ada', length: '' })).rejects.toThrow('"litres" got no value');
    await expect(press.fill(stencil, sample)).rejects.toThrow('The figure "drawing" got no picture.');
  });

  test('needs samples that begin where their slots begin', async () => {
    await expect(press.layOutAnew(sheetFor({ ...sample, name: '' })).then(stencilOf)).rejects.toThrow(
      'The slot "name" has no sample in it.',
    );
  });
});

describe('a stack', () => {
  test('says the same as the same pages laid out one by one, and has the same parts', async () => {
    const sets = await Promise.all(
      everybody.map(async (values) => ({ title: values['name'] ?? '', pages: [await filledFor(values)] })),
    );
    const bytes = await stackOf(sets);
    const own = await anew(everybody);
    const sorted = (text: string) => [...text.replace(/\s/g, '')].sort().join('');
    const [ours, theirs] = [await readPdf(bytes), await readPdf(own)];
    expect(ours.pages).toHaveLength(everybody.length);
    for (const [at, page] of ours.pages.entries())
      expect(sorted(page.text)).toBe(sorted(theirs.pages[at]?.text ?? ''));
    // What stands in slots has marks of its own; the words around it are the same.
    const plain = (parts: string) => parts.replace(/^Part\((.*)\)$/, '$1').replaceAll('" "', ' ');
    expect((await partsOf(bytes)).map(plain)).toEqual((await partsOf(own)).map(plain));
    expect(ours.info).toMatchObject({ Title: 'Worksheets', Producer: 'Bedfirst' });
    // The line under a name stays, the sample in the figure does not.
    expect(await paintedOn(bytes)).toEqual(await paintedOn(own));
  });

  test('draws a picture where the figure stands', async () => {
    const [one, two] = [await filledFor(sample), await press.layOutAnew(sheetFor(sample))];
    const inFigure = (page: Page) => page.items.filter(({ node }) => isInFigure(page, node));
    const drawn = one.items.filter(({ node }) => one.stencil.page.nodes[node]?.role === 'Figure');
    const plain = (items: readonly Item[]) =>
      JSON.parse(JSON.stringify(items, rounded)).map((item: Item) => ({ ...item, node: 0 }));
    expect(drawn.length).toBeGreaterThan(1);
    expect(plain(drawn)).toEqual(plain(inFigure(two)));
  });

  test('has nothing that a machine finds fault with', async () => {
    const pages = await Promise.all(everybody.map(filledFor));
    const wide = press.asLaidOut(
      await press.layOutAnew(sheetFor({ ...sample, name: 'Ada of the far pond '.repeat(8) })),
    );
    const bytes = await stackOf([
      { title: 'first', pages },
      { title: 'second', pages: [wide, ...pages] },
    ]);
    expect((await lint(bytes)).findings).toEqual([]);
    const document = await PDFDocument.load(bytes);
    expect(document.getPageCount()).toBe(2 * pages.length + 1);
  });

  test('keeps its parts together over many pages', async () => {
    const filled = await filledFor(sample);
    const sets = Array.from({ length: 200 }, (_, at) => ({ title: `Sheet ${at}`, pages: [filled] }));
    expect((await lint(await stackOf(sets))).findings).toEqual([]);
  });

  test('takes little room for each further page, and the same pages give the same bytes', async () => {
    const filled = await filledFor(sample);
    const stack = (count: number) =>
      stackOf(Array.from({ length: count }, (_, at) => ({ title: `Sheet ${at}`, pages: [filled] })));
    const [few, many] = [await stack(10), await stack(510)];
    expect((many.length - few.length) / 500).toBeLessThan(1000);
    expect(await stack(10)).toEqual(few);
  });

  test('without a page is refused', async () => {
    await expect(stackOf([])).rejects.toThrow('at least one page');
  });
});
