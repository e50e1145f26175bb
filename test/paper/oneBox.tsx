import type { JSXNode } from 'satori/jsx';
import type { Sheet } from '../../src/paper/layOut.ts';
import { mm, paperSizes, pt } from '../../src/paper/measures.ts';

type Style = Record<string, string | number>;

/** A sheet with these children in one block, 20 mm from the edges. */
export function oneBox(children: JSXNode, style: Style = {}): Sheet {
  const root = (
    <div style={{ display: 'flex', width: '100%', height: '100%', padding: mm(20), boxSizing: 'border-box' }}>
      <div data-role="P" style={{ display: 'block', width: mm(170), fontSize: pt(11), ...style }}>
        {children}
      </div>
    </div>
  );
  return { ...paperSizes.A4, title: 'One box', lang: 'en', root };
}
