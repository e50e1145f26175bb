/** The crop turnover calendar for the wall: places down, weeks across. */
import type { Week } from '../core/turnover/turnover.ts';
import { turnoverDrawing } from '../drawing/turnoverDrawing.ts';
import { type TurnoverRow, turnoverRows } from '../drawing/turnoverRows.ts';
import type { Sheet } from '../paper/layOut.ts';
import { mm, type PaperSize, paperSizes, wallSizes } from '../paper/measures.ts';
import type { Page } from '../paper/page.ts';
import { type CalendarFootWords, calendarFoot } from './calendarFoot.ts';
import { CalendarFoot } from './parts/CalendarFoot.tsx';
import { CalendarGrid } from './parts/CalendarGrid.tsx';
import { CalendarHead } from './parts/CalendarHead.tsx';
import { calendarLooks, type CalendarLook } from './parts/calendarLook.ts';
import type { LayOut, WallSize } from './sheetKind.ts';
import { season, type TurnoverInput, type TurnoverKind } from './turnoverSheet.ts';

/** On the paper of the house over two pages or more; on wall paper the whole season side by side. */
export const turnoverCalendars: readonly TurnoverKind[] = [
  kindOf('turnover-calendar', null),
  ...(['A3', 'A2', '11x17', '17x22'] as const).map((size) => kindOf(`turnover-calendar-${size}`, size)),
];

function kindOf(id: TurnoverKind['id'], size: WallSize | null): TurnoverKind {
  return {
    id,
    name: (input) => season(input, size === null ? 'calendar.kind' : 'calendar.kindOn', { size: size ?? '' }),
    title: (input) => season(input, 'calendar.title', { name: input.plan.task.name }),
    subject: (input) => season(input, 'calendar.pdfSubject'),
    pages: (input, layOut) => pages(input, layOut, size),
    fits: ({ plan, paper }) => (plan.sowings.length > 0 && isFor(size, paper) ? 'yes' : 'no'),
    scale: 'fit',
  };
}

/** Wall paper of the same family as the house's own. */
function isFor(size: WallSize | null, paper: TurnoverInput['paper']): boolean {
  return size === null || (paper === 'A4') === size.startsWith('A');
}

async function* pages(
  input: TurnoverInput,
  layOut: LayOut,
  size: WallSize | null,
): AsyncGenerator<Page, void, void> {
  const look = calendarLooks[size === null ? 'house' : size === 'A2' || size === '17x22' ? 'large' : 'wall'];
  const upright: PaperSize = size === null ? paperSizes[input.paper] : wallSizes[size];
  const paper = { width_mm: upright.height_mm, height_mm: upright.width_mm };
  const foot = calendarFoot(input, look, mm(paper.width_mm) - 2 * look.margin);
  const rows = parted(turnoverRows(input.plan), rowsOnPage(paper, look, foot.height));
  const spans = weekSpans(input.plan.calendar, look);
  for (const [at, some] of rows.entries())
    for (const weeks of spans)
      yield layOut(sideOf(input, { paper, look, rows: some, weeks, part: at, foot }));
}

/** So many rows find room between head and key. */
function rowsOnPage({ height_mm }: PaperSize, look: CalendarLook, foot: number): number {
  return Math.max(2, Math.floor((mm(height_mm) - 2 * look.margin - look.head - foot) / look.row));
}

/** Pages of rows; what heads them stands above them on each of them. */
function parted(rows: readonly TurnoverRow[], most: number): readonly (readonly TurnoverRow[])[] {
  const parts: TurnoverRow[][] = [[]];
  let head: TurnoverRow | null = null;
  for (const row of rows) {
    const isHead = !('stays' in row);
    if (isHead) head = row;
    const page = parts[parts.length - 1] ?? [];
    const needs = isHead ? 2 : 1;
    if (page.length + needs <= most) page.push(row);
    else parts.push(isHead || head === null ? [row] : [head, row]);
  }
  return parts.filter((part) => part.length > 0);
}

function weekSpans(calendar: readonly Week[], look: CalendarLook): readonly (readonly Week[])[] {
  const count = Math.ceil(calendar.length / look.weeks);
  const each = Math.ceil(calendar.length / count);
  return Array.from({ length: count }, (_, at) => calendar.slice(at * each, (at + 1) * each));
}

type Side = {
  readonly paper: PaperSize;
  readonly look: CalendarLook;
  readonly rows: readonly TurnoverRow[];
  readonly weeks: readonly Week[];
  readonly part: number;
  readonly foot: CalendarFootWords;
};

/** The number of the last week may be a little wider than its column. */
const lastNumber = mm(1.5);

function sideOf(input: TurnoverInput, { paper, look, rows, weeks, part, foot }: Side): Sheet {
  const inner = mm(paper.width_mm) - 2 * look.margin;
  const from_week = weeks[0]?.index ?? 0;
  const to_week = weeks[weeks.length - 1]?.index ?? 0;
  const week = Math.floor((inner - look.label - lastNumber) / weeks.length);
  const holidays = weeks.filter(({ holiday }) => holiday !== null).map(({ index }) => index);
  const scale = { label: look.label, week, row: look.row, from_week, to_week };
  const drawing = turnoverDrawing(rows, scale, holidays);
  return {
    ...paper,
    title: season(input, 'calendar.title', { name: input.plan.task.name }),
    lang: 'en',
    root: (
      <div
        style={{
          display: 'flex',
          flexDirection: 'column',
          width: '100%',
          height: '100%',
          padding: look.margin,
          boxSizing: 'border-box',
          backgroundColor: 'white',
          color: 'black',
          fontSize: look.text,
        }}
      >
        <CalendarHead input={input} look={look} weeks={weeks} week={week} part={part} />
        <CalendarGrid input={input} look={look} rows={rows} drawing={drawing} />
        <CalendarFoot input={input} look={look} foot={foot} />
      </div>
    ),
  };
}
