/** Under a calendar page: the crops by their numbers, samples of the hatching, and what must be said. */
import { sampleOf } from '../../drawing/turnoverDrawing.ts';
import { mm } from '../../paper/measures.ts';
import type { CalendarFootWords } from '../calendarFoot.ts';
import { season, type TurnoverInput } from '../turnoverSheet.ts';
import type { CalendarLook } from './calendarLook.ts';
import { weight } from './look.ts';
import { Shapes } from './Shapes.tsx';

type Props = {
  readonly input: TurnoverInput;
  readonly look: CalendarLook;
  readonly foot: CalendarFootWords;
};

export function CalendarFoot({ input, look, foot }: Props) {
  return (
    <div style={{ display: 'flex', flexDirection: 'column', paddingTop: mm(1.6) }}>
      <div data-role="L" style={{ display: 'flex', flexWrap: 'wrap' }}>
        {foot.crops.map((crop) => (
          <Crop look={look} {...crop} />
        ))}
      </div>
      <Samples input={input} look={look} />
      {foot.lines.map((text) => (
        <div data-role="P" style={{ ...line, fontSize: look.small }}>
          {text}
        </div>
      ))}
    </div>
  );
}

/** Letters that stand wider apart together than alone reach a little on: there is room at the end. */
const line = { display: 'flex', lineHeight: 1.25, paddingRight: mm(3), boxSizing: 'border-box' } as const;

/** A name is small where the hand holds the sheet, and as large as its number on the wall. */
function Crop({ look, number, name }: { look: CalendarLook; number: string; name: string }) {
  return (
    <div
      data-role="LI"
      style={{ display: 'flex', alignItems: 'center', ...look.crop, fontSize: look.number }}
    >
      <div data-role="Lbl" style={{ display: 'flex', fontWeight: weight.heavy, marginRight: mm(1.4) }}>
        {number}
      </div>
      <div data-role="LBody" style={{ display: 'block', lineClamp: 1, flex: 1, paddingRight: mm(2) }}>
        {name}
      </div>
    </div>
  );
}

const kinds = ['sow', 'plant', 'pick', 'rest', 'nobody'] as const;

function Samples({ input, look }: { input: TurnoverInput; look: CalendarLook }) {
  const sample = { width: 2 * look.text, height: look.text };
  return (
    <div
      data-role="P"
      style={{ display: 'flex', alignItems: 'center', height: look.key - mm(4), fontSize: look.text }}
    >
      {kinds.map((kind) => (
        <div style={{ display: 'flex', alignItems: 'center', marginRight: look.text }}>
          <div style={{ display: 'flex', position: 'relative', ...sample, marginRight: mm(1.4) }}>
            <Shapes shapes={sampleOf(kind, sample.width, sample.height)} {...sample} />
          </div>
          <div style={{ display: 'flex' }}>{season(input, `calendar.samples.${kind}`)}</div>
        </div>
      ))}
    </div>
  );
}
