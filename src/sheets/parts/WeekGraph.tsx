/** A graph of a season, a bar for each of its weeks, with words beside it and months under it. */
import type { HarvestBars } from '../../drawing/harvestBars.ts';
import { mm } from '../../paper/measures.ts';
import { monthShort } from '../../wording/date.ts';
import type { TurnoverInput } from '../turnoverSheet.ts';
import { size, weight } from './look.ts';
import { Shapes } from './Shapes.tsx';

type Props = {
  readonly input: TurnoverInput;
  readonly title: string;
  readonly lines: readonly string[];
  readonly alt: string;
  readonly bars: (
    size: { readonly width: number; readonly height: number },
    markWeeks: readonly number[],
  ) => HarvestBars;
};

const graph = { width: mm(150), height: mm(12) };

export function WeekGraph({ input, title, lines, alt, bars }: Props) {
  const months = monthStarts(input);
  const drawn = bars(
    graph,
    months.map(({ week }) => week),
  );
  return (
    <div data-entry="" style={{ display: 'flex', alignItems: 'flex-end' }}>
      <div data-role="P" style={{ display: 'flex', flexDirection: 'column', width: mm(38), flexShrink: 0 }}>
        <div style={{ display: 'block', lineClamp: 1, fontWeight: weight.heavy }}>{title}</div>
        {lines.map((text) => (
          <div style={{ display: 'flex', fontSize: size.source }}>{text}</div>
        ))}
      </div>
      <div
        data-role="Figure"
        data-alt={alt}
        style={{ display: 'flex', position: 'relative', width: graph.width, height: graph.height + monthRow }}
      >
        <Shapes shapes={drawn.shapes} width={graph.width} height={graph.height} />
        {months.map(({ name }, at) => (
          <div style={{ ...monthName, left: drawn.marks[at] ?? 0 }}>{name}</div>
        ))}
      </div>
    </div>
  );
}

/** Under each graph: what a month is called, at the week in which it begins; every other one where they are many. */
const monthRow = mm(3.6);
const mostNames = 13;
const monthName = {
  display: 'flex',
  position: 'absolute',
  top: graph.height + mm(0.3),
  fontSize: size.source,
  lineHeight: 1.1,
} as const;

function monthStarts(input: TurnoverInput): readonly { readonly week: number; readonly name: string }[] {
  const { calendar } = input.plan;
  const starts = calendar.filter(
    ({ monday }, at) => at > 0 && calendar[at - 1]?.monday.slice(0, 7) !== monday.slice(0, 7),
  );
  const every = Math.ceil(starts.length / mostNames);
  return starts.map(({ index, monday }, at) => ({
    week: index,
    name: at % every === 0 ? monthShort(monday, input.words.catalogue) : '',
  }));
}
