/** What a system is built from, as a list to shop and saw by, and the holes to cut. */
import { volume_L } from '../geometry/container.ts';
import { wetDepth_mm } from '../geometry/rim.ts';
import type { Bed, System } from '../system.ts';
import { leastStones } from './airPump.ts';
import type { Figure, Table } from './figure.ts';
import { timerOf } from './timer.ts';

type Cell = number | string | null;
/** part, name, count, length_mm, bore_mm, volume_L, air_L_min */
type Row = readonly [
  string,
  string | null,
  number,
  number | null,
  number | null,
  number | null,
  number | null,
];

/**
 * Parts and holes of a system.
 * @param system a checked system
 * @param found the plan's figures so far
 * @returns the tables parts and holes
 * @valid what was measured; fittings, glue and screws by eye
 * @source commonPractice
 */
export function partsTables(system: System, found: readonly Figure[]): readonly Table[] {
  const worked = (key: string): number | null => found.find((one) => one.key === key)?.value ?? null;
  const rows: readonly Row[] = [
    ['tank', null, system.tank.count, null, null, worked('tankFull_L'), null],
    ...sumpRows(system, worked('sumpFull_L')),
    ...system.beds.flatMap(bedRows),
    ...pumpRows(system),
    ['airPump', null, 1, null, null, null, worked('airPump_L_min')],
    ['airStones', null, worked('airStones') ?? leastStones, null, null, null, null],
    ['readyBarrel', null, 1, null, null, worked('weeklyLoss_L'), null],
    ['safetySwitch', null, 1, null, null, null, null],
  ];
  return [
    {
      key: 'parts',
      columns: [
        { key: 'part', unit: 'ratio' },
        { key: 'name', unit: 'ratio' },
        { key: 'count', unit: 'ratio' },
        { key: 'length', unit: 'mm' },
        { key: 'bore', unit: 'mm' },
        { key: 'volume', unit: 'L' },
        { key: 'air', unit: 'L_min' },
      ],
      rows,
    },
    holesTable(system),
  ];
}

function sumpRows(system: System, full_L: number | null): readonly Row[] {
  return system.sump ? [['sump', null, system.sump.count, null, null, full_L, null]] : [];
}

/** Media is bought by the heap: up to its top, the dry layer with it. */
function bedRows(bed: Bed): readonly Row[] {
  const heap_L = volume_L(bed.container, wetDepth_mm(bed.container, bed.mediaDepth_mm)) * bed.count;
  const pumped = bed.mode !== 'inTank';
  const pipe: Row = ['standpipe', bed.name, bed.count, bed.waterLine_mm, bed.standpipeBore_mm, null, null];
  return [
    ['bedContainer', bed.name, bed.count, null, null, null, null],
    ['media', bed.media.name, 1, null, null, heap_L, null],
    ...(pumped ? [pipe] : []),
    ...(bed.mode === 'siphon' ? ([['bell', bed.name, bed.count, null, null, null, null]] as const) : []),
    ...(pumped ? ([['screen', bed.name, bed.count, null, null, null, null]] as const) : []),
  ];
}

function pumpRows(system: System): readonly Row[] {
  const { pump } = system;
  if (pump === null) return [];
  const pipe = pump.pipe ?? null;
  return [
    ['pump', null, 1, null, null, null, null],
    ...(pipe === null
      ? []
      : ([
          ['supplyPipe', null, 1, pipe.length_m * 1000, pipe.bore_mm, null, null],
          ...(pipe.bends > 0 ? ([['bends', null, pipe.bends, null, pipe.bore_mm, null, null]] as const) : []),
        ] as const)),
    ...(timerOf(system) === null ? [] : ([['timerSwitch', null, 1, null, null, null, null]] as const)),
  ];
}

/** Where a wall or a floor is cut; the fitting says how wide. */
function holesTable(system: System): Table {
  const beds = system.beds.filter((bed) => bed.mode !== 'inTank');
  const rows: readonly (readonly Cell[])[] = [
    ...beds.flatMap((bed) => [
      ['standpipeHole', bed.name, bed.count, bed.standpipeBore_mm, 0],
      ...(bed.mode === 'timer' && bed.drainHole_mm
        ? [['drainHole', bed.name, bed.count, bed.drainHole_mm, 0]]
        : []),
    ]),
    ...(system.sump ? [['overflowHole', null, system.tank.count, null, system.tank.full_mm]] : []),
  ];
  return {
    key: 'holes',
    columns: [
      { key: 'hole', unit: 'ratio' },
      { key: 'name', unit: 'ratio' },
      { key: 'count', unit: 'ratio' },
      { key: 'bore', unit: 'mm' },
      { key: 'height', unit: 'mm' },
    ],
    rows,
  };
}
