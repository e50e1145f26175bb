/** The parts of a calendar page: head with the weeks, the rows, and the key. */
import type { Week } from '../../core/turnover/turnover.ts';
import type { BoxWords, TurnoverDrawing } from '../../drawing/turnoverDrawing.ts';
import type { TurnoverRow } from '../../drawing/turnoverRows.ts';
import { mm } from '../../paper/measures.ts';
import { dayOfMonth, dayText, monthText } from '../../wording/date.ts';
import { cropName, season, type TurnoverInput } from '../turnoverSheet.ts';
import type { CalendarLook } from './calendarLook.ts';
import { rule, weight } from './look.ts';
import { Shapes } from './Shapes.tsx';

type HeadProps = {
  readonly input: TurnoverInput;
  readonly look: CalendarLook;
  readonly weeks: readonly Week[];
  readonly week: number;
  readonly part: number;
};

export function CalendarHead({ input, look, weeks, week, part }: HeadProps) {
  const { task } = input.plan;
  const [first, last] = [weeks[0], weeks[weeks.length - 1]];
  const from = dayText(first?.monday ?? '', input.words.catalogue);
  const to = dayText(last?.monday ?? '', input.words.catalogue);
  const about = season(input, 'calendar.about', { place: task.placeName, from, to });
  return (
    <div
      style={{
        display: 'flex',
        flexDirection: 'column',
        height: look.head,
        borderTop: `${rule.head}px solid black`,
        paddingTop: mm(1.4),
      }}
    >
      <div style={{ display: 'flex', justifyContent: 'space-between', alignItems: 'flex-start' }}>
        <div data-role={part === 0 ? 'H1' : 'P'} style={{ ...title, fontSize: look.title }}>
          {task.name}
        </div>
        <div data-role="P" style={{ display: 'flex', fontWeight: weight.heavy }}>
          {season(input, 'calendar.heading')}
        </div>
      </div>
      <div data-role="P" style={oneLine}>
        {about}
      </div>
      <div style={{ display: 'flex', flex: 1 }} />
      <WeekHeads input={input} look={look} weeks={weeks} week={week} />
    </div>
  );
}

const title = { display: 'block', lineClamp: 1, flex: 1, fontWeight: weight.heavy, lineHeight: 1.1 } as const;

/** Months over week numbers over Mondays. */
function WeekHeads({ input, look, weeks, week }: Omit<HeadProps, 'part'>) {
  const months = monthRuns(weeks);
  const cell = { display: 'flex', justifyContent: 'center', width: week, flexShrink: 0 } as const;
  return (
    <div data-role="Artifact" style={{ display: 'flex', flexDirection: 'column' }}>
      <div style={{ display: 'flex', paddingLeft: look.label, fontWeight: weight.heavy }}>
        {months.map(({ date, count }) => (
          <div style={{ ...oneLine, width: count * week, flexShrink: 0 }}>
            {count > 1 ? monthText(date, input.words.catalogue) : ''}
          </div>
        ))}
      </div>
      <div style={{ display: 'flex', fontWeight: weight.heavy }}>
        <div style={{ ...oneLine, width: look.label, fontSize: look.small }}>
          {season(input, 'calendar.week')}
        </div>
        {weeks.map(({ isoWeek }) => (
          <div style={cell}>{String(isoWeek)}</div>
        ))}
      </div>
      <div style={{ display: 'flex', fontSize: look.small }}>
        <div style={{ ...oneLine, width: look.label }}>{season(input, 'calendar.monday')}</div>
        {weeks.map(({ monday }) => (
          <div style={cell}>{dayOfMonth(monday)}</div>
        ))}
      </div>
    </div>
  );
}

/** Letters that stand wider apart together than alone reach a little on. */
const oneLine = {
  display: 'block',
  lineClamp: 1,
  wordBreak: 'break-all',
  boxSizing: 'border-box',
  paddingRight: mm(1),
} as const;
const across = { ...oneLine, width: '100%' } as const;

/** Weeks whose Mondays lie in one month. */
function monthRuns(weeks: readonly Week[]): readonly { readonly date: string; readonly count: number }[] {
  const runs: { date: string; count: number }[] = [];
  for (const { monday } of weeks) {
    const last = runs.at(-1);
    if (last && last.date.slice(0, 7) === monday.slice(0, 7)) last.count += 1;
    else runs.push({ date: monday, count: 1 });
  }
  return runs;
}

type GridProps = {
  readonly input: TurnoverInput;
  readonly look: CalendarLook;
  readonly rows: readonly TurnoverRow[];
  readonly drawing: TurnoverDrawing;
};

export function CalendarGrid({ input, look, rows, drawing }: GridProps) {
  return (
    <div
      data-role="Figure"
      data-alt={season(input, 'calendar.alt')}
      style={{ display: 'flex', position: 'relative', width: drawing.width, height: drawing.height }}
    >
      <Shapes shapes={drawing.shapes} width={drawing.width} height={drawing.height} />
      {rows.map((row, at) => (
        <div
          style={{ ...rowLabel, top: at * look.row, width: labelWidth(row, look, drawing), height: look.row }}
        >
          <div style={row.kind === 'bed' ? bedName : across}>{rowName(input, row)}</div>
        </div>
      ))}
      {drawing.words.map((one) => (
        <div
          style={{
            ...boxed,
            left: one.left,
            top: one.top,
            width: one.width,
            height: look.row,
            fontSize: fontOf(one, look),
          }}
        >
          <div style={one.kind === 'begins' ? across : onHatch}>{wordsOf(input, one)}</div>
        </div>
      ))}
    </div>
  );
}

const rowLabel = { display: 'flex', position: 'absolute', left: 0, alignItems: 'center' } as const;
const boxed = {
  display: 'flex',
  position: 'absolute',
  alignItems: 'center',
  paddingLeft: mm(0.7),
  boxSizing: 'border-box',
} as const;
/** White behind the word, so that no line runs through a letter. */
const onHatch = {
  display: 'flex',
  backgroundColor: 'white',
  lineHeight: 1,
  paddingLeft: mm(0.3),
  paddingRight: mm(0.3),
} as const;
const bedName = { ...across, fontWeight: weight.heavy } as const;

function labelWidth(row: TurnoverRow, look: CalendarLook, { width }: TurnoverDrawing): number {
  return row.kind === 'bed' ? width : look.label;
}

function fontOf({ kind }: BoxWords, look: CalendarLook): number {
  return kind === 'begins' ? look.text : look.small;
}

function rowName(input: TurnoverInput, row: TurnoverRow): string {
  if (row.kind === 'nursery') return season(input, 'calendar.nursery');
  if (row.kind === 'bed') {
    const bed = input.plan.task.beds[row.bed];
    const mode = season(input, `modes.${bed?.mode ?? 'siphon'}`);
    return season(input, 'calendar.bed', { name: bed?.name ?? '', places: String(bed?.places ?? 0), mode });
  }
  const { first, last } = row;
  if (first === last) return season(input, 'calendar.place', { place: String(first) });
  return season(input, 'calendar.places', { first: String(first), last: String(last) });
}

function wordsOf(input: TurnoverInput, { kind, stay }: BoxWords): string {
  if (kind === 'begins') {
    const crop = cropName(input, stay.crop);
    return season(input, `calendar.${stay.begins}`, { crop });
  }
  return season(input, kind === 'pick' ? 'calendar.pick' : 'calendar.rest');
}

/** What the hatching means, in words. */
export function CalendarKey({ input, look }: { input: TurnoverInput; look: CalendarLook }) {
  return (
    <div
      data-role="P"
      style={{
        display: 'block',
        paddingTop: mm(1.4),
        fontSize: look.small,
        lineHeight: 1.25,
      }}
    >
      {season(input, 'calendar.key')}
    </div>
  );
}
