/** Measures of a calendar by the paper it hangs on, in sheet units. */
import { mm, pt } from '../../paper/measures.ts';

export type CalendarLook = {
  readonly margin: number;
  /** Head with months, week numbers and Mondays. */
  readonly head: number;
  /** Samples of the hatching, and a line under them. */
  readonly key: number;
  readonly label: number;
  readonly row: number;
  readonly title: number;
  readonly text: number;
  readonly small: number;
  /** Numbers of crops, in the boxes and in the key. */
  readonly number: number;
  /** Numbers of weeks. */
  readonly weekNumber: number;
  /** Room for a crop in the key. */
  readonly crop: { readonly width: number; readonly height: number };
  /** Most weeks side by side. */
  readonly weeks: number;
};

/**
 * house: read with the sheet in the hand. wall and large: letters are read from some 250 times the height of a small one
 * (common practice, no source), so that figures and names of crops of 4 mm are read from a metre.
 */
export const calendarLooks = {
  house: {
    ...{ margin: mm(13), head: mm(25), key: mm(11), label: mm(26), row: mm(6.2) },
    ...{ title: pt(16), text: pt(8), small: pt(6.5), number: pt(9), weekNumber: pt(9), weeks: 27 },
    crop: { width: mm(38), height: mm(4.4) },
  },
  wall: {
    ...{ margin: mm(13), head: mm(42), key: mm(14), label: mm(34), row: mm(9.2) },
    ...{ title: pt(26), text: pt(11.5), small: pt(8), number: mm(8.2), weekNumber: mm(6), weeks: 54 },
    crop: { width: mm(65), height: mm(9.2) },
  },
  large: {
    ...{ margin: mm(15), head: mm(56), key: mm(19), label: mm(48), row: mm(12) },
    ...{ title: pt(36), text: pt(16), small: pt(11), number: mm(10.6), weekNumber: mm(8), weeks: 54 },
    crop: { width: mm(90), height: mm(11.6) },
  },
} as const satisfies Record<string, CalendarLook>;

/** Letters that stand wider apart together than alone reach a little on. */
export const oneLine = {
  display: 'block',
  lineClamp: 1,
  wordBreak: 'break-all',
  boxSizing: 'border-box',
  paddingRight: mm(1),
} as const;

/** Letters are about half as wide as they are high. */
const letter = 0.62;

/** The same, where nothing is likely to be cut: letter by letter a text takes several times as long to lay out. */
export function inLine(text: string, size: number, room: number) {
  if (text.length * size * letter > room - oneLine.paddingRight) return oneLine;
  const { wordBreak: _, ...whole } = oneLine;
  return { ...whole, overflowWrap: 'break-word' } as const;
}
