/** The wall poster as one page: how this very system works, for whoever passes. */
import type { Sheet } from '../paper/layOut.ts';
import { mm } from '../paper/measures.ts';
import { overflows } from '../paper/overflows.ts';
import type { Page } from '../paper/page.ts';
import { dayText } from '../wording/date.ts';
import { lengthUnit_mm } from '../wording/quantity.ts';
import { shorten } from '../wording/shorten.ts';
import { card } from './cardWords.ts';
import { rule, weight } from './parts/look.ts';
import { posterInk, posterPaper, posterRule, posterSize } from './parts/posterLook.ts';
import { Far, LimitBox, Near, PosterBox, PosterHeading, Station, StoryBox } from './parts/PosterParts.tsx';
import { PosterPicture } from './parts/PosterPicture.tsx';
import { emergency, limits, lineLabels, looks, poster, stations, story } from './posterWords.ts';
import type { SheetInput, Words } from './sheet.ts';
import type { LayOut } from './sheetKind.ts';
import { markWords } from './systemWords.ts';

type Room = { readonly picture: number; readonly looks: 'yes' | 'no' };

/** From the largest drawing down, then without what the care card tells too: the first with which everything has room. */
const rooms: readonly Room[] = [
  ...[225, 210, 195, 180, 165, 150].map((height): Room => ({ picture: mm(height), looks: 'yes' })),
  ...[180, 150, 125].map((height): Room => ({ picture: mm(height), looks: 'no' })),
];
const limitsWidth = mm(84);
const gutter = mm(10);

/** One layout serves every size, but each size is asked for by itself: the last one is kept, with what it was made from. */
const last = new WeakMap<Words, { readonly madeFrom: string; readonly page: Page }>();

export async function posterPage(input: SheetInput, layOut: LayOut): Promise<Page> {
  const madeFrom = JSON.stringify([input.system, input.units, input.day]);
  const known = last.get(input.words);
  if (known?.madeFrom === madeFrom) return known.page;
  let page: Page | undefined;
  for (const room of rooms) {
    page = await layOut(sheet(input, room));
    if (overflows(page).length === 0) break;
  }
  if (page === undefined) throw new Error('a poster with no room at all');
  last.set(input.words, { madeFrom, page });
  return page;
}

function sheet(input: SheetInput, room: Room): Sheet {
  return {
    ...posterPaper,
    title: poster(input, 'title', { name: input.system.name }),
    lang: 'en',
    root: (
      <div style={paper}>
        <div style={ink}>
          <Head input={input} />
          <div style={{ display: 'flex', columnGap: gutter, alignItems: 'center' }}>
            <Picture input={input} height={room.picture} />
            <div style={{ display: 'flex', flexDirection: 'column', width: limitsWidth, rowGap: mm(3) }}>
              {limits(input).map((limit) => (
                <LimitBox limit={limit} />
              ))}
            </div>
          </div>
          <Way input={input} />
          <Story input={input} />
          {room.looks === 'yes' ? <Looks input={input} /> : null}
          <Foot input={input} />
          <Near text={poster(input, 'defer')} />
        </div>
      </div>
    ),
  };
}

const paper = {
  display: 'flex',
  width: '100%',
  height: '100%',
  backgroundColor: 'white',
  color: 'black',
  justifyContent: 'center',
  alignItems: 'center',
  fontWeight: weight.text,
} as const;

const ink = {
  display: 'flex',
  flexDirection: 'column',
  justifyContent: 'space-between',
  rowGap: mm(4),
  ...posterInk,
} as const;

/** Names longer than this are set smaller, and smaller again. */
const longName = 20;
const longestName = 32;

function titleSize(name: string): number {
  if (name.length > longestName) return posterSize.longestTitle;
  return name.length > longName ? posterSize.longTitle : posterSize.title;
}

function Head({ input }: { input: SheetInput }) {
  const { name, place } = input.system;
  const date = dayText(input.day, input.words.catalogue);
  return (
    <div
      style={{
        display: 'flex',
        flexDirection: 'column',
        borderTop: `${posterRule.head}px solid black`,
        paddingTop: mm(3),
      }}
    >
      <div data-role="H1" style={{ ...oneName, fontSize: titleSize(name) }}>
        {shorten(name, 60)}
      </div>
      <Near
        text={[shorten(place, 50), poster(input, 'how', { date })].filter((one) => one !== '').join(' · ')}
      />
    </div>
  );
}

const oneName = {
  display: 'block',
  lineClamp: 2,
  fontWeight: weight.heavy,
  lineHeight: 1.1,
  wordBreak: 'break-word',
} as const;

function Picture({ input, height }: { input: SheetInput; height: number }) {
  const labels = lineLabels(input);
  return (
    <PosterPicture
      section={input.plan.section}
      width={posterInk.width - limitsWidth - gutter}
      height={height}
      labels={labels}
      marks={marksOf(input)}
      alt={poster(input, 'alt', {
        stations: stations(input)
          .map(({ word }, i) => `${i + 1} ${word}`)
          .join(', '),
        lines: Object.values(labels).join(', '),
      })}
      unit_mm={lengthUnit_mm(input.units)}
    />
  );
}

/** Stations and names; holes and widths are the builder's. */
function marksOf(input: SheetInput): Readonly<Record<string, string>> {
  const wanted = Object.entries(markWords(input)).filter(([key]) => /^(station|name)\./.test(key));
  return Object.fromEntries(wanted);
}

function Way({ input }: { input: SheetInput }) {
  const columns = 3;
  const width = (posterInk.width - (columns - 1) * mm(6)) / columns;
  return (
    <div style={{ display: 'flex', flexDirection: 'column' }}>
      <PosterHeading text={poster(input, 'wayHead')} />
      <div data-role="L" style={{ display: 'flex', flexWrap: 'wrap', columnGap: mm(6) }}>
        {stations(input).map((told, i) => (
          <Station number={String(i + 1)} told={told} width={width} />
        ))}
      </div>
    </div>
  );
}

function Story({ input }: { input: SheetInput }) {
  const steps = story(input);
  const width = (posterInk.width - 3 * mm(6)) / 4;
  return (
    <div style={{ display: 'flex', flexDirection: 'column' }}>
      <PosterHeading text={poster(input, 'storyHead')} />
      <div style={{ display: 'flex', columnGap: mm(6) }}>
        {steps.map((step, i) => (
          <StoryBox step={step} width={width} more={i + 1 < steps.length ? 'yes' : 'no'} />
        ))}
      </div>
    </div>
  );
}

/** What to look at, and what to do when it is not so; then what holds for every child. */
function Foot({ input }: { input: SheetInput }) {
  const { head, first } = emergency(input);
  return (
    <PosterBox>
      <Far text={`${head} ${poster(input, 'fetch')}`} as="H2" />
      <Near text={first} />
      <Near text={poster(input, 'children')} heavy="heavy" />
      <Call input={input} />
    </PosterBox>
  );
}

/** Short lines in two columns. */
function Looks({ input }: { input: SheetInput }) {
  return (
    <div style={{ display: 'flex', flexDirection: 'column' }}>
      <PosterHeading text={poster(input, 'lookHead')} />
      <div data-role="L" style={{ display: 'flex', flexWrap: 'wrap', rowGap: mm(1) }}>
        {looks(input).map((text) => (
          <div data-role="LI" style={{ display: 'flex', width: '50%' }}>
            <div data-role="LBody" style={{ display: 'flex', fontSize: posterSize.near, lineHeight: 1.2 }}>
              {text}
            </div>
          </div>
        ))}
      </div>
    </div>
  );
}

function Call({ input }: { input: SheetInput }) {
  return (
    <div
      data-role="P"
      style={{ display: 'flex', alignItems: 'flex-end', fontSize: posterSize.near, height: mm(12) }}
    >
      <div style={{ display: 'flex', fontWeight: weight.heavy, marginRight: mm(3) }}>
        {card(input, 'call')}
      </div>
      <div style={{ display: 'flex', flex: 1, height: mm(11), borderBottom: `${rule.box}px solid black` }} />
    </div>
  );
}
