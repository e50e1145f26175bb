/** What a plan comes to, in tables. */
import { mm } from '../../paper/measures.ts';
import { Grid } from '../parts/Grid.tsx';
import type { PlannedTable, PlannedValue } from './plannedRows.ts';

export function PlannedFigures({ tables }: { readonly tables: readonly PlannedTable[] }) {
  return (
    <div style={{ display: 'flex', flexDirection: 'column', rowGap: mm(3) }}>
      {tables.map((table) => (
        <Rows {...table} />
      ))}
    </div>
  );
}

function Rows({ heads, widths_mm, rows }: PlannedTable) {
  const columns = heads.map((head, at) => ({ head, width: mm(widths_mm[at] ?? 0) }));
  const cells = rows.map(({ name, values }) => [
    name,
    ...values.map((value, at) => <Value {...value} width={mm((widths_mm[at + 1] ?? 0) - 4)} />),
  ]);
  return <Grid columns={columns} rows={cells} rowHeight={mm(5.6)} headHeight={mm(6)} />;
}

function Value({ slot, text, width }: PlannedValue & { readonly width: number }) {
  const slots = text === '' ? {} : { 'data-slot': slot };
  return (
    <div {...slots} style={{ display: 'flex', width }}>
      {text}
    </div>
  );
}
