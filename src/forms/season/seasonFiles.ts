/** Files of a plan, to be saved. */
import type { Page } from '../../paper/page.ts';
import type { Press } from '../../paper/press.ts';
import { plainPrint } from '../../sheets/sheetPrint.ts';
import type { TurnoverInput } from '../../sheets/turnoverSheet.ts';
import { turnoverSheets } from '../../sheets/turnoverSheets.ts';
import { calendarFile, planTable } from '../../wording/turnoverFiles.ts';
import type { MadeFile } from '../messages.ts';
import type { SeasonFile } from './seasonMessages.ts';

export async function madeFile(file: SeasonFile, input: TurnoverInput, press: Press): Promise<MadeFile> {
  const { plan, jobs, words, units, day } = input;
  const said = { catalogue: words.catalogue, units, day };
  const name = plan.task.id;
  if (file === 'ics') return text(`${name}.ics`, 'text/calendar', calendarFile(plan, jobs, said) ?? '');
  if (file === 'csv') return text(`${name}.csv`, 'text/csv', planTable(plan, jobs, said));
  const kind = turnoverSheets.find(({ id }) => id === file);
  if (kind === undefined) throw new Error(`there is no sheet ${file}`);
  const pages: Page[] = [];
  for await (const page of kind.pages(input, press.layOut)) pages.push(page);
  const bytes = new Uint8Array(await press.toPdf(plainPrint(kind, input, pages)));
  return { name: `${name}-${file}.pdf`, mime: 'application/pdf', bytes };
}

function text(name: string, mime: string, content: string): MadeFile {
  return { name, mime, bytes: new TextEncoder().encode(content) };
}
