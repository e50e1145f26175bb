/** The rows of a calendar page: nursery and beds, with what stands in them week by week. */
import type { BoxWords, TurnoverDrawing } from '../../drawing/turnoverDrawing.ts';
import type { TurnoverRow } from '../../drawing/turnoverRows.ts';
import { mm } from '../../paper/measures.ts';
import { counted } from '../../wording/harvest.ts';
import { calendarAlt, cropName, cropNumber, saidIn, season, type TurnoverInput } from '../turnoverSheet.ts';
import { type CalendarLook, inLine, oneLine } from './calendarLook.ts';
import { weight } from './look.ts';
import { Shapes } from './Shapes.tsx';

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
      data-alt={calendarAlt(input, new Set(cropsIn(rows)))}
      style={{ display: 'flex', position: 'relative', width: drawing.width, height: drawing.height }}
    >
      <Shapes shapes={drawing.shapes} width={drawing.width} height={drawing.height} />
      {rows.map((row, at) => (
        <div
          style={{ ...rowLabel, top: at * look.row, width: labelWidth(row, look, drawing), height: look.row }}
        >
          <RowName input={input} look={look} row={row} />
        </div>
      ))}
      {drawing.words
        .filter(hasRoom(look))
        .map((one) =>
          one.kind === 'begins' ? (
            <Begins input={input} look={look} of={one} />
          ) : (
            <div style={{ ...onHatch, ...wordPlace(one, look), fontSize: look.small }}>
              {season(input, `calendar.${one.kind}`)}
            </div>
          ),
        )}
    </div>
  );
}

function RowName({ input, look, row }: { input: TurnoverInput; look: CalendarLook; row: TurnoverRow }) {
  const text = rowName(input, row);
  if (row.kind === 'nursery') {
    const figures = cropNumber(input, row.crop);
    const room = look.label - numberWidth(figures, look.number);
    return (
      <>
        <div style={{ ...number, fontSize: look.number }}>{figures}</div>
        <div style={{ ...inLine(text, look.text, room), flex: 1, fontSize: look.text }}>{text}</div>
      </>
    );
  }
  if (row.kind !== 'places') return <div style={{ ...headName, fontSize: look.text }}>{text}</div>;
  return (
    <div style={{ ...inLine(text, look.text, look.label), width: '100%', fontSize: look.text }}>{text}</div>
  );
}

/** A figure is so many times as wide as it is high. */
const figure = 0.62;

/** With the air after it. */
function numberWidth(figures: string, fontSize: number): number {
  return figures.length * figure * fontSize + number.marginRight;
}

/** A word on hatching is about so many times as wide as it is high; in half a week the hatching alone may have to do. */
const widestWord = 2.2;

function hasRoom(look: CalendarLook): (one: BoxWords) => boolean {
  return ({ kind, width }) => kind === 'begins' || width >= widestWord * look.small;
}

/** Narrower boxes have room for the number only. */
const leastForName = 2.6;

/** The number of the crop, large; its name beside it where there is room. */
function Begins({ input, look, of }: { input: TurnoverInput; look: CalendarLook; of: BoxWords }) {
  const figures = cropNumber(input, of.stay.crop);
  const fontSize = Math.min(look.number, (of.width * 0.9) / (figure * figures.length));
  const isWide = of.width > leastForName * figures.length * look.number;
  const name = cropName(input, of.stay.crop);
  const room = of.width - beforeWord - numberWidth(figures, fontSize);
  return (
    <div style={{ ...boxed, left: of.left, top: of.top, width: of.width, height: look.row }}>
      <div style={{ ...number, fontSize }}>{figures}</div>
      {isWide ? (
        <div style={{ ...inLine(name, look.text, room), flex: 1, fontSize: look.text }}>{name}</div>
      ) : null}
    </div>
  );
}

const number = {
  display: 'flex',
  flexShrink: 0,
  fontWeight: weight.heavy,
  lineHeight: 1,
  marginRight: mm(1),
} as const;

const rowLabel = { display: 'flex', position: 'absolute', left: 0, alignItems: 'center' } as const;
/** From the edge of a box to the word in it. */
const beforeWord = mm(0.7);
const boxed = {
  display: 'flex',
  position: 'absolute',
  alignItems: 'center',
  paddingLeft: beforeWord,
  boxSizing: 'border-box',
} as const;
/** White behind the word, so that no line runs through a letter. */
const onHatch = {
  display: 'flex',
  position: 'absolute',
  backgroundColor: 'white',
  lineHeight: 1,
  paddingLeft: mm(0.3),
  paddingRight: mm(0.3),
} as const;
/** White behind the name, so that no line runs through it. */
const headName = { ...oneLine, fontWeight: weight.heavy, backgroundColor: 'white' } as const;

/** Half way up its row; a box of its own around each of so many words would take long to lay out. */
function wordPlace({ left, top }: BoxWords, look: CalendarLook) {
  return { left: left + beforeWord, top: top + (look.row - look.small) / 2 };
}

function labelWidth(row: TurnoverRow, look: CalendarLook, { width }: TurnoverDrawing): number {
  return 'stays' in row ? look.label : width;
}

function rowName(input: TurnoverInput, row: TurnoverRow): string {
  if (row.kind === 'nurseryHead') return season(input, 'calendar.nursery');
  if (row.kind === 'nursery') return cropName(input, row.crop);
  if (row.kind === 'bed') {
    const bed = input.plan.task.beds[row.bed];
    const mode = season(input, `modes.${bed?.mode ?? 'siphon'}`);
    return season(input, 'calendar.bed', {
      ...{ name: bed?.name ?? '', mode },
      places: counted('places', bed?.places ?? 0, saidIn(input)),
    });
  }
  const { first, last } = row;
  if (first === last) return season(input, 'calendar.place', { place: String(first) });
  return season(input, 'calendar.places', { first: String(first), last: String(last) });
}

function cropsIn(rows: readonly TurnoverRow[]): readonly string[] {
  return rows.flatMap((row) => ('stays' in row ? row.stays.map(({ crop }) => crop) : []));
}
