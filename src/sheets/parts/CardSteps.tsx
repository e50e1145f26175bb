/** The worked steps: what fits below the keeper's side, then sides of their own. */
import { mm } from '../../paper/measures.ts';
import { card } from '../cardWords.ts';
import { citations } from '../keeperWords.ts';
import type { SheetInput } from '../sheet.ts';
import { Heading, Para } from './blocks.tsx';
import { CardHead } from './CardHead.tsx';
import { Frame } from './Frame.tsx';
import { size } from './look.ts';
import { lengthOf, StepList, type StepWords } from './StepList.tsx';

const columnWidth = mm(92);

type Props = {
  readonly input: SheetInput;
  readonly printed: string;
  readonly steps: readonly StepWords[];
  readonly last: 'last' | 'more';
};

export function CardSteps({ input, printed, steps, last }: Props) {
  return (
    <Frame>
      <CardHead
        name={input.system.name}
        place={null}
        subject={card(input, 'keeper.steps')}
        kind={card(input, 'stepsKind')}
        printed={printed}
      />
      <StepColumns input={input} steps={steps} last={last} />
    </Frame>
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

/** Where to break so that the longer of both columns is as short as can be. */
function halfway(steps: readonly StepWords[]): number {
  const lengths = steps.map(lengthOf);
  const sum = (some: readonly number[]): number => some.reduce((total, one) => total + one, 0);
  const longer = (cut: number): number => Math.max(sum(lengths.slice(0, cut)), sum(lengths.slice(cut)));
  const cuts = lengths.map((_, index) => index + 1);
  return cuts.reduce((best, cut) => (longer(cut) < longer(best) ? cut : best), steps.length);
}
