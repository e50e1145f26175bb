/** A ruled table to write in: heads, and rows high enough for a hand. */
import type { JSXNode } from 'satori/jsx';
import { mm } from '../../paper/measures.ts';
import { rule, size, weight } from './look.ts';

/** Words, or a small drawing. */
type Cell = JSXNode;

export type GridColumn = {
  readonly head: string;
  readonly width: number;
};

type Props = {
  readonly columns: readonly GridColumn[];
  readonly rows: readonly (readonly Cell[])[];
  readonly rowHeight: number;
  readonly headHeight?: number;
};

const line = `${rule.thin}px solid black`;

export function Grid({ columns, rows, rowHeight, headHeight = mm(11) }: Props) {
  return (
    <div
      data-role="Table"
      style={{
        display: 'flex',
        flexDirection: 'column',
        borderLeft: line,
        borderTop: `${rule.thinBox}px solid black`,
      }}
    >
      <Row columns={columns} cells={columns.map(({ head }) => head)} height={headHeight} kind="TH" />
      {rows.map((cells) => (
        <Row columns={columns} cells={cells} height={rowHeight} kind="TD" />
      ))}
    </div>
  );
}

type RowProps = {
  readonly columns: readonly GridColumn[];
  readonly cells: readonly Cell[];
  readonly height: number;
  readonly kind: 'TH' | 'TD';
};

function Row({ columns, cells, height, kind }: RowProps) {
  return (
    <div
      data-role="TR"
      {...(kind === 'TD' ? { 'data-entry': '' } : {})}
      style={{ display: 'flex', minHeight: height, borderBottom: line }}
    >
      {columns.map(({ width }, index) => (
        <div
          data-role={kind === 'TD' && index === 0 ? 'TH' : kind}
          style={{
            display: 'flex',
            alignItems: 'center',
            width,
            flexShrink: 0,
            boxSizing: 'border-box',
            paddingLeft: mm(1.2),
            paddingRight: mm(0.6),
            borderRight: line,
            fontSize: kind === 'TH' ? size.note : size.text,
            fontWeight: kind === 'TH' ? weight.heavy : weight.text,
            lineHeight: 1.1,
            wordBreak: 'break-word',
          }}
        >
          {inLines(cells[index] ?? '')}
        </div>
      ))}
    </div>
  );
}

/** Lines that somebody wrote apart stay apart. */
function inLines(cell: Cell): Cell {
  if (typeof cell !== 'string' || !cell.includes('\n')) return cell;
  return (
    <div style={{ display: 'flex', flexDirection: 'column' }}>
      {cell.split('\n').map((line) => (
        <div style={{ display: 'flex' }}>{line}</div>
      ))}
    </div>
  );
}
