/** The facilitator's sheet: when what happens, what has to lie ready, and where people usually go wrong. */
import { mm } from '../../paper/measures.ts';
import { figureName, figureValue } from '../../wording/figure.ts';
import { flowed } from '../flowed.ts';
import { Heading, Para, TickList } from '../parts/blocks.tsx';
import { Grid } from '../parts/Grid.tsx';
import { size } from '../parts/look.ts';
import { type ClassInput, type ClassSheet, classSide } from './classSheet.tsx';
import { handoutWords } from './handout.ts';

export const facilitatorSheet: ClassSheet = {
  id: 'facilitator',
  fits: () => 'yes',
  pages: (input, layOut) =>
    flowed(
      pieces(input),
      (some) =>
        classSide(
          input,
          {
            kind: handoutWords(input, 'kinds.facilitator'),
            subject: handoutWords(input, 'facilitator.subject', {
              people: String(input.people.length),
              teams: String(Math.max(1, input.teams.length)),
            }),
          },
          <div style={{ display: 'flex', flexDirection: 'column', rowGap: mm(1.4) }}>
            {runs(some).map(({ part, of }) => (
              <Run input={input} part={part} pieces={of} />
            ))}
          </div>,
        ),
      layOut,
    ),
};

type Part = 'times' | 'ready' | 'example' | 'mistakes';
type Piece = { readonly part: Part; readonly cells: readonly string[] };

function pieces(input: ClassInput): readonly Piece[] {
  return [
    ...times(input).map((cells): Piece => ({ part: 'times', cells })),
    ...ready(input).map((text): Piece => ({ part: 'ready', cells: [text] })),
    ...exampleRows(input).map((cells): Piece => ({ part: 'example', cells })),
    ...mistakes.map((key): Piece => ({ part: 'mistakes', cells: [handoutWords(input, `mistakes.${key}`)] })),
  ];
}

function times(input: ClassInput): readonly (readonly string[])[] {
  return input.facts.times.map(({ key, at, takes_min }) => [
    at,
    handoutWords(input, 'facilitator.minutes', { minutes: String(takes_min) }),
    handoutWords(input, `programme.${key}.what`),
    handoutWords(input, `programme.${key}.how`),
  ]);
}

function ready(input: ClassInput): readonly string[] {
  return [
    handoutWords(input, 'materials.worksheets', { count: String(input.worksheets) }),
    ...input.facts.materials.map(({ key, count }) =>
      handoutWords(input, `materials.${key}`, { count: String(count) }),
    ),
    handoutWords(input, 'materials.soap'),
    handoutWords(input, 'materials.firstAid'),
  ];
}

/** What the worked example comes to. */
const shown = [
  'wetMedia_L',
  'tankFull_L',
  'tankLow_L',
  'fishByBed',
  'fishByTank',
  'fishByDensity',
  'fishPlanned',
];

function exampleRows({ example, words, units }: ClassInput): readonly (readonly string[])[] {
  const plan = example.plan();
  const beds = plan.section.vessels.filter(({ role }) => role === 'bed').length;
  return shown.flatMap((key) => {
    const figure = plan.figures[key];
    if (figure === undefined || figure.value === null) return [];
    return [[figureName(key, beds, words.catalogue), figureValue(figure, words.catalogue, units)]];
  });
}

/** In the order of the tasks. */
const mistakes = ['outside', 'units', 'dry', 'bedFirst', 'roundUp', 'least', 'fishToday'] as const;

function runs(some: readonly Piece[]): readonly { readonly part: Part; readonly of: readonly Piece[] }[] {
  const parts: readonly Part[] = ['times', 'ready', 'example', 'mistakes'];
  return parts.flatMap((part) => {
    const of = some.filter((piece) => piece.part === part);
    return of.length === 0 ? [] : [{ part, of }];
  });
}

const widths = { times: [14, 18, 42, 116], example: [130, 60] } as const;

function Run({ input, part, pieces: of }: { input: ClassInput; part: Part; pieces: readonly Piece[] }) {
  const rows = of.map(({ cells }) => cells);
  const heading = (
    <Heading
      level="H2"
      text={handoutWords(
        input,
        `facilitator.${part}`,
        part === 'example' ? { name: input.example.name } : {},
      )}
    />
  );
  if (part === 'mistakes')
    return (
      <div style={{ display: 'flex', flexDirection: 'column', rowGap: mm(0.8) }}>
        {heading}
        {rows.map(([text = '']) => (
          <Para text={text} fontSize={size.text} entry="entry" />
        ))}
      </div>
    );
  return (
    <div style={{ display: 'flex', flexDirection: 'column' }}>
      {heading}
      {part === 'ready' ? (
        <TickList items={rows.map(([text = '']) => text)} />
      ) : (
        <Grid
          columns={widths[part].map((width, at) => ({
            head: handoutWords(input, `facilitator.${part}Head.${at}`),
            width: mm(width),
          }))}
          rows={rows}
          rowHeight={mm(6)}
          headHeight={mm(6)}
        />
      )}
    </div>
  );
}
