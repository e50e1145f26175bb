/** Who cares on which day, for the wall beside the tank. */
import type { RotaDay } from '../../core/workshop/rota.ts';
import { mm } from '../../paper/measures.ts';
import { dayText } from '../../wording/date.ts';
import { paged } from '../paged.ts';
import { Para } from '../parts/blocks.tsx';
import { Grid } from '../parts/Grid.tsx';
import { type ClassInput, type ClassSheet, classSide, columnsOf } from './classSheet.tsx';
import { handoutWords } from './handout.ts';

const rowHeight = mm(5.9);
const widths = { day: 38, who: 76, done: 20, saw: 56 };
/** From here on somebody else has to come: fish in good health go without food for a weekend, not for longer. */
const longGap_d = 3;

export const rotaSheet: ClassSheet = {
  id: 'rota',
  fits: ({ facts }) => (facts.rota.length === 0 ? 'no' : 'yes'),
  pages: (input, layOut) => {
    const { rota, together, longestGap_d: gap_d } = input.facts;
    return paged(
      {
        all: rota.map((day) => rowOf(input, day)),
        rowHeight,
        draw: ({ some, at }) =>
          classSide(
            input,
            { kind: handoutWords(input, 'kinds.rota'), subject: handoutWords(input, 'rota.subject') },
            <div style={{ display: 'flex', flexDirection: 'column', rowGap: mm(3) }}>
              {at === 'first' && gap_d >= longGap_d ? (
                <Para text={handoutWords(input, 'rota.gap', { days: String(gap_d) })} heavy="heavy" />
              ) : null}
              <Grid
                columns={columnsOf(input, 'rota', widths)}
                rows={some}
                rowHeight={rowHeight}
                headHeight={mm(7)}
              />
              <Para text={handoutWords(input, 'rota.task')} />
              {together.includes(1) ? <Para text={handoutWords(input, 'rota.along')} /> : null}
            </div>,
          ),
      },
      layOut,
    );
  },
};

function rowOf(input: ClassInput, { date, weekday, team, why }: RotaDay): readonly string[] {
  const who = team === null ? handoutWords(input, `rota.${why}`) : (input.turns[team] ?? '');
  const day = handoutWords(input, `weekdays.${weekday}`);
  return [`${day} ${dayText(date, input.words.catalogue)}`, who, '', ''];
}
