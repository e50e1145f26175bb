/** A line to write on, and a field where the print is filled in on a screen. */
import { mm } from '../../paper/measures.ts';
import type { Field } from '../../paper/page.ts';
import { rule } from './look.ts';

/** Room for a number, its unit behind it. */
export function Blank({ unit, field }: { readonly unit: string; readonly field: Field }) {
  return (
    <div style={{ display: 'flex', alignItems: 'flex-end' }}>
      <div
        data-field={field.name}
        data-tip={field.tip}
        style={{
          display: 'flex',
          width: mm(17),
          height: mm(7),
          borderBottom: `${rule.thinBox}px solid black`,
          marginRight: mm(1),
        }}
      />
      <div style={{ display: 'flex' }}>{unit}</div>
    </div>
  );
}
