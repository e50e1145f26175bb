/** A plan in words for the page: the same figures, steps and sentences that the card prints, for every reader. */
import type { Figure } from '../core/plan/figure.ts';
import type { Note } from '../core/note.ts';
import { feedWords, type FeedWords, figureOf } from '../sheets/cardWords.ts';
import { figureName, figureValue } from '../wording/figure.ts';
import { allSheets } from '../sheets/allSheets.ts';
import type { SheetInput } from '../sheets/sheet.ts';
import type { SheetId } from '../sheets/sheetKind.ts';
import { noteSentence } from '../wording/note.ts';
import { stepLine } from '../wording/step.ts';
import { tableWords, type TableWords } from '../wording/table.ts';

export type FigureWords = {
  readonly key: string;
  readonly name: string;
  readonly value: string;
  readonly steps: readonly string[];
  readonly remarks: readonly string[];
  readonly sources: readonly { readonly key: string; readonly short: string }[];
};

export type Answers = {
  readonly feed: FeedWords;
  /** What may not be run like this, then what wants a look; each once. */
  readonly stops: readonly string[];
  readonly cautions: readonly string[];
  /** The figures that most people come for, then all others. */
  readonly first: readonly FigureWords[];
  readonly more: readonly FigureWords[];
  readonly tables: readonly TableWords[];
  /** Other sheets that this system has something for. */
  readonly sheets: readonly { readonly id: Exclude<SheetId, 'care-card'>; readonly name: string }[];
};

const firstKeys = [
  'fishPlanned',
  'fishByBed',
  'fishByTank',
  'fishByDensity',
  'wetMedia_L',
  'tankFull_L',
  'tankLow_L',
  'systemWater_L',
  'blockedReturn_L',
  'topUpLimit_L_d',
];

export function answersOf(input: SheetInput): Answers {
  const figures = Object.values(input.plan.figures);
  const isFirst = (figure: Figure) => firstKeys.includes(figure.key);
  return {
    feed: feedWords(input),
    stops: sentences('stop', input),
    cautions: sentences('caution', input),
    first: firstKeys.flatMap((key) => (figureOf(input, key) ? [wordsOf(input, key)] : [])),
    tables: input.plan.tables.map((table) => tableWords(table, input.words.catalogue, input.units)),
    sheets: allSheets.flatMap((kind) =>
      kind.id === 'care-card' || kind.fits(input) === 'no' ? [] : [{ id: kind.id, name: kind.name(input) }],
    ),
    more: figures.filter((figure) => !isFirst(figure)).map((figure) => wordsOf(input, figure.key)),
  };
}

function sentences(level: Note['level'], input: SheetInput): readonly string[] {
  const notes = Object.values(input.plan.figures).flatMap((figure) => figure.notes);
  const said = notes.filter((note) => note.level === level).map((note) => sentence(note, input));
  return [...new Set(said)];
}

function wordsOf(input: SheetInput, key: string): FigureWords {
  const figure = input.plan.figures[key];
  if (figure === undefined) throw new RangeError(`the plan has no figure ${key}`);
  const { catalogue, terms, sources } = input.words;
  return {
    key,
    name: figureName(key, input.system.beds.length, input.words.catalogue),
    value: figureValue(figure, input.words.catalogue, input.units),
    steps: figure.steps.filter((step) => step.formula !== '').map((step) => stepLine(step, catalogue, terms)),
    remarks: figure.notes.filter((note) => note.level === 'info').map((note) => sentence(note, input)),
    sources: figure.sources.map((source) => ({ key: source, short: sources[source]?.short ?? source })),
  };
}

function sentence(note: Note, input: SheetInput): string {
  return noteSentence(note, input.words.catalogue, input.units);
}
