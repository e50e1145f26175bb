/** One task of a worksheet: its number and name, then its lines with blanks or with answers. */
import type { JSXNode } from 'satori/jsx';
import { mm } from '../../paper/measures.ts';
import { rule, weight } from '../parts/look.ts';
import { spaceAfter } from '../parts/stepSpace.ts';
import { TaskFrame } from '../parts/TaskFrame.tsx';
import type { HandoutView } from './handout.ts';
import type { LineIn, NumberIn, PartIn } from './handoutLine.ts';
import type { HandoutTask } from './handoutTasks.ts';

/** A task with its number on the sheet. */
export type Numbered = { readonly number: number; readonly task: HandoutTask };

type Props = { readonly numbered: Numbered; readonly view: HandoutView };

export function TaskBox({ numbered: { number, task }, view }: Props) {
  return (
    <TaskFrame number={number} title={task.title}>
      {task.lines.map((line) => (
        <Line line={line} view={view} />
      ))}
    </TaskFrame>
  );
}

/** Wraps between its groups. */
function Line({ line: { groups, result }, view }: { readonly line: LineIn; readonly view: HandoutView }) {
  return (
    <div
      data-role="P"
      style={{
        display: 'flex',
        flexWrap: 'wrap',
        alignItems: 'flex-end',
        lineHeight: 1.25,
        minHeight: view === 'blank' ? mm(8) : mm(7),
      }}
    >
      {groups.map((parts) => (
        <Group parts={parts} view={view} />
      ))}
      <div style={{ display: 'flex', alignItems: 'flex-end' }}>
        <div style={{ display: 'flex', marginRight: mm(1.5), fontWeight: weight.heavy }}>=</div>
        <Part part={result} view={view} after={0} />
      </div>
    </div>
  );
}

function Group({ parts, view }: { readonly parts: readonly PartIn[]; readonly view: HandoutView }) {
  return (
    <div style={{ display: 'flex', alignItems: 'flex-end', marginRight: mm(1.2) }}>
      {parts.map((part, at) => {
        const next = parts[at + 1];
        return <Part part={part} view={view} after={next === undefined ? 0 : spaceAfter(part, next)} />;
      })}
    </div>
  );
}

type PartProps = { readonly part: PartIn; readonly view: HandoutView; readonly after: number };

function Part({ part, view, after }: PartProps) {
  if (part.kind === 'word') return <div style={{ display: 'flex', marginRight: after }}>{part.text}</div>;
  return (
    <div style={{ display: 'flex', alignItems: 'flex-end', marginRight: after }}>
      {part.name === '' ? null : <div style={{ display: 'flex', marginRight: mm(1.2) }}>{part.name}</div>}
      <Value part={part} view={view} />
    </div>
  );
}

function Value({ part, view }: { readonly part: NumberIn; readonly view: HandoutView }) {
  if (part.is === 'open' && view === 'blank') return <Before unit={part.unit} value={<Blank />} />;
  if (part.is === 'open') return <Before unit={part.behind} value={<Answer part={part} />} />;
  if (part.is === 'fixed') return <Before unit={part.behind} value={<Text>{part.text}</Text>} />;
  return <Before unit={part.behind} value={<Told part={part} />} />;
}

function Text({ children }: { readonly children: string }) {
  return <div style={{ display: 'flex' }}>{children}</div>;
}

/** A value and the word behind it. */
function Before({ unit, value }: { readonly unit: string; readonly value: JSXNode }) {
  if (unit === '') return value;
  return (
    <div style={{ display: 'flex', alignItems: 'flex-end' }}>
      {value}
      <div style={{ display: 'flex', marginLeft: mm(1) }}>{unit}</div>
    </div>
  );
}

/** Counts are short, and more words may follow them. */
function Told({ part: { behind, slot, text } }: { readonly part: NumberIn }) {
  const minWidth = behind === '' ? mm(24) : mm(6);
  return (
    <div data-slot={slot} style={{ display: 'flex', minWidth, fontWeight: weight.heavy }}>
      {text}
    </div>
  );
}

const line = {
  display: 'flex',
  height: mm(7),
  alignItems: 'flex-end',
  borderBottom: `${rule.thinBox}px solid black`,
} as const;

function Blank() {
  return <div style={{ ...line, minWidth: mm(17) }} />;
}

/** On the key the answer stands on the line, with its unit. */
function Answer({ part }: { readonly part: NumberIn }) {
  return (
    <div style={line}>
      <div
        data-slot={part.slot}
        style={{ display: 'flex', minWidth: part.behind === '' ? mm(24) : mm(17), fontWeight: weight.heavy }}
      >
        {part.text}
      </div>
    </div>
  );
}
