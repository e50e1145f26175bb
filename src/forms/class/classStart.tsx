/** @jsxImportSource preact */
/** Starts the class page. Names stay in this page: they are neither kept nor sent. */
import { render } from 'preact';
import type { WorkshopPart } from '../../sheets/handouts/workshopPrint.ts';
import { workOffline } from '../offline.ts';
import { saveFile } from '../saveFile.ts';
import { today } from '../today.ts';
import { ClassForm, type FormProps } from './ClassForm.tsx';
import { type ClassDraft, firstDraft, rawOf, template } from './classDraft.ts';
import type { ClassAsk, ClassContent, ClassTold } from './classMessages.ts';

const content: ClassContent = JSON.parse(document.getElementById('class-content')?.textContent ?? '');
const place = document.getElementById('class');
if (place) await start(place);

async function start(into: HTMLElement): Promise<void> {
  let draft = firstDraft(today());
  let roster: { readonly name: string; readonly bytes: Uint8Array<ArrayBuffer> } | null = null;
  let people = 0;
  let wrong: readonly string[] = [];
  let making: FormProps['making'] = null;
  let turn = 0;
  let worker = hired();
  show();
  await workOffline(into.dataset['base'] ?? '/', () => undefined);

  function hired(): Worker {
    const fresh = new Worker(new URL('./class.worker.ts', import.meta.url), { type: 'module' });
    fresh.onmessage = ({ data }: MessageEvent<ClassTold>) => {
      if (data.turn === turn) hear(data);
    };
    fresh.postMessage({ kind: 'start', content });
    return fresh;
  }

  function hear(told: ClassTold): void {
    if (told.kind === 'checked') [people, wrong, making] = [told.people, told.wrong, null];
    if (told.kind === 'progress' && making) making = { part: making.part, done: told.done, of: told.of };
    if (told.kind === 'made') {
      making = null;
      saveFile(told.made);
    }
    if (told.kind === 'failed') [wrong, making] = [[told.message], null];
    show();
  }

  function ask(kind: ClassAsk['kind'], part: WorkshopPart): void {
    if (roster === null) return;
    turn += 1;
    const [example = ''] = content.facts.systems.map(({ id }) => id);
    const { rows } = draft;
    const asked: ClassAsk = {
      kind,
      turn,
      part,
      rows,
      raw: rawOf(draft, example),
      roster: roster.bytes,
      day: today(),
    };
    worker.postMessage(asked);
  }

  function change(next: ClassDraft): void {
    draft = next;
    ask('check', 'stack');
    show();
  }

  async function take(file: File): Promise<void> {
    roster = { name: file.name, bytes: new Uint8Array(await file.arrayBuffer()) };
    ask('check', 'stack');
    show();
  }

  function make(part: WorkshopPart): void {
    making = { part, done: 0, of: people };
    ask('make', part);
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
    const { catalogue } = content;
    const actions = { change, take, make, stop, giveTemplate };
    render(
      <ClassForm {...{ catalogue, draft, people, wrong, making }} {...actions} roster={roster?.name ?? ''} />,
      into,
    );
  }
}
