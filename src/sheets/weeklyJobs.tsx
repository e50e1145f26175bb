/** The weekly job list: what to sow, plant and pick, each with a ring to tick. */
import type { Week } from '../core/turnover/turnover.ts';
import { mm } from '../paper/measures.ts';
import type { Page } from '../paper/page.ts';
import { dayText } from '../wording/date.ts';
import { jobText } from '../wording/harvest.ts';
import { mindLines } from './mindLines.ts';
import { type Packable, packed } from './packed.ts';
import { Heading, TickList } from './parts/blocks.tsx';
import { sideHeight } from './parts/look.ts';
import { SeasonBlock, seasonSide } from './parts/SeasonSide.tsx';
import type { LayOut } from './sheetKind.ts';
import { season, type TurnoverInput, type TurnoverKind } from './turnoverSheet.ts';

export const weeklyJobs: TurnoverKind = {
  id: 'weekly-jobs',
  name: (input) => season(input, 'jobList.kind'),
  title: (input) => season(input, 'jobList.title', { name: input.plan.task.name }),
  subject: (input) => season(input, 'jobList.pdfSubject'),
  pages,
  fits: ({ jobs }) => (jobs.length > 0 ? 'yes' : 'no'),
  scale: 'fit',
};

const headRoom = mm(30);
const gap = mm(2);

async function* pages(input: TurnoverInput, layOut: LayOut): AsyncGenerator<Page, void, void> {
  const draw = (some: readonly Packable[]) =>
    seasonSide(
      input,
      weeklyJobs,
      'jobList',
      <div style={{ display: 'flex', flexDirection: 'column', rowGap: gap }}>
        {some.map(({ content }) => (
          <SeasonBlock content={content} />
        ))}
      </div>,
    );
  yield* packed({ all: blocks(input), room: sideHeight - headRoom, gap, draw }, layOut);
}

/** Letters that stand wider apart together than alone reach a little on. */
function Mind({ text }: { text: string }) {
  return (
    <div
      data-role="P"
      style={{ display: 'block', lineHeight: 1.3, paddingRight: mm(3), boxSizing: 'border-box' }}
    >
      {text}
    </div>
  );
}

/** Cautions first; then every week in which something is to be done. */
function blocks(input: TurnoverInput): readonly Packable[] {
  const mind = mindLines(input).map((text): Packable => ({ content: <Mind text={text} />, keep: 'alone' }));
  const before: readonly Packable[] =
    mind.length === 0
      ? []
      : [{ content: <Heading level="H2" text={season(input, 'jobList.mind')} />, keep: 'withNext' }, ...mind];
  return [...before, ...input.plan.calendar.flatMap((week) => weekBlocks(input, week))];
}

function weekBlocks(input: TurnoverInput, week: Week): readonly Packable[] {
  const jobs = input.jobs.filter((job) => job.week === week.index);
  if (jobs.length === 0 && week.holiday === null) return [];
  const said = { catalogue: input.words.catalogue, units: input.units };
  const date = dayText(jobs[0]?.date ?? week.monday, input.words.catalogue);
  const head = season(input, 'jobList.week', { week: String(week.isoWeek), date });
  const under = <Heading level="H2" text={season(input, 'jobList.goesOn', { head })} />;
  const texts = week.holiday === null ? [] : [season(input, 'jobList.holiday', { name: week.holiday })];
  const lines = [...texts, ...jobs.map((job) => jobText(job, input.plan, said))];
  const [first, ...others] = lines;
  return [
    { content: <Heading level="H2" text={head} />, keep: 'withNext' },
    ...[first ?? '', ...others].map(
      (line): Packable => ({ content: <TickList items={[line]} roomy="roomy" />, keep: 'alone', under }),
    ),
  ];
}
