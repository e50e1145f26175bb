/** What to do when something is wrong: words that a ten-year-old can follow, no first step that makes it worse. */
import { mm } from '../../paper/measures.ts';
import { rule, size, weight } from './look.ts';

type Props = {
  readonly title: string;
  /** Said before everything else, heavy. */
  readonly first: readonly string[];
  readonly cases: readonly { readonly sign: string; readonly act: string }[];
  readonly never: string;
  readonly call: string;
  readonly or: string;
};

export function EmergencyBox({ title, first, cases, never, call, or }: Props) {
  return (
    <div
      style={{
        display: 'flex',
        flexDirection: 'column',
        border: `${rule.box}px solid black`,
        padding: `${mm(3)}px ${mm(4)}px`,
        fontSize: size.text,
        lineHeight: 1.25,
      }}
    >
      <div data-role="H2" style={{ display: 'flex', fontSize: size.heading, fontWeight: weight.heavy }}>
        {title}
      </div>
      {first.map((line) => (
        <div data-role="P" style={{ display: 'flex', fontWeight: weight.heavy, marginTop: mm(1) }}>
          {line}
        </div>
      ))}
      <div data-role="Table" style={{ display: 'flex', flexDirection: 'column', marginTop: mm(1) }}>
        {cases.map((one) => (
          <div data-role="TR" style={{ display: 'flex', marginTop: mm(0.8) }}>
            <div
              data-role="TH"
              style={{ display: 'flex', width: mm(34), flexShrink: 0, fontWeight: weight.heavy }}
            >
              {one.sign}
            </div>
            <div data-role="TD" style={{ display: 'flex', flex: 1 }}>
              {one.act}
            </div>
          </div>
        ))}
      </div>
      <div data-role="P" style={{ display: 'flex', alignItems: 'flex-end', marginTop: mm(0.6) }}>
        <div style={{ display: 'flex', fontWeight: weight.heavy }}>{never}</div>
        <div style={{ display: 'flex', fontWeight: weight.heavy, marginLeft: mm(4), marginRight: mm(2) }}>
          {call}
        </div>
        <Blank />
        <div style={{ display: 'flex', marginLeft: mm(2), marginRight: mm(2) }}>{or}</div>
        <Blank />
      </div>
    </div>
  );
}

/** A line to write a name and a number on. */
function Blank() {
  return (
    <div style={{ display: 'flex', flex: 1, height: mm(7.5), borderBottom: `${rule.thin}px solid black` }} />
  );
}
