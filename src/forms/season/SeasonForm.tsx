/** @jsxImportSource preact */
/** The form of a season: where, when, in which beds, and what to pick each week. */
import { textAt, type Tree } from '../draft.ts';
import { inUnits } from '../draftOf.ts';
import { ChoiceField, DayField, NumberField, TextField } from '../fields.tsx';
import { LabelFields } from '../LabelFields.tsx';
import { More, OptionalGroup } from '../OptionalGroup.tsx';
import { Part } from '../Part.tsx';
import { Rows } from '../Rows.tsx';
import { bedModes, workdays } from '../../schemas/closedLists.ts';
import { MonthTable } from './MonthTable.tsx';
import { OwnMonths } from './OwnMonths.tsx';
import { choicesOf, named, useSeason } from './seasonContext.ts';
import { WishFields } from './WishFields.tsx';

export function SeasonForm() {
  return (
    <form onSubmit={(event) => event.preventDefault()}>
      <Where />
      <When />
      <Beds />
      <Part name="wishes" place={null}>
        <Rows place={['wishes']} words="wishes" first="crop" fresh={{ unit: { text: 'head' } }}>
          {(row) => <WishFields row={row} />}
        </Rows>
      </Part>
      <Part name="pulses" place={null}>
        <Rows place={['pulses']} words="pulses" first="from">
          {(row) => (
            <>
              <DayField place={[...row, 'from']} />
              <DayField place={[...row, 'to']} need="optional" />
              <NumberField place={[...row, 'times']} />
            </>
          )}
        </Rows>
      </Part>
      <Part name="holidays" place={null}>
        <Rows place={['holidays']} words="holidays" first="name">
          {(row) => (
            <>
              <TextField place={[...row, 'name']} />
              <DayField place={[...row, 'from']} />
              <DayField place={[...row, 'to']} />
            </>
          )}
        </Rows>
      </Part>
      <How />
    </form>
  );
}

function Where() {
  const season = useSeason();
  const { draft, content } = season;
  const isUsual = textAt(draft, ['shortDays']) !== 'ignored';
  const holds = [['nursery', 'cells'], ['water_degC'], ...(isUsual ? [] : [['shortDays']])];
  return (
    <Part name="where">
      <TextField place={['name']} />
      <ChoiceField
        place={['climate']}
        choices={named(content.climates)}
        {...(draft.own === 'there' ? { need: 'optional' as const } : {})}
      />
      <OwnMonths />
      <NumberField place={['nursery', 'even_degC']} need="optional" />
      <More name="where" holds={holds}>
        <NumberField place={['nursery', 'cells']} need="optional" />
        <ChoiceField place={['shortDays']} choices={choicesOf(season, 'shortDays', ['slow', 'ignored'])} />
        <OptionalGroup place={['water']} name="water">
          <MonthTable words="water" columns={[['water_degC']]} />
        </OptionalGroup>
      </More>
    </Part>
  );
}

function When() {
  const season = useSeason();
  return (
    <Part name="season">
      <DayField place={['season', 'from']} />
      <DayField place={['season', 'to']} />
      <ChoiceField place={['workday']} choices={choicesOf(season, 'workday', workdays)} />
    </Part>
  );
}

const freshBed: Tree = { mode: { text: 'siphon' } };

function Beds() {
  const season = useSeason();
  return (
    <Part name="beds" place={null}>
      <Rows place={['beds']} words="beds" first="name" fresh={freshBed}>
        {(row) => (
          <>
            <TextField place={[...row, 'name']} />
            <ChoiceField place={[...row, 'mode']} choices={choicesOf(season, 'mode', bedModes)} />
            <NumberField place={[...row, 'length_mm']} />
            <NumberField place={[...row, 'width_mm']} />
          </>
        )}
      </Rows>
    </Part>
  );
}

function How() {
  const season = useSeason();
  const { draft, change } = season;
  return (
    <Part name="how">
      <ChoiceField
        place={['sheet', 'units']}
        choices={choicesOf(season, 'units', ['metric', 'us'])}
        onChoose={(value) => change(inUnits(draft, value === 'us' ? 'us' : 'metric'))}
      />
      <ChoiceField place={['sheet', 'paper']} choices={choicesOf(season, 'paper', ['A4', 'Letter'])} />
      <NumberField place={['place_mm']} />
      <NumberField place={['rest_d']} />
      <ChoiceField place={['rotation']} choices={choicesOf(season, 'rotation', ['wanted', 'ignored'])} />
      <NumberField place={['feed_g_d']} need="optional" />
      <LabelFields />
    </Part>
  );
}
