/** The system cut open: every vessel at its place in millimetres, with its levels, pipes and pump. */
import { width_mm } from '../geometry/container.ts';
import type { Bed, Container, System } from '../system.ts';
import type { BedPlan } from './beds.ts';
import type { Section, SectionVessel } from './figure.ts';
import type { Levels } from './levels.ts';
import { seenFromAbove } from './seenFromAbove.ts';
import { heights } from './sectionHeights.ts';
import { pipes, riserX_mm } from './pipes.ts';
import { way } from './waterWay.ts';
import { bedVessel, type Placed, sumpVessel, tankVessel } from './sectionVessels.ts';

/** Clear space between vessels that stand side by side in the drawing. Ours, for legibility; nothing is built by it. */
const gap_mm = 90;

/**
 * The section that every drawing of the system starts from.
 * Tank on the left, sump to its right; beds in rows above, rows by height, each row over the tank.
 * @param system a checked system
 * @param beds its beds, worked out
 * @param levels its levels
 * @returns vessels with outlines and levels, pipes, pump; heights are true, places left to right are ours
 * @source geometry
 */
export function section(system: System, beds: readonly BedPlan[], levels: Levels): Section {
  const tanks = placeSideBySide(system.tank.container, system.tank.count, 0, system.tank.above_mm);
  const tankVessels = tanks.map((placed, copy) => tankVessel(system, levels, placed, copy));
  const right_mm = Math.max(...tankVessels.map((vessel) => rightOf(vessel)));
  const sumpVessels = system.sump
    ? placeSideBySide(
        system.sump.container,
        system.sump.count,
        right_mm + 2 * gap_mm,
        system.sump.above_mm,
      ).map((placed, copy) => sumpVessel(system, levels, placed, copy))
    : [];
  const low = [...tankVessels, ...sumpVessels];
  const placedBeds = [...inTankBeds(beds, tankVessels, system), ...bedRows(system, beds, low)];
  const vessels = [...low, ...placedBeds];
  const run = pipes(system, vessels);
  return { vessels, ...run, heights: heights(vessels), way: way(vessels, run), above: seenFromAbove(system) };
}

function rightOf(vessel: SectionVessel): number {
  return Math.max(...vessel.outline.map(([x]) => x));
}

function leftOf(vessel: SectionVessel): number {
  return Math.min(...vessel.outline.map(([x]) => x));
}

function widest_mm(container: Container): number {
  const heights = [0, 0.25, 0.5, 0.75, 1].map((share) => share * container.depth_mm);
  return Math.max(...heights.map((height) => width_mm(container, height)));
}

function placeSideBySide(
  container: Container,
  count: number,
  left_mm: number,
  floor_mm: number,
): readonly Placed[] {
  const width = widest_mm(container);
  return Array.from({ length: count }, (_, i) => ({
    middle_mm: left_mm + width / 2 + i * (width + gap_mm),
    floor_mm,
  }));
}

/** Baskets stand in the first tank, evenly spread; as many as fit side by side, since others may stand behind. */
function inTankBeds(
  beds: readonly BedPlan[],
  tanks: readonly SectionVessel[],
  system: System,
): readonly SectionVessel[] {
  const tank = tanks[0];
  const all = beds.filter((bed) => bed.bed.mode === 'inTank').flatMap((of) => copies(of, of.bed.count));
  if (tank === undefined || all.length === 0) return [];
  const left = leftOf(tank);
  const inside = rightOf(tank) - left;
  const fit = Math.max(1, Math.floor(inside / Math.max(...all.map((one) => one.width_mm + gap_mm / 3))));
  const shown = mostOf(all, fit);
  return shown.map(({ of, copy }, i) => {
    const middle_mm = left + (inside / shown.length) * (i + 0.5);
    return bedVessel(of, { middle_mm, floor_mm: system.tank.above_mm + of.bed.above_mm }, copy);
  });
}

type One = { readonly of: BedPlan; readonly copy: number; readonly width_mm: number };

function bedRows(
  system: System,
  beds: readonly BedPlan[],
  low: readonly SectionVessel[],
): readonly SectionVessel[] {
  const fed = beds.filter((bed) => bed.bed.mode !== 'inTank');
  const under = Math.max(...low.map(rightOf)) - Math.min(...low.map(leftOf));
  const all = rows(fed.flatMap((of) => copies(of, of.bed.count)));
  return all.flatMap((row) => placeRow(system, rowWidth(row) > widestRow * under ? first(row) : row, low));
}

/** A row of beds up to so many times as wide as what stands below is drawn whole. */
const widestRow = 2.4;

/** Of equal beds only the first is drawn: the drawing stays large enough to read, and the label says how many. */
function first(row: readonly One[]): readonly One[] {
  return row.filter((one) => one.copy === 0);
}

/** As many as there is room for, but one of every bed at least, in the order of the beds. */
function mostOf(all: readonly One[], room: number): readonly One[] {
  const ones = first(all);
  const more = all.filter((one) => !ones.includes(one)).slice(0, Math.max(0, room - ones.length));
  return all.filter((one) => ones.includes(one) || more.includes(one));
}

function copies(of: BedPlan, count: number): readonly One[] {
  return Array.from({ length: count }, (_, copy) => ({ of, copy, width_mm: widest_mm(of.bed.container) }));
}

function rowWidth(row: readonly One[]): number {
  return row.reduce((total, one) => total + one.width_mm, 0) + gap_mm * (row.length - 1);
}

/** Beds whose heights overlap stand side by side; the others get a row of their own. */
function rows(ones: readonly One[]): readonly (readonly One[])[] {
  const byHeight = [...ones].sort(
    (a, b) => a.of.bed.above_mm - b.of.bed.above_mm || a.of.number - b.of.number,
  );
  const found: One[][] = [];
  let top = Number.NEGATIVE_INFINITY;
  for (const one of byHeight) {
    const row = found.at(-1);
    if (row === undefined || one.of.bed.above_mm >= top) found.push([one]);
    else row.push(one);
    top = Math.max(top, topOf(one.of.bed));
  }
  return found;
}

function topOf(bed: Bed): number {
  return bed.above_mm + bed.container.depth_mm;
}

function placeRow(
  system: System,
  row: readonly One[],
  low: readonly SectionVessel[],
): readonly SectionVessel[] {
  let left = rowLeft_mm(system, row, rowWidth(row), low);
  return row.map((one) => {
    const at = { middle_mm: left + one.width_mm / 2, floor_mm: one.of.bed.above_mm };
    left += one.width_mm + gap_mm;
    return bedVessel(one.of, at, one.copy);
  });
}

/** Over the tank where the row is higher than its rim, else beside everything that stands below. */
function rowLeft_mm(
  system: System,
  row: readonly One[],
  width: number,
  low: readonly SectionVessel[],
): number {
  const underside = Math.min(...row.map((one) => one.of.bed.above_mm));
  const blocking = low.filter((vessel) => rimY(vessel) > underside);
  if (blocking.length > 0) return Math.max(...low.map(rightOf)) + gap_mm;
  const left = Math.min(...low.map(leftOf));
  const centred = (left + Math.max(...low.map(rightOf)) - width) / 2;
  return system.pump ? Math.max(centred, riserX_mm(system, low) + gap_mm) : centred;
}

function rimY(vessel: SectionVessel): number {
  return Math.max(...vessel.outline.map(([, y]) => y));
}
