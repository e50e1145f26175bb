/** What people do together at a table: who has which role, and a container that they measure themselves. */
import { mm } from '../../paper/measures.ts';
import { rule, safe, size, weight } from '../parts/look.ts';
import { type HandoutInput, handoutWords } from './handout.ts';

type Props = { readonly input: HandoutInput };

const roles = ['measures', 'calculates', 'records'] as const;

/** One measures, one calculates, one records. */
export function Roles({ input }: Props) {
  return <Blanks heads={roles.map((role) => handoutWords(input, `roles.${role}`))} unit="" width={mm(38)} />;
}

const readings = ['first', 'second'] as const;
const measures = ['length', 'width', 'depth'] as const;

/** A container of the class, measured by two who do not know of each other's numbers. */
export function Measuring({ input }: Props) {
  const unit = input.session.level === 'primary' ? 'dm' : 'mm';
  const heads = measures.map((measure) => handoutWords(input, `measuring.${measure}`));
  return (
    <div style={{ display: 'flex', flexDirection: 'column', width: safe.width }}>
      <div data-role="H2" style={{ display: 'flex', fontSize: size.heading, fontWeight: weight.heavy }}>
        {handoutWords(input, 'measuring.head')}
      </div>
      <div data-role="P" style={{ display: 'flex', lineHeight: 1.3 }}>
        {handoutWords(input, 'measuring.how')}
      </div>
      {readings.map((reading) => (
        <Blanks
          first={handoutWords(input, `measuring.${reading}`)}
          heads={heads}
          unit={unit}
          width={mm(24)}
        />
      ))}
    </div>
  );
}

type BlanksProps = {
  readonly first?: string;
  readonly heads: readonly string[];
  readonly unit: string;
  readonly width: number;
};

function Blanks({ first = '', heads, unit, width }: BlanksProps) {
  return (
    <div
      data-role="P"
      style={{ display: 'flex', alignItems: 'flex-end', minHeight: mm(8), lineHeight: 1.25 }}
    >
      {first === '' ? null : (
        <div style={{ display: 'flex', width: mm(22), fontWeight: weight.heavy }}>{first}</div>
      )}
      {heads.map((head) => (
        <div style={{ display: 'flex', alignItems: 'flex-end', marginRight: mm(5) }}>
          <div style={{ display: 'flex', marginRight: mm(1.4) }}>{head}</div>
          <div style={{ display: 'flex', width, borderBottom: `${rule.thinBox}px solid black` }} />
          <div style={{ display: 'flex', marginLeft: unit === '' ? 0 : mm(1) }}>{unit}</div>
        </div>
      ))}
    </div>
  );
}
