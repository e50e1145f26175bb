/** @jsxImportSource preact */
import { NumberField } from './fields.tsx';
import { More, OptionalGroup } from './OptionalGroup.tsx';
import { Rows } from './Rows.tsx';

export function PumpFields() {
  const at = (...rest: readonly (string | number)[]) => ['pump', ...rest];
  return (
    <>
      <NumberField place={at('flow_L_h')} />
      <NumberField place={at('intake_mm')} />
      <More name="pump" holds={[at('power_W'), ['pricePerKWh'], at('curve'), at('pipe'), at('timer')]}>
        <NumberField place={at('power_W')} need="optional" />
        <NumberField place={['pricePerKWh']} need="optional" />
        <OptionalGroup place={at('curve')} name="curve">
          <Rows place={at('curve')} keys={['flow_L_h', 'head_m']} words="curve" />
        </OptionalGroup>
        <OptionalGroup place={at('pipe')} name="pipe">
          <NumberField place={at('pipe', 'bore_mm')} />
          <NumberField place={at('pipe', 'length_m')} />
          <NumberField place={at('pipe', 'bends')} />
        </OptionalGroup>
        <OptionalGroup place={at('timer')} name="timer">
          <NumberField place={at('timer', 'on_min')} />
          <NumberField place={at('timer', 'off_min')} />
        </OptionalGroup>
      </More>
    </>
  );
}
