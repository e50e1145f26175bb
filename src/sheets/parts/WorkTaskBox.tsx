/** One task of the worksheet: its number and name, then its steps with blanks, with numbers, or only the answer. */
import { mm } from '../../paper/measures.ts';
import type { StepPart } from '../../wording/step.ts';
import type { WorkTask } from '../worksheetTree.ts';
import { rule, safe, size, weight } from './look.ts';

export type View = 'blank' | 'worked' | 'key';

type Props = { readonly number: number; readonly task: WorkTask; readonly view: View };

/** Numbers of the trade are printed; everything else is the person's own to fill in. */
const ofTheTrade = new Set([
  ...['mediaPerFish', 'mediaPerFishRule', 'waterPerFish', 'waterPerFishRule', 'densityCap', 'ration'],
  ...['voidFraction', 'mostVoids', 'spacing', 'tankPerBed'],
]);

export function WorkTaskBox({ number, task, view }: Props) {
  const last = task.result ?? task.steps.at(-1)?.result;
  return (
    <div style={{ display: 'flex', flexDirection: 'column', width: safe.width }}>
      <div
        data-role="H2"
        style={{ display: 'flex', fontSize: size.text, fontWeight: weight.heavy, lineHeight: 1.25 }}
      >
        {`${number}. ${task.title}`}
      </div>
      {view === 'key' ? (
        <Line parts={[]} result={last} view="worked" />
      ) : task.result !== null ? (
        <Line
          parts={task.hint === null ? [] : [{ kind: 'word', text: task.hint }]}
          result={task.result}
          view={view}
        />
      ) : (
        task.steps.map((step) => <Line parts={step.parts} result={step.result} view={view} />)
      )}
    </div>
  );
}

type LineProps = {
  readonly parts: readonly StepPart[];
  readonly result: StepPart | undefined;
  readonly view: 'blank' | 'worked';
};

/** A step that wraps between its parts. */
function Line({ parts, result, view }: LineProps) {
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
      {parts.map((part) => (
        <Part part={part} view={view} />
      ))}
      {result === undefined ? null : (
        <div style={{ display: 'flex', alignItems: 'flex-end', fontWeight: weight.heavy }}>
          <div style={{ display: 'flex', marginRight: mm(1.5) }}>=</div>
          <Part part={{ ...result, name: '' } as StepPart} view={view} />
        </div>
      )}
    </div>
  );
}

function Part({ part, view }: { part: StepPart; view: 'blank' | 'worked' }) {
  if (part.kind === 'word') {
    const opens = part.text.endsWith('(');
    return <div style={{ display: 'flex', marginRight: opens ? 0 : mm(1.2) }}>{part.text.trim()}</div>;
  }
  const isOpen = view === 'blank' && !ofTheTrade.has(part.term);
  return (
    <div style={{ display: 'flex', alignItems: 'flex-end', marginRight: mm(1.2) }}>
      {part.name === '' ? null : <div style={{ display: 'flex', marginRight: mm(1.2) }}>{part.name}</div>}
      {isOpen ? <Blank unit={part.unit} /> : <div style={{ display: 'flex' }}>{part.text}</div>}
    </div>
  );
}

/** A line for a number, its unit behind it. */
function Blank({ unit }: { unit: string }) {
  return (
    <div style={{ display: 'flex', alignItems: 'flex-end' }}>
      <div
        style={{
          display: 'flex',
          width: mm(17),
          height: mm(7),
          borderBottom: `${rule.thinBox}px solid black`,
          marginRight: mm(1),
        }}
      />
      <div style={{ display: 'flex' }}>{unit}</div>
    </div>
  );
}
