/** @jsxImportSource preact */
import type { StartPumpFile } from '../schemas/starts.ts';
import { withTree } from './draft.ts';
import { treeOf } from './draftOf.ts';
import { NumberField } from './fields.tsx';
import { idOf, useForm } from './form.ts';
import { More, OptionalGroup } from './OptionalGroup.tsx';
import { Rows } from './Rows.tsx';
import { StartFrom } from './StartFrom.tsx';

export function PumpFields() {
  const { content, draft, units, change } = useForm();
  /** Of a usual pump the middle of its curve is what it may give here, and the most that it takes from the plug. */
  const fill = ({ curve, power_W }: StartPumpFile): void => {
    const flow_L_h = curve[Math.floor(curve.length / 2)]?.flow_L_h;
    const typed = treeOf({ flow_L_h, curve, power_W: power_W.high }, 'pump', units);
    change(Object.entries(typed).reduce((next, [key, tree]) => withTree(next, ['pump', key], tree), draft));
  };
  const at = (...rest: readonly (string | number)[]) => ['pump', ...rest];
  return (
    <>
      <StartFrom id={idOf(at('start'))} words="pump" starts={content.starts.pumps} fill={fill} />
      <NumberField place={at('flow_L_h')} />
      <NumberField place={at('intake_mm')} />
      <More name="pump" holds={[at('power_W'), ['pricePerKWh'], at('curve'), at('pipe'), at('timer')]}>
        <NumberField place={at('power_W')} need="optional" />
        <NumberField place={['pricePerKWh']} need="optional" />
        <OptionalGroup place={at('curve')} name="curve">
          <Rows place={at('curve')} words="curve" first="flow_L_h">
            {(row) => (
              <>
                <NumberField place={[...row, 'flow_L_h']} />
                <NumberField place={[...row, 'head_m']} />
              </>
            )}
          </Rows>
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
