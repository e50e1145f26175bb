/** What is picked week by week, as bars under a line of what is wanted; and feed that plants take up, beside what goes in. */
import { path, type Shape, tenth } from './shape.ts';

export type HarvestBars = {
  readonly width: number;
  readonly height: number;
  readonly shapes: readonly Shape[];
  /** Left edge of each of the weeks that were asked for, for the words under them. */
  readonly marks: readonly number[];
};

/** A week with a mark at the foot, such as the first of a month. */
const markDepth = 8;

const hatch = 8;

/** Bars and line share one scale, from nothing to the larger of both. */
export function harvestBars(
  { wanted, picked }: { readonly wanted: readonly number[]; readonly picked: readonly number[] },
  size: { readonly width: number; readonly height: number },
  markWeeks: readonly number[] = [],
): HarvestBars {
  const most = Math.max(...wanted, ...picked, Number.MIN_VALUE);
  const step = size.width / Math.max(1, wanted.length);
  const y = (value: number): number => size.height - (size.height * value) / most;
  const bars = picked.flatMap((value, week) =>
    value > 0 ? bar(week * step, y(value), step, size.height) : [],
  );
  return framed([...bars, asked(wanted, step, y)], size, step, markWeeks);
}

/** What is taken up at least and at most, as bars from the one to the other, and a line of what goes in. */
export function feedBars(
  weeks: readonly { readonly low: number; readonly high: number }[],
  feed: number,
  size: { readonly width: number; readonly height: number },
  markWeeks: readonly number[] = [],
): HarvestBars {
  const most = Math.max(feed, ...weeks.map(({ high }) => high), Number.MIN_VALUE);
  const step = size.width / Math.max(1, weeks.length);
  const y = (value: number): number => size.height - (size.height * value) / most;
  const bars = weeks.flatMap(({ low, high }, week) =>
    high > 0 ? bar(week * step, y(high), step, y(low)) : [],
  );
  const line = asked(
    weeks.map(() => feed),
    step,
    y,
  );
  return framed([...bars, line], size, step, markWeeks);
}

function framed(
  shapes: readonly Shape[],
  size: { readonly width: number; readonly height: number },
  step: number,
  markWeeks: readonly number[],
): HarvestBars {
  const marks = markWeeks.map((week) => week * step);
  return { ...size, marks, shapes: [...shapes, base(size), ...ticks(marks, size.height)] };
}

function bar(left: number, top: number, width: number, bottom: number): readonly Shape[] {
  const right = left + width * 0.84;
  const box = path(
    [
      [left, bottom],
      [left, top],
      [right, top],
      [right, bottom],
    ],
    'open',
  );
  const lines: string[] = [];
  for (let at = bottom - hatch; at > top; at -= hatch)
    lines.push(`M${tenth(left)} ${tenth(at)}L${tenth(right)} ${tenth(at)}`);
  return [
    { d: box, paint: { stroke: 'black', width: 2.4, fill: 'white' } },
    { d: lines.join(''), paint: { stroke: 'black', width: 1 } },
  ];
}

/** A dashed step for each week. */
function asked(wanted: readonly number[], step: number, y: (value: number) => number): Shape {
  const d = wanted
    .map(
      (value, week) =>
        `M${tenth(week * step)} ${tenth(y(value))}L${tenth((week + 1) * step)} ${tenth(y(value))}`,
    )
    .join('');
  return { d, paint: { stroke: 'black', width: 3, dash: [9, 6] } };
}

function ticks(marks: readonly number[], foot: number): readonly Shape[] {
  const d = marks.map((x) => `M${tenth(x)} ${tenth(foot - markDepth)}L${tenth(x)} ${tenth(foot)}`).join('');
  return marks.length === 0 ? [] : [{ d, paint: { stroke: 'black', width: 3 } }];
}

function base({ width, height }: { readonly width: number; readonly height: number }): Shape {
  return { d: `M0 ${tenth(height)}L${tenth(width)} ${tenth(height)}`, paint: { stroke: 'black', width: 3 } };
}
