/** The facilitator's sheet: when what happens, what has to lie ready, the example step by step, and where people go wrong. */
import { mm } from '../../paper/measures.ts';
import { flowed } from '../flowed.ts';
import { Heading, Para, TickList } from '../parts/blocks.tsx';
import { Grid } from '../parts/Grid.tsx';
import { size } from '../parts/look.ts';
import { type ClassInput, type ClassSheet, classSide, counted } from './classSheet.tsx';
import { type ExampleTask, exampleTasks } from './exampleTasks.ts';
import { ExampleBox } from './ExampleBox.tsx';
import { handoutWords } from './handout.ts';

export const facilitatorSheet: ClassSheet = {
  id: 'facilitator',
  fits: () => 'yes',
  pages: (input, layOut) => {
    const { name } = input.example().input;
    return flowed(
      pieces(input),
      (some) =>
        classSide(
          input,
          { kind: handoutWords(input, 'kinds.facilitator'), subject: subject(input) },
          <div style={{ display: 'flex', flexDirection: 'column', rowGap: mm(3) }}>
            {runs(some).map(({ part, of }) => (
              <div style={{ display: 'flex', flexDirection: 'column' }}>
                <Heading level="H2" text={handoutWords(input, `facilitator.${part}`, { name })} />
                <Run input={input} part={part} pieces={of} />
              </div>
            ))}
          </div>,
        ),
      layOut,
    );
  },
};

/** How many come, and how they work. */
function subject(input: ClassInput): string {
  const people = counted(input, 'facilitator.people', input.people.length);
  if (input.work === 'alone') return handoutWords(input, 'facilitator.alone', { people });
  const teams = counted(input, 'facilitator.teams', input.teams.length);
  const inTeams = handoutWords(input, 'facilitator.inTeams', { people, teams });
  return input.alone === 0 ? inTeams : `${inTeams} ${counted(input, 'facilitator.noTeam', input.alone)}`;
}

const parts = ['times', 'ready', 'example', 'mistakes'] as const;
type Part = (typeof parts)[number];
type Piece = { readonly part: Part; readonly cells: readonly string[]; readonly task?: ExampleTask };

function pieces(input: ClassInput): readonly Piece[] {
  return [
    ...times(input).map((cells): Piece => ({ part: 'times', cells })),
    ...ready(input).map((text): Piece => ({ part: 'ready', cells: [text] })),
    ...exampleTasks(input).map((task): Piece => ({ part: 'example', cells: [], task })),
    ...mistakes.map((key): Piece => ({ part: 'mistakes', cells: [handoutWords(input, `mistakes.${key}`)] })),
  ];
}

function times(input: ClassInput): readonly (readonly string[])[] {
  return input.facts.times.map(({ key, at, takes_min, time }) => {
    const how = handoutWords(input, `programme.${key}.how`);
    return [
      at,
      handoutWords(input, 'facilitator.minutes', { minutes: String(takes_min) }),
      handoutWords(input, `programme.${key}.what`),
      time === 'enough' ? how : `${how} ${handoutWords(input, 'facilitator.short')}`,
    ];
  });
}

function ready(input: ClassInput): readonly string[] {
  return [
    counted(input, 'materials.worksheets', input.worksheets),
    ...input.facts.materials.map(({ key, count }) => counted(input, `materials.${key}`, count)),
    handoutWords(input, 'materials.soap'),
    handoutWords(input, 'materials.firstAid'),
  ];
}

/** In the order of the tasks. */
const mistakes = ['outside', 'units', 'dry', 'bedFirst', 'roundUp', 'least', 'fishToday'] as const;

function runs(some: readonly Piece[]): readonly { readonly part: Part; readonly of: readonly Piece[] }[] {
  return parts.flatMap((part) => {
    const of = some.filter((piece) => piece.part === part);
    return of.length === 0 ? [] : [{ part, of }];
  });
}

const widths = [14, 18, 42, 116] as const;

type RunProps = { readonly input: ClassInput; readonly part: Part; readonly pieces: readonly Piece[] };

function Run({ input, part, pieces: of }: RunProps) {
  const rows = of.map(({ cells }) => cells);
  if (part === 'ready') return <TickList items={rows.map(([text = '']) => text)} />;
  if (part === 'times')
    return (
      <Grid
        columns={widths.map((width, at) => ({
          head: handoutWords(input, `facilitator.timesHead.${at}`),
          width: mm(width),
        }))}
        rows={rows}
        rowHeight={mm(6)}
        headHeight={mm(6)}
      />
    );
  return (
    <div style={{ display: 'flex', flexDirection: 'column', rowGap: mm(0.8) }}>
      {of.map(({ task, cells: [text = ''] }) =>
        task === undefined ? (
          <Para text={text} fontSize={size.text} entry="entry" />
        ) : (
          <ExampleBox task={task} />
        ),
      )}
    </div>
  );
}
