/** A piece of a water line as it is drawn, for the list that names it. */
import type { SectionLevel } from '../../core/plan/figure.ts';
import { patternPaint } from '../../drawing/levelPaints.ts';
import { mm } from '../../paper/measures.ts';
import { Shapes } from './Shapes.tsx';

const [width, height] = [mm(28), mm(3)];

export function PatternSample({ level }: { level: SectionLevel['key'] }) {
  const d = `M0 ${height / 2}L${width} ${height / 2}`;
  return (
    <div style={{ display: 'flex', position: 'relative', width, height }}>
      <Shapes shapes={[{ d, paint: patternPaint(level) }]} width={width} height={height} />
    </div>
  );
}
