/** What stands on a side from its head down: the width of the safe box, and even gaps. */
import type { JSXNode } from 'satori/jsx';
import { mm } from '../../paper/measures.ts';
import { safe, sideHeight } from './look.ts';

export function Frame({ gap = mm(4), children }: { gap?: number; children: JSXNode }) {
  return (
    <div
      style={{
        display: 'flex',
        flexDirection: 'column',
        width: safe.width,
        height: sideHeight,
        rowGap: gap,
      }}
    >
      {children}
    </div>
  );
}
