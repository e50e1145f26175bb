/** The few blocks that every sheet is built from. */
import type { JSXNode } from 'satori/jsx';
import { mm } from '../../paper/measures.ts';
import { rule, safe, size, weight } from './look.ts';

type Child = JSXNode;

type HeadingProps = {
  readonly level: 'H1' | 'H2';
  readonly text: string;
  readonly aside?: string;
  readonly fontSize?: number;
};

/** A heading over a thin rule, with a remark at its right end where one is given. */
export function Heading({ level, text, aside, fontSize = size.heading }: HeadingProps) {
  return (
    <div
      style={{
        display: 'flex',
        justifyContent: 'space-between',
        alignItems: 'flex-end',
        lineHeight: 1.2,
        paddingBottom: mm(1),
        borderBottom: `${rule.thin}px solid black`,
        marginBottom: mm(1.6),
      }}
    >
      <div data-role={level} style={{ display: 'flex', fontSize, fontWeight: weight.heavy }}>
        {text}
      </div>
      <div data-role="P" style={{ display: 'flex', fontSize: size.source }}>
        {aside ?? ''}
      </div>
    </div>
  );
}

type ParaProps = {
  readonly text: string;
  readonly heavy?: 'heavy';
  readonly fontSize?: number;
  /** One of a list that may run on on a further page. */
  readonly entry?: 'entry';
};

/** A paragraph. */
export function Para({ text, heavy, fontSize, entry }: ParaProps) {
  return (
    <div
      data-role="P"
      {...(entry ? { 'data-entry': '' } : {})}
      style={{
        display: 'flex',
        fontSize: fontSize ?? size.text,
        fontWeight: heavy ? weight.heavy : weight.text,
        lineHeight: 1.3,
      }}
    >
      {text}
    </div>
  );
}

type TickProps = {
  readonly items: readonly string[];
  /** Where letters that stand wider apart together need a little more. */
  readonly roomy?: 'roomy';
  readonly fontSize?: number;
};

/** Things to do, each with a ring to tick. */
export function TickList({ items, roomy, fontSize = size.text }: TickProps) {
  return (
    <div data-role="L" style={{ display: 'flex', flexDirection: 'column' }}>
      {items.map((item) => (
        <div data-role="LI" data-entry="" style={{ display: 'flex', marginBottom: mm(1.2) }}>
          <div
            data-role="Artifact"
            style={{
              display: 'flex',
              flexShrink: 0,
              width: ring,
              height: ring,
              borderRadius: ring / 2,
              border: `${rule.thin}px solid black`,
              marginTop: Math.max(mm(0.8), (fontSize * tickText.lineHeight - ring) / 2),
              marginRight: mm(2.2),
            }}
          />
          <div data-role="LBody" style={{ ...tickText, ...(roomy ? roomyText : {}), fontSize }}>
            {item}
          </div>
        </div>
      ))}
    </div>
  );
}

/** A ring to tick, beside the middle of its first line. */
const ring = mm(3.6);

const tickText = { display: 'flex', flex: 1, lineHeight: 1.25 } as const;
const roomyText = { display: 'block', paddingRight: mm(4), boxSizing: 'border-box' } as const;

/** One column among several. */
export function Column({ width, children }: { width: number; children: Child }) {
  return <div style={{ display: 'flex', flexDirection: 'column', width, flexShrink: 0 }}>{children}</div>;
}

/** A page: ink in the safe box, centred on the paper whatever its size. */
export function Leaf({ height, children }: { height: number; children: Child }) {
  return (
    <div
      style={{
        display: 'flex',
        width: '100%',
        height: '100%',
        backgroundColor: 'white',
        color: 'black',
        justifyContent: 'center',
        alignItems: 'center',
        fontSize: size.text,
        fontWeight: weight.text,
      }}
    >
      <div style={{ display: 'flex', flexDirection: 'column', width: safe.width, height }}>{children}</div>
    </div>
  );
}
