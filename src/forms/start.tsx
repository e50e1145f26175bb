/** @jsxImportSource preact */
/** Starts the planner: what was kept on this device, or the system that the address names, or the example. */
import { render } from 'preact';
import { draftOf } from './draftOf.ts';
import { exampleDraft } from './firstDrafts.ts';
import type { PlannerContent } from './messages.ts';
import { workOffline } from './offline.ts';
import { Planner } from './Planner.tsx';
import { type Session, startSession } from './session.ts';
import { takeOut } from './store.ts';
import { planner } from './words.ts';

const content: PlannerContent = JSON.parse(document.getElementById('planner-content')?.textContent ?? '');
const place = document.getElementById('planner');

if (place) await start(place);

async function start(into: HTMLElement): Promise<void> {
  let offline: 'ready' | 'not yet' = 'not yet';
  const kept = (await takeOut()) ?? { now: exampleDraft, before: null };
  const session = startSession(content, kept, show);
  show();
  openNamed(session);
  addEventListener('hashchange', () => openNamed(session));
  document.addEventListener('visibilitychange', () => session.save());
  addEventListener('pagehide', () => session.save());
  takeDrops(session);
  await workOffline(into.dataset['base'] ?? '/', () => {
    offline = 'ready';
    show();
  });

  function show(): void {
    render(<Planner content={content} session={session} offline={offline} />, into);
  }
}

/** `#from=drum-corner` opens a shared system. The address is cleared, so that a reload keeps what is typed then. */
function openNamed(session: Session): void {
  const id = /^#from=([a-z0-9-]+)$/.exec(location.hash)?.[1];
  if (id === undefined) return;
  history.replaceState(null, '', location.pathname);
  const { catalogue, systems } = content;
  const raw = Object.hasOwn(systems, id) ? systems[id] : undefined;
  if (raw === undefined) session.tell(planner(catalogue, 'told.unknownSystem', { id }));
  else session.replace(draftOf(raw), planner(catalogue, 'told.opened', { name: raw.name }));
}

/** A card dropped anywhere on the page is opened, and never shown by the browser in place of the page. */
function takeDrops(session: Session): void {
  const holdsFile = ({ dataTransfer }: DragEvent) => dataTransfer?.types.includes('Files') === true;
  document.addEventListener('dragover', (event) => {
    if (holdsFile(event)) event.preventDefault();
  });
  document.addEventListener('drop', (event) => {
    // Words that are dragged into a field are the field's own matter.
    if (!holdsFile(event)) return;
    event.preventDefault();
    const [file] = event.dataTransfer?.files ?? [];
    if (file) session.open(file);
  });
}
