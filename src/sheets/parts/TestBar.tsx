/** A bar to measure before anything is cut. */
import { mm } from '../../paper/measures.ts';
import { Para } from './blocks.tsx';
import { Shapes } from './Shapes.tsx';

const [length, height] = [mm(100), mm(5)];

export function TestBar({ text }: { text: string }) {
  const d = `M0 0L0 ${height}M0 ${height / 2}L${length} ${height / 2}M${length} 0L${length} ${height}`;
  return (
    <div style={{ display: 'flex', flexDirection: 'column', rowGap: mm(1.5) }}>
      <Para text={text} heavy="heavy" />
      <div style={{ display: 'flex', position: 'relative', width: mm(104), height }}>
        <Shapes shapes={[{ d, paint: { stroke: 'black', width: 3 } }]} width={mm(104)} height={height} />
      </div>
    </div>
  );
}
