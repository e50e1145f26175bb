/** @jsxImportSource preact */
/** Starts the class page. Names stay in this page: they are neither kept nor sent. */
import { render } from 'preact';
import type { WorkshopPart } from '../../sheets/handouts/workshopPrint.ts';
import { workOffline } from '../offline.ts';
import { saveFile } from '../saveFile.ts';
import { today } from '../today.ts';
import type { FieldForm } from '../form.ts';
import { textAt, withTree } from '../draft.ts';
import type { Trouble } from '../troubles.ts';
import { ClassPage, type PageProps } from './ClassPage.tsx';
import { type ClassDraft, firstDraft, rawOf, template } from './classDraft.ts';
import type { ClassAsk, ClassContent, ClassTold } from './classMessages.ts';

const content: ClassContent = JSON.parse(document.getElementById('class-content')?.textContent ?? '');
const place = document.getElementById('class');
if (place) await start(place);

async function start(into: HTMLElement): Promise<void> {
  const examples = content.facts.systems.map(({ id, system }) => ({ value: id, text: system.name }));
  let draft = firstDraft(today(), examples[0]?.value ?? '');
  let roster: { readonly name: string; readonly bytes: Uint8Array<ArrayBuffer> } | null = null;
  let people = 0;
  let troubles: readonly Trouble[] = [];
  let wrong: readonly string[] = [];
  let making: PageProps['making'] = null;
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
    if (told.kind === 'checked')
      [people, troubles, wrong, making] = [told.people, told.troubles.filter(isDue), told.wrong, null];
    if (told.kind === 'progress' && making) making = { part: making.part, done: told.done, of: told.of };
    if (told.kind === 'made') {
      making = null;
      saveFile(told.made);
    }
    if (told.kind === 'failed') [wrong, making] = [[told.message], null];
    show();
  }

  /** What is still empty is not told before there is somebody to print for. */
  function isDue({ place: at }: Trouble): boolean {
    return roster !== null || textAt(draft, at).trim() !== '';
  }

  function ask(kind: ClassAsk['kind'], part: WorkshopPart): void {
    turn += 1;
    const rows = textAt(draft, ['rows']);
    const of = { kind, turn, part, rows, raw: rawOf(draft), roster: roster?.bytes ?? null, day: today() };
    worker.postMessage(of satisfies ClassAsk);
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
    const form: FieldForm = {
      ...{ catalogue: content.catalogue, block: 'class', draft, units: 'metric', troubles },
      edit: (at, text) => change(withTree(draft, at, { text })),
      put: (at, tree) => change(withTree(draft, at, tree)),
    };
    const actions = { change, take, make, stop, giveTemplate };
    render(
      <ClassPage {...{ form, examples, people, wrong, making }} {...actions} roster={roster?.name ?? ''} />,
      into,
    );
  }
}
