/** The head of every side: one strong rule, whose system it is, what the sheet is. */
import { mm } from '../../paper/measures.ts';
import { rule, size, weight } from './look.ts';

type Props = {
  readonly name: string;
  readonly place: string | null;
  readonly subject: string;
  readonly kind: string;
  readonly printed: string;
};

/** Names longer than this are set smaller; what is still too long for two lines is shortened with a mark. */
const longName = 30;

export function CardHead({ name, place, subject, kind, printed }: Props) {
  return (
    <div
      style={{
        display: 'flex',
        flexDirection: 'column',
        borderTop: `${rule.head}px solid black`,
        paddingTop: mm(2),
      }}
    >
      <div style={{ display: 'flex' }}>
        <div
          data-role="H1"
          style={{ ...oneName, fontSize: name.length > longName ? size.longTitle : size.title }}
        >
          {name}
        </div>
        <div
          style={{
            display: 'flex',
            flexDirection: 'column',
            width: mm(46),
            alignItems: 'flex-end',
            marginLeft: mm(4),
          }}
        >
          <div data-role="P" style={{ display: 'flex', fontWeight: weight.heavy, lineHeight: 1.3 }}>
            {kind}
          </div>
          <div data-role="P" style={{ display: 'flex', lineHeight: 1.3 }}>
            {printed}
          </div>
        </div>
      </div>
      {place === null ? null : (
        <div data-role="P" style={placeLine}>
          {place}
        </div>
      )}
      <div data-role="P" style={{ display: 'flex', lineHeight: 1.3 }}>
        {subject}
      </div>
    </div>
  );
}

const oneName = {
  display: 'block',
  lineClamp: 2,
  flex: 1,
  fontWeight: weight.heavy,
  lineHeight: 1.1,
  wordBreak: 'break-word',
} as const;

const placeLine = { display: 'block', lineClamp: 1, lineHeight: 1.3, wordBreak: 'break-word' } as const;
