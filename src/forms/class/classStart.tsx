/** @jsxImportSource preact */
/** Starts the class page. Names stay in this page: they are neither kept nor sent. */
import { render } from 'preact';
import type { WorkshopPart } from '../../core/workshop/parts.ts';
import { workOffline } from '../offline.ts';
import { saveFile } from '../saveFile.ts';
import { today } from '../today.ts';
import type { FieldForm } from '../form.ts';
import { textAt, withTree } from '../draft.ts';
import type { Trouble } from '../troubles.ts';
import { mostRosterBytes } from '../../schemas/readRoster.ts';
import { ClassPage, type PageProps } from './ClassPage.tsx';
import { type ClassDraft, firstDraft, partsIn, rawOf, template } from './classDraft.ts';
import type { ClassAsk, ClassContent, ClassTold } from './classMessages.ts';

const content: ClassContent = JSON.parse(document.getElementById('class-content')?.textContent ?? '');
const place = document.getElementById('class');
if (place) await start(place);

async function start(into: HTMLElement): Promise<void> {
  const examples = content.facts.systems.map(({ id, system }) => ({ value: id, text: system.name }));
  let draft = firstDraft(today(), content.example);
  let roster: { readonly name: string; readonly bytes: NonNullable<ClassAsk['roster']> } | null = null;
  let people = 0;
  let troubles: readonly Trouble[] = [];
  let wrong: readonly string[] = [];
  /** What is being made, as the fields stood when it was asked for; typing goes on beside it. */
  let making: (NonNullable<PageProps['making']> & { readonly turn: number }) | null = null;
  let turn = 0;
  let worker = hired();
  show();
  await workOffline(into.dataset['base'] ?? '/', () => undefined);

  function hired(): Worker {
    const fresh = new Worker(new URL('./class.worker.ts', import.meta.url), { type: 'module' });
    fresh.onmessage = ({ data }: MessageEvent<ClassTold>) => {
      if (data.turn === turn || data.turn === making?.turn) hear(data);
    };
    fresh.postMessage({ kind: 'start', content });
    return fresh;
  }

  function hear(told: ClassTold): void {
    if (told.kind === 'checked' && told.turn === turn)
      [people, troubles, wrong] = [told.people, told.troubles.filter(isDue), told.wrong];
    if (told.kind === 'failed') wrong = [told.message];
    if (told.turn === making?.turn)
      making = told.kind === 'progress' ? { ...making, done: told.done, of: told.of } : null;
    if (told.kind === 'made') saveFile(told.made);
    show();
  }

  /** What is still empty is not told before there is somebody to print for. */
  function isDue({ place: at }: Trouble): boolean {
    return roster !== null || textAt(draft, at).trim() !== '';
  }

  function ask(kind: ClassAsk['kind'], part: WorkshopPart): void {
    turn += 1;
    const rows = textAt(draft, ['rows']);
    const chosen = { roster: roster?.bytes ?? null, rosterName: roster?.name ?? '' };
    const of = { kind, turn, part, rows, raw: rawOf(draft), ...chosen, day: today() };
    worker.postMessage(of satisfies ClassAsk);
  }

  function change(next: ClassDraft): void {
    draft = next;
    ask('check', 'stack');
    show();
  }

  async function take(file: File): Promise<void> {
    const isRead = file.size <= mostRosterBytes;
    roster = { name: file.name, bytes: isRead ? new Uint8Array(await file.arrayBuffer()) : file.size };
    ask('check', 'stack');
    show();
  }

  function make(part: WorkshopPart): void {
    ask('make', part);
    making = { turn, part, done: 0, of: people };
    show();
  }

  function stop(): void {
    worker.terminate();
    worker = hired();
    turn += 1;
    making = null;
    show();
  }

  function giveTemplate(): void {
    saveFile({ name: 'roster.csv', mime: 'text/csv', bytes: new TextEncoder().encode(template) });
  }

  function show(): void {
    const form: FieldForm = {
      ...{ catalogue: content.catalogue, block: 'class', draft, units: 'metric', troubles },
      edit: (at, text) => change(withTree(draft, at, { text })),
      put: (at, tree) => change(withTree(draft, at, tree)),
    };
    const actions = { change, take, make, stop, giveTemplate };
    render(
      <ClassPage
        {...{ form, examples, people, wrong, making, parts: partsIn(draft) }}
        {...actions}
        roster={roster?.name ?? ''}
      />,
      into,
    );
  }
}
