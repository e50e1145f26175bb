import type { JSXNode } from 'satori/jsx';
import type { Sheet } from '../../src/paper/layOut.ts';
import { mm, type PaperSize, paperSizes, pt } from '../../src/paper/measures.ts';

/**
 * A sheet with everything the press must print at once: every size of type, bold words inside running text, dashes,
 * accents, three scripts, columns, a table, rounded and cut boxes, a drawing with dashes, dots and a clip.
 */
export function denseSheet(paper: PaperSize = paperSizes.A4): Sheet {
  const root = (
    <div
      style={{
        display: 'flex',
        width: '100%',
        height: '100%',
        justifyContent: 'center',
        alignItems: 'center',
      }}
    >
      <div
        style={{
          display: 'flex',
          flexDirection: 'column',
          width: mm(190),
          height: mm(254),
          fontSize: pt(11),
        }}
      >
        <Head />
        <div style={{ display: 'flex', gap: mm(5), marginTop: mm(3) }}>
          <Figure />
          <Drawing />
        </div>
        <div style={{ display: 'flex', gap: mm(5), marginTop: mm(4) }}>
          <List title="Every day" lines={daily} />
          <List title="Every week" lines={weekly} />
          <List title="Look for" lines={looks} />
        </div>
        <Readings />
        <Wrong />
        <Notes />
      </div>
    </div>
  );
  return { ...paper, title: 'Mill Pond School, east tank', lang: 'en', root };
}

const daily = [
  'Fish: all up for food, none gasping',
  'Water runs in and drains out',
  'Just after the bed empties: top up to the line, at most 15 L',
  'Feed, lid shut, write it down',
];
const weekly = [
  'Shake the inlet sponge clean over soil, twice',
  'Empty and refill the READY barrel',
  'Pick what is ripe, whole root out',
];
const looks = ['Frayed leads, drips near plugs', 'Loose or leaning legs', 'Anything in the outlet screen'];

function Head() {
  return (
    <div
      style={{
        display: 'flex',
        justifyContent: 'space-between',
        borderTop: `${mm(0.8)}px solid #000`,
        paddingTop: mm(3),
      }}
    >
      <div style={{ display: 'flex', flexDirection: 'column' }}>
        <h1 data-role="H1" style={{ margin: 0, fontSize: pt(27), lineHeight: 1.1 }}>
          Mill Pond School, east tank
        </h1>
        <p data-role="P" style={{ margin: 0, fontSize: pt(11) }}>
          12 fish of about 180 g · one bed, flood and drain · 700 L tank
        </p>
      </div>
      <div style={{ display: 'flex', flexDirection: 'column', alignItems: 'flex-end', fontSize: pt(9.5) }}>
        <b>Care card</b>
        <span>for Łódź, Ångström, Đặng</span>
        <span>Ελληνικά · Кириллица</span>
      </div>
    </div>
  );
}

function Figure() {
  const box = { display: 'flex', flexDirection: 'column', width: mm(66), boxSizing: 'border-box' } as const;
  return (
    <div style={{ ...box, border: `${mm(0.4)}px solid #000`, borderRadius: mm(3), padding: mm(4) }}>
      <h2 data-role="H2" style={{ margin: 0, fontSize: pt(13) }}>
        Feed each day
      </h2>
      <div style={{ display: 'flex', alignItems: 'baseline' }}>
        <b data-slot="feed_g_d" style={{ fontSize: pt(60), lineHeight: 1 }}>
          32
        </b>
        <b style={{ fontSize: pt(24) }}>{'\u2009g'}</b>
      </div>
      <p data-role="P" style={{ margin: 0, lineHeight: 1.3 }}>
        <b>2½ level spoons,</b> in two meals, when the water is <b>20–28 °C.</b> Colder, or not eating: none.
        Missed a day: never double.
      </p>
      <div style={{ borderTop: `${mm(0.2)}px solid #000`, marginTop: mm(2), paddingTop: mm(1) }}>
        If pump and air stop: <b>air within 60 min</b> at 24 °C. “Not a safe waiting time” – it is the time at
        which fish begin to suffer.
      </div>
    </div>
  );
}

function Drawing() {
  return (
    <div style={{ display: 'flex', position: 'relative' }}>
      <svg
        data-role="Figure"
        width={mm(119)}
        height={mm(85)}
        viewBox="0 0 1190 850"
        stroke="#000"
        fill="none"
      >
        <title>The tank from the side</title>
        <defs>
          <clipPath id="bed">
            <path d="M102 40h496v190H102z" />
          </clipPath>
        </defs>
        <g clipPath="url(#bed)" fill="#000" stroke="none">
          {dots()}
        </g>
        <path d="M100 20V240H600V20" strokeWidth="7" />
        <path d="M50 400V800H650V400" strokeWidth="7" />
        <line x1="54" y1="470" x2="646" y2="470" strokeWidth="3" />
        <line x1="54" y1="560" x2="646" y2="560" strokeWidth="3" strokeDasharray="20 12" />
        <polygon points="300,330 330,330 315,360" fill="#000" stroke="none" />
        <rect x="120" y="680" width="90" height="110" rx="15" strokeWidth="4" fill="#ffffff" />
        <circle cx="165" cy="640" r="18" strokeWidth="4" />
        <path
          d="M165 622 Q165 300 300 300 T420 200 A30 30 0 0 1 480 200"
          strokeWidth="4"
          strokeLinecap="round"
        />
      </svg>
      <Label top={43}>
        <b>bed empty: 700 L</b>
      </Label>
      <Label top={52}>bed full: 565 L</Label>
      <Label top={68}>intake, 110 L below</Label>
    </div>
  );
}

function Label({ top, children }: { top: number; children?: JSXNode }) {
  return <div style={{ position: 'absolute', left: mm(70), top: mm(top) }}>{children}</div>;
}

function dots() {
  const found = [];
  for (let y = 50; y < 240; y += 16) {
    for (let x = 104; x < 610; x += 16) found.push(<circle cx={x + (y % 32 ? 8 : 0)} cy={y} r="2.5" />);
  }
  return found;
}

function List({ title, lines }: { title: string; lines: readonly string[] }) {
  return (
    <div style={{ display: 'flex', flexDirection: 'column', flex: '1 1 0', minWidth: 0 }}>
      <h2 data-role="H2" style={{ margin: 0, fontSize: pt(13), borderBottom: `${mm(0.2)}px solid #000` }}>
        {title}
      </h2>
      <div data-role="L" style={{ display: 'flex', flexDirection: 'column' }}>
        {lines.map((line) => (
          <div data-role="LI" style={{ display: 'flex', marginTop: mm(1) }}>
            <div
              style={{
                width: mm(3.5),
                height: mm(3.5),
                border: `${mm(0.2)}px solid #000`,
                borderRadius: mm(2),
                marginTop: mm(0.8),
              }}
            />
            <div
              data-role="LBody"
              style={{ display: 'block', flex: '1 1 0', minWidth: 0, marginLeft: mm(2) }}
            >
              {line}
            </div>
          </div>
        ))}
      </div>
    </div>
  );
}

const readings = [
  ['Ammonia, total', '0–1 mg/L', 'over 2 mg/L: no feed'],
  ['Nitrite', '0–0.5 mg/L', 'over 1 mg/L: no feed, more air'],
  ['pH', '6.4 to 7.2', 'under 6.0 or over 8.0: call'],
  ['Temperature', '20–28 °C', 'over 31 °C: shade, air, no feed'],
  ['Weight of 5 fish', '900 g ± 50 g', 'once a month, 4 × 225 g'],
];

function Readings() {
  return (
    <div
      data-role="Table"
      style={{ display: 'flex', flexDirection: 'column', marginTop: mm(4), fontSize: pt(9.5) }}
    >
      {readings.map((row, at) => (
        <div data-role="TR" style={{ display: 'flex', backgroundColor: at % 2 ? '#ffffff' : '#e6e6e6' }}>
          {row.map((cell, column) => (
            <div
              data-role={column === 0 ? 'TH' : 'TD'}
              style={{
                display: 'block',
                width: '33.333%',
                padding: `${mm(0.6)}px ${mm(1)}px`,
                fontWeight: column ? 400 : 800,
              }}
            >
              {cell}
            </div>
          ))}
        </div>
      ))}
    </div>
  );
}

function Wrong() {
  return (
    <div
      style={{
        display: 'flex',
        flexDirection: 'column',
        border: `${mm(0.8)}px solid #000`,
        borderRadius: mm(4),
        overflow: 'hidden',
        marginTop: mm(4),
      }}
    >
      <h2
        data-role="H2"
        style={{ margin: 0, fontSize: pt(13), padding: mm(2), backgroundColor: '#000', color: '#fff' }}
      >
        Something wrong?
      </h2>
      <p data-role="P" style={{ margin: 0, padding: mm(2) }}>
        <b>Children: fetch an adult. A tingle, a tripped switch, water near plugs: touch nothing wet;</b> an
        adult cuts the power from a dry place. <b>Level falling:</b> water pump OFF, air ON, call.{' '}
        <b>Gasping:</b> air ON, no feed, call. AVATAR, To, Ty, We. — Never add salt, medicine or pH liquid…
      </p>
    </div>
  );
}

function Notes() {
  return (
    <div style={{ display: 'flex', gap: mm(5), marginTop: mm(3), fontSize: pt(8.5), lineHeight: 1.3 }}>
      <p data-role="P" style={{ margin: 0, flex: '1 1 0', minWidth: 0 }}>
        <b>
          Dry hands before plugs; pump on a 30 mA safety switch. Never leave small children alone at open
          water.
        </b>{' '}
        Wash hands and leaves. Ask a licensed electrician, follow local rules. No. 7/8, 3 × 4 = 12, H₂O ≥ 5
        √2, £ 5 & more; (a) [b] a/b.
      </p>
      <p data-role="P" style={{ margin: 0, flex: '1 1 0', minWidth: 0, wordBreak: 'break-word' }}>
        What is wrong with “quotes”, ‘single quotes’, don’t, e-mail, well-known, and a very long word such as
        Donaudampfschifffahrtselektrizitätenhauptbetriebswerkbauunterbeamtengesellschaft? It breaks where it
        may.
      </p>
    </div>
  );
}
