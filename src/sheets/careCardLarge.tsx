/** The care card in large print: the same words in the same order, nothing smaller than 18 pt, on as many pages as it takes. */
import type { JSXNode } from 'satori/jsx';
import type { Sheet } from '../paper/layOut.ts';
import { mm, paperSizes } from '../paper/measures.ts';
import type { Page } from '../paper/page.ts';
import { dayText } from '../wording/date.ts';
import { card, subject } from './cardWords.ts';
import { largeBack, largeFront } from './largeWords.tsx';
import { packed, type Packable } from './packed.ts';
import { Leaf } from './parts/blocks.tsx';
import { large } from './parts/largeBlocks.tsx';
import { rule, safe, sideHeight, weight } from './parts/look.ts';
import type { SheetInput } from './sheet.ts';
import type { LayOut, SheetKind } from './sheetKind.ts';
import { told } from './sheetWords.ts';

const gap = mm(4);
/** The head of a page takes at least this much; where it takes more, the press says so and the page gives a block on. */
const headRoom = mm(23);

export const careCardLarge: SheetKind = {
  id: 'care-card-large',
  name: (input) => told(input, 'large', 'kind'),
  title: (input) => told(input, 'large', 'title', { name: input.system.name }),
  subject: (input) => card(input, 'pdfSubject'),
  pages,
  fits: () => 'yes',
  scale: 'fit',
};

/** Front and back each begin a page of their own, so that the front can hang at the tank without the back. */
async function* pages(input: SheetInput, layOut: LayOut): AsyncGenerator<Page, void, void> {
  const { place } = input.system;
  const front = {
    kind: told(input, 'large', 'kind'),
    about: [...(place === '' ? [] : [place]), subject(input)],
  };
  const back = { kind: card(input, 'keeperKind'), about: [] };
  for (const [head, all] of [
    [front, largeFront(input)],
    [back, largeBack(input)],
  ] as const) {
    const draw = (some: readonly Packable[]): Sheet =>
      side(input, some[0] === all[0] ? head : { ...head, about: [] }, some);
    yield* packed({ all, room: sideHeight - headRoom, gap, draw }, layOut);
  }
}

/** What is told about the system stands on the first page only. */
type Head = { readonly kind: string; readonly about: readonly string[] };

function side(input: SheetInput, head: Head, some: readonly Packable[]): Sheet {
  return {
    ...paperSizes[input.paper],
    title: careCardLarge.title(input),
    lang: 'en',
    root: (
      <Leaf height={mm(254)}>
        <div
          style={{
            display: 'flex',
            flexDirection: 'column',
            width: safe.width,
            height: sideHeight,
            rowGap: gap,
          }}
        >
          <LargeHead input={input} head={head} />
          {some.map(({ content }) => (
            <Block content={content} />
          ))}
        </div>
      </Leaf>
    ),
  };
}

/** What `packed` measures. */
function Block({ content }: { content: JSXNode }) {
  return (
    <div
      data-role="Sect"
      style={{ display: 'flex', flexDirection: 'column', flexShrink: 0, width: safe.width }}
    >
      {content}
    </div>
  );
}

function LargeHead({ input, head }: { input: SheetInput; head: Head }) {
  const { name } = input.system;
  const printed = card(input, 'printed', { date: dayText(input.day, input.words.catalogue) });
  return (
    <div
      style={{
        display: 'flex',
        flexDirection: 'column',
        flexShrink: 0,
        width: safe.width,
        borderTop: `${rule.head}px solid black`,
        paddingTop: mm(2),
        fontSize: large.text,
        lineHeight: 1.25,
      }}
    >
      <div
        data-role="H1"
        style={{ ...oneName, fontSize: name.length > longName ? large.heading : large.title }}
      >
        {name}
      </div>
      <div data-role="P" style={{ display: 'flex', justifyContent: 'space-between' }}>
        <div style={{ display: 'flex', fontWeight: weight.heavy }}>{head.kind}</div>
        <div style={{ display: 'flex' }}>{printed}</div>
      </div>
      {head.about.map((line) => (
        <div data-role="P" style={{ ...roomy, display: 'block', lineClamp: 2, wordBreak: 'break-word' }}>
          {line}
        </div>
      ))}
    </div>
  );
}

/** Letters that stand wider apart together than alone reach a little on. */
const roomy = { paddingRight: mm(3), boxSizing: 'border-box' } as const;

/** Longer names are set smaller; what is still too long for one line is shortened with a mark. */
const longName = 26;

const oneName = {
  ...roomy,
  display: 'block',
  lineClamp: 1,
  width: safe.width,
  fontWeight: weight.heavy,
  lineHeight: 1.15,
  wordBreak: 'break-word',
} as const;
