/** One task of the worksheet: its number and name, then its steps with blanks, with numbers, or only the answer. */
import { mm } from '../../paper/measures.ts';
import type { StepPart } from '../../wording/step.ts';
import type { SheetInput } from '../sheet.ts';
import { type BlankPlace, type Numbered, stepField } from '../worksheetBlanks.ts';
import { Blank } from './Blank.tsx';
import { size, weight } from './look.ts';
import { spaceAfter } from './stepSpace.ts';
import { TaskFrame } from './TaskFrame.tsx';

export type View = 'blank' | 'worked' | 'key';

type Props = { readonly input: SheetInput; readonly numbered: Numbered; readonly view: View };

/** Numbers of the trade are printed; everything else is the person's own to fill in. */
const ofTheTrade = new Set([
  ...['mediaPerFish', 'mediaPerFishRule', 'waterPerFish', 'waterPerFishRule', 'densityCap', 'ration'],
  ...['voidFraction', 'mostVoids', 'spacing', 'tankPerBed'],
]);

export function WorkTaskBox({ input, numbered, view }: Props) {
  const { number, task } = numbered;
  const own = { input, numbered };
  const last = task.result ?? task.steps.at(-1)?.result;
  return (
    <TaskFrame number={number} title={task.title}>
      {view === 'key' ? (
        <Line {...own} step={task.steps.length} parts={[]} result={last} view="worked" />
      ) : task.result !== null ? (
        <Line
          {...own}
          step={1}
          parts={task.hint === null ? [] : [{ kind: 'word', text: task.hint }]}
          result={task.result}
          view={view}
        />
      ) : (
        task.steps.map(({ parts, result }, at) => (
          <Line {...own} step={at + 1} parts={parts} result={result} view={view} />
        ))
      )}
    </TaskFrame>
  );
}

type LineProps = {
  readonly input: SheetInput;
  readonly numbered: Numbered;
  /** From 1. */
  readonly step: number;
  readonly parts: readonly StepPart[];
  readonly result: StepPart | undefined;
  readonly view: 'blank' | 'worked';
};

/** A step that wraps between its parts. */
function Line({ input, numbered, step, parts, result, view }: LineProps) {
  const own = { input, numbered, view };
  return (
    <div
      data-role="P"
      style={{
        display: 'flex',
        flexWrap: 'wrap',
        alignItems: 'flex-end',
        fontSize: size.text,
        lineHeight: 1.25,
        minHeight: view === 'blank' ? mm(8) : mm(5),
      }}
    >
      {parts.map((part, at) => (
        <Part {...own} part={part} place={{ step, part: at + 1 }} after={spaceAfter(part, parts[at + 1])} />
      ))}
      {result === undefined ? null : (
        <div style={{ display: 'flex', alignItems: 'flex-end', fontWeight: weight.heavy }}>
          <div style={{ display: 'flex', marginRight: mm(1.5) }}>=</div>
          <Part {...own} part={result} place={{ step, part: 'result' }} after={0} />
        </div>
      )}
    </div>
  );
}

type PartProps = {
  readonly input: SheetInput;
  readonly numbered: Numbered;
  readonly place: BlankPlace;
  readonly part: StepPart;
  readonly view: 'blank' | 'worked';
  /** Space to the next part. */
  readonly after: number;
};

function Part({ input, numbered, place, part, view, after }: PartProps) {
  if (part.kind === 'word')
    return <div style={{ display: 'flex', marginRight: after }}>{part.text.trim()}</div>;
  const isOpen = view === 'blank' && !ofTheTrade.has(part.term);
  return (
    <div style={{ display: 'flex', alignItems: 'flex-end', marginRight: after }}>
      {part.name === '' ? null : <div style={{ display: 'flex', marginRight: mm(1.2) }}>{part.name}</div>}
      {isOpen ? (
        <Blank unit={part.unit} field={stepField(input, numbered, place, part)} />
      ) : (
        <div style={{ display: 'flex' }}>{part.text}</div>
      )}
    </div>
  );
}
