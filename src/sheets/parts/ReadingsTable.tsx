/** What to test, where it is good, and what to do beyond. */
import { mm } from '../../paper/measures.ts';
import { rule, size, weight } from './look.ts';

export type Reading = {
  readonly name: string;
  readonly good: string;
  readonly act: string;
  readonly marks: string;
};

type Props = { readonly head: Reading; readonly rows: readonly Reading[] };

const widths = { name: mm(42), good: mm(40) };

export function ReadingsTable({ head, rows }: Props) {
  return (
    <div
      data-role="Table"
      style={{ display: 'flex', flexDirection: 'column', fontSize: size.text, lineHeight: 1.25 }}
    >
      <Row reading={head} kind="TH" />
      {rows.map((row) => (
        <Row reading={row} kind="TD" />
      ))}
    </div>
  );
}

function Row({ reading, kind }: { reading: Reading; kind: 'TH' | 'TD' }) {
  const heavy = kind === 'TH' ? weight.heavy : weight.text;
  return (
    <div
      data-role="TR"
      style={{
        display: 'flex',
        fontWeight: heavy,
        paddingTop: mm(0.4),
        paddingBottom: mm(0.4),
        borderBottom: `${rule.thin}px solid black`,
      }}
    >
      <div
        data-role="TH"
        style={{ display: 'flex', width: widths.name, flexShrink: 0, fontWeight: weight.heavy }}
      >
        {reading.name}
      </div>
      <div data-role={kind} style={{ display: 'flex', width: widths.good, flexShrink: 0 }}>
        {reading.good}
      </div>
      <div data-role={kind} style={{ display: 'flex', flex: 1 }}>
        {reading.act}
      </div>
      <div data-role={kind} style={{ display: 'flex', fontSize: size.source, fontWeight: weight.text }}>
        {reading.marks}
      </div>
    </div>
  );
}
