/** @jsxImportSource preact */
import type { Place } from '../draft.ts';
import { ChoiceField, DayField, NumberField } from '../fields.tsx';
import { More } from '../OptionalGroup.tsx';
import { Rows } from '../Rows.tsx';
import { choicesOf, named, useSeason } from './seasonContext.ts';

/** A crop, how much of it, and the weeks in which it is another amount. */
export function WishFields({ row }: { readonly row: Place }) {
  const season = useSeason();
  return (
    <>
      <ChoiceField place={[...row, 'crop']} choices={named(season.content.crops)} />
      <NumberField place={[...row, 'perWeek']} />
      <ChoiceField place={[...row, 'unit']} choices={choicesOf(season, 'unit', ['head', 'bunch', 'kg'])} />
      <More name="wish" holds={['from', 'to', 'pulses'].map((key) => [...row, key])}>
        <div class="row-of-fields">
          <DayField place={[...row, 'from']} need="optional" />
          <DayField place={[...row, 'to']} need="optional" />
        </div>
        <Rows place={[...row, 'pulses']} words="amounts" first="from">
          {(pulse) => (
            <>
              <DayField place={[...pulse, 'from']} />
              <DayField place={[...pulse, 'to']} need="optional" />
              <NumberField place={[...pulse, 'amount']} />
            </>
          )}
        </Rows>
      </More>
    </>
  );
}
