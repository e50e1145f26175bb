/** @jsxImportSource preact */
import { NumberField } from './fields.tsx';
import { More, OptionalGroup } from './OptionalGroup.tsx';

/** In the order in which somebody measures a sheet of labels. */
const keys = [
  ...['columns', 'rows', 'labelWidth_mm', 'labelHeight_mm', 'left_mm', 'top_mm'],
  ...['across_mm', 'down_mm', 'used'],
];

/** The person's own sheet of blank labels. */
export function LabelFields() {
  return (
    <More name="labels" holds={[['labels']]}>
      <OptionalGroup place={['labels']} name="labels">
        {keys.map((key) => (
          <NumberField
            key={key}
            place={['labels', key]}
            {...(key === 'used' ? { need: 'optional' as const } : {})}
          />
        ))}
      </OptionalGroup>
    </More>
  );
}
