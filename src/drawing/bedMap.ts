/** A bed as a row of its places in one week, told apart by hatching: what grows, what is picked, what rests, what is free. */
import type { Stay, TurnoverRow } from './turnoverRows.ts';
import { path, type Shape, tenth } from './shape.ts';

export type PlaceState = 'grows' | 'pick' | 'rest' | 'free';

/** Places side by side with the same crop in the same state; numbers from 1. */
export type MapPart = {
  readonly first: number;
  readonly last: number;
  readonly state: PlaceState;
  /** null where nothing stands. */
  readonly crop: string | null;
};

export type BedMap = {
  readonly shapes: readonly Shape[];
  /** Where the number of each part belongs; parts too narrow for one have none. */
  readonly numbers: readonly { readonly part: number; readonly left: number; readonly width: number }[];
};

type PlacesRow = Extract<TurnoverRow, { kind: 'places' }>;

/** The parts of a bed in a week; what is picked in any of the weeks of a month counts as picked. */
export function mapParts(
  rows: readonly PlacesRow[],
  places: number,
  week: number,
  month: ReadonlySet<number>,
): readonly MapPart[] {
  const parts: MapPart[] = [];
  const add = (part: MapPart): void => {
    const before = parts.at(-1);
    if (part.last < part.first) return;
    if (before && before.crop === part.crop && before.state === part.state)
      parts[parts.length - 1] = { ...before, last: part.last };
    else parts.push(part);
  };
  let next = 1;
  for (const { first, last, stays } of rows) {
    add({ first: next, last: first - 1, state: 'free', crop: null });
    const stay = stays.find((one) => one.from_week <= week && week <= one.restTo_week);
    add({ first, last, ...(stay ? stateOf(stay, week, month) : { state: 'free', crop: null }) });
    next = last + 1;
  }
  add({ first: next, last: places, state: 'free', crop: null });
  return parts;
}

function stateOf(stay: Stay, week: number, month: ReadonlySet<number>): Pick<MapPart, 'state' | 'crop'> {
  if (week > stay.to_week) return { state: 'rest', crop: stay.crop };
  const picked = stay.pick_weeks.some((one) => month.has(one));
  return { state: picked ? 'pick' : 'grows', crop: stay.crop };
}

type Box = { readonly width: number; readonly height: number; readonly least: number };

/** The parts side by side, as wide as they have places; numbers only in parts of the least width. */
export function bedMap(parts: readonly MapPart[], places: number, { width, height, least }: Box): BedMap {
  const each = width / places;
  const boxes = parts.map(({ first, last, state }) => ({
    state,
    left: (first - 1) * each,
    width: (last - first + 1) * each,
  }));
  return {
    shapes: boxes.flatMap((box) => [...filled(box.state, box.left, box.width, height), outline(box, height)]),
    numbers: boxes
      .map(({ left, width: wide }, part) => ({ part, left, width: wide }))
      .filter((one) => one.width >= least),
  };
}

function outline({ left, width }: { left: number; width: number }, height: number): Shape {
  const corners = [
    [left, 0],
    [left + width, 0],
    [left + width, height],
    [left, height],
  ] as const;
  return { d: path(corners, 'closed'), paint: { stroke: 'black', width: 2.6 } };
}

const hatchStep = 14;
const dotStep = 16;

function filled(state: PlaceState, left: number, width: number, height: number): readonly Shape[] {
  if (state === 'pick') return [slanted(left, width, height)];
  if (state === 'rest') return [dotted(left, width, height)];
  return [];
}

/** From the lower left to the upper right, cut by the box. */
function slanted(left: number, width: number, height: number): Shape {
  const lines: string[] = [];
  for (let offset = hatchStep; offset < width + height; offset += hatchStep) {
    const [x1, y1] = [left + Math.max(0, offset - height), Math.min(height, offset)];
    const [x2, y2] = [left + Math.min(width, offset), Math.max(0, offset - width)];
    lines.push(`M${tenth(x1)} ${tenth(y1)}L${tenth(x2)} ${tenth(y2)}`);
  }
  return { d: lines.join(''), paint: { stroke: 'black', width: 1.4 } };
}

function dotted(left: number, width: number, height: number): Shape {
  const dots: string[] = [];
  for (let y = dotStep / 2; y < height; y += dotStep)
    for (let x = left + dotStep / 2; x < left + width; x += dotStep)
      dots.push(`M${tenth(x)} ${tenth(y)}L${tenth(x + 0.1)} ${tenth(y)}`);
  return { d: dots.join(''), paint: { stroke: 'black', width: 3.4, cap: 'round' } };
}
