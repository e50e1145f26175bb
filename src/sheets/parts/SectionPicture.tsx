/** The section drawing with its labels: shapes from `drawing`, words from the caller. */
import type { Section } from '../../core/plan/figure.ts';
import { type Room, sectionDrawing } from '../../drawing/sectionDrawing.ts';
import { mm } from '../../paper/measures.ts';
import { labelLines } from './labelLines.ts';
import { size, weight } from './look.ts';
import { Shapes } from './Shapes.tsx';

/** A label in one or two lines; the first may be heavy. */
export type LabelWords = { readonly text: string; readonly heavy: 'heavy' | 'text' };

type Props = {
  readonly section: Section;
  readonly width: number;
  readonly height: number;
  readonly labels: Readonly<Record<string, LabelWords>>;
  /** What a reader hears instead of the picture. */
  readonly alt: string;
  /** The reader's unit of length, in millimetres. */
  readonly unit_mm: number;
  /** Words for the scale bar, from its length. */
  readonly barText: (real_mm: number) => string;
};

const labelWidth = mm(41);
const lineHeight = size.text * 1.2;
/** Up to this many characters fit one line of the column. */
const charactersPerLine = { text: 21, heavy: 18 } as const;

export function SectionPicture({ section, width, height, labels, alt, unit_mm, barText }: Props) {
  const room: Room = {
    width,
    height,
    labelWidth,
    unit_mm,
    labelHeights: Object.fromEntries(Object.entries(labels).map(([key, label]) => [key, heightOf(label)])),
  };
  const drawing = sectionDrawing(section, room);
  return (
    <div data-role="Figure" data-alt={alt} style={{ display: 'flex', position: 'relative', width, height }}>
      <Shapes shapes={drawing.shapes} width={width} height={height} />
      {drawing.tags.map((tag) => (
        <Disc text={tag.text} x={tag.x} y={tag.y} />
      ))}
      {drawing.labels.map((placed) => {
        const label = labels[placed.key];
        return label === undefined ? null : <Label label={label} left={drawing.labelLeft} top={placed.top} />;
      })}
      <div
        style={{
          display: 'flex',
          position: 'absolute',
          left: drawing.bar.left,
          top: drawing.bar.top + 10,
          width: Math.max(drawing.bar.length, mm(46)),
          fontSize: size.text,
          lineHeight: 1.2,
        }}
      >
        {barText(drawing.bar.real_mm)}
      </div>
    </div>
  );
}

function heightOf({ text, heavy }: LabelWords): number {
  return labelLines(text, charactersPerLine[heavy]) * lineHeight + mm(1.2);
}

function Label({ label, left, top }: { label: LabelWords; left: number; top: number }) {
  return (
    <div
      style={{
        display: 'flex',
        position: 'absolute',
        left,
        top: top + mm(0.6),
        width: labelWidth,
        fontSize: size.text,
        lineHeight: 1.2,
        fontWeight: label.heavy === 'heavy' ? weight.heavy : weight.text,
      }}
    >
      {label.text}
    </div>
  );
}

function Disc({ text, x, y }: { text: string; x: number; y: number }) {
  const across = mm(5.4);
  return (
    <div
      style={{
        display: 'flex',
        position: 'absolute',
        left: x - across / 2,
        top: y - across / 2,
        width: across,
        height: across,
        borderRadius: across / 2,
        border: '3px solid black',
        backgroundColor: 'white',
        alignItems: 'center',
        justifyContent: 'center',
        fontSize: size.text,
        fontWeight: weight.heavy,
        lineHeight: 1,
      }}
    >
      {text}
    </div>
  );
}
