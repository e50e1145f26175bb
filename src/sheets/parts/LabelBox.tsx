/** One label: a heavy title, lines, and lines to write on. */
import { mm } from '../../paper/measures.ts';
import type { LabelLine, LabelText } from '../labelTexts.ts';
import { rule, weight } from './look.ts';

type Props = {
  readonly label: LabelText;
  /** Its lines, as many as there is room for. */
  readonly lines: readonly LabelLine[];
  readonly fontSize: number;
  /** In sheet units, from the left top corner of the paper. */
  readonly place: {
    readonly left: number;
    readonly top: number;
    readonly width: number;
    readonly height: number;
  };
};

export function LabelBox({ label, lines, fontSize, place }: Props) {
  const isTag = label.lines.every(({ kind }) => kind === 'write');
  return (
    <div
      data-role="Sect"
      style={{
        display: 'flex',
        position: 'absolute',
        flexDirection: 'column',
        ...place,
        fontSize,
        lineHeight: 1.15,
      }}
    >
      {isTag ? (
        <Written text={label.title} heavy="heavy" />
      ) : (
        <div
          data-role="H2"
          style={{
            ...(label.title.length > longTitle
              ? { ...title, lineClamp: label.heading?.mostLines ?? 2 }
              : title),
            fontSize: lines.length === 0 ? fontSize : fontSize * (label.heading?.size ?? 1.25),
          }}
        >
          {label.title}
        </div>
      )}
      {lines.map(({ kind, text }) =>
        kind === 'write' ? (
          <Written text={text} />
        ) : (
          <div data-role="P" style={{ display: 'flex', marginTop: mm(0.8) }}>
            {text}
          </div>
        ),
      )}
    </div>
  );
}

/** A longer name is cut with a mark; our own warnings are shorter and never cut. */
const longTitle = 60;

const title = {
  display: 'block',
  boxSizing: 'border-box',
  // The layout lets a word without spaces reach a little over its line.
  paddingRight: mm(2),
  fontWeight: weight.heavy,
  wordBreak: 'break-word',
} as const;

/** Words and a line for the pen; all such lines share what room is left. */
function Written({ text, heavy }: { text: string; heavy?: 'heavy' }) {
  return (
    <div
      data-role={heavy ? 'H2' : 'P'}
      style={{ display: 'flex', flex: 1, alignItems: 'flex-end', minHeight: mm(6), maxHeight: mm(11) }}
    >
      <div style={{ display: 'flex', fontWeight: heavy ? weight.heavy : weight.text, marginRight: mm(1.5) }}>
        {text}
      </div>
      <div style={{ display: 'flex', flex: 1, height: mm(4), borderBottom: `${rule.thin}px solid black` }} />
    </div>
  );
}
