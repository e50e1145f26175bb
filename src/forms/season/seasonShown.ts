/** A plan in the words and pictures of the crops page. */
import { dateOf } from '../../core/calendar.ts';
import type { PlanChanges } from '../../core/turnover/planChanges.ts';
import { workday_d } from '../../core/turnover/weeks.ts';
import type { Page } from '../../paper/page.ts';
import type { Press } from '../../paper/press.ts';
import { calendarAlt, season, type TurnoverInput } from '../../sheets/turnoverSheet.ts';
import { shortLines, totalLines } from '../../sheets/harvestWords.ts';
import { lightLines } from '../../sheets/lightWords.ts';
import { mindLines } from '../../sheets/mindLines.ts';
import { turnoverSheets } from '../../sheets/turnoverSheets.ts';
import type { Side } from '../messages.ts';
import { changeLines, sowingText } from './changeLines.ts';
import type { SeasonWords } from './seasonMessages.ts';

export function shownOf(input: TurnoverInput, changed: PlanChanges | null): SeasonWords {
  const sheets = turnoverSheets
    .filter((kind) => kind.fits(input) === 'yes')
    .map((kind): FileName => ({ id: kind.id, name: kind.name(input) }));
  return {
    crops: totalLines(input),
    short: shortLines(input),
    notes: mindLines(input),
    light: lightLines(input),
    stages: input.plan.stages,
    changes: changed === null ? [] : changeLines(input, changed),
    sowings: input.plan.sowings.map((sowing) => ({
      id: sowing.id,
      from: sowing.dates.sown,
      until: dateOf(workday_d(input.plan.task, sowing.to_week)),
      text: sowingText(input, sowing),
    })),
    files: input.jobs.length === 0 ? sheets : [...sheets, ...plainFiles(input)],
  };
}

type FileName = SeasonWords['files'][number];

function plainFiles(input: TurnoverInput): readonly FileName[] {
  return (['ics', 'csv'] as const).map((id) => ({ id, name: season(input, `file.names.${id}`) }));
}

/** The calendar for the paper of the house, page by page; none where nothing grows. */
export async function* calendarSides(input: TurnoverInput, press: Press): AsyncGenerator<Side, void, void> {
  const [calendar] = turnoverSheets;
  if (calendar === undefined || calendar.fits(input) === 'no') return;
  for await (const page of calendar.pages(input, press.layOut)) yield sideOf(page, input, press);
}

function sideOf(page: Page, input: TurnoverInput, press: Press): Side {
  const { width_pt, height_pt } = page;
  const crops = new Set(input.plan.sowings.map(({ crop }) => crop));
  return { width_pt, height_pt, ...press.draw(page), alt: calendarAlt(input, crops) };
}
