/** Rows of a season as shapes: weeks across, one row below the other, told apart by hatching and not by colour. */
import type { Stay, TurnoverRow } from './turnoverRows.ts';
import { path, type Shape, tenth } from './shape.ts';

/** Measures of a calendar page, in tenths of a millimetre. */
export type CalendarScale = {
  readonly label: number;
  readonly week: number;
  readonly row: number;
  /** Weeks on this page. */
  readonly from_week: number;
  readonly to_week: number;
};

/** Words that belong into a box; the sheet knows them. */
export type BoxWords = {
  readonly kind: 'begins' | 'sow' | 'pick' | 'rest';
  readonly stay: Stay;
  readonly left: number;
  readonly top: number;
  readonly width: number;
};

export type TurnoverDrawing = {
  readonly width: number;
  readonly height: number;
  readonly shapes: readonly Shape[];
  readonly words: readonly BoxWords[];
};

type Box = { readonly left: number; readonly top: number; readonly width: number; readonly height: number };

const thin = 1.4;
const firm = 2.6;
const bar = 9;
const hatchStep = 11;
const dotStep = 14;
/** Air over and under a box in its row. */
const inset = 4;

/** Draws the rows of a page; `holidays` are the weeks in which nobody is there. */
export function turnoverDrawing(
  rows: readonly TurnoverRow[],
  scale: CalendarScale,
  holidays: readonly number[],
): TurnoverDrawing {
  const width = scale.label + (scale.to_week - scale.from_week + 1) * scale.week;
  const height = rows.length * scale.row;
  const stays = rows.flatMap((row, at) =>
    'stays' in row
      ? row.stays.map((stay) => ({ stay, ...endsOf(stay, row), where: row.kind, top: at * scale.row }))
      : [],
  );
  const shown = stays.filter(({ stay }) => isShown(stay, scale));
  const beds = shown.filter(({ where }) => where === 'places');
  const trays = shown.filter(({ where }) => where === 'nursery');
  return {
    width,
    height,
    shapes: [
      ...lattice(scale, width, height),
      ...holidays.flatMap((week) =>
        inPage(week, scale) ? emptied(boxOf(scale, week, week + 1, 0, height), scale.row) : [],
      ),
      ...trays.flatMap(({ stay, top }) => trayLine(stay, scale, top)),
      ...trays.flatMap(({ stay, top }) => trayCell(stay, scale, top)),
      ...beds.flatMap((one) => stayShapes(one, scale)),
    ],
    words: [
      ...trays.flatMap(({ stay, top }) => trayWords(stay, scale, top)),
      ...beds.flatMap((one) => stayWords(one, scale)),
    ],
  };
}

/** A stay with the ends of its box, in weeks, and the top of its row. */
type Drawn = { readonly stay: Stay; readonly starts: number; readonly ends: number; readonly top: number };

/** Without rest one leaves and the next begins in the same week: then each has half of it. */
function endsOf(stay: Stay, row: Extract<TurnoverRow, { stays: unknown }>): Pick<Drawn, 'starts' | 'ends'> {
  const isShared = (week: number, of: 'from_week' | 'to_week'): boolean =>
    row.kind === 'places' && row.stays.some((other) => other !== stay && other[of] === week);
  return {
    starts: stay.from_week + (isShared(stay.from_week, 'to_week') ? 0.5 : 0),
    ends: stay.to_week + (isShared(stay.to_week, 'from_week') ? 0.5 : 1),
  };
}

function isShown(stay: Stay, scale: CalendarScale): boolean {
  return stay.from_week <= scale.to_week && stay.restTo_week >= scale.from_week;
}

function inPage(week: number, { from_week, to_week }: CalendarScale): boolean {
  return from_week <= week && week <= to_week;
}

/** From the beginning of one week to the beginning of another, cut at the page's ends. */
function boxOf(scale: CalendarScale, from: number, to: number, top: number, height: number): Box {
  const at = (week: number): number =>
    scale.label +
    (Math.min(scale.to_week + 1, Math.max(scale.from_week, week)) - scale.from_week) * scale.week;
  return { left: at(from), top, width: at(to) - at(from), height };
}

/** Fine lines between weeks, and one under each row. */
function lattice(scale: CalendarScale, width: number, height: number): readonly Shape[] {
  const weeks = scale.to_week - scale.from_week + 1;
  const lines = Array.from({ length: weeks + 1 }, (_, at) => {
    const x = scale.label + at * scale.week;
    return `M${tenth(x)} 0L${tenth(x)} ${tenth(height)}`;
  });
  const rows = Array.from({ length: Math.round(height / scale.row) + 1 }, (_, at) => {
    return `M0 ${tenth(at * scale.row)}L${tenth(width)} ${tenth(at * scale.row)}`;
  });
  return [{ d: [...lines, ...rows].join(''), paint: { stroke: 'black', width: 0.7, dash: [2, 6] } }];
}

/** Nobody there: a cross in every row. */
function emptied({ left, top, width, height }: Box, row: number): readonly Shape[] {
  const right = left + width;
  const crosses = Array.from({ length: Math.round(height / row) }, (_, at) => {
    const [from, to] = [top + at * row, top + (at + 1) * row];
    const down = `M${tenth(left)} ${tenth(from)}L${tenth(right)} ${tenth(to)}`;
    return `${down}M${tenth(left)} ${tenth(to)}L${tenth(right)} ${tenth(from)}`;
  });
  return [{ d: crosses.join(''), paint: { stroke: 'black', width: thin } }];
}

/** How long a tray waits: a line along the foot of the row, up to the week in which it is planted out. */
function trayLine(stay: Stay, scale: CalendarScale, top: number): readonly Shape[] {
  const { left, width } = boxOf(scale, stay.from_week, stay.to_week, top, scale.row);
  const y = tenth(top + scale.row - inset);
  const d = `M${tenth(left)} ${y}L${tenth(left + width)} ${y}`;
  return width > 0 ? [{ d, paint: { stroke: 'black', width: firm } }] : [];
}

/** The week of sowing: upright lines. */
function trayCell(stay: Stay, scale: CalendarScale, top: number): readonly Shape[] {
  if (!inPage(stay.from_week, scale)) return [];
  return upright(boxOf(scale, stay.from_week, stay.from_week + 1, top + inset, scale.row - 2 * inset));
}

function trayWords(stay: Stay, scale: CalendarScale, top: number): readonly BoxWords[] {
  if (!inPage(stay.from_week, scale)) return [];
  const { left, width } = boxOf(scale, stay.from_week, stay.from_week + 1, top, scale.row);
  return [{ kind: 'sow', stay, left, top, width }];
}

function upright(box: Box): readonly Shape[] {
  const lines: string[] = [];
  for (let x = box.left + hatchStep; x < box.left + box.width; x += hatchStep)
    lines.push(`M${tenth(x)} ${tenth(box.top)}L${tenth(x)} ${tenth(box.top + box.height)}`);
  return [outlined(box), { d: lines.join(''), paint: { stroke: 'black', width: thin } }];
}

/** A sample of each hatching, for the key. */
export function sampleOf(kind: 'sow' | 'plant' | 'pick' | 'rest' | 'nobody', width: number, height: number) {
  const box = { left: 0, top: 0, width, height };
  const samples: Readonly<Record<typeof kind, readonly Shape[]>> = {
    sow: upright(box),
    plant: [outlined(box), barAt(box)],
    pick: hatched(box),
    rest: [dotted(box)],
    nobody: emptied(box, height),
  };
  return samples[kind];
}

function stayShapes({ stay, starts, ends, top }: Drawn, scale: CalendarScale): readonly Shape[] {
  const height = scale.row - 2 * inset;
  const whole = boxOf(scale, starts, ends, top + inset, height);
  const picks = stay.pick_weeks
    .filter((week) => inPage(week, scale))
    .map((week) => boxOf(scale, week, Math.min(ends, week + 1), top + inset, height));
  const rest = boxOf(scale, stay.to_week + 1, stay.restTo_week + 1, top + inset, height);
  const begins = inPage(stay.from_week, scale) ? [barAt(whole)] : [];
  return [
    outlined(whole),
    ...picks.flatMap((box) => hatched(box)),
    ...(rest.width > 0 ? [dotted(rest)] : []),
    ...begins,
  ];
}

function outlined(box: Box): Shape {
  return { d: around(box), paint: { stroke: 'black', width: firm, fill: 'white' } };
}

function around({ left, top, width, height }: Box): string {
  return path(
    [
      [left, top],
      [left + width, top],
      [left + width, top + height],
      [left, top + height],
    ],
    'closed',
  );
}

/** What begins here begins with a bar. */
function barAt({ left, top, height }: Box): Shape {
  return { d: around({ left, top, width: bar, height }), paint: { fill: 'black' } };
}

/** Slanted lines, from the lower left to the upper right, cut by the box; white where the word stands. */
function hatched({ left, top, width, height }: Box): readonly Shape[] {
  const lines: string[] = [];
  for (let offset = hatchStep; offset < width + height; offset += hatchStep) {
    const x1 = left + Math.max(0, offset - height);
    const y1 = top + Math.min(height, offset);
    const x2 = left + Math.min(width, offset);
    const y2 = top + Math.max(0, offset - width);
    lines.push(`M${tenth(x1)} ${tenth(y1)}L${tenth(x2)} ${tenth(y2)}`);
  }
  return [
    { d: lines.join(''), paint: { stroke: 'black', width: thin } },
    { d: around({ left, top, width, height }), paint: { stroke: 'black', width: firm } },
  ];
}

function dotted({ left, top, width, height }: Box): Shape {
  const dots: string[] = [];
  for (let y = top + dotStep / 2; y < top + height; y += dotStep)
    for (let x = left + dotStep / 2; x < left + width; x += dotStep)
      dots.push(`M${tenth(x)} ${tenth(y)}L${tenth(x + 0.1)} ${tenth(y)}`);
  return { d: dots.join(''), paint: { stroke: 'black', width: 3.4, cap: 'round' } };
}

/** Crop and beginning stand before the first picking; the words for picking and rest in their own weeks. */
function stayWords({ stay, starts, ends, top }: Drawn, scale: CalendarScale): readonly BoxWords[] {
  const first = stay.pick_weeks[0] ?? stay.to_week;
  const name = boxOf(scale, starts, first, top, scale.row);
  const picks = stay.pick_weeks
    .filter((week) => inPage(week, scale))
    .map((week) => ({
      ...boxOf(scale, week, Math.min(ends, week + 1), top, scale.row),
      kind: 'pick' as const,
    }));
  const rest = boxOf(scale, stay.to_week + 1, stay.restTo_week + 1, top, scale.row);
  return [
    ...(name.width > 0
      ? [{ ...name, left: name.left + bar, width: name.width - bar, kind: 'begins' as const }]
      : []),
    ...picks,
    ...(rest.width > 0 ? [{ ...rest, kind: 'rest' as const }] : []),
  ].map(({ kind, left, top: at, width }) => ({ kind, stay, left, top: at, width }));
}
