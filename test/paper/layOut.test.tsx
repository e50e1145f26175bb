import fc from 'fast-check';
import type { JSXNode } from 'satori/jsx';
import { beforeAll, describe, expect, it } from 'vitest';
import { draw, layOut, type Sheet } from '../../src/paper/layOut.ts';
import { settle } from '../../src/paper/settle.ts';
import { mm, paperSizes, pointsPerUnit } from '../../src/paper/measures.ts';
import { nodeParts, type Parts } from '../../src/paper/node.ts';
import type { Page, Shape, Words } from '../../src/paper/page.ts';
import { denseSheet } from './denseSheet.tsx';
import { oneBox } from './oneBox.tsx';

let parts: Parts;
beforeAll(async () => {
  parts = await nodeParts();
});

function lay(sheet: Sheet): Promise<Page> {
  return layOut(sheet, parts.types, parts.engine);
}

function wordsOf(page: Page): Words[] {
  return page.items.filter((item) => item.kind === 'words');
}

function shapesOf(page: Page): Shape[] {
  return page.items.filter((item) => item.kind === 'shape');
}

function textOf(page: Page): string {
  return wordsOf(page)
    .map((words) => words.text)
    .join('');
}

/** The worst difference, in sheet units, between the engine's width of a piece and our own of the same text. */
async function worstWidth(sheet: Sheet): Promise<number> {
  const settled = await settle(sheet.root);
  const type = await parts.types.typeFor(settled.paragraphs.values());
  const { found } = await draw(sheet, settled, type, parts.engine);
  const differences = found.map((each) => {
    if (each.kind === 'shape') return 0;
    return Math.abs(type.width(each.text, each.weight, each.size_pt) - each.width_pt) / pointsPerUnit;
  });
  expect(differences.length).toBeGreaterThan(0);
  return Math.max(...differences);
}

describe('the widths of words', () => {
  it('agree with the layout engine on every piece of a dense sheet', async () => {
    expect(await worstWidth(denseSheet())).toBeLessThan(0.02);
  });

  it('agree for any text that our fonts have', async () => {
    const letters = [
      ...'AVTWyo.,-–½“ łŁźĐặÅé',
      'ά',
      'λ',
      'й',
      'Ж',
      '₂',
      '≥',
      'fi',
      'ffl',
      ' ',
      '\u00a0',
      '\u2009',
    ];
    const text = fc
      .array(fc.constantFrom(...letters), { minLength: 1, maxLength: 40 })
      .map((list) => list.join(''));
    await fc.assert(
      fc.asyncProperty(text, fc.constantFrom(400, 800), async (given, fontWeight) => {
        fc.pre(given.trim() !== '');
        expect(await worstWidth(oneBox(given, { fontWeight }))).toBeLessThan(0.02);
      }),
      { numRuns: 60 },
    );
  });

  it('leave one space between words, in plain and in mixed text', async () => {
    const plain = 'Two tanks, To wait, 10–20 L of AV, and more';
    const mixed = (
      <>
        Two tanks, <b>To wait,</b> 10–20 L <b>of AV,</b> and more
      </>
    );
    for (const children of [plain, mixed]) {
      const words = wordsOf(await lay(oneBox(children)));
      expect(words.map((each) => each.text).join('')).toBe(plain);
      for (const [at, word] of words.entries()) {
        const next = words[at + 1];
        if (!next) break;
        const { width } = parts.types.type;
        // The space may stand in the box before or in the one after, and is kerned with what it stands beside.
        const before_pt = width(word.text, word.weight, word.size_pt);
        const after_pt = word.width_pt + width(' ', next.weight, next.size_pt);
        const ends_pt = word.node === next.node ? [before_pt] : [before_pt, after_pt];
        const off_pt = Math.min(...ends_pt.map((end_pt) => Math.abs(next.x_pt - word.x_pt - end_pt)));
        expect(off_pt, `between "${word.text}" and "${next.text}"`).toBeLessThan(0.02);
      }
    }
  });
});

describe('a page', () => {
  it('has the exact size of its paper', async () => {
    const sizes = await Promise.all([lay(denseSheet(paperSizes.A4)), lay(denseSheet(paperSizes.Letter))]);
    expect(sizes.map((page) => [page.width_pt, page.height_pt])).toEqual([
      [595.276, 841.89],
      [612, 792],
    ]);
  });

  it('knows each node with its place, its part and its own words', async () => {
    const root = (
      <div style={{ display: 'flex', flexDirection: 'column', width: '100%', padding: mm(10) }}>
        {null}
        <h1 data-role="H1">Bed</h1>
        {[false, <p>Feed {12} g</p>]}
        <svg
          data-role="Figure"
          aria-label="A line"
          data-alt="A line"
          width={100}
          height={50}
          viewBox="0 0 10 5"
        >
          <line x1="0" y1="0" x2="10" y2="5" stroke="#000" />
        </svg>
      </div>
    );
    const page = await lay({ ...paperSizes.A4, title: 'T', lang: 'en', root });
    const known = page.nodes.map(({ path, parent, tag, role, alt, text }) => ({
      path,
      parent,
      tag,
      role,
      alt,
      text,
    }));
    const rest = { role: null, alt: null, text: '' };
    expect(known).toEqual([
      { ...rest, path: '', parent: null, tag: 'div' },
      { ...rest, path: '0', parent: 0, tag: 'h1', role: 'H1', text: 'Bed' },
      { ...rest, path: '1', parent: 0, tag: 'p', text: 'Feed 12 g' },
      { ...rest, path: '2', parent: 0, tag: 'svg', role: 'Figure', alt: 'A line' },
    ]);
    expect(page.items.map((item) => item.node)).toEqual([1, 2, 2, 2, 3]);
  });

  it('gives words, boxes and lines to the node they belong to, also inside running text', async () => {
    const page = await lay(
      oneBox(
        <>
          one{' '}
          <span data-slot="feed" style={{ backgroundColor: '#dddddd', textDecoration: 'underline' }}>
            <b data-field="three" data-tip="The third">
              three
            </b>{' '}
            two
          </span>{' '}
          four
        </>,
      ),
    );
    const slot = page.nodes.findIndex((node) => node.slot === 'feed');
    const field = page.nodes.findIndex((node) => node.field?.name === 'three');
    const words = Object.fromEntries(wordsOf(page).map((each) => [each.text.trim(), each.node]));
    expect(words).toEqual({ one: 1, two: slot, three: field, four: 1 });
    const box = shapesOf(page).find((shape) => shape.fill);
    expect(box?.node).toBe(slot);
    expect(page.nodes[slot]?.box.width_pt).toBeGreaterThan(40);
  });

  it('keeps the space at the end of a wrapped line, and puts none where a long word is broken', async () => {
    const mixed = await lay(
      oneBox(
        <>
          some words <b>that wrap over</b> several lines <b>of</b> a narrow box
        </>,
        { width: mm(25) },
      ),
    );
    expect(textOf(mixed)).toBe('some words that wrap over several lines of a narrow box');
    const long = 'x'.repeat(500);
    const broken = await lay(
      oneBox(
        <>
          a <b>{long}</b> z
        </>,
        { width: mm(40), wordBreak: 'break-word' },
      ),
    );
    expect(textOf(broken)).toBe(`a ${long} z`);
  });

  it('keeps a thin and a binding space as it is, in plain and in mixed text', async () => {
    const given = 'at 24\u00a0°C, 32\u2009g a day';
    const plain = await lay(oneBox(given));
    const mixed = await lay(
      oneBox(
        <>
          at 24{'\u00a0'}°C, <b>32</b>
          {'\u2009'}g a day
        </>,
      ),
    );
    expect([textOf(plain), textOf(mixed)]).toEqual([given, given]);
  });

  it('is the same for a component, a fragment, a list and a promise', async () => {
    const Name = ({ children }: { children?: JSXNode }) => <b>{children}</b>;
    const Later = async () => <b>Mill</b>;
    const texts = await Promise.all([
      lay(oneBox(<>the {<Name>Mill</Name>} pond</>)),
      lay(oneBox(['the ', <b>Mill</b>, ' pond'])),
      lay(
        oneBox(
          <>
            the <Later /> pond
          </>,
        ),
      ),
    ]);
    expect(new Set(texts.map((page) => JSON.stringify(page)))).toHaveLength(1);
  });

  it('turns words with their box', async () => {
    const page = await lay(oneBox(<div style={{ transform: 'rotate(90deg)', width: mm(40) }}>up</div>));
    const [words] = wordsOf(page);
    expect(words?.matrix?.map((value) => Number(value.toFixed(3))).slice(0, 4)).toEqual([0, 1, -1, 0]);
  });
});

describe('a drawing', () => {
  const drawing = (inside: JSXNode, more: Record<string, unknown> = {}) =>
    oneBox(
      <svg aria-hidden="true" width={mm(50)} height={mm(50)} viewBox="0 0 100 100" {...more}>
        {inside}
      </svg>,
    );

  it('lies in its box at the scale of its viewBox', async () => {
    const page = await lay(drawing(<line x1="0" y1="0" x2="100" y2="50" stroke="#000000" strokeWidth="2" />));
    const [line] = shapesOf(page);
    const side_pt = (50 * 72) / 25.4;
    const { x_pt, y_pt } = page.nodes.find((node) => node.tag === 'svg')?.box ?? { x_pt: 0, y_pt: 0 };
    const [from, to] = line?.path ?? [];
    expect(from?.[1]).toBeCloseTo(x_pt, 2);
    expect(from?.[2]).toBeCloseTo(y_pt, 2);
    expect(to?.[1]).toBeCloseTo(x_pt + side_pt, 2);
    expect(to?.[2]).toBeCloseTo(y_pt + side_pt / 2, 2);
    expect(line?.stroke?.width_pt).toBeCloseTo((side_pt / 100) * 2, 2);
    expect(line?.fill).toBeNull();
  });

  it('is as large as its box allows, and stands in the middle of it', async () => {
    const page = await lay(drawing(<rect width="100" height="20" />, { viewBox: '0 0 100 20' }));
    const [rect] = shapesOf(page);
    const side_pt = (50 * 72) / 25.4;
    const { y_pt } = page.nodes.find((node) => node.tag === 'svg')?.box ?? { y_pt: 0 };
    expect(rect?.path[0]?.[2]).toBeCloseTo(y_pt + side_pt * 0.4, 2);
    expect(rect?.path[2]?.[2]).toBeCloseTo(y_pt + side_pt * 0.6, 2);
  });

  it('hands paint from a group to what is in it, and cuts to a clip', async () => {
    const page = await lay(
      drawing(
        <>
          <defs>
            <clipPath id="a">
              <circle cx="50" cy="50" r="40" />
            </clipPath>
          </defs>
          <g fill="none" stroke="#102030" strokeDasharray="4 2 1" clipPath="url(#a)">
            <rect x="10" y="10" width="50" height="50" rx="5" />
            <polygon points="0,0 10,0 5,10" fill="#ff0000" />
          </g>
        </>,
      ),
    );
    const [rect, polygon] = shapesOf(page);
    expect(rect?.fill).toBeNull();
    expect(rect?.stroke).toMatchObject({ ink: { red: 16, green: 32, blue: 48 } });
    expect(rect?.stroke?.dashes_pt).toHaveLength(6);
    expect(polygon?.fill?.ink).toMatchObject({ red: 255, green: 0 });
    expect(rect?.clip).toBe(polygon?.clip);
    expect(rect?.clip?.path).toHaveLength(6);
  });

  it('says what it shows by its title', async () => {
    const page = await lay(
      drawing(
        <>
          <title>A tank</title>
          <circle cx="5" cy="5" r="5" />
        </>,
      ),
    );
    expect(page.nodes.find((node) => node.tag === 'svg')?.alt).toBe('A tank');
  });

  it.each([
    [
      'words',
      <text x="1" y="1">
        a
      </text>,
      /<text> in a drawing/,
    ],
    ['bare words', 'a', /Words in a drawing: "a"/],
    ['a gradient', <linearGradient id="g" />, /<linearGradient>/],
    [
      'a filter',
      <defs>
        <filter id="f" />
      </defs>,
      /<filter>/,
    ],
    ['a picture', <foreignObject />, /<foreignObject>/],
    ['a style', <rect width="5" height="5" style={{ fill: 'red' }} />, /style="fill:red"/],
    ['an unknown attribute', <rect width="5" height="5" vectorEffect="none" />, /vector-effect="none"/],
    ['an unknown ink', <rect width="5" height="5" fill="url(#g)" />, /ink "url\(#g\)"/],
    ['a clip that is not there', <rect width="5" height="5" clipPath="url(#q)" />, /clip url\(#q\)/],
    ['an unreadable path', <path d="M0 0 L five" />, /path cannot be read/],
    ['opacity of a group', <g opacity="0.5" />, /opacity="0.5"/],
  ])('is refused with %s', async (_, inside, message) => {
    await expect(lay(drawing(inside))).rejects.toThrow(message);
  });

  it('is refused where it is stretched and has lines', async () => {
    const line = <line x1="0" y1="0" x2="1" y2="1" stroke="#000" />;
    const stretched = drawing(line, { viewBox: '0 0 100 10', preserveAspectRatio: 'none' });
    await expect(lay(stretched)).rejects.toThrow(/stretched/);
  });
});

describe('what the press cannot print', () => {
  const styled = (style: Record<string, string | number>) => lay(oneBox('a', style));

  it.each([
    ['boxShadow', { boxShadow: '0 0 3px #000' }],
    ['letterSpacing', { letterSpacing: 3 }],
    ['fontFeatureSettings', { fontFeatureSettings: '"tnum"' }],
    ['wordSpacing', { wordSpacing: 3 }],
    ['opacity', { opacity: 0.5 }],
    ['fontStyle', { fontStyle: 'italic' }],
    ['fontFamily', { fontFamily: 'serif' }],
    ['fontWeight', { fontWeight: 500 }],
    ['background', { background: 'linear-gradient(#000, #fff)' }],
    ['display: none', { display: 'none' }],
    ['fontSizes', { fontSizes: 3 }],
  ])('names the style %s', async (name, style) => {
    await expect(styled(style)).rejects.toThrow(`does not print style ${name}`);
  });

  it.each([
    ['<ul>', <ul />],
    ['<table>', <table />],
    ['<img>', <img src="a.png" alt="" />],
    ['<em>', <em>a</em>],
    ['<script>', <script />],
    ['className on <p>', <p className="a" />],
    ['data-rol on <p>', <p data-rol="P" />],
    ['data-role "Header" on <p>', <p data-role="Header" />],
  ])('names %s', async (name, child) => {
    await expect(lay(oneBox(child))).rejects.toThrow(`does not print ${name}`);
  });

  it('names a size that no paper has', async () => {
    await expect(lay({ ...oneBox('a'), width_mm: 0 })).rejects.toThrow('0 mm');
    await expect(lay({ ...oneBox('a'), height_mm: Number.NaN })).rejects.toThrow('NaN mm');
  });
});

describe('what people type', () => {
  const hostile = `<script>alert("1")</script> & 'two' &amp; ]]> <!-- --> %3Csvg ${'y'.repeat(500)} {a} \\( )Tj ET`;

  it('stays text, whatever it looks like', async () => {
    expect(textOf(await lay(oneBox(hostile, { wordBreak: 'break-word' })))).toBe(hostile);
  });

  it('loses what has no shape on paper, and nothing else', async () => {
    const given = 'a\u0000b\u0007\u001bc\u202ed\u200be\ufeff f\u00adg\r\nh e\u0301 \ufb01';
    expect(textOf(await lay(oneBox(given)))).toBe('abcde fg h \u00e9 fi');
  });

  it('comes through for any text of the keyboard', async () => {
    const typed = fc.string({ unit: 'grapheme-ascii', minLength: 1, maxLength: 60 });
    await fc.assert(
      fc.asyncProperty(typed, async (given) => {
        const page = await lay(oneBox(given, { wordBreak: 'break-word' }));
        expect(textOf(page).replace(/\s+/g, ' ').trim()).toBe(given.replace(/\s+/g, ' ').trim());
      }),
      { numRuns: 80 },
    );
  });
});
