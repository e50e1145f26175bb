/** @jsxImportSource preact */
/** The whole form, one column, in the order in which somebody walks round a system with a tape measure. */
import { BedList } from './BedList.tsx';
import { CheckBox } from './CheckBox.tsx';
import { type PartName, textAt, withPart } from './draft.ts';
import { inUnits } from './draftOf.ts';
import { ChoiceField, DayField, NumberField, TextField } from './fields.tsx';
import { useForm } from './form.ts';
import { LabelFields } from './LabelFields.tsx';
import { OptionalGroup } from './OptionalGroup.tsx';
import { Part, type PartProps } from './Part.tsx';
import { PumpFields } from './PumpFields.tsx';
import { VesselFields } from './VesselFields.tsx';
import { WaterFields } from './WaterFields.tsx';
import { planner } from './words.ts';

export function PlannerForm() {
  return (
    <>
      <SystemPart />
      <Part name="tank" intro="tank">
        <VesselFields name="tank" />
      </Part>
      <PartOrNot name="sump">
        <VesselFields name="sump" />
      </PartOrNot>
      <BedList />
      <PartOrNot name="pump">
        <PumpFields />
      </PartOrNot>
      <PartOrNot name="fish" intro="fish">
        <FishFields />
      </PartOrNot>
      <Part name="water">
        <WaterFields />
      </Part>
    </>
  );
}

function SystemPart() {
  const { content, draft, change } = useForm();
  const choices = (field: string, values: readonly string[]) =>
    values.map((value) => ({ value, text: planner(content.catalogue, `choices.${field}.${value}`) }));
  return (
    <Part name="system">
      <TextField place={['name']} />
      <TextField place={['place']} need="optional" />
      <ChoiceField
        place={['sheet', 'units']}
        choices={choices('units', ['metric', 'us'])}
        onChoose={(value) => change(inUnits(draft, value === 'us' ? 'us' : 'metric'))}
      />
      <ChoiceField place={['sheet', 'paper']} choices={choices('paper', ['A4', 'Letter'])} />
      <LabelFields />
    </Part>
  );
}

function FishFields() {
  const { content, draft } = useForm();
  const kinds = Object.entries(content.facts.fish).map(([value, { name }]) => ({ value, text: name }));
  const kind = textAt(draft, ['fish', 'kind']);
  const { species, note } = Object.hasOwn(content.facts.fish, kind) ? (content.facts.fish[kind] ?? {}) : {};
  return (
    <>
      <ChoiceField place={['fish', 'kind']} choices={kinds} />
      {species === undefined ? null : (
        <p class="note">
          <i lang="la">{species}</i>. {note}
        </p>
      )}
      <NumberField place={['fish', 'present']} />
      <NumberField place={['fish', 'massNow_g']} />
      <DayField place={['fish', 'weighed']} need="optional" />
      <NumberField place={['fish', 'massAdult_g']} need="optional" />
      <NumberField place={['fish', 'keeperRation_frac']} need="optional" />
      <OptionalGroup place={['absence']} name="absence">
        <DayField place={['absence', 'from']} />
        <DayField place={['absence', 'to']} />
      </OptionalGroup>
    </>
  );
}

/** A part that a system may do without; what was typed in it comes back with it. */
function PartOrNot({ name, children, ...rest }: PartProps & { readonly name: PartName }) {
  const { content, draft, change } = useForm();
  const there = draft.parts[name] === 'there';
  return (
    <Part name={name} {...rest}>
      <CheckBox
        text={planner(content.catalogue, `parts.${name}`)}
        checked={there ? 'yes' : 'no'}
        set={(next) => change(withPart(draft, name, next === 'yes' ? 'there' : 'leftOut'))}
      />
      {there ? children : null}
    </Part>
  );
}
