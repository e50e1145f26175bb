/** Blocks of the large print: nothing on the page is smaller than 18 pt. */
import { mm, pt } from '../../paper/measures.ts';
import { rule, weight } from './look.ts';

export const large = { text: pt(18), heading: pt(24), title: pt(32), figure: pt(96) };

export function LargeHeading({ text }: { text: string }) {
  return (
    <div
      data-role="H2"
      style={{
        display: 'flex',
        width: '100%',
        fontSize: large.heading,
        fontWeight: weight.heavy,
        lineHeight: 1.2,
        borderBottom: `${rule.thinBox}px solid black`,
      }}
    >
      {text}
    </div>
  );
}

export function LargeText({ text, heavy }: { text: string; heavy?: 'heavy' }) {
  return (
    <div
      data-role="P"
      style={{
        display: 'block',
        width: '100%',
        fontSize: large.text,
        fontWeight: heavy ? weight.heavy : weight.text,
        lineHeight: 1.25,
        wordBreak: 'break-word',
      }}
    >
      {text}
    </div>
  );
}

/** Words and what belongs to them, heavy words first. */
export function LargePair({ head, text }: { head: string; text: string }) {
  return (
    <div data-role="P" style={{ display: 'block', width: '100%', fontSize: large.text, lineHeight: 1.25 }}>
      <span style={{ fontWeight: weight.heavy }}>{head}</span>
      {` ${text}`}
    </div>
  );
}

/** Things to do, each with a ring to tick. */
export function LargeTicks({ items }: { items: readonly string[] }) {
  return (
    <div data-role="L" style={{ display: 'flex', flexDirection: 'column', width: '100%', rowGap: mm(2) }}>
      {items.map((item) => (
        <div data-role="LI" style={{ display: 'flex' }}>
          <div data-role="Artifact" style={ring} />
          <div data-role="LBody" style={{ display: 'flex', flex: 1, fontSize: large.text, lineHeight: 1.25 }}>
            {item}
          </div>
        </div>
      ))}
    </div>
  );
}

const ring = {
  display: 'flex',
  flexShrink: 0,
  width: mm(6),
  height: mm(6),
  borderRadius: mm(3),
  border: `${rule.thinBox}px solid black`,
  marginTop: mm(0.8),
  marginRight: mm(4),
} as const;

/** A line to write on, behind its words. */
export function LargeLine({ text }: { text: string }) {
  return (
    <div data-role="P" style={{ display: 'flex', width: '100%', alignItems: 'flex-end', height: mm(13) }}>
      <div style={{ display: 'flex', fontSize: large.text, fontWeight: weight.heavy, marginRight: mm(3) }}>
        {text}
      </div>
      <div style={{ display: 'flex', flex: 1, height: mm(12), borderBottom: `${rule.thin}px solid black` }} />
    </div>
  );
}
