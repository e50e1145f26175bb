/** Blocks of the pocket card: 9.5 pt at least, in panels the size of a playing card. */
import type { JSXNode } from 'satori/jsx';
import { mm, pt } from '../../paper/measures.ts';
import { rule, size, weight } from './look.ts';

export const pocket = { text: size.note, roomy: size.text, heading: pt(12), figure: pt(40) };

const lineHeight = 1.18;

export function PocketPanel({ heading, children }: { heading: string; children: JSXNode }) {
  return (
    <div style={{ display: 'flex', flexDirection: 'column', width: '100%', rowGap: mm(1.4) }}>
      <PocketHeading text={heading} />
      {children}
    </div>
  );
}

function PocketHeading({ text }: { text: string }) {
  return (
    <div
      data-role="H2"
      style={{
        display: 'flex',
        fontSize: pocket.heading,
        fontWeight: weight.heavy,
        lineHeight: 1.15,
        borderBottom: `${rule.thin}px solid black`,
      }}
    >
      {text}
    </div>
  );
}

/** Panels with room to spare have larger text. */
type TextProps = { readonly text: string; readonly heavy?: 'heavy'; readonly fontSize?: number };

export function PocketText({ text, heavy, fontSize = pocket.text }: TextProps) {
  return (
    <div
      data-role="P"
      style={{
        display: 'flex',
        fontSize,
        fontWeight: heavy ? weight.heavy : weight.text,
        lineHeight,
      }}
    >
      {text}
    </div>
  );
}

/** Heavy words, and what belongs to them. */
export function PocketPair({ head, text }: { head: string; text: string }) {
  return (
    <div data-role="P" style={{ display: 'block', fontSize: pocket.text, lineHeight }}>
      <span style={{ fontWeight: weight.heavy }}>{head}</span>
      {` ${text}`}
    </div>
  );
}

export function PocketList({ items }: { items: readonly string[] }) {
  return (
    <div data-role="L" style={{ display: 'flex', flexDirection: 'column', rowGap: mm(0.8) }}>
      {items.map((item) => (
        <div data-role="LI" style={{ display: 'flex' }}>
          <div data-role="Artifact" style={dot} />
          <div data-role="LBody" style={{ display: 'flex', flex: 1, fontSize: pocket.roomy, lineHeight }}>
            {item}
          </div>
        </div>
      ))}
    </div>
  );
}

const dot = {
  display: 'flex',
  flexShrink: 0,
  width: mm(1.2),
  height: mm(1.2),
  borderRadius: mm(0.6),
  backgroundColor: 'black',
  marginTop: mm(1.6),
  marginRight: mm(1.8),
} as const;

/** A line for a name and a number. */
export function PocketLine({ text }: { text: string }) {
  return (
    <div data-role="P" style={{ display: 'flex', alignItems: 'flex-end', height: mm(8) }}>
      <div style={{ display: 'flex', fontSize: pocket.text, fontWeight: weight.heavy, marginRight: mm(1.5) }}>
        {text}
      </div>
      <div
        style={{ display: 'flex', flex: 1, height: mm(7.5), borderBottom: `${rule.thin}px solid black` }}
      />
    </div>
  );
}
