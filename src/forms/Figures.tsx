/** @jsxImportSource preact */
/** The figures of the card as text, each with the step that gave it and its source, for every kind of reader. */
import type { Answers, FigureWords } from './answers.ts';
import { useForm } from './form.ts';
import type { View } from './view.ts';
import { planner } from './words.ts';
import type { TableWords } from '../wording/table.ts';

export function Figures({ view }: { readonly view: View }) {
  const { catalogue } = useForm().content;
  if (view.card === null) return null;
  const { answers } = view.card;
  return (
    <section class={view.state === 'stale' ? 'figures stale' : 'figures'} aria-labelledby="figures-title">
      <h2 id="figures-title">{planner(catalogue, 'figures.title')}</h2>
      {view.state === 'stale' ? <p class="stale-mark">{planner(catalogue, 'stale')}</p> : null}
      <Feed feed={answers.feed} />
      <Sentences title={planner(catalogue, 'figures.stops')} sentences={answers.stops} look="stop" />
      <Sentences title={planner(catalogue, 'figures.cautions')} sentences={answers.cautions} look="caution" />
      <FigureList figures={answers.first} />
      <details>
        <summary>{planner(catalogue, 'figures.more')}</summary>
        <FigureList figures={answers.more} />
      </details>
      <details>
        <summary>{planner(catalogue, 'figures.tables')}</summary>
        {answers.tables.map((table) => (
          <PlanTable key={table.key} table={table} />
        ))}
      </details>
    </section>
  );
}

function Feed({ feed }: Pick<Answers, 'feed'>) {
  return (
    <div class="feed">
      <h3>{feed.head}</h3>
      {feed.number === null ? null : (
        <p class="big">
          <strong>{feed.number}</strong> {feed.sign}
        </p>
      )}
      {feed.second === null ? null : <p class="second">{feed.second}</p>}
      {feed.lines.map((line) => (
        <p key={line}>{line}</p>
      ))}
    </div>
  );
}

type SentencesProps = {
  readonly title: string;
  readonly sentences: readonly string[];
  readonly look: 'stop' | 'caution';
};

function Sentences({ title, sentences, look }: SentencesProps) {
  if (sentences.length === 0) return null;
  return (
    <div class={look}>
      <h3>{title}</h3>
      <ul>
        {sentences.map((sentence) => (
          <li key={sentence}>{sentence}</li>
        ))}
      </ul>
    </div>
  );
}

function FigureList({ figures }: { readonly figures: readonly FigureWords[] }) {
  const { catalogue } = useForm().content;
  return (
    <dl>
      {figures.map(({ key, name, value, steps, remarks, sources }) => (
        <div key={key} data-figure={key}>
          <dt>{name}</dt>
          <dd class="value">{value}</dd>
          {[...steps, ...remarks].map((line) => (
            <dd class="step" key={line}>
              {line}
            </dd>
          ))}
          {sources.length === 0 ? null : (
            <dd class="source">
              {planner(catalogue, 'figures.sources')} {sources.map(({ short }) => short).join('; ')}
            </dd>
          )}
        </div>
      ))}
    </dl>
  );
}

/** A wide table scrolls in its own frame, by keyboard too. */
function PlanTable({ table }: { readonly table: TableWords }) {
  return (
    // biome-ignore lint/a11y/noNoninteractiveTabindex: what scrolls must be reached by keyboard
    <section class="wide" aria-label={table.title} tabIndex={0}>
      <table>
        <caption>{table.title}</caption>
        <thead>
          <tr>
            {table.head.map((head) => (
              <th key={head} scope="col">
                {head}
              </th>
            ))}
          </tr>
        </thead>
        <tbody>
          {table.rows.map((row) => (
            <tr key={row.join('|')}>
              {row.map((cell, column) =>
                column === 0 ? (
                  <th key={table.head[column]} scope="row">
                    {cell}
                  </th>
                ) : (
                  <td key={table.head[column]}>{cell}</td>
                ),
              )}
            </tr>
          ))}
        </tbody>
      </table>
    </section>
  );
}
