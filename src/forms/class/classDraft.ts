/** A workshop as somebody types it, and as a file would say it. Every field is text, so that nothing typed is lost. */
import { partsOf, type WorkshopPart } from '../../core/workshop/parts.ts';
import { type WorkshopSheet, workshopSheets } from '../../schemas/workshopFile.ts';
import { anyTyped, type Fields, isTyped, listAt, type Place, textAt, withTree } from '../draft.ts';
import { treeOf } from '../draftOf.ts';

export type ClassDraft = Fields;

export function firstDraft(day: string, example: string): ClassDraft {
  const session = { name: '', place: '', date: day, starts: '09:30', length_min: '120', level: 'secondary' };
  const print = { worksheets: 'participants', badRows: 'stop', sheet: { paper: 'A4', units: 'metric' } };
  const rota = { from: '', to: '', weekends: 'keeper', away: [] };
  const all = { ...session, seed: '1', example, ...print, sheets: [...workshopSheets], rows: '', rota };
  return { fields: treeOf(all, '', 'metric') };
}

/** As a workshop's file has it. What is no number stays as it was typed, what is empty is not there. */
export function rawOf(draft: ClassDraft): unknown {
  const text = (...place: Place): string | undefined => textIn(draft, place);
  const number = (key: string): number | string | undefined => {
    const read = Number(text(key));
    return Number.isNaN(read) ? text(key) : read;
  };
  return {
    ...{ id: 'class', roster: 'roster', name: text('name'), place: text('place'), date: text('date') },
    ...{
      starts: text('starts'),
      length_min: number('length_min'),
      level: text('level'),
      seed: number('seed'),
    },
    ...{ example: text('example'), worksheets: text('worksheets'), badRows: text('badRows') },
    sheet: { paper: text('sheet', 'paper'), units: text('sheet', 'units') },
    sheets: sheetsIn(draft),
    ...(hasRota(draft) ? { rota: rotaOf(draft) } : {}),
  };
}

function textIn(draft: ClassDraft, place: Place): string | undefined {
  return textAt(draft, place).trim() || undefined;
}

const days: readonly Place[] = [
  ['rota', 'from'],
  ['rota', 'to'],
  ['rota', 'away'],
];

/** Who looks after nothing leaves every day of it empty. */
function hasRota(draft: ClassDraft): boolean {
  return days.some((place) => anyTyped(draft, place));
}

function rotaOf(draft: ClassDraft): unknown {
  const text = (...place: Place): string | undefined => textIn(draft, ['rota', ...place]);
  const away = listAt(draft, ['rota', 'away']).map((_, index) => ({
    from: text('away', index, 'from'),
    to: text('away', index, 'to'),
  }));
  return { from: text('from'), to: text('to'), weekends: text('weekends'), away };
}

/** The sheets that are ticked, in the order in which they are stapled. */
export function sheetsIn(draft: ClassDraft): readonly string[] {
  return listAt(draft, ['sheets']).flatMap((tree) => (isTyped(tree) ? [tree.text] : []));
}

export function withSheet(draft: ClassDraft, sheet: WorkshopSheet, is: 'yes' | 'no'): ClassDraft {
  const ticked = new Set(sheetsIn(draft));
  if (is === 'yes') ticked.add(sheet);
  else ticked.delete(sheet);
  const inOrder = workshopSheets.filter((one) => ticked.has(one));
  return withTree(
    draft,
    ['sheets'],
    inOrder.map((text) => ({ text })),
  );
}

/** What the ticked sheets make, before anything else is known. */
export function partsIn(draft: ClassDraft): readonly WorkshopPart[] {
  return partsOf(sheetsIn(draft), hasRota(draft) ? 'rota' : 'none');
}

/** An empty roster with its columns, as a spreadsheet program opens it. */
export const template = 'name,team,containers,notes\n';
