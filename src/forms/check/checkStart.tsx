/** @jsxImportSource preact */
/** Starts the page that checks somebody's work. Nothing of it is kept: whoever comes next begins anew. */
import { render } from 'preact';
import { say } from '../../wording/catalogue.ts';
import { problemSentence } from '../../wording/problem.ts';
import { workOffline } from '../offline.ts';
import { CheckAnswers } from './CheckAnswers.tsx';
import type { CheckContent } from './checkContent.ts';
import { type CheckDraft, CheckForm } from './CheckForm.tsx';
import { type Sheet, sheetOfContainers, sheetOfNumber } from './checkWork.ts';

const content: CheckContent = JSON.parse(document.getElementById('check-content')?.textContent ?? '');
const place = document.getElementById('check');
if (place) await start(place);

async function start(into: HTMLElement): Promise<void> {
  const { catalogue, facts } = content;
  let draft: CheckDraft = { number: '', containers: '', level: 'secondary' };
  let typed: Readonly<Record<string, string>> = {};
  let sheet: Sheet = { kind: 'none' };
  show();
  await workOffline(into.dataset['base'] ?? '/', () => undefined);

  function change(next: CheckDraft): void {
    if (next.number !== draft.number || next.containers !== draft.containers) typed = {};
    draft = next;
    sheet =
      draft.number.trim() === ''
        ? sheetOfContainers(draft.containers, draft.level, facts)
        : sheetOfNumber(draft.number, facts);
    show();
  }

  function show(): void {
    const ofNumber = sheet.kind === 'wrongNumber' ? [say(catalogue, 'check.wrongNumber')] : [];
    const ofContainers =
      sheet.kind === 'problems' ? sheet.problems.map((one) => problemSentence(one, catalogue)) : [];
    render(
      <div>
        <CheckForm {...{ catalogue, draft, change }} wrong={{ number: ofNumber, containers: ofContainers }} />
        {sheet.kind === 'facts' ? (
          <CheckAnswers
            content={content}
            facts={sheet.facts}
            typed={typed}
            type={(name, text) => {
              typed = { ...typed, [name]: text };
              show();
            }}
          />
        ) : null}
      </div>,
      into,
    );
  }
}
