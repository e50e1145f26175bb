/** Worked steps, small: the keeper's proof, not the sitter's reading. */
import { mm } from '../../paper/measures.ts';
import { size, weight } from './look.ts';

export type StepWords = {
  readonly name: string;
  readonly result: string;
  readonly lines: readonly string[];
  /** Numbers of the sources, as the list below counts them. */
  readonly sources: string;
};

/** Figures with their steps run in behind the name, in one column. */
export function StepList({ steps, width }: { steps: readonly StepWords[]; width: number }) {
  return (
    <div style={{ display: 'flex', flexDirection: 'column', width, fontSize: size.source, lineHeight: 1.18 }}>
      {steps.map((one) => (
        <div data-role="P" data-entry="" style={{ display: 'block', marginBottom: mm(0.7) }}>
          <span style={{ fontWeight: weight.heavy }}>{headOf(one)}</span>
          {` ${tailOf(one)}`}
        </div>
      ))}
    </div>
  );
}

/** The name with its result, unless the steps end in that very result. */
export function headOf(one: StepWords): string {
  return endsInResult(one) ? `${one.name}:` : `${one.name}, ${one.result}:`;
}

export function tailOf(one: StepWords): string {
  return `${one.lines.join('; ')} ${one.sources}`;
}

/** The step as it is printed, in characters. */
export function lengthOf(one: StepWords): number {
  return headOf(one).length + 1 + tailOf(one).length;
}

function endsInResult(one: StepWords): boolean {
  const last = one.lines.at(-1)?.split(' = ').at(-1);
  return last !== undefined && (last === one.result || one.result.startsWith(`${last}\u00a0fish`));
}
