/** What somebody says came differently in a season, into the core's change; or every problem with it, at once. */
import type { Problem } from '../core/problem.ts';
import type { Change, Emptied } from '../core/turnover/change.ts';
import { lastPlaces, leavesWholePlants, numbersOf } from '../core/turnover/emptied.ts';
import type { Sown, SownPlan } from '../core/turnover/sown.ts';
import type { Strip, TurnoverTask } from '../core/turnover/turnover.ts';
import { type PlantUnit, plantUnit } from '../core/turnover/units.ts';
import { weekFrom } from '../core/turnover/weeks.ts';
import { type Again, againOf } from './again.ts';
import { type ChangeFile, changeFile } from './changeFile.ts';
import { checkAgain } from './checkAgain.ts';
import type { CropFacts } from './facts.ts';
import { readBySchema } from './issues.ts';
import { nearest } from './nearest.ts';
import { rowsIn } from './rowsIn.ts';
import type { Path } from './schemaAt.ts';
import type { TurnoverFile } from './turnoverFile.ts';

type Problems = { readonly problems: readonly Problem[] };

/** `file` is the season with what is wanted from then on. */
export type ToChange = { readonly change: Change; readonly file: TurnoverFile } | Problems;

/**
 * Checks what came differently against the plan that it happened to.
 * @param raw plain data from a form
 * @param of the plan so far, and the file that it was made of
 * @param facts the crops and climates that it may name
 * @param place where it stands in the whole, in front of every problem's place
 */
export function toChange(
  raw: unknown,
  { plan, file }: { readonly plan: SownPlan; readonly file: TurnoverFile },
  facts: CropFacts,
  place: Path,
): ToChange {
  const read = readBySchema(changeFile, raw, place);
  const across = checkAgain(raw, file, facts).map((one) => ({ ...one, place: [...place, ...one.place] }));
  if ('problems' in read) return { problems: [...read.problems, ...across] };
  if (across.length > 0) return { problems: across };
  const next = againOf(read.value, file, facts);
  const result = changeOf(next.again, plan, place);
  return 'problems' in result ? result : { ...result, file: next.file };
}

/**
 * The same for what was read from a season's file, as soon as there is a plan.
 * @param again what came differently
 * @param plan the plan so far
 * @param place where it stands in the whole, in front of every problem's place
 */
export function changeOf(
  { told, now_week, missed_weeks, wishes }: Again,
  plan: SownPlan,
  place: Path,
): { readonly change: Change } | Problems {
  const problems: Problem[] = [];
  const tell = (where: Path, problem: Omit<Problem, 'place'>): null => {
    problems.push({ ...problem, place: [...place, ...where] });
    return null;
  };
  const find = (id: string, where: Path): Stands | null => {
    const found = foundIn(plan, id, { now_week, missed_weeks });
    return 'code' in found ? tell(where, { ...found, other: told.from }) : found;
  };
  for (const [at, id] of told.failed.entries()) find(id, ['failed', at]);
  const partly = told.partly.flatMap((part, at): readonly Emptied[] => {
    const stands = find(part.sowing, ['partly', at, 'sowing']);
    if (stands === null) return [];
    const key = part.plants === undefined ? 'empty' : 'plants';
    const places = emptyOf(stands, part);
    if (!('code' in places)) return [{ sowing: part.sowing, places }];
    tell(['partly', at, key], places);
    return [];
  });
  if (problems.length > 0) return { problems };
  return { change: { now_week, failed: told.failed, partly, missed_weeks, wishes } };
}

/** A sowing without what was lifted of it already. */
type Stands = { readonly sowing: Sown; readonly plants: number; readonly unit: PlantUnit };

type Wrong = Omit<Problem, 'place'>;

/** When it is planned again, and in which weeks nothing was done. */
type Weeks = Pick<Change, 'now_week' | 'missed_weeks'>;

function foundIn({ task, sowings }: SownPlan, id: string, weeks: Weeks): Stands | Wrong {
  const sowing = sowings.find((one) => one.id === id);
  const open = sowings.filter((one) => isOpen(task, one, weeks)).map((one) => one.id);
  const ofCrop = open.filter((one) => one.split('-')[0] === id.split('-')[0]);
  const allowed = ofCrop.length > 0 ? ofCrop : open;
  const meant = nearest(id, allowed);
  if (sowing === undefined)
    return { code: 'sowingUnknown', given: id, allowed, ...(meant === null ? {} : { meant }) };
  const wish = task.wishes.find(({ crop }) => crop.id === sowing.crop);
  if (!isOpen(task, sowing, weeks) || wish === undefined) return { code: 'sowingAway', given: id, allowed };
  const unit = plantUnit(wish.crop, task.place_mm, wish.unit);
  const strips = sowing.strips.filter((strip) => stands(strip, weeks));
  const plants = (numbersOf({ strips }).length / unit.places) * unit.plants;
  return { sowing: { ...sowing, strips }, plants, unit };
}

/** Sown by then, and not all lifted. */
function isOpen(task: TurnoverTask, { sow_d, strips }: Sown, weeks: Weeks): boolean {
  return weekFrom(task, sow_d) < weeks.now_week && strips.some((strip) => stands(strip, weeks));
}

function stands({ to_week }: Strip, { now_week, missed_weeks }: Weeks): boolean {
  return now_week <= to_week || missed_weeks.includes(to_week);
}

type Part = ChangeFile['partly'][number];

function emptyOf(
  { sowing, plants, unit }: Stands,
  { plants: left, empty = '' }: Part,
): readonly number[] | Wrong {
  const all = numbersOf(sowing);
  if (left !== undefined && left >= plants && plants > 1)
    return { code: 'outOfRange', given: String(left), min: 1, max: plants - 1, unit: '' };
  const places = left === undefined ? numbersIn(empty) : lastPlaces(sowing, unit, left);
  const other = places.filter((place) => !all.includes(place));
  const runs = sowing.strips.map(({ first, last }) => (first === last ? `${first}` : `${first}-${last}`));
  if (other.length > 0) return { code: 'placesOther', given: other.join(', '), allowed: runs };
  if (places.length === all.length) return { code: 'partlyAll', given: sowing.id };
  if (!leavesWholePlants(sowing, places, unit.places))
    return { code: 'partlyWide', given: empty, max: unit.places, unit: '' };
  return places;
}

function numbersIn(empty: string): readonly number[] {
  const rows = rowsIn(empty, Number.MAX_SAFE_INTEGER) ?? [];
  return [...new Set(rows)].map((row) => row + 1).sort((a, b) => a - b);
}
