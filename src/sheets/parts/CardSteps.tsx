/** The worked steps: what fits below the keeper's side, then sides of their own. */
import { mm } from '../../paper/measures.ts';
import { card } from '../cardWords.ts';
import { citations, doubts, readings, weighing, cardSteps } from '../keeperWords.ts';
import type { SheetInput } from '../sheet.ts';
import { Heading, Para } from './blocks.tsx';
import { CardHead } from './CardHead.tsx';
import { safe, size } from './look.ts';
import { lengthOf, StepList, type StepWords } from './StepList.tsx';

const columnWidth = mm(92);
/** Characters of the small type that are sure to fit one line of a column. */
const charactersPerLine = 65;
const charactersAcross = 125;
/** Characters of heavy running text that are sure to fit one line of the sheet. */
const charactersOfText = 92;
/** Heights as the blocks take them. */
const lineHeight = size.source * 1.22;
const textLine = size.text * 1.3;
const heading = mm(7.7);
const head = mm(23.5);

type Props = {
  readonly input: SheetInput;
  readonly printed: string;
  readonly steps: readonly StepWords[];
  readonly last: 'last' | 'more';
};

export function CardSteps({ input, printed, steps, last }: Props) {
  return (
    <div
      style={{
        display: 'flex',
        flexDirection: 'column',
        width: safe.width,
        height: safe.height,
        rowGap: mm(4),
      }}
    >
      <CardHead
        name={input.system.name}
        place={null}
        subject={card(input, 'keeper.steps')}
        kind={card(input, 'stepsKind')}
        printed={printed}
      />
      <StepColumns input={input} steps={steps} last={last} />
    </div>
  );
}

/** Two columns of steps, the sources after the last of them. */
export function StepColumns({ input, steps, last }: Omit<Props, 'printed'>) {
  if (steps.length === 0) return null;
  const cut = halfway(steps);
  return (
    <div style={{ display: 'flex', flexDirection: 'column' }}>
      <Heading level="H2" text={card(input, 'keeper.steps')} aside={card(input, 'keeper.stepsText')} />
      <div style={{ display: 'flex', justifyContent: 'space-between', marginTop: mm(1.5) }}>
        <StepList steps={steps.slice(0, cut)} width={columnWidth} />
        <StepList steps={steps.slice(cut)} width={columnWidth} />
      </div>
      {last === 'last' ? <Para text={citations(input)} fontSize={size.source} /> : null}
    </div>
  );
}

/** The steps, dealt out to the sides that have room for them: first what the back has left, then whole sides. */
export function stepPages(input: SheetInput): readonly (readonly StepWords[])[] {
  const sourceLines = 2 * Math.ceil(citations(input).length / charactersAcross) + 1;
  const onSide = linesThatFit(safe.height - head - mm(4));
  const pages: StepWords[][] = [[]];
  let room = linesThatFit(leftOnBack(input));
  const steps = cardSteps(input);
  steps.forEach((one, i) => {
    // The sources follow the last step, so the last step needs room for both.
    const wanted = linesOf(one) + (i === steps.length - 1 ? sourceLines : 0);
    if (wanted > room) {
      pages.push([]);
      room = onSide;
    }
    pages.at(-1)?.push(one);
    room -= linesOf(one);
  });
  return pages;
}

/** Lines in both columns together, under the heading of the steps, with a little left over for uneven columns. */
function linesThatFit(height: number): number {
  return Math.max(0, 2 * Math.floor((height - mm(9.5)) / lineHeight - 0.4));
}

function linesOf(one: StepWords): number {
  return Math.ceil(lengthOf(one) / charactersPerLine) + 0.25;
}

/** Height that the keeper's side has left for steps, from how many lines its other parts run to. */
function leftOnBack(input: SheetInput): number {
  const rows = readings(input).length;
  const table = rows === 0 ? 0 : (rows + 1) * mm(5.7) + 2 * textLine;
  const weighed = weighing(input).length;
  const change = heading + textLine * (weighed === 0 ? 3 : Math.max(5, 3 + Math.ceil(weighed / 2)));
  const words = doubts(input).reduce((total, one) => total + Math.ceil(one.length / charactersOfText), 1);
  return safe.height - head - table - change - heading - words * textLine - 4 * mm(4);
}

/** Where to break so that both columns are about equally long. */
function halfway(steps: readonly StepWords[]): number {
  const all = steps.reduce((total, one) => total + linesOf(one), 0);
  let so = 0;
  const index = steps.findIndex((one) => {
    so += linesOf(one);
    return so >= all / 2;
  });
  return index + 1;
}
