/** What planning again has changed, in the words of the crops page. */
import { dateOf } from '../../core/calendar.ts';
import type { PlanChanges } from '../../core/turnover/planChanges.ts';
import type { Sowing } from '../../core/turnover/turnover.ts';
import { workday_d } from '../../core/turnover/weeks.ts';
import { cropName, saidIn, type TurnoverInput } from '../../sheets/turnoverSheet.ts';
import { say } from '../../wording/catalogue.ts';
import { dayText } from '../../wording/date.ts';
import { harvestText, placesText } from '../../wording/harvest.ts';

/** "Rocket, 6 plants, sown 12 Apr 2031: Long bed, places 3–8". */
export function sowingText(input: TurnoverInput, { crop, plants, dates, bed, strips }: Sowing): string {
  const { catalogue } = input.words;
  return say(catalogue, 'crops.again.sowing', {
    crop: cropName(input, crop),
    plants: say(catalogue, `crops.again.plants.${plants === 1 ? 'one' : 'many'}`, { count: String(plants) }),
    date: dayText(dates.sown, catalogue),
    bed: input.plan.task.beds[bed]?.name ?? '',
    places: placesText(strips, catalogue),
  });
}

export function changeLines(input: TurnoverInput, changes: PlanChanges): readonly string[] {
  const { failed, partly, stand, moved, ahead, totals } = changes;
  const { catalogue } = input.words;
  const words = (key: string, values: Readonly<Record<string, string>>) =>
    say(catalogue, `crops.again.told.${key}`, values);
  const date = dayText(dateOf(workday_d(input.plan.task, changes.now_week)), catalogue);
  const counted = { same: String(ahead.same), fresh: String(ahead.fresh), gone: String(ahead.gone) };
  return [
    ...failed.map((one) => words('failed', { sowing: sowingText(input, one) })),
    ...partly.map((one) => words('partly', { sowing: sowingText(input, one) })),
    words('stand', { count: String(stand) }),
    ...moved.map((one) => words('moved', { sowing: sowingText(input, one) })),
    words('ahead', { date, ...counted }),
    ...totals.flatMap((one) => totalLine(input, one)),
  ];
}

/** None where both read alike. */
function totalLine(
  input: TurnoverInput,
  { crop, before, now }: PlanChanges['totals'][number],
): readonly string[] {
  const unit = input.plan.crops.find((one) => one.crop === crop)?.unit ?? 'kg';
  const [was, is] = [before, now].map((value) => harvestText(value, unit, saidIn(input)));
  if (was === undefined || is === undefined || was === is) return [];
  const values = { crop: cropName(input, crop), was, is };
  return [say(input.words.catalogue, 'crops.again.told.total', values)];
}
