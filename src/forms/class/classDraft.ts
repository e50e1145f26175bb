/** The fields of the class page, and the workshop that they describe. */

export const fieldNames = [
  ...(['name', 'place', 'date', 'starts', 'length_min', 'level', 'seed'] as const),
  ...(['worksheets', 'badRows', 'paper', 'units', 'rows'] as const),
] as const;
export type FieldName = (typeof fieldNames)[number];

export type ClassDraft = Readonly<Record<FieldName, string>>;

export function firstDraft(day: string): ClassDraft {
  return {
    ...{ name: '', place: '', date: day, starts: '09:30', length_min: '120', level: 'secondary', seed: '1' },
    ...{ worksheets: 'participants', badRows: 'stop', paper: 'A4', units: 'metric', rows: '' },
  };
}

/** As a workshop's file has it; the example is the first system that the page brings along. */
export function rawOf(draft: ClassDraft, example: string): unknown {
  const { name, place, date, starts, level, worksheets, badRows, paper, units } = draft;
  const number = (text: string): number | string => (text.trim() === '' ? text : Number(text));
  return {
    ...{ id: 'class', roster: 'roster', example, name, place, date, starts, level, worksheets, badRows },
    ...{ length_min: number(draft.length_min), seed: number(draft.seed), sheet: { paper, units } },
  };
}

/** An empty roster with its columns, as a spreadsheet program opens it. */
export const template = 'name,team,containers,notes\n';
