/** A problem as a sentence: where it is, what came, what is allowed, what to do next. */
import type { Problem } from '../core/problem.ts';
import { type Catalogue, say } from './catalogue.ts';
import { fieldWords } from './problemField.ts';
import { isolated, listed, shortened } from './problemText.ts';
import { amount, type Side, type UnitSystem } from './quantity.ts';

/**
 * One line for whoever edits a file: `content/systems/x.yaml:7:3 beds[0].mediaDepth_mm: got …`.
 * @param catalogue the language; undefined where the very file with the sentences could not be read
 */
export function problemLine(problem: Problem, catalogue: Catalogue | undefined): string {
  const { at } = problem;
  const where = [at ? `${at.file}:${at.line}:${at.column}` : '', pathOf(problem.place)].filter(
    (part) => part !== '',
  );
  const head = where.length === 0 ? '' : `${where.join(' ')}: `;
  if (!catalogue) return `${head}${problem.code} ${problem.given ?? ''}`.trim();
  return head + filledIn(`problems.line.${problem.code}`, problem, catalogue, asWritten);
}

/** Whole sentences for a field of a form, in the units that the person uses. */
export function problemSentence(
  problem: Problem,
  catalogue: Catalogue,
  units: UnitSystem = 'metric',
): string {
  return filledIn(`problems.sentence.${problem.code}`, problem, catalogue, (value, unit, side) =>
    inUnits(value, unit, side, units),
  );
}

/** `beds[0].mediaDepth_mm`. */
export function pathOf(place: Problem['place']): string {
  return place
    .map((step) => (typeof step === 'number' ? `[${step}]` : `.${shortened(isolated(step))}`))
    .join('')
    .replace(/^\./, '');
}

type Show = (value: number, unit: string, side: Side) => string;

/** Units of counts: the sentence around them says what is counted. */
const unsaid: ReadonlySet<string> = new Set([
  '',
  'pH',
  'frac',
  'ratio',
  'fish',
  'containers',
  'characters',
  'year',
]);

const signs: Readonly<Record<string, string>> = { L_h: 'L/h', degC: '°C', mg_L: 'mg/L' };

/** For files: the number as it has to be written, cut to a tenth on the side that is still allowed. */
function asWritten(value: number, unit: string, side: Side): string {
  const cut = { down: Math.floor, up: Math.ceil, nearest: Math.round }[side];
  const tenths =
    unit === 'frac' || side === 'nearest' ? value : cut(Number((value * 10).toPrecision(12))) / 10;
  return unsaid.has(unit) ? String(tenths) : `${tenths} ${signs[unit] ?? unit}`;
}

function inUnits(value: number, unit: string, side: Side, units: UnitSystem): string {
  const counted = unit !== 'frac' && unsaid.has(unit);
  return counted ? asWritten(value, unit, side) : amount(value, unit, side, units);
}

/** What came is a number of its own kind here; everywhere else it stands in quotation marks. */
const numeric: ReadonlySet<Problem['code']> = new Set([
  'fileTooLarge',
  'recordNewer',
  'moreProblems',
  'outOfRange',
  'notWhole',
  'tooMany',
  'tooFew',
  'mediaAboveRim',
  'waterAboveMedia',
  'fullAboveRim',
  'intakeAboveFull',
  'intakeAboveLow',
  'bedsTakeTooMuch',
  'cutAboveDiameter',
  'tooLongForShape',
  'wallTaper',
  'dipTableOrder',
  'dipTableAboveRim',
  'dipTableShort',
  'dipTableTooMuch',
  'bucketTest',
  'drainAboveLine',
  'bedBelowReturn',
  'basketAboveRim',
  'basketAboveWater',
  'basketsTooLarge',
  'basketsTooWide',
  'rangeOrder',
  'absenceLong',
  'seasonLong',
  'rotaLong',
  'nightAboveMean',
  'labelPitch',
  'labelsOffPaper',
  'labelsUsedUp',
  'rosterLong',
  'rosterTooLarge',
]);

/** One field by itself: its line in the file says the number, and the range behind it the unit. */
const bare: ReadonlySet<Problem['code']> = new Set(['outOfRange', 'notWhole']);

function filledIn(key: string, problem: Problem, catalogue: Catalogue, show: Show): string {
  const unit = problem.unit ?? '';
  const bound = (value: number | undefined, side: Side) =>
    value === undefined ? '' : show(value, unit, side);
  const given = givenOf(problem, show);
  const [min, max] = [bound(problem.min, 'up'), bound(problem.max, 'down')];
  const { name, how } = fieldWords(problem.place, catalogue);
  const text = say(catalogue, key, {
    given,
    min,
    max,
    expected: expected(problem, catalogue),
    allowed: allowed(problem, catalogue),
    known: known(problem, catalogue),
    meant: shortened(isolated(problem.meant ?? '')),
    other: shortened(isolated(problem.other ?? '')),
    didYouMean:
      problem.meant === undefined
        ? ''
        : `${say(catalogue, 'problems.hints.didYouMean', { meant: shortened(isolated(problem.meant)) })} `,
    hint: hint(problem, catalogue),
    reader: problem.given
      ? ` ${say(catalogue, 'problems.hints.reader', { given: shortened(problem.given, 160) })}`
      : '',
    wanted: wanted(problem, catalogue),
    line: problem.max === undefined ? min : given,
    media: problem.max === undefined ? given : max,
    field: name,
    how,
  });
  return text.replace(/ {2,}/g, ' ').trim();
}

function givenOf(problem: Problem, show: Show): string {
  const { code, given = '', unit = '' } = problem;
  const value = Number(given);
  if (!numeric.has(code) || given === '' || !Number.isFinite(value)) return `"${shortened(isolated(given))}"`;
  return bare.has(code) && show === asWritten ? given : show(value, unit, 'nearest');
}

function expected(problem: Problem, catalogue: Catalogue): string {
  const { min, max, unit = '', code } = problem;
  if (problem.allowed && problem.allowed.length > 0 && min === undefined) {
    return say(catalogue, 'problems.expected.oneOf', { allowed: allowed(problem, catalogue) });
  }
  if (min === undefined || max === undefined) return say(catalogue, 'problems.expected.anything');
  const kind = code === 'notWhole' ? 'whole' : 'number';
  const what = say(catalogue, `problems.expected.${kind}`, { min: String(min), max: String(max) });
  const words = word(catalogue, 'units', unit);
  return words === null ? what : say(catalogue, 'problems.expected.inUnit', { what, unit: words });
}

/** Words of which one has to be chosen. */
function allowed(problem: Problem, catalogue: Catalogue): string {
  return listed(words(problem), (some, last) => say(catalogue, 'problems.hints.or', { some, last }));
}

/** Words that there are. */
function known(problem: Problem, catalogue: Catalogue): string {
  return listed(words(problem), (some, last) => say(catalogue, 'problems.hints.and', { some, last }));
}

function words(problem: Problem): readonly string[] {
  return (problem.allowed ?? []).map(isolated);
}

/** What a name should be: that of its file, or for a file one with the right ending. */
function wanted(problem: Problem, catalogue: Catalogue): string {
  if (problem.meant !== undefined) {
    return say(catalogue, 'problems.expected.systemName', {
      meant: `"${shortened(isolated(problem.meant))}"`,
    });
  }
  return say(catalogue, `problems.expected.${problem.given?.includes('.') ? 'fileEnding' : 'fileKey'}`);
}

function hint(problem: Problem, catalogue: Catalogue): string {
  if (problem.code === 'notYaml')
    return word(catalogue, 'yaml', problem.other ?? '') ?? say(catalogue, 'problems.yaml.other');
  if (problem.code === 'wrongUnit') return unitHint(problem, catalogue);
  return problem.code === 'notNumber' ? numberHint(problem, catalogue) : '';
}

function unitHint(problem: Problem, catalogue: Catalogue): string {
  const { other = '', unit = '', meant = '' } = problem;
  const named = (of: string) => word(catalogue, 'units', of) ?? of;
  const values = { meant: shortened(meant), unit: named(unit), other: named(other) };
  const sentence = say(catalogue, `problems.hints.${other === '' ? 'noUnit' : 'otherUnit'}`, values);
  return `${sentence} ${word(catalogue, 'conversions', `${other}_${unit}`) ?? ''}`;
}

function numberHint(problem: Problem, catalogue: Catalogue): string {
  const { given = '', meant } = problem;
  const say_ = (key: string, values: Readonly<Record<string, string>> = {}) =>
    say(catalogue, `problems.hints.${key}`, values);
  if (problem.allowed && problem.allowed.length > 0)
    return say_('commaUnclear', { some: allowed(problem, catalogue) });
  if (meant === undefined) return say_('figuresOnly');
  if (given.includes(',')) return say_('comma', { meant });
  return say_(given.trim() === meant ? 'quotationMarks' : 'unitInValue');
}

/** A word that the catalogue may have or not. */
function word(catalogue: Catalogue, group: string, key: string): string | null {
  const { problems } = catalogue;
  const words = typeof problems === 'object' ? problems[group] : undefined;
  const found = typeof words === 'object' && Object.hasOwn(words, key) ? words[key] : undefined;
  return typeof found === 'string' ? found : null;
}
