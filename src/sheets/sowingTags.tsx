/** A tag for every sowing, to be cut out and stuck into tray and bed. */
import type { Sowing } from '../core/turnover/turnover.ts';
import type { Sheet } from '../paper/layOut.ts';
import { mm, paperSizes } from '../paper/measures.ts';
import type { Page } from '../paper/page.ts';
import { dayText } from '../wording/date.ts';
import { placesText } from '../wording/harvest.ts';
import { rule, safe, size, weight } from './parts/look.ts';
import { Leaf } from './parts/blocks.tsx';
import type { LayOut } from './sheetKind.ts';
import { cropName, season, type TurnoverInput, type TurnoverKind } from './turnoverSheet.ts';

export const sowingTags: TurnoverKind = {
  id: 'sowing-tags',
  name: (input) => season(input, 'tags.kind'),
  title: (input) => season(input, 'tags.title', { name: input.plan.task.name }),
  subject: (input) => season(input, 'tags.pdfSubject'),
  pages,
  fits: ({ plan }) => (plan.sowings.length > 0 ? 'yes' : 'no'),
  scale: 'fit',
};

const across = 3;
const down = 8;
const tag = { width: Math.floor(safe.width / across), height: mm(29) };
const each = across * down;

async function* pages(input: TurnoverInput, layOut: LayOut): AsyncGenerator<Page, void, void> {
  const { sowings } = input.plan;
  for (let from = 0; from < sowings.length; from += each)
    yield layOut(sheetOf(input, sowings.slice(from, from + each), from));
}

function sheetOf(input: TurnoverInput, some: readonly Sowing[], from: number): Sheet {
  return {
    ...paperSizes[input.paper],
    title: sowingTags.title(input),
    lang: 'en',
    root: (
      <Leaf height={safe.height}>
        <div
          data-role={from === 0 ? 'H1' : 'P'}
          style={{ display: 'block', lineClamp: 1, height: mm(8), fontWeight: weight.heavy }}
        >
          {sowingTags.title(input)}
        </div>
        <div style={{ display: 'flex', flexWrap: 'wrap', width: safe.width }}>
          {some.map((sowing) => (
            <Tag input={input} sowing={sowing} />
          ))}
        </div>
      </Leaf>
    ),
  };
}

function Tag({ input, sowing }: { input: TurnoverInput; sowing: Sowing }) {
  const date = (iso: string): string => dayText(iso, input.words.catalogue);
  const bed = input.plan.task.beds[sowing.bed]?.name ?? '';
  const { sown, planted, readyFrom } = sowing.dates;
  return (
    <div
      data-role="Sect"
      style={{
        display: 'flex',
        flexDirection: 'column',
        boxSizing: 'border-box',
        ...tag,
        padding: mm(2),
        border: `${rule.thin}px dashed black`,
        fontSize: size.note,
        lineHeight: 1.2,
      }}
    >
      <div
        data-role="H2"
        style={{ display: 'block', lineClamp: 1, fontSize: size.heading, fontWeight: weight.heavy }}
      >
        {cropName(input, sowing.crop)}
      </div>
      <div data-role="P" style={line}>
        {season(input, 'tags.sown', { date: date(sown), seeds: String(sowing.seeds) })}
      </div>
      <div data-role="P" style={line}>
        {planted === null
          ? season(input, 'tags.inBed')
          : season(input, 'tags.planted', { date: date(planted) })}
      </div>
      <div data-role="P" style={line}>
        {season(input, 'tags.ready', { date: date(readyFrom) })}
      </div>
      <div data-role="P" style={line}>
        {`${bed}: ${placesText(sowing.strips, input.words.catalogue)}`}
      </div>
    </div>
  );
}

const line = { display: 'block', lineClamp: 1, wordBreak: 'break-all' } as const;
