/** @jsxImportSource preact */
/** Starts the crops page: what was kept on this device, or the first shared season. */
import { render } from 'preact';
import { workOffline } from '../offline.ts';
import { drawerBegan } from './drawer.ts';
import { draftOf } from './seasonDraft.ts';
import { startDesk } from './seasonDesk.ts';
import type { SeasonContent } from './seasonMessages.ts';
import { SeasonPage } from './SeasonPage.tsx';
import { seasonRoom } from './seasonRoom.ts';
import { takeHand, takeSeason } from './seasonStore.ts';

const content: SeasonContent = JSON.parse(document.getElementById('season-content')?.textContent ?? '');
const place = document.getElementById('season');

if (place) await start(place);

async function start(into: HTMLElement): Promise<void> {
  const room = seasonRoom(content);
  const [typed, kept] = await Promise.all([takeSeason(), takeHand()]);
  const [example] = Object.values(content.seasons);
  const draft = typed ?? (example ? draftOf(example) : null);
  if (draft === null) return;
  let isKept: 'yes' | 'no' = 'no';
  const desk = startDesk(content, room, { draft, kept }, show);
  await drawerBegan;
  show();

  function show(): void {
    render(<SeasonPage content={content} desk={desk} />, into);
    if (isKept === 'no' && desk.view().state !== 'working') keepSite();
  }

  /** Once there is a plan: keeping hundreds of files takes from it what it has to be made with. */
  function keepSite(): void {
    isKept = 'yes';
    void workOffline(into.dataset['base'] ?? '/', () => undefined);
  }
}
