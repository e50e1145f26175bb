/** The section as large as the poster lets it be: numbers of the stations, names, and the lines that matter. */
import type { Section } from '../../core/plan/figure.ts';
import { changed } from '../../drawing/scales.ts';
import { systemSection } from '../../drawing/systemSection.ts';
import { mm } from '../../paper/measures.ts';
import { labelLines } from './labelLines.ts';
import { weight } from './look.ts';
import { posterRule, posterSize } from './posterLook.ts';
import { Shapes } from './Shapes.tsx';

type Props = {
  readonly section: Section;
  readonly width: number;
  readonly height: number;
  readonly labels: Readonly<Record<string, string>>;
  /** Numbers and names inside the drawing, by the keys of `drawing`. */
  readonly marks: Readonly<Record<string, string>>;
  readonly alt: string;
  readonly unit_mm: number;
};

/** Drawn small and enlarged, so that walls and pipes grow with the paper. */
const times = 2.8;
const labelWidth = mm(17);
/** Wide letters in mind, so that a label never takes more lines than it was given room for. */
const charactersPerLine = Math.floor((labelWidth * times) / (posterSize.near * 0.62));
const markHeight = mm(5.2);

export function PosterPicture({ section, width, height, labels, marks, alt, unit_mm }: Props) {
  const drawing = systemSection(section, {
    ...{ width: width / times, height: height / times, left: 0, right: labelWidth, unit_mm, markHeight },
    labels: Object.fromEntries(Object.entries(labels).map(([key, text]) => [key, labelHeight(text)])),
    marks: Object.fromEntries(Object.entries(marks).map(([key, text]) => [key, widthOf(text)])),
    scale: 'largest',
  });
  const shown = { width, height: drawing.height * times };
  return (
    <div data-role="Figure" data-alt={alt} style={{ display: 'flex', position: 'relative', ...shown }}>
      <Shapes shapes={changed(drawing.shapes, { times, right: 0, down: 0 })} {...shown} />
      {drawing.marks.map(({ key, at, ...size }) => (
        <div
          style={{
            display: 'flex',
            position: 'absolute',
            left: (at[0] - size.width / 2) * times,
            top: (at[1] - size.height / 2) * times,
            width: size.width * times,
            height: size.height * times,
            alignItems: 'center',
            justifyContent: 'center',
            lineHeight: 1,
            fontWeight: weight.heavy,
            ...(key.startsWith('station.') ? disc : name),
          }}
        >
          {marks[key] ?? ''}
        </div>
      ))}
      {drawing.labels.map(({ key, top }) => (
        <div
          style={{
            display: 'flex',
            position: 'absolute',
            left: width - labelWidth * times,
            top: top * times,
            width: labelWidth * times,
            height: labelHeight(labels[key] ?? '') * times,
            alignItems: 'center',
            fontSize: posterSize.near,
            fontWeight: weight.heavy,
            lineHeight: 1.1,
          }}
        >
          {labels[key] ?? ''}
        </div>
      ))}
    </div>
  );
}

function labelHeight(text: string): number {
  return ((labelLines(text, charactersPerLine) * 1.1 + 0.1) * posterSize.near) / times;
}

function widthOf(text: string): number {
  return text.length < 3 ? markHeight : (text.length * posterSize.near * 0.62) / times + mm(1);
}

const disc = {
  boxSizing: 'border-box',
  backgroundColor: 'white',
  border: `${posterRule.ring}px solid black`,
  borderRadius: (markHeight * times) / 2,
  fontSize: mm(11),
} as const;

const name = { backgroundColor: 'white', fontSize: posterSize.near } as const;
