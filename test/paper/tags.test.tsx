import type { JSXNode } from 'satori/jsx';
import { beforeAll, describe, expect, it } from 'vitest';
import { mm, paperSizes } from '../../src/paper/measures.ts';
import { nodePress } from '../../src/paper/node.ts';
import type { Page } from '../../src/paper/page.ts';
import type { Press } from '../../src/paper/press.ts';
import { tagPage } from '../../src/paper/tags.ts';
import { denseSheet } from './denseSheet.tsx';
import { printOf } from './prints.ts';
import { partsOf } from './readPdf.ts';

let press: Press;
beforeAll(async () => {
  press = await nodePress();
});

function lay(children: JSXNode): Promise<Page> {
  const root = (
    <div
      style={{
        display: 'flex',
        flexDirection: 'column',
        width: '100%',
        padding: mm(10),
        boxSizing: 'border-box',
      }}
    >
      {children}
    </div>
  );
  return press.layOut({ ...paperSizes.A4, title: 'T', lang: 'en', root });
}

/** The parts of a sheet as another library reads them from the PDF: `Role(kids)`, words in quotes. */
async function told(children: JSXNode): Promise<string> {
  const page = await lay(children);
  const [parts] = await partsOf(await press.toPdf(printOf(page)));
  return parts ?? '';
}

const drawing = (
  <svg data-role="Figure" data-alt="A full tank" width={100} height={50} viewBox="0 0 10 5">
    <title>A full tank</title>
    <rect width="10" height="5" fill="#000" />
  </svg>
);

describe('the parts of a document', () => {
  it('are told as the sheet names them, with their words in order', async () => {
    const parts = await told(
      <>
        <h1 data-role="H1">Tank</h1>
        <p data-role="P">
          feed <b>12 g</b> a day
        </p>
        {drawing}
      </>,
    );
    expect(parts).toBe('H1("Tank") P("feed 12 g a day") Figure[A full tank]()');
  });

  it('keep the order of the sheet where something is painted later', async () => {
    const parts = await told(
      <>
        <div data-role="H2" style={{ position: 'relative' }}>
          first
        </div>
        <p data-role="P">second</p>
        <div data-role="P" style={{ position: 'absolute', top: 0, left: 0 }}>
          third
        </div>
        <p data-role="P">fourth</p>
      </>,
    );
    expect(parts).toBe('H2("first") P("second") P("third") P("fourth")');
  });

  it('stand among words where the words stand', async () => {
    const parts = await told(
      <p data-role="P">
        before <span data-role="Span">inside</span> after
      </p>,
    );
    expect(parts).toBe('P("before" Span("inside") "after")');
  });

  it('make a paragraph of words that no part was named for', async () => {
    const parts = await told(
      <div data-role="Sect">
        <div>
          one <b>two</b>
        </div>
        <div>three</div>
      </div>,
    );
    expect(parts).toBe('Sect(P("one two") P("three"))');
  });

  it('are lists and tables, with head cells for rows and for columns', async () => {
    const row = (...cells: JSXNode[]) => (
      <div data-role="TR" style={{ display: 'flex' }}>
        {cells}
      </div>
    );
    const cell = (role: string, text: string) => <div data-role={role}>{text}</div>;
    const page = await lay(
      <>
        <div data-role="L">
          <div data-role="LI" style={{ display: 'flex' }}>
            <div data-role="Lbl">1.</div>
            <div data-role="LBody">feed</div>
          </div>
          <div data-role="LI">look</div>
        </div>
        <div data-role="Table">
          {row(cell('TH', 'what'), cell('TH', 'when'))}
          {row(cell('TH', 'feed'), cell('TD', ''))}
        </div>
      </>,
    );
    const [parts] = await partsOf(await press.toPdf(printOf(page)));
    const list = 'L(LI(Lbl("1.") LBody("feed")) LI(LBody("look")))';
    expect(parts).toBe(`${list} Table(TR(TH("what") TH("when")) TR(TH("feed") TD()))`);
    const table = tagPage(page).tags[1];
    const rows = table?.kids.map((tag) => (typeof tag === 'number' ? [] : tag.kids)) ?? [];
    expect(rows.flat().map((tag) => (typeof tag === 'number' ? 0 : tag.scope))).toEqual([
      'Column',
      'Column',
      'Row',
      null,
    ]);
  });

  it('leave out borders, backgrounds and whatever the sheet calls an artifact', async () => {
    const children = (
      <>
        <p data-role="P" style={{ border: '3px solid #000', backgroundColor: '#eee' }}>
          kept
        </p>
        <div data-role="Artifact">
          <p data-role="P">page 1 of 2</p>
        </div>
      </>
    );
    expect(await told(children)).toBe('P("kept")');
    const { marks } = tagPage(await lay(children));
    expect(marks.filter((mark) => mark === null).length).toBeGreaterThanOrEqual(5);
  });

  it('are plain groups where they stand wrongly, and the fault is named', async () => {
    const wrong = (
      <>
        <div data-role="L">
          <h2 data-role="H2">Every day</h2>
          <div data-role="LI">look</div>
        </div>
        <div data-role="TD">alone</div>
        <div data-role="Figure">no alt</div>
      </>
    );
    expect(await told(wrong)).toBe('Div(H2("Every day") Div(Div("look"))) Div("alone") Div(P("no alt"))');
    expect(tagPage(await lay(wrong)).faults).toEqual([
      'Figure has no alt text.',
      'L holds H2; it may hold LI, Caption.',
      'LI stands in Div; it may stand in L.',
      'LBody stands in Div; it may stand in LI.',
      'TD stands in Div; it may stand in TR.',
    ]);
  });

  it('are whole and without fault on a dense sheet: every word once, in one part', async () => {
    const page = await press.layOut(denseSheet());
    const { faults, marks, owners } = tagPage(page);
    expect(faults).toEqual([]);
    for (const [at, item] of page.items.entries()) {
      if (item.kind === 'words') expect(owners[marks[at] ?? -1], item.text).toBeDefined();
    }
    const [parts = ''] = await partsOf(await press.toPdf(printOf(page)));
    const spoken = [...parts.matchAll(/"([^"]*)"/g)].map(([, text]) => text).join('');
    const written = page.items.map((item) => (item.kind === 'words' ? item.text : '')).join('');
    const letters = (text: string) => [...text.replace(/\s/g, '')].sort().join('');
    expect(letters(spoken)).toBe(letters(written));
  });

  it('belong to their own page in a print of several', async () => {
    const pages = await Promise.all([lay(<p data-role="P">one</p>), lay(<h2 data-role="H2">two</h2>)]);
    expect(await partsOf(await press.toPdf(printOf(...pages)))).toEqual(['P("one")', 'H2("two")']);
  });
});
