/** The words of the system drawing: what stands beside the section, inside it, and in the lists under it. */
import type { SectionHole, SectionLevel, SectionVessel, Station } from '../core/plan/figure.ts';
import { levelKey } from '../drawing/sides.ts';
import { figureValue } from '../wording/figure.ts';
import { noteSentence } from '../wording/note.ts';
import { amount, type Side } from '../wording/quantity.ts';
import { shorten } from '../wording/shorten.ts';
import { figureOf } from './cardWords.ts';
import type { SheetInput } from './sheet.ts';
import { told } from './sheetWords.ts';

type Values = Readonly<Record<string, string>>;

export function system(input: SheetInput, key: string, values: Values = {}): string {
  return told(input, 'systemDrawing', key, values);
}

/** Which way an error does no harm: low water is told too low, high water too high. */
const sideOfLevel: Readonly<Record<SectionLevel['key'], Side>> = {
  ...{ full: 'nearest', waterLine: 'nearest', drained: 'nearest', blocked: 'nearest' },
  ...{ low: 'down', powerCut: 'up' },
};

/** "tank", "bed", or "bed 2" where there are several. */
export function vesselName(
  input: SheetInput,
  { role, index }: Pick<SectionVessel, 'role' | 'index'>,
): string {
  if (role !== 'bed' || input.system.beds.length === 1) return system(input, `of.${role}`);
  return system(input, 'of.bedNumbered', { number: String(index + 1) });
}

/** Every kind of vessel once, as the section holds them. */
function kinds(input: SheetInput): readonly SectionVessel[] {
  return input.plan.section.vessels.filter((one) => one.copy === 0).sort((a, b) => order(a) - order(b));
}

function order({ role, index }: SectionVessel): number {
  return role === 'tank' ? -2 : role === 'sump' ? -1 : index;
}

function levelHeight(input: SheetInput, { key, height_mm }: SectionLevel): string {
  return amount(height_mm, 'mm', sideOfLevel[key], input.units);
}

/** Labels of both columns, by the keys that `drawing` gives its anchors. */
export function columnLabels(input: SheetInput): Readonly<Record<string, string>> {
  const levels = kinds(input).flatMap((vessel) =>
    vessel.levels.map((level) => {
      const values = { of: vesselName(input, vessel), height: levelHeight(input, level) };
      return [levelKey(vessel, level.key), system(input, `level.${level.key}`, values)] as const;
    }),
  );
  const heights = input.plan.section.heights.map(({ y_mm, of }, i) => {
    const edges = of.map((one) => system(input, `edge.${one.edge}`, { of: vesselName(input, one) }));
    const height = amount(y_mm, 'mm', 'nearest', input.units);
    return [`height.${i}`, system(input, 'height', { height, what: shorten(edges.join(', '), 44) })] as const;
  });
  return Object.fromEntries([...levels, ...heights]);
}

/** A letter for each hole of the plan's table, in its order. */
export function holeLetters(input: SheetInput): readonly string[] {
  const count = input.plan.tables.find((one) => one.key === 'holes')?.rows.length ?? 0;
  return Array.from({ length: count }, (_, i) => letter(i));
}

function letter(i: number): string {
  const round = Math.floor(i / 26);
  return `${String.fromCharCode(65 + (i % 26))}${round === 0 ? '' : String(round + 1)}`;
}

/** Words of the marks inside the drawing, by key: numbers of stations, letters of holes, names, widths. */
export function markWords(input: SheetInput): Readonly<Record<string, string>> {
  const { section } = input.plan;
  const letters = holeLetters(input);
  const holes = holesInOrder(input).map((key, i) => [key, letters[i] ?? ''] as const);
  const stations = section.way.map(({ key }, i) => [`station.${key}`, String(i + 1)] as const);
  const names = kinds(input).map((one) => [`name.${one.role}.${one.index}`, vesselName(input, one)] as const);
  const widths = kinds(input)
    .filter((one) => one.mode !== 'inTank')
    .map(
      (one) =>
        [`width.${one.role}.${one.index}`, amount(one.width_mm, 'mm', 'nearest', input.units)] as const,
    );
  return Object.fromEntries([...stations, ...holes, ...names, ...widths]);
}

/** Keys of the holes in the order of the plan's table: bed by bed, then the overflow. */
function holesInOrder(input: SheetInput): readonly string[] {
  const first = input.plan.section.holes.filter((hole) => hole.copy === 0 || hole.role !== 'bed');
  const sorted = [...first].sort((a, b) => rank(a) - rank(b));
  return sorted.map((hole) => `hole.${hole.for}.${hole.index}`);
}

function rank({ for: purpose, index }: SectionHole): number {
  return purpose === 'overflow' ? Number.POSITIVE_INFINITY : index * 2 + (purpose === 'drain' ? 1 : 0);
}

/** Where the pump stands and everything comes back to. */
function lower(input: SheetInput): SectionVessel | undefined {
  const role = input.system.sump ? 'sump' : 'tank';
  return input.plan.section.vessels.find((one) => one.role === role);
}

function lowerName(input: SheetInput): string {
  return system(input, input.system.sump ? 'of.sump' : 'of.tank');
}

/** The way of the water, a sentence a station. */
export function waySteps(input: SheetInput): readonly string[] {
  return input.plan.section.way.map(({ key }, i) =>
    system(input, 'step', { number: String(i + 1), text: stationText(input, key) }),
  );
}

function stationText(input: SheetInput, key: Station['key']): string {
  const intake = lower(input)?.levels.find((level) => level.key === 'blocked');
  const values = { of: lowerName(input), intake: intake === undefined ? '' : levelHeight(input, intake) };
  const withSump = key === 'supply' && input.system.sump !== null;
  return system(input, `station.${withSump ? 'supplySump' : key}`, values);
}

export function stationNames(input: SheetInput): readonly string[] {
  return input.plan.section.way.map(({ key }, i) =>
    system(input, 'step', { number: String(i + 1), text: system(input, `stationName.${key}`) }),
  );
}

/** What happens when the power or the return fails, as the plan's notes and levels tell it. */
export function failures(input: SheetInput): readonly string[] {
  if (input.system.pump === null) return [system(input, 'noPump')];
  const cut = lower(input)?.levels.find((level) => level.key === 'powerCut');
  const values = { of: lowerName(input), height: cut === undefined ? '' : levelHeight(input, cut) };
  const notes = ['afterPowerCut_L', 'blockedReturn_L'].flatMap((key) => input.plan.figures[key]?.notes ?? []);
  return [
    ...(cut === undefined ? [] : [system(input, 'powerCut', values)]),
    ...notes.map((note) => noteSentence(note, input.words.catalogue, input.units)),
  ];
}

export type LineRow = {
  readonly level: SectionLevel['key'];
  readonly line: string;
  readonly height: string;
  readonly water: string;
};

/** Every water line with its height and the water under it. */
export function lineRows(input: SheetInput): readonly LineRow[] {
  return kinds(input).flatMap((vessel) =>
    vessel.levels.map((level) => ({
      level: level.key,
      line: lineName(input, vessel, level),
      height: levelHeight(input, level),
      water: waterAt(input, vessel, level),
    })),
  );
}

/** The label without its height. */
function lineName(input: SheetInput, vessel: SectionVessel, level: SectionLevel): string {
  return system(input, `level.${level.key}`, { of: vesselName(input, vessel), height: '' }).trim();
}

const figureOfLevel: Readonly<Record<string, string>> = {
  ...{
    'tank.full': 'tankFull_L',
    'tank.low': 'tankLow_L',
    'sump.full': 'sumpFull_L',
    'sump.low': 'sumpLow_L',
  },
  ...{ 'tank.powerCut': 'afterPowerCut_L', 'sump.powerCut': 'afterPowerCut_L' },
  ...{ 'tank.blocked': 'blockedReturn_L', 'sump.blocked': 'blockedReturn_L' },
};

function waterAt(input: SheetInput, vessel: SectionVessel, { key }: SectionLevel): string {
  const held = key === 'waterLine' ? `bed${vessel.index + 1}.waterHeld_L` : undefined;
  const figure = figureOf(input, held ?? figureOfLevel[`${vessel.role}.${key}`] ?? '');
  if (figure === null) return '';
  // A low line is one safe figure on every sheet, not a range.
  const single = key === 'waterLine' ? figure : { ...figure, low: figure.value, high: figure.value };
  return figureValue(single, input.words.catalogue, input.units);
}
