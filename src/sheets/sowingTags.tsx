/** A tag for every sowing, for tray and bed, on the keeper's own labels or cut from plain paper. */
import type { Sowing } from '../core/turnover/turnover.ts';
import { mm } from '../paper/measures.ts';
import type { Page } from '../paper/page.ts';
import { dayText } from '../wording/date.ts';
import { cautionTexts, counted, firstPicking, placesText } from '../wording/harvest.ts';
import { shorten } from '../wording/shorten.ts';
import { gridOf, labelPages } from './labelPages.tsx';
import type { LabelLine, LabelText } from './labelTexts.ts';
import { TickList } from './parts/blocks.tsx';
import { seasonSide } from './parts/SeasonSide.tsx';
import { TestBars } from './parts/TestBars.tsx';
import type { LayOut } from './sheetKind.ts';
import { told } from './sheetWords.ts';
import { cropName, saidIn, season, type TurnoverInput, type TurnoverKind } from './turnoverSheet.ts';

export const sowingTags: TurnoverKind = {
  id: 'sowing-tags',
  name: (input) => season(input, 'tags.kind'),
  title: (input) => season(input, 'tags.title', { name: input.plan.task.name }),
  subject: (input) => season(input, 'tags.pdfSubject'),
  pages,
  fits: ({ plan }) => (plan.sowings.length > 0 ? 'yes' : 'no'),
  scale: 'true',
};

async function* pages(input: TurnoverInput, layOut: LayOut): AsyncGenerator<Page, void, void> {
  const paper = { own: input.labels, paper: input.paper };
  yield layOut(howTo(input));
  const texts = input.plan.sowings.map((sowing) => tagOf(input, sowing));
  yield* labelPages({ texts, spare: null, title: sowingTags.title(input) }, paper, layOut);
}

function howTo(input: TurnoverInput) {
  const { columns, rows } = gridOf({ own: input.labels, paper: input.paper });
  const own = input.labels === null ? 'plain' : 'own';
  const how = own === 'own' ? ['how.ownPrint', 'how.ownHold'] : ['how.plainPrint', 'how.plainHold'];
  const steps = [...how, 'how.cover'].map((key) => told(input, 'labels', key));
  const subject = told(input, 'labels', own, { columns: String(columns), rows: String(rows) });
  return seasonSide(
    input,
    sowingTags,
    { kind: season(input, 'tags.kind'), subject },
    <div style={{ display: 'flex', flexDirection: 'column', rowGap: mm(6) }}>
      <TestBars input={input} />
      <TickList items={[...steps, season(input, 'tags.where')]} />
    </div>,
  );
}

/** Longer names of beds are cut with a mark. */
const longBed = 40;

/** What food and law want said has the first rank: it stays on the smallest label. */
function tagOf(input: TurnoverInput, sowing: Sowing): LabelText {
  const { catalogue } = input.words;
  const { sown, planted } = sowing.dates;
  const date = (iso: string): string => dayText(iso, catalogue);
  const bed = shorten(input.plan.task.beds[sowing.bed]?.name ?? '', longBed);
  return {
    title: cropName(input, sowing.crop),
    lines: [
      ...cautionTexts(input.plan, new Set([sowing.crop]), saidIn(input)).map((text) => said(text, 0)),
      said(
        season(input, 'tags.sown', {
          date: date(sown),
          seeds: counted('seeds', sowing.seeds, saidIn(input)),
        }),
        1,
      ),
      said(
        planted === null
          ? season(input, 'tags.inBed')
          : season(input, 'tags.planted', { date: date(planted) }),
        2,
      ),
      said(season(input, 'tags.ready', { when: firstPicking(sowing, saidIn(input)) }), 4),
      said(`${bed}: ${placesText(sowing.strips, catalogue)}`, 1),
    ],
  };
}

function said(text: string, rank: number): LabelLine {
  return { kind: 'said', text, rank };
}
