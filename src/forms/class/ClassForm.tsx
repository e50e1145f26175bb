/** @jsxImportSource preact */
/** The fields of a workshop: the session, what is printed of it, and who cares for the system afterwards. */
import { levels } from '../../core/workshop/exercise.ts';
import { workshopSheets } from '../../schemas/workshopFile.ts';
import { say } from '../../wording/catalogue.ts';
import { CheckBox } from '../CheckBox.tsx';
import { type Choice, ChoiceField, DayField, GroupTroubles, NumberField, TextField } from '../fields.tsx';
import { idOf, useFields } from '../form.ts';
import { More, OptionalGroup } from '../OptionalGroup.tsx';
import { Part } from '../Part.tsx';
import { Rows } from '../Rows.tsx';
import { type ClassDraft, sheetsIn, withSheet } from './classDraft.ts';

export type FormProps = {
  /** Systems by name, of which one is worked through at the wall. */
  readonly examples: readonly Choice[];
  readonly change: (draft: ClassDraft) => void;
};

export function ClassForm({ examples, change }: FormProps) {
  return (
    <>
      <Part name="session" place={null}>
        <TextField place={['name']} />
        <TextField place={['place']} need="optional" />
        <DayField place={['date']} />
        <TextField place={['starts']} />
        <NumberField place={['length_min']} />
        <ChoiceField place={['level']} choices={useChoices('level', levels)} />
        <NumberField place={['seed']} />
        <ChoiceField place={['example']} choices={examples} />
      </Part>
      <Part name="print" place={null}>
        <ChoiceField place={['worksheets']} choices={useChoices('worksheets', ['participants', 'teams'])} />
        <ChoiceField place={['badRows']} choices={useChoices('badRows', ['stop', 'skip'])} />
        <ChoiceField place={['sheet', 'paper']} choices={useChoices('paper', ['A4', 'Letter'])} />
        <ChoiceField place={['sheet', 'units']} choices={useChoices('units', ['metric', 'us'])} />
        <More name="sheets" holds={[]}>
          <Sheets change={change} />
        </More>
        <TextField place={['rows']} need="optional" />
      </Part>
      <Rota />
    </>
  );
}

function useChoices(field: string, values: readonly string[]): readonly Choice[] {
  const { catalogue } = useFields();
  return values.map((value) => ({ value, text: say(catalogue, `class.choices.${field}.${value}`) }));
}

function Sheets({ change }: Pick<FormProps, 'change'>) {
  const { draft, catalogue } = useFields();
  const ticked = sheetsIn(draft);
  return (
    <fieldset class="inner" id={idOf(['sheets'])} tabIndex={-1}>
      <legend>{say(catalogue, 'class.groups.sheets')}</legend>
      <GroupTroubles place={['sheets']} />
      {workshopSheets.map((sheet) => (
        <CheckBox
          key={sheet}
          text={say(catalogue, `class.sheets.${sheet}`)}
          checked={ticked.includes(sheet) ? 'yes' : 'no'}
          set={(is) => change(withSheet(draft, sheet, is))}
        />
      ))}
    </fieldset>
  );
}

/** Folded away: few classes keep a system of their own. */
function Rota() {
  return (
    <More
      name="rota"
      holds={[
        ['rota', 'from'],
        ['rota', 'to'],
        ['rota', 'away'],
      ]}
    >
      <OptionalGroup place={['rota']} name="rota">
        <DayField place={['rota', 'from']} />
        <DayField place={['rota', 'to']} />
        <ChoiceField place={['rota', 'weekends']} choices={useChoices('weekends', ['keeper', 'teams'])} />
        <Rows place={['rota', 'away']} words="away" first="from">
          {(row) => (
            <>
              <DayField place={[...row, 'from']} />
              <DayField place={[...row, 'to']} />
            </>
          )}
        </Rows>
      </OptionalGroup>
    </More>
  );
}
