/** Measures of a calendar by the paper it hangs on, in sheet units. */
import { mm, pt } from '../../paper/measures.ts';

export type CalendarLook = {
  readonly margin: number;
  /** Head with months, week numbers and Mondays. */
  readonly head: number;
  readonly key: number;
  readonly label: number;
  readonly row: number;
  readonly title: number;
  readonly text: number;
  readonly small: number;
  /** Most weeks side by side. */
  readonly weeks: number;
};

/** house: read with the sheet in the hand. wall: from a metre. large: from further away, by several people. */
export const calendarLooks = {
  house: {
    ...{ margin: mm(13), head: mm(25), key: mm(10), label: mm(22), row: mm(6.4) },
    ...{ title: pt(16), text: pt(8), small: pt(6.5), weeks: 27 },
  },
  wall: {
    ...{ margin: mm(13), head: mm(34), key: mm(14), label: mm(28), row: mm(9) },
    ...{ title: pt(26), text: pt(11.5), small: pt(8), weeks: 53 },
  },
  large: {
    ...{ margin: mm(15), head: mm(46), key: mm(18), label: mm(38), row: mm(12) },
    ...{ title: pt(36), text: pt(16), small: pt(11), weeks: 53 },
  },
} as const satisfies Record<string, CalendarLook>;
