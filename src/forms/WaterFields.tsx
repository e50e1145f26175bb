/** @jsxImportSource preact */
import { ChoiceField, NumberField } from './fields.tsx';
import { useForm } from './form.ts';
import { More, OptionalGroup } from './OptionalGroup.tsx';
import { planner } from './words.ts';

const disinfectants = ['none', 'chlorine', 'chloramine', 'unknown'];

/** Spoon, feed, and what was measured in the water, in the air stones and at the tap. */
export function WaterFields() {
  const { content } = useForm();
  const choices = (field: string, values: readonly string[]) =>
    values.map((value) => ({ value, text: planner(content.catalogue, `choices.${field}.${value}`) }));
  const places = Object.entries(content.facts.climates).map(([value, { name }]) => ({ value, text: name }));
  const more = ['alkalinity_mg_L', 'tan_mg_L', 'chloride_mg_L', 'green'].map((key) => ['water', key]);
  return (
    <>
      <NumberField place={['spoon_g']} need="optional" />
      <NumberField place={['water', 'now_degC']} need="optional" />
      <NumberField place={['water', 'pH']} need="optional" />
      <More
        name="water"
        holds={[...more, ['feedProtein_frac'], ['altitude_m'], ['climate'], ['air'], ['tap']]}
      >
        <NumberField place={['water', 'alkalinity_mg_L']} need="optional" />
        <NumberField place={['water', 'tan_mg_L']} need="optional" />
        <NumberField place={['water', 'chloride_mg_L']} need="optional" />
        <ChoiceField
          place={['water', 'green']}
          choices={[{ value: '', text: '' }, ...choices('green', ['green', 'clear'])]}
          need="optional"
        />
        <NumberField place={['feedProtein_frac']} need="optional" />
        <NumberField place={['altitude_m']} need="optional" />
        <ChoiceField place={['climate']} choices={[{ value: '', text: '' }, ...places]} need="optional" />
        <OptionalGroup place={['air']} name="air">
          <NumberField place={['air', 'flow_L_min']} />
          <NumberField place={['air', 'stones']} />
          <NumberField place={['air', 'depth_mm']} />
        </OptionalGroup>
        <OptionalGroup place={['tap']} name="tap">
          <NumberField place={['tap', 'pH']} />
          <NumberField place={['tap', 'alkalinity_mg_L']} />
          <NumberField place={['tap', 'water_degC']} />
          <NumberField place={['tap', 'chlorine_mg_L']} need="optional" />
          <ChoiceField
            place={['tap', 'disinfectant']}
            choices={[{ value: '', text: '' }, ...choices('disinfectant', disinfectants)]}
            need="optional"
          />
        </OptionalGroup>
      </More>
    </>
  );
}
