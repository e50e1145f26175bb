/** One page of somebody's worksheet: whose it is, what was measured, and the steps to fill in or filled in. */
import type { Sheet } from '../../paper/layOut.ts';
import { mm, paperSizes } from '../../paper/measures.ts';
import { dayText } from '../../wording/date.ts';
import type { StepPart } from '../../wording/step.ts';
import { Leaf } from '../parts/blocks.tsx';
import { CardHead } from '../parts/CardHead.tsx';
import { Frame } from '../parts/Frame.tsx';
import { rule, safe, size, weight } from '../parts/look.ts';
import type { WorkTask } from '../worksheetTree.ts';
import { type HandoutInput, type HandoutView, handoutWords } from './handout.ts';
import {
  answerSlot,
  type GivenContainer,
  givenContainers,
  isOpen,
  type NumberPart,
  linesOf,
  numberText,
} from './handoutTasks.ts';

/** A task with its number on the sheet. */
export type Numbered = { readonly number: number; readonly task: WorkTask };

export type WorksheetPart = {
  readonly view: HandoutView;
  readonly tasks: readonly Numbered[];
  readonly at: 'first' | 'later';
  readonly rest: 'none' | 'more';
};

export function worksheetPage(input: HandoutInput, { view, tasks, at, rest }: WorksheetPart): Sheet {
  const { session, words, paper } = input;
  return {
    ...paperSizes[paper],
    title: handoutWords(input, 'title', { name: session.name }),
    lang: 'en',
    root: (
      <Leaf height={mm(254)}>
        <Frame gap={mm(2.6)}>
          <CardHead
            name={session.name}
            place={session.place === '' ? null : session.place}
            subject={handoutWords(input, `views.${view}`)}
            kind={handoutWords(input, `kinds.${view}`)}
            printed={dayText(session.date, words.catalogue)}
          />
          <Whose input={input} />
          {at === 'first' ? <Measured input={input} /> : null}
          {tasks.map((numbered) => (
            <Task numbered={numbered} view={view} />
          ))}
          {rest === 'none' && view === 'blank' ? <Supplier input={input} /> : null}
        </Frame>
      </Leaf>
    ),
  };
}

const ownWidths = { name: 92, team: 36, number: 44 } as const;

/** Name, team and number in one row. */
function Whose({ input }: { input: HandoutInput }) {
  const texts = { name: input.name, team: input.team, number: numberText(input) };
  return (
    <div style={{ display: 'flex', columnGap: mm(6) }}>
      {(['name', 'team', 'number'] as const).map((slot) => (
        <div data-role="P" style={{ ...ownField, width: mm(ownWidths[slot]) }}>
          <div style={{ display: 'flex', fontSize: size.note }}>{handoutWords(input, slot)}</div>
          <Written slot={slot} text={texts[slot]} width={mm(ownWidths[slot])} />
        </div>
      ))}
    </div>
  );
}

const ownField = { display: 'flex', flexDirection: 'column', lineHeight: 1.25 } as const;

/** Somebody's own words in their slot. */
function Written({ slot, text, width }: { slot: string; text: string; width: number }) {
  return (
    <div
      {...(text === '' ? {} : { 'data-slot': slot })}
      style={{
        display: 'block',
        width,
        minHeight: mm(6),
        fontWeight: weight.heavy,
        borderBottom: `${rule.thinBox}px solid black`,
        wordBreak: 'break-word',
      }}
    >
      {text.split('\n').flatMap((line, at) => (at === 0 ? [line] : [<br />, line]))}
    </div>
  );
}

/** What the tape said, container by container. */
function Measured({ input }: { input: HandoutInput }) {
  return (
    <div style={{ display: 'flex', flexDirection: 'column', rowGap: mm(1) }}>
      <div data-role="H2" style={{ display: 'flex', fontSize: size.heading, fontWeight: weight.heavy }}>
        {handoutWords(input, 'measured')}
      </div>
      {givenContainers(input).map((container) => (
        <Container container={container} />
      ))}
    </div>
  );
}

function Container({ container: { of, measures } }: { container: GivenContainer }) {
  return (
    <div data-role="P" style={{ display: 'flex', flexWrap: 'wrap', alignItems: 'flex-end', lineHeight: 1.3 }}>
      <div style={{ display: 'flex', width: mm(22), fontWeight: weight.heavy }}>{of}</div>
      {measures.map(({ slot, name, text }) => (
        <div style={{ display: 'flex', marginRight: mm(4) }}>
          <div style={{ display: 'flex', marginRight: mm(1.4) }}>{name}</div>
          <OwnNumber slot={slot} text={text} />
        </div>
      ))}
    </div>
  );
}

/** A number that is another one on other sheets: with room for the longest that containers of a class have. */
function OwnNumber({ slot, text }: { slot: string; text: string }) {
  return (
    <div data-slot={slot} style={{ display: 'flex', minWidth: mm(20), fontWeight: weight.heavy }}>
      {text}
    </div>
  );
}

function Task({ numbered: { number, task }, view }: { numbered: Numbered; view: HandoutView }) {
  return (
    <div data-entry="" style={{ display: 'flex', flexDirection: 'column', width: safe.width }}>
      <div data-role="H3" style={{ display: 'flex', fontWeight: weight.heavy, lineHeight: 1.25 }}>
        {`${number}. ${task.title}`}
      </div>
      {linesOf(task).map(({ parts, result }, at) => (
        <div data-role="P" style={{ ...taskLine, minHeight: mm(8) }}>
          {parts.map((part, i) => (
            <TaskPart part={part} slot={answerSlot(task, at + 1, i + 1)} view={view} />
          ))}
          <div style={{ display: 'flex', marginRight: mm(1.5), fontWeight: weight.heavy }}>=</div>
          <TaskPart part={withoutName(result)} slot={answerSlot(task, at + 1, 'result')} view={view} />
        </div>
      ))}
    </div>
  );
}

const taskLine = { display: 'flex', flexWrap: 'wrap', alignItems: 'flex-end', lineHeight: 1.25 } as const;

function withoutName(part: StepPart): StepPart {
  return part.kind === 'number' ? { ...part, name: '' } : part;
}

type PartProps = { readonly part: StepPart; readonly slot: string; readonly view: HandoutView };

function TaskPart({ part, slot, view }: PartProps) {
  if (part.kind === 'word') {
    const opens = part.text.endsWith('(');
    return <div style={{ display: 'flex', marginRight: opens ? 0 : mm(1.2) }}>{part.text.trim()}</div>;
  }
  const name =
    part.name === '' ? null : <div style={{ display: 'flex', marginRight: mm(1.2) }}>{part.name}</div>;
  return (
    <div style={{ display: 'flex', alignItems: 'flex-end', marginRight: mm(1.2) }}>
      {name}
      {isOpen(part) ? (
        <Open part={part} slot={slot} view={view} />
      ) : (
        <div style={{ display: 'flex' }}>{part.text}</div>
      )}
    </div>
  );
}

/** A blank with its unit behind it; on the key the answer stands on the same line. */
function Open({ part, slot, view }: { part: NumberPart; slot: string; view: HandoutView }) {
  const line = {
    display: 'flex',
    minWidth: mm(22),
    height: mm(7),
    alignItems: 'flex-end',
    borderBottom: `${rule.thinBox}px solid black`,
    marginRight: mm(1),
  } as const;
  if (view === 'blank')
    return (
      <div style={{ display: 'flex', alignItems: 'flex-end' }}>
        <div style={{ ...line, minWidth: mm(17) }} />
        <div style={{ display: 'flex' }}>{part.unit}</div>
      </div>
    );
  return (
    <div style={line}>
      <div data-slot={slot} style={{ display: 'flex', minWidth: mm(22), fontWeight: weight.heavy }}>
        {part.text}
      </div>
    </div>
  );
}

/** The supplier's word has the last box. */
function Supplier({ input }: { input: HandoutInput }) {
  return (
    <div
      data-role="P"
      style={{ display: 'flex', border: `${rule.thinBox}px solid black`, padding: mm(3), lineHeight: 1.3 }}
    >
      {handoutWords(input, 'supplier')}
    </div>
  );
}
