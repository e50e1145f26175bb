/** The section drawing with letters in 18 pt, and under it what they stand for. */
import { sectionDrawing } from '../../drawing/sectionDrawing.ts';
import { mm } from '../../paper/measures.ts';
import { amount, lengthUnit_mm } from '../../wording/quantity.ts';
import { card, sectionLabels } from '../cardWords.ts';
import type { SheetInput } from '../sheet.ts';
import { large, LargePair } from './largeBlocks.tsx';
import { rule, safe, weight } from './look.ts';
import { Shapes } from './Shapes.tsx';

const width = safe.width;
const height = mm(74);
const letterHeight = mm(9);
/** More letters find no room beside the picture; what they would stand for is told all the same. */
const letters = 'ABCDEFGH';
/** More numbers would lie on each other. */
const mostTags = 8;

export function LargePicture({ input }: { input: SheetInput }) {
  const { drawing, said } = lettered(input);
  const tags = drawing.tags.length <= mostTags ? drawing.tags : [];
  const alt = card(input, 'drawing', { words: said.map(({ text }) => text).join('; ') });
  return (
    <div style={{ display: 'flex', flexDirection: 'column', width }}>
      <div data-role="Figure" data-alt={alt} style={{ display: 'flex', position: 'relative', width, height }}>
        <Shapes shapes={drawing.shapes} width={width} height={height} />
        {tags.map((tag) => (
          <div style={{ ...disc, left: tag.x - mm(4.5), top: tag.y - mm(4.5) }}>{tag.text}</div>
        ))}
        {drawing.labels.map((placed, index) => (
          <div style={{ ...letter, left: drawing.labelLeft + mm(1), top: placed.top }}>{letters[index]}</div>
        ))}
        <div
          style={{
            ...letter,
            width: mm(120),
            fontWeight: weight.text,
            left: drawing.bar.left,
            top: drawing.bar.top + 6,
          }}
        >
          {card(input, 'bar', { length: amount(drawing.bar.real_mm, 'mm', 'nearest', input.units) })}
        </div>
      </div>
      {said
        .filter(({ letter }) => letter !== '')
        .map((one) => (
          <LargePair head={one.letter} text={one.text} />
        ))}
    </div>
  );
}

/** What the labels of the card tell besides, for blocks of their own: there may be more than a page holds. */
export function withoutLetter(input: SheetInput): readonly string[] {
  return lettered(input).said.flatMap(({ letter, text }) => (letter === '' ? [text] : []));
}

/** The drawing, and the words of its labels from the top of the picture down, then those without a letter. */
function lettered(input: SheetInput) {
  const labels = sectionLabels(input);
  const keys = Object.keys(labels)
    // Where there are several beds the drawing numbers them itself.
    .filter((key) => input.system.beds.length === 1 || !key.startsWith('bed.'))
    .slice(0, letters.length);
  const drawing = sectionDrawing(input.plan.section, {
    width,
    height,
    labelWidth: mm(14),
    unit_mm: lengthUnit_mm(input.units),
    labelHeights: Object.fromEntries(keys.map((key) => [key, letterHeight])),
  });
  const said = Object.entries(labels).map(([key, { text }]) => {
    const index = drawing.labels.findIndex((placed) => placed.key === key);
    return { letter: letters[index] ?? '', text };
  });
  const rank = (letter: string): number => (letter === '' ? letters.length : letters.indexOf(letter));
  return { drawing, said: [...said].sort((a, b) => rank(a.letter) - rank(b.letter)) };
}

const disc = {
  display: 'flex',
  position: 'absolute',
  width: mm(9),
  height: mm(9),
  borderRadius: mm(4.5),
  border: `${rule.thinBox}px solid black`,
  boxSizing: 'border-box',
  backgroundColor: 'white',
  alignItems: 'center',
  justifyContent: 'center',
  fontSize: large.text,
  fontWeight: weight.heavy,
  lineHeight: 1,
} as const;

const letter = {
  display: 'flex',
  position: 'absolute',
  width: mm(9),
  height: letterHeight,
  fontSize: large.text,
  fontWeight: weight.heavy,
  lineHeight: 1.2,
} as const;
