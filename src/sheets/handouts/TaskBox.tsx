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

/** How far apart the lines stand: there is more room to reckon on two pages than on one that is just enough. */
export type Spacing = 'roomy' | 'usual' | 'tight';

type Look = { readonly view: HandoutView; readonly spacing: Spacing };
type Props = Look & { readonly numbered: Numbered };

export function TaskBox({ numbered: { number, task }, ...look }: Props) {
  return (
    <TaskFrame number={number} title={task.title}>
      {task.lines.map((line) => (
        <Line line={line} {...look} />
      ))}
    </TaskFrame>
  );
}

/** Wraps between its groups. */
function Line({ line: { groups, result }, ...look }: Look & { readonly line: LineIn }) {
  const { view, spacing } = look;
  return (
    <div
      data-role="P"
      style={{
        display: 'flex',
        flexWrap: 'wrap',
        alignItems: 'flex-end',
        lineHeight: 1.25,
        minHeight: lineHeights[view][spacing],
      }}
    >
      {groups.map((parts) => (
        <Group parts={parts} {...look} />
      ))}
      <div style={{ display: 'flex', alignItems: 'flex-end' }}>
        <div style={{ display: 'flex', marginRight: mm(1.5), fontWeight: weight.heavy }}>=</div>
        <Part part={result} {...look} after={0} />
      </div>
    </div>
  );
}

function Group({ parts, ...look }: Look & { readonly parts: readonly PartIn[] }) {
  return (
    <div style={{ display: 'flex', alignItems: 'flex-end', marginRight: mm(1.2) }}>
      {parts.map((part, at) => {
        const next = parts[at + 1];
        return <Part part={part} {...look} after={next === undefined ? 0 : spaceAfter(part, next)} />;
      })}
    </div>
  );
}

type PartProps = Look & { readonly part: PartIn; readonly after: number };

function Part({ part, after, ...look }: PartProps) {
  if (part.kind === 'word') return <div style={{ display: 'flex', marginRight: after }}>{part.text}</div>;
  return (
    <div style={{ display: 'flex', alignItems: 'flex-end', marginRight: after }}>
      {part.name === '' ? null : <div style={{ display: 'flex', marginRight: mm(1.2) }}>{part.name}</div>}
      <Value part={part} {...look} />
    </div>
  );
}

function Value({ part, view, spacing }: Look & { readonly part: NumberIn }) {
  const line = lineOf(view, spacing);
  if (part.is === 'open' && view === 'blank')
    return <Before unit={part.unit} value={<div style={{ ...line, minWidth: mm(17) }} />} />;
  if (part.is === 'open') return <Before unit={part.behind} value={<Answer part={part} line={line} />} />;
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

/** From one line to the next: a hand wants seven or eight millimetres, and manages with a little less. */
const lineHeights: Readonly<Record<HandoutView, Readonly<Record<Spacing, number>>>> = {
  blank: { roomy: mm(11), usual: mm(8), tight: mm(6.6) },
  key: { roomy: mm(7), usual: mm(7), tight: mm(5.6) },
};

type LineLook = ReturnType<typeof lineOf>;

/** What is written stands on a line of its own, lower than a line of print by what lies between two of them. */
function lineOf(view: HandoutView, spacing: Spacing) {
  const height = Math.min(mm(7), lineHeights[view][spacing]);
  const borderBottom = `${rule.thinBox}px solid black`;
  return { display: 'flex', height, alignItems: 'flex-end', borderBottom } as const;
}

/** On the key the answer stands on the line, with its unit. */
function Answer({ part, line }: { readonly part: NumberIn; readonly line: LineLook }) {
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
