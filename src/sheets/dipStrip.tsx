/** The dip strip: litres at their real heights in this very tank, to be cut out and held to its wall. */
import { type DipLabel, type DipMark, type DipPiece, dipPieces, stripWidth } from '../drawing/dipPieces.ts';
import type { Page } from '../paper/page.ts';
import { mm } from '../paper/measures.ts';
import { amount, amountParts } from '../wording/quantity.ts';
import { Para } from './parts/blocks.tsx';
import { size, weight } from './parts/look.ts';
import { Shapes } from './parts/Shapes.tsx';
import { sideOf } from './parts/Side.tsx';
import { TestBars } from './parts/TestBars.tsx';
import type { SheetInput } from './sheet.ts';
import type { LayOut, SheetKind } from './sheetKind.ts';
import { told } from './sheetWords.ts';

const perPage = 3;

export const dipStrip: SheetKind = {
  id: 'dip-strip',
  name: (input) => told(input, 'dipStrip', 'kind'),
  title,
  subject: (input) => told(input, 'dipStrip', 'pdfSubject'),
  pages,
  fits: () => 'yes',
  scale: 'true',
};

function title(input: SheetInput): string {
  return told(input, 'dipStrip', 'title', { name: input.system.name });
}

async function* pages(input: SheetInput, layOut: LayOut): AsyncGenerator<Page, void, void> {
  const pieces = dipPieces(marks(input), input.system.tank.container.depth_mm);
  for (let first = 0; first < pieces.length; first += perPage) {
    const some = pieces.slice(first, first + perPage);
    const last = first + some.length;
    const words = {
      number: some.length === 1 ? String(last) : `${first + 1}–${last}`,
      count: String(pieces.length),
    };
    const head = {
      title: title(input),
      kind: told(input, 'dipStrip', 'kind'),
      subject: told(input, 'dipStrip', 'subject', words),
    };
    yield layOut(sideOf(input, head, <Pieces input={input} pieces={some} />));
  }
}

/** Round marks in the reader's unit, and the lines that matter. */
function marks(input: SheetInput): readonly DipMark[] {
  const round = input.units === 'us' ? 'gallons' : 'litres';
  return input.dip.rows.flatMap(([kind, volume_L, height_mm]): readonly DipMark[] => {
    const at = { height_mm: Number(height_mm) };
    if (kind === round) {
      return [
        { ...at, kind: 'round', text: amountParts(Number(volume_L), 'L', 'nearest', input.units).number },
      ];
    }
    const volume = amount(Number(volume_L), 'L', 'down', input.units);
    if (kind === 'fullLine') return [{ ...at, kind, text: `${told(input, 'dipStrip', 'full')}, ${volume}` }];
    if (kind === 'lowLine') return [{ ...at, kind, text: told(input, 'dipStrip', 'low') }];
    if (kind === 'quarterLine') return [{ ...at, kind, text: told(input, 'dipStrip', 'quarter') }];
    return [];
  });
}

function Pieces({ input, pieces }: { input: SheetInput; pieces: readonly DipPiece[] }) {
  return (
    <div style={{ display: 'flex', flexDirection: 'column', rowGap: mm(3) }}>
      <TestBars input={input} />
      <Para text={told(input, 'dipStrip', 'use')} fontSize={size.note} />
      <div style={{ display: 'flex', columnGap: mm(6), alignItems: 'flex-end' }}>
        {pieces.map((piece) => (
          <Piece input={input} piece={piece} />
        ))}
      </div>
    </div>
  );
}

function Piece({ input, piece }: { input: SheetInput; piece: DipPiece }) {
  const foot = piece.foot === 'floor' ? told(input, 'dipStrip', 'foot') : '';
  return (
    <div style={{ display: 'flex', flexDirection: 'column', width: stripWidth }}>
      <div
        data-role="Figure"
        data-alt={told(input, 'dipStrip', 'pieceAlt', {
          marks: piece.labels.map(({ text }) => text).join('; '),
        })}
        style={{ display: 'flex', position: 'relative', width: stripWidth, height: piece.height }}
      >
        <Shapes shapes={piece.shapes} width={stripWidth} height={piece.height} />
        {piece.labels.map((label) => (
          <Label label={label} />
        ))}
      </div>
      <div data-role="P" style={{ display: 'flex', fontSize: size.note, height: mm(5) }}>
        {foot}
      </div>
    </div>
  );
}

function Label({ label }: { label: DipLabel }) {
  const isRound = label.kind === 'round';
  return (
    <div
      style={{
        display: 'flex',
        position: 'absolute',
        alignItems: 'flex-end',
        left: isRound ? mm(9) : mm(22),
        top: label.top,
        width: isRound ? mm(12) : stripWidth - mm(23),
        height: label.height,
        fontSize: size.note,
        lineHeight: 1.15,
        fontWeight: label.kind === 'fullLine' ? weight.heavy : weight.text,
      }}
    >
      {label.text}
    </div>
  );
}
