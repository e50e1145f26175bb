/** The head of a calendar page: whose season it is, then months, week numbers and Mondays over their columns. */
import type { Week } from '../../core/turnover/turnover.ts';
import { mm } from '../../paper/measures.ts';
import { dayOfMonth, dayText, monthText } from '../../wording/date.ts';
import { season, type TurnoverInput } from '../turnoverSheet.ts';
import { type CalendarLook, inLine, oneLine } from './calendarLook.ts';
import { rule, weight } from './look.ts';

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
      <div data-role="P" style={inLine(about, look.text, look.label + weeks.length * week)}>
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
        {months.map(({ date, count }) => {
          const [width, text] = [count * week, count > 1 ? monthText(date, input.words.catalogue) : ''];
          return <div style={{ ...inLine(text, look.text, width), width, flexShrink: 0 }}>{text}</div>;
        })}
      </div>
      <WeekNumbers input={input} look={look} weeks={weeks} week={week} />
      <div style={{ display: 'flex', fontSize: look.small }}>
        <div style={{ ...oneLine, width: look.label, flexShrink: 0 }}>{season(input, 'calendar.monday')}</div>
        {weeks.map(({ monday }) => (
          <div style={cell}>{dayOfMonth(monday)}</div>
        ))}
      </div>
    </div>
  );
}

/** A number is so many times as wide as it is high, with air beside it. */
const twoFigures = 1.4;

/** In one line where columns are wide enough; else every other week stands a line lower. */
function WeekNumbers({ input, look, weeks, week }: Omit<HeadProps, 'part'>) {
  const isTight = week < twoFigures * look.weekNumber;
  const lines = isTight ? [0, 1] : [0];
  const every = lines.length;
  // Each number has its own column and half a column on both sides.
  const cell = { ...centred, width: every * week, fontSize: look.weekNumber } as const;
  return (
    <div style={{ display: 'flex', flexDirection: 'column', position: 'relative', fontWeight: weight.heavy }}>
      <div
        style={{
          ...oneLine,
          position: 'absolute',
          left: 0,
          bottom: 0,
          width: look.label / 2,
          fontSize: look.small,
        }}
      >
        {season(input, 'calendar.week')}
      </div>
      {lines.map((line) => (
        <div style={{ display: 'flex', paddingLeft: look.label + line * week - ((every - 1) * week) / 2 }}>
          {weeks
            .filter((_, at) => at % every === line)
            .map(({ isoWeek }) => (
              <div style={cell}>{String(isoWeek)}</div>
            ))}
        </div>
      ))}
    </div>
  );
}

const centred = { display: 'flex', justifyContent: 'center', flexShrink: 0, lineHeight: 1.05 } as const;

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
