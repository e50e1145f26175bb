/** The frame of a task on any worksheet: its number and name as a heading, its lines below. */
import type { JSXNode } from 'satori/jsx';
import { safe, size, weight } from './look.ts';

type Props = { readonly number: number; readonly title: string; readonly children: JSXNode };

export function TaskFrame({ number, title, children }: Props) {
  return (
    <div data-entry="" style={{ display: 'flex', flexDirection: 'column', width: safe.width }}>
      <div
        data-role="H2"
        style={{ display: 'flex', fontSize: size.text, fontWeight: weight.heavy, lineHeight: 1.25 }}
      >
        {`${number}. ${title}`}
      </div>
      {children}
    </div>
  );
}
