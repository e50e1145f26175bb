/** The way of the water through the section, station by station: what a drawing numbers. */
import type { Point, SectionPipe, SectionVessel, Station } from './figure.ts';
import type { PipeRun } from './pipes.ts';

/**
 * Stations from the pump on.
 * Pump, supply pipe, the first fed bed, one way out for each way that beds run, the way back, the overflow of a tank
 * beside a sump; then the baskets that stand in the tank.
 * @param vessels all vessels, placed
 * @param run pipes and pump
 * @returns the stations in the order of the water, each where a drawing may point at it
 * @valid places in the drawing only; nothing is built by them
 * @source geometry
 */
export function way(vessels: readonly SectionVessel[], run: PipeRun): readonly Station[] {
  const beds = vessels.filter((one) => one.role === 'bed');
  const basket = beds.find((one) => one.mode === 'inTank');
  const fed = beds.filter((one) => one.mode !== 'inTank');
  return [
    ...(run.pump === null
      ? []
      : [{ key: 'pump', at: [run.pump.x_mm, run.pump.intakeY_mm] } satisfies Station]),
    ...firstPipe(run, 'supply', riserMiddle),
    ...fed.slice(0, 1).map((bed): Station => ({ key: 'bed', at: middleOf(bed) })),
    ...waysOut(fed, run),
    ...firstPipe(run, 'return', endOf),
    ...firstPipe(run, 'overflow', startOf),
    ...(basket === undefined ? [] : [{ key: 'baskets', at: middleOf(basket) } satisfies Station]),
  ];
}

/** A standpipe of each kind, in the order of the beds; the pipes come in that order too. */
function waysOut(fed: readonly SectionVessel[], run: PipeRun): readonly Station[] {
  const standpipes = run.pipes.filter((pipe) => pipe.role === 'standpipe');
  const kinds = [...new Set(fed.map((bed) => bed.mode))];
  return kinds.flatMap((mode) => {
    const pipe = standpipes[fed.findIndex((bed) => bed.mode === mode)];
    if (pipe === undefined || mode === null || mode === 'inTank') return [];
    return [{ key: mode, at: startOf(pipe) }];
  });
}

function firstPipe(
  run: PipeRun,
  role: 'supply' | 'return' | 'overflow',
  place: (pipe: SectionPipe) => Point,
): readonly Station[] {
  const pipe = run.pipes.find((one) => one.role === role);
  return pipe === undefined ? [] : [{ key: role, at: place(pipe) }];
}

function startOf({ points }: SectionPipe): Point {
  return points[0] ?? [0, 0];
}

function endOf({ points }: SectionPipe): Point {
  return points.at(-1) ?? [0, 0];
}

function riserMiddle({ points }: SectionPipe): Point {
  const [[x, low] = [0, 0], [, high] = [0, 0]] = points;
  return [x, (low + high) / 2];
}

function middleOf({ outline }: SectionVessel): Point {
  const across = outline.map(([x]) => x);
  const up = outline.map(([, y]) => y);
  const middle = (of: readonly number[]): number => (Math.min(...of) + Math.max(...of)) / 2;
  return [middle(across), middle(up)];
}
