/** @jsxImportSource preact */
/** Starts the crops page: what was kept on this device, or the first shared season. */
import { render } from 'preact';
import type { Problem } from '../../core/problem.ts';
import { say } from '../../wording/catalogue.ts';
import { problemSentence } from '../../wording/problem.ts';
import type { Side } from '../messages.ts';
import { workOffline } from '../offline.ts';
import { saveFile } from '../saveFile.ts';
import { today } from '../today.ts';
import { draftOf, fieldAt, rawOf, type SeasonDraft, unitsOf } from './seasonDraft.ts';
import { SeasonForm } from './SeasonForm.tsx';
import type { SeasonContent, SeasonFile, SeasonShown, SeasonTold } from './seasonMessages.ts';
import { SeasonResult } from './SeasonResult.tsx';
import { seasonRoom } from './seasonRoom.ts';
import { keepSeason, takeSeason } from './seasonStore.ts';

const content: SeasonContent = JSON.parse(document.getElementById('season-content')?.textContent ?? '');
const place = document.getElementById('season');
/** Milliseconds after the last key: typing goes on while nobody waits for a plan. */
const pause = 500;

if (place) await start(place);

async function start(into: HTMLElement): Promise<void> {
  const { catalogue, seasons } = content;
  const [example] = Object.values(seasons);
  let draft: SeasonDraft | null = null;
  let problems: readonly Problem[] = [];
  let shown: SeasonShown | null = null;
  let state: 'working' | 'current' | 'stale' | 'stopped' = 'working';
  let making: SeasonFile | null = null;
  let failure = '';
  let timer: ReturnType<typeof setTimeout> | undefined;
  // What draws and what solves is fetched while nobody waits for it yet.
  const room = seasonRoom(content, hear);
  draft = (await takeSeason()) ?? (example ? draftOf(example) : null);
  plan();
  show();
  await workOffline(into.dataset['base'] ?? '/', () => undefined);

  function hear(told: SeasonTold): void {
    if (told.kind === 'problems') {
      problems = told.problems;
      state = 'stale';
    }
    if (told.kind === 'shown') {
      // Pages of the plan before stay until those of this one take their places.
      const others = shown?.sides.slice(1) ?? [];
      shown = { ...told.shown, sides: told.side === null ? [] : [told.side, ...others] };
      problems = [];
    }
    if (told.kind === 'side' && shown !== null) shown = withSide(shown, told.index, told.side);
    if (told.kind === 'drawn' && shown !== null)
      shown = { ...shown, sides: shown.sides.slice(0, told.sides) };
    if (told.kind === 'done') state = 'current';
    if (told.kind === 'failed') {
      failure = told.message;
      state = 'stale';
    }
    show();
  }

  function change(next: SeasonDraft, after = pause): void {
    draft = next;
    state = 'working';
    clearTimeout(timer);
    timer = setTimeout(plan, after);
    keepSeason(next).catch(() => undefined);
    show();
  }

  function plan(): void {
    if (draft === null) return;
    failure = '';
    room.plan(rawOf(draft), today());
  }

  function stop(): void {
    room.stop();
    state = 'stopped';
    show();
  }

  function download(file: SeasonFile): void {
    making = file;
    show();
    room
      .make(file)
      .then(saveFile)
      .catch((error: unknown) => {
        failure = error instanceof Error ? error.message : String(error);
      })
      .finally(() => {
        making = null;
        show();
      });
  }

  function show(): void {
    if (draft === null) return;
    const wrong = new Map<string, string[]>();
    for (const problem of problems) {
      const field = fieldAt(problem.place);
      wrong.set(field, [...(wrong.get(field) ?? []), problemSentence(problem, catalogue, unitsOf(draft))]);
    }
    const all = [...wrong.values()].flat();
    render(
      <div class="desk">
        <div class="form">
          <Examples open={(id) => open(id)} />
          {all.length === 0 && failure === '' ? null : (
            <div role="alert" class="summary">
              <p>{say(catalogue, 'crops.wrong')}</p>
              <ul>
                {[...all, ...(failure === '' ? [] : [failure])].map((line) => (
                  <li key={line}>{line}</li>
                ))}
              </ul>
            </div>
          )}
          <SeasonForm content={content} draft={draft} wrong={wrong} change={change} />
        </div>
        <SeasonResult {...{ catalogue, shown, state, making, stop, download }} />
      </div>,
      into,
    );
  }

  function open(id: string): void {
    const file = Object.hasOwn(seasons, id) ? seasons[id] : undefined;
    if (file) change(draftOf(file), 0);
  }
}

function withSide(shown: SeasonShown, index: number, side: Side): SeasonShown {
  return { ...shown, sides: [...shown.sides.slice(0, index), side, ...shown.sides.slice(index + 1)] };
}

function Examples({ open }: { readonly open: (id: string) => void }) {
  const { catalogue, seasons } = content;
  return (
    <div class="toolbar">
      {Object.entries(seasons).map(([id, { name }]) => (
        <button key={id} type="button" onClick={() => open(id)}>
          {say(catalogue, 'crops.example', { name })}
        </button>
      ))}
    </div>
  );
}
