/** One task of the worked example: its name, and its steps as they are written at the wall. */
import { mm } from '../../paper/measures.ts';
import { size, weight } from '../parts/look.ts';
import type { ExampleTask } from './exampleTasks.ts';

export function ExampleBox({ task: { title, lines } }: { task: ExampleTask }) {
  return (
    <div data-entry="" style={{ display: 'flex', flexDirection: 'column', fontSize: size.text }}>
      <div data-role="P" style={{ display: 'flex', fontWeight: weight.heavy, lineHeight: 1.3 }}>
        {title}
      </div>
      {lines.map((line) => (
        <div data-role="P" style={{ display: 'flex', paddingLeft: mm(5), lineHeight: 1.3 }}>
          {line}
        </div>
      ))}
    </div>
  );
}
