/** What the labels of a system say: on tank, plugs, cords, barrel and outlet, and tags for the plants. */
import { card, figureOf, shown } from './cardWords.ts';
import type { SheetInput } from './sheet.ts';
import { told } from './sheetWords.ts';

/** A line of a label, or a line to write on. Small labels have room only for the lines of the first ranks, from 1. */
export type LabelLine = { readonly kind: 'said' | 'write'; readonly text: string; readonly rank: number };
export type LabelText = {
  readonly title: string;
  readonly lines: readonly LabelLine[];
  /** How much larger than its lines the title is, and after how many lines it is cut with a mark; for names. */
  readonly heading?: { readonly size: number; readonly mostLines: number };
};

/** One of each, for the things that this system has. */
export function fixedLabels(input: SheetInput): readonly LabelText[] {
  const { system } = input;
  const drains = system.beds.some((bed) => bed.mode !== 'inTank') || system.sump !== null;
  const plugged = system.pump !== null || (system.fish?.present ?? 0) > 0 || (system.air ?? null) !== null;
  return [
    tank(input),
    ...(system.pump === null ? [] : [sentences(input, 'pump', ['emergency', 'hands'])]),
    ...(plugged ? [sentences(input, 'air', ['hands', 'hangs'])] : []),
    ...(plugged ? [sentences(input, 'cord', ['hands', 'loop', 'switch'])] : []),
    barrel(input),
    ...(drains ? [sentences(input, 'outlet', ['clear', 'blocked'])] : []),
  ];
}

/** A tag for a plant, filled in by hand. */
export function plantTag(input: SheetInput): LabelText {
  const word = (key: string): string => told(input, 'labels', `tag.${key}`);
  return {
    title: word('crop'),
    lines: [
      { kind: 'write', text: word('sown'), rank: 3 },
      { kind: 'write', text: word('planted'), rank: 2 },
      { kind: 'write', text: word('liftBy'), rank: 1 },
    ],
  };
}

function tank(input: SheetInput): LabelText {
  const full = shown(input, 'tankFull_L');
  const low = shown(input, 'tankLow_L');
  const drops = figureOf(input, 'tankLow_L') !== null && low !== full;
  return {
    title: input.system.name,
    lines: ranked([
      told(input, 'labels', 'tank.drink'),
      told(input, 'labels', 'tank.full', { volume: full }),
      ...(drops ? [told(input, 'labels', 'tank.low', { volume: low })] : []),
      card(input, 'never'),
    ]),
  };
}

function barrel(input: SheetInput): LabelText {
  const word = (key: string): string => told(input, 'labels', `barrel.${key}`);
  return {
    title: word('title'),
    lines: [
      { kind: 'said', text: word('tested'), rank: 3 },
      { kind: 'write', text: word('since'), rank: 1 },
      { kind: 'write', text: word('temperature'), rank: 4 },
      { kind: 'said', text: word('lid'), rank: 2 },
    ],
  };
}

function sentences(input: SheetInput, group: string, keys: readonly string[]): LabelText {
  return {
    title: told(input, 'labels', `${group}.title`),
    lines: ranked(keys.map((key) => told(input, 'labels', `${group}.${key}`))),
  };
}

function ranked(texts: readonly string[]): readonly LabelLine[] {
  return texts.map((text, index) => ({ kind: 'said', text, rank: index + 1 }));
}
