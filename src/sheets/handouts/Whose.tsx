/** Whose worksheet it is: name, team and number in one row, and what to type where there is no number. */
import { mm } from '../../paper/measures.ts';
import { say } from '../../wording/catalogue.ts';
import { rule, size, weight } from '../parts/look.ts';
import { type HandoutInput, handoutWords } from './handout.ts';
import { numberText } from './handoutTasks.ts';

const ownWidths = {
  alone: { name: 92, team: 36, number: 44 },
  team: { name: 138, number: 46 },
} as const;

/** A team's name stands once. */
export function Whose({ input }: { input: HandoutInput }) {
  const texts = { name: input.name, team: input.team, number: numberText(input) };
  const widths: Readonly<Record<string, number>> = ownWidths[input.shared];
  return (
    <div style={{ display: 'flex', columnGap: mm(6) }}>
      {(['name', 'team', 'number'] as const).flatMap((slot) => {
        const width = widths[slot];
        return width === undefined
          ? []
          : [<Own input={input} slot={slot} text={texts[slot]} width={mm(width)} />];
      })}
    </div>
  );
}

type OwnProps = {
  readonly input: HandoutInput;
  readonly slot: 'name' | 'team' | 'number';
  readonly text: string;
  readonly width: number;
};

function Own({ input, slot, text, width }: OwnProps) {
  return (
    <div data-role="P" style={{ display: 'flex', flexDirection: 'column', lineHeight: 1.25, width }}>
      <div style={{ display: 'flex', fontSize: size.note }}>{handoutWords(input, slot)}</div>
      <Written slot={slot} text={text} width={width} />
    </div>
  );
}

/** Somebody's own words in their slot. */
function Written({ slot, text, width }: Omit<OwnProps, 'input'>) {
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

/** How to check what was worked: by the number, or by the very line that the page understands. */
export function CheckLine({ input }: { input: HandoutInput }) {
  if (input.typed !== null) return <TypedLine input={input} typed={input.typed} />;
  if (input.number === null) return null;
  return (
    <div data-role="P" style={{ display: 'flex', fontSize: size.note, lineHeight: 1.3 }}>
      {handoutWords(input, 'checkNumber')}
    </div>
  );
}

function TypedLine({ input, typed }: { input: HandoutInput; typed: string }) {
  const level = say(input.words.catalogue, `check.levels.${input.session.level}`);
  return (
    <div
      data-role="P"
      style={{ display: 'flex', flexDirection: 'column', fontSize: size.note, lineHeight: 1.3 }}
    >
      <div style={{ display: 'flex' }}>{handoutWords(input, 'typed', { level })}</div>
      <div data-slot="typed" style={{ display: 'block', width: mm(188), fontWeight: weight.heavy }}>
        {typed}
      </div>
    </div>
  );
}
