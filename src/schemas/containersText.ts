/**
 * Containers as somebody writes them into one cell of a roster: `tank box 120 x 60 x 50 cm + bed box 100 x 60 x 30 cm`.
 * Or one name: that of a system, whose containers they then are.
 */
import type { Problem } from '../core/problem.ts';
import { checkContainer } from './checkContainer.ts';
import { type ContainerFile, containerFile } from './container.ts';
import { lengthRange_mm } from './fields.ts';
import { readBySchema } from './issues.ts';
import { nearest } from './nearest.ts';
import { valuesOf } from './writtenNumber.ts';

/** Tank and bed, by their inside measures. */
export type WrittenContainers = { readonly tank: ContainerFile; readonly bed: ContainerFile };

export type ContainersRead =
  | { readonly containers: WrittenContainers }
  | { readonly system: string }
  | { readonly problems: readonly Problem[] };

const roles = ['tank', 'bed'] as const;
type Role = (typeof roles)[number];

/** Which measures each shape wants, in the order in which they are written. */
const shapes = {
  box: ['length_mm', 'width_mm', 'depth_mm'],
  drum: ['diameter_mm', 'depth_mm'],
  'lying drum': ['diameter_mm', 'length_mm', 'depth_mm'],
  oval: ['length_mm', 'width_mm', 'depth_mm'],
  trough: ['length_mm', 'width_mm', 'depth_mm'],
  bucket: ['topDiameter_mm', 'floorDiameter_mm', 'depth_mm'],
} as const;
type ShapeWord = keyof typeof shapes;
const shapeWords = Object.keys(shapes) as ShapeWord[];

/** What the shapes are called in the files of systems. */
const shapeOf = {
  ...{ box: 'box', drum: 'cylinder', 'lying drum': 'lyingCylinder', oval: 'ellipse', trough: 'obround' },
  bucket: 'taperedRound',
} as const;

const [inch_mm, foot_mm] = [25.4, 304.8];
const perUnit_mm = { mm: 1, cm: 10, m: 1000, in: inch_mm, ft: foot_mm } as const;
const unitWords = Object.keys(perUnit_mm);
/** However people write them. */
const written_mm = new Map<string, number>([
  ...Object.entries(perUnit_mm),
  ...['inch', 'inches', '"', '″', '”'].map((sign) => [sign, inch_mm] as const),
  ...['foot', 'feet'].map((sign) => [sign, foot_mm] as const),
]);
/** What tapes are read in; of two that take as few letters, the first. */
const tapes = ['cm', 'in', 'mm'] as const;
type Tape = (typeof tapes)[number];

/**
 * Reads the cell.
 * @param text not empty
 * @param systems names of the systems that may stand here
 */
export function readContainers(text: string, systems: readonly string[]): ContainersRead {
  const written = text.trim();
  if (systems.includes(written)) return { system: written };
  if (!/\d/.test(written)) return { problems: [{ ...notContainers(written, systems), place: [] }] };
  const parts = written.split(/\s*\+\s*/).map(readPart);
  const problems = parts.flatMap((part): Problem[] =>
    'problem' in part ? [{ ...part.problem, place: [] }] : [],
  );
  const of = (role: Role) =>
    parts.flatMap((part) => ('role' in part && part.role === role ? [part.container] : []));
  for (const role of problems.length > 0 ? [] : roles) {
    const { length } = of(role);
    if (length !== 1)
      problems.push({
        ...{ code: 'containersRole', place: [], given: written, other: role, min: 1, max: length },
      });
  }
  const [tank] = of('tank');
  const [bed] = of('bed');
  if (problems.length === 0 && tank && bed) return { containers: { tank, bed } };
  return { problems: [...problems, ...parts.flatMap(wrongMeasures)] };
}

/** What a part measures is looked at even where another part cannot be read, so that nobody is told in two turns. */
function wrongMeasures(part: Part): readonly Problem[] {
  if (!('role' in part)) return [];
  const read = readBySchema(containerFile, part.container, [part.role]);
  return 'problems' in read ? read.problems : checkContainer(read.value, [part.role]);
}

/**
 * The cell that gives these containers, each in the unit in which it is shortest: what was read off in inches is so again.
 * @param containers as they were read
 */
export function writeContainers(containers: WrittenContainers): string {
  return roles.map((role) => `${role} ${writePart(containers[role])}`).join(' + ');
}

function writePart(container: ContainerFile): string {
  const word = shapeWords.find((one) => shapeOf[one] === container.shape);
  if (word === undefined) throw new RangeError(`no word for a ${container.shape}`);
  const measures: Readonly<Record<string, unknown>> = container;
  const lengths_mm = shapes[word].map((key) => Number(measures[key]));
  const written = tapes.filter((unit) => isExact(lengths_mm, unit)).map((unit) => inUnit(lengths_mm, unit));
  const shortest = Math.min(...written.map((text) => text.length));
  return `${word} ${written.find((text) => text.length === shortest) ?? inUnit(lengths_mm, 'mm')}`;
}

function inUnit(lengths_mm: readonly number[], unit: Tape): string {
  return `${lengths_mm.map((length_mm) => of(length_mm, unit)).join(' x ')} ${unit}`;
}

/** Whether what is written is read again as it was. */
function isExact(lengths_mm: readonly number[], unit: Tape): boolean {
  const factor = perUnit_mm[unit];
  return lengths_mm.every((length_mm) => {
    const [value = 0, ...others] = likely(valuesOf(String(of(length_mm, unit))), factor);
    return others.length === 0 && tidy(value * factor) === length_mm;
  });
}

function of(length_mm: number, unit: Tape): number {
  return Number((length_mm / perUnit_mm[unit]).toFixed(4));
}

type Part =
  | { readonly role: Role; readonly container: ContainerFile }
  | { readonly problem: Omit<Problem, 'place'> };

/** A number, with its unit or without: "120", "120 cm", "48"". The x between two of them is no unit. */
const measure = String.raw`\d[\d.,]*(?:\s*(?:["″”]|(?!x)\p{L}+\.?))?`;
const between = /\s*[x×*]\s*/i;
const partForm = new RegExp(
  String.raw`^(\p{L}+)\s+(\p{L}[\p{L} ]*?)\s*(${measure}(?:${between.source}${measure})*)$`,
  'iu',
);

function readPart(text: string): Part {
  const wrong = (problem: Omit<Problem, 'place' | 'given'>): Part => ({
    problem: { given: text, ...problem },
  });
  const [, role = '', word = '', measures = ''] = partForm.exec(text) ?? [];
  if (role === '') return wrong({ code: 'containersForm' });
  const [is, shape] = [role.toLowerCase(), word.toLowerCase().replace(/\s+/g, ' ')];
  if (!isRole(is))
    return wrong({ code: 'containersWord', other: role, allowed: roles, ...meant(role, roles) });
  if (!isShape(shape))
    return wrong({ code: 'containersWord', other: word, allowed: shapeWords, ...meant(word, shapeWords) });
  const read = measures.split(between).map(numberAndUnit);
  const last = read.at(-1)?.unit ?? '';
  const factors = read.map(({ unit }) => written_mm.get(unit === '' ? last : unit));
  const unknown = read[factors.indexOf(undefined)];
  if (unknown !== undefined)
    return wrong({ code: 'containersUnit', other: unknown.unit, allowed: unitWords });
  // In "4 x 2 ft x 18 in" nobody can know whether the 4 are feet or inches.
  const told = new Set(factors.filter((_, at) => read[at]?.unit !== ''));
  if (told.size > 1 && read.some(({ unit }) => unit === '')) return wrong({ code: 'containersForm' });
  const values = read.map(({ number }, at) => likely(valuesOf(number), factors[at] ?? 1));
  const unclear = values.findIndex(({ length }) => length !== 1);
  if (unclear >= 0) return wrong(whyUnclear(read[unclear]?.number ?? '', values[unclear] ?? []));
  const wanted = shapes[shape];
  if (read.length !== wanted.length)
    return wrong({ code: 'containersMeasures', other: shape, min: wanted.length, max: read.length });
  const lengths = wanted.map((key, at) => [key, tidy((values[at]?.[0] ?? 0) * (factors[at] ?? 1))]);
  return { role: is, container: { shape: shapeOf[shape], ...Object.fromEntries(lengths) } as ContainerFile };
}

/** Of two values the one that a container can have: 1.200 in millimetres is 1200, and in metres it is 1.2. */
function likely(values: readonly number[], unit_mm: number): readonly number[] {
  const { least, most } = lengthRange_mm;
  const possible = values.filter((value) => least <= value * unit_mm && value * unit_mm <= most);
  return possible.length === 0 ? values.slice(0, 1) : possible;
}

function whyUnclear(number: string, values: readonly number[]): Pick<Problem, 'code' | 'other' | 'allowed'> {
  if (values.length === 0) return { code: 'containersNumber', other: number };
  return { code: 'containersTwoNumbers', other: number, allowed: values.map(String) };
}

function numberAndUnit(text: string): { readonly number: string; readonly unit: string } {
  const [, number = '', unit = ''] = /^([\d.,]+)\s*(.*?)\.?$/.exec(text) ?? [];
  return { number, unit: unit.toLowerCase() };
}

/** 23.5 in is 596.9 mm, not 596.9000000000001. */
function tidy(value: number): number {
  return Math.round(value * 1000) / 1000;
}

function isRole(word: string): word is Role {
  return roles.some((role) => role === word);
}

function isShape(word: string): word is ShapeWord {
  return Object.hasOwn(shapes, word);
}

function meant(typed: string, known: readonly string[]): Pick<Problem, 'meant'> {
  const best = nearest(typed, known);
  return best === null ? {} : { meant: best };
}

/** Where there are no systems, nobody meant one. */
function notContainers(given: string, systems: readonly string[]): Omit<Problem, 'place'> {
  if (systems.length === 0) return { code: 'containersForm', given };
  return { code: 'containersName', given, allowed: systems, ...meant(given, systems) };
}
