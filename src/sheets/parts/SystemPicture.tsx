/** The section with everything that a builder reads off it: shapes from `drawing`, words from the caller. */
import type { Section } from '../../core/plan/figure.ts';
import type { PlacedMark } from '../../drawing/marks.ts';
import { type SystemDrawing, type SystemRoom, systemSection } from '../../drawing/systemSection.ts';
import { mm } from '../../paper/measures.ts';
import { labelLines } from './labelLines.ts';
import { safe, size, weight } from './look.ts';
import { Shapes } from './Shapes.tsx';

type Props = {
  readonly section: Section;
  readonly height: number;
  /** Words beside the drawing, and inside it, by key. */
  readonly labels: Readonly<Record<string, string>>;
  readonly marks: Readonly<Record<string, string>>;
  readonly alt: string;
  readonly unit_mm: number;
  readonly barText: (real_mm: number) => string;
};

const columns = { left: mm(33), right: mm(35) };
const lineHeight = size.note * 1.15;
/** So many characters surely fit a line of the narrower column. */
const charactersPerLine = 17;
const markHeight = mm(4.6);

/** What the section takes on the sheet, for whoever places it. */
export function systemPicture({ section, height, labels, marks, unit_mm }: Omit<Props, 'alt' | 'barText'>) {
  const room: SystemRoom = {
    ...{ width: safe.width, height, ...columns, unit_mm, markHeight },
    scale: 'usual',
    labels: mapped(labels, heightOf),
    marks: mapped(marks, widthOf),
  };
  return systemSection(section, room);
}

export function SystemPicture(props: Props & { readonly drawing: SystemDrawing }) {
  const { drawing, labels, marks, alt, barText } = props;
  const { width, height, bar } = drawing;
  return (
    <div data-role="Figure" data-alt={alt} style={{ display: 'flex', position: 'relative', width, height }}>
      <Shapes shapes={[...drawing.shapes, barShape(bar)]} width={width} height={height} />
      {drawing.marks.map((mark) => (
        <Mark mark={mark} text={marks[mark.key] ?? ''} />
      ))}
      {drawing.labels.map(({ key, side, top }) => (
        <div
          style={{
            display: 'flex',
            position: 'absolute',
            left: side === 'left' ? 0 : width - columns.right,
            top: top + mm(0.3),
            width: columns[side],
            fontSize: size.note,
            lineHeight: 1.15,
          }}
        >
          {labels[key] ?? ''}
        </div>
      ))}
      <div
        style={{
          display: 'flex',
          position: 'absolute',
          left: bar.left + bar.length + mm(2),
          top: bar.top - mm(2.2),
          width: mm(60),
          fontSize: size.note,
          lineHeight: 1.2,
        }}
      >
        {barText(bar.real_mm)}
      </div>
    </div>
  );
}

function mapped(of: Readonly<Record<string, string>>, sizeOf: (text: string, key: string) => number) {
  return Object.fromEntries(Object.entries(of).map(([key, text]) => [key, sizeOf(text, key)]));
}

function heightOf(text: string): number {
  return labelLines(text, charactersPerLine) * lineHeight + mm(0.6);
}

function widthOf(text: string, key: string): number {
  return key.startsWith('station.') ? markHeight : Math.max(markHeight, text.length * mm(1.95) + mm(1.6));
}

function barShape({ left, top, length }: SystemDrawing['bar']) {
  const stroke = (x: number) => `M${x} ${top - 8}L${x} ${top + 8}`;
  const d = `${stroke(left + 2)}M${left + 2} ${top}L${left + length} ${top}${stroke(left + length)}`;
  return { d, paint: { stroke: 'black', width: 4 } } as const;
}

/** Stations stand in rings, holes are boxed letters, names are heavy, widths are plain; all cover what lies under them. */
function Mark({ mark, text }: { mark: PlacedMark; text: string }) {
  const [kind = ''] = mark.key.split('.');
  const look = looks[kind] ?? {};
  return (
    <div
      style={{
        display: 'flex',
        position: 'absolute',
        boxSizing: 'border-box',
        left: mark.at[0] - mark.width / 2,
        top: mark.at[1] - mark.height / 2,
        width: mark.width,
        height: mark.height,
        alignItems: 'center',
        justifyContent: 'center',
        fontSize: size.note,
        lineHeight: 1,
        backgroundColor: 'white',
        ...look,
      }}
    >
      {text}
    </div>
  );
}

const looks: Readonly<Record<string, Record<string, string | number>>> = {
  station: {
    border: '3px solid black',
    fontWeight: weight.heavy,
    borderRadius: markHeight / 2,
  },
  hole: { border: '3px solid black', fontWeight: weight.heavy },
  name: { fontWeight: weight.heavy },
};
