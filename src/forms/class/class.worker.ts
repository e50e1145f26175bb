/** Works beside the class page: reads the roster, and prints its handouts. */
import { classFacts, handoutFacts } from '../../core/plan/handoutFacts.ts';
import { browserPress } from '../../paper/browser.ts';
import { rowsIn } from '../../schemas/rowsIn.ts';
import { type ReadWorkshop, toWorkshop } from '../../schemas/workshops.ts';
import { type ClassDesk, classDesk } from '../../sheets/handouts/classDesk.ts';
import { printablePeople } from '../../sheets/handouts/printablePeople.ts';
import { partFiles, partPrint } from '../../sheets/handouts/workshopPrint.ts';
import type { Press } from '../../paper/press.ts';
import { say } from '../../wording/catalogue.ts';
import { loaded } from '../loaded.ts';
import { type Trouble, troubleOf } from '../troubles.ts';
import type { ClassAsk, ClassContent, ClassTold } from './classMessages.ts';
import { type HeadStart, headStart } from './headStart.ts';
import { rosterLines } from './rosterLines.ts';

const thePress = loaded(browserPress);
let content: ClassContent | undefined;
/** Of the class that was read last, as long as nothing is changed. */
let ahead: HeadStart | null = null;
/** Files that somebody waits for. */
let waiting = 0;
let lastTurn = 0;

self.onmessage = ({ data: ask }: MessageEvent<ClassAsk | { kind: 'start'; content: ClassContent }>) => {
  if (ask.kind === 'start') {
    content = ask.content;
    // Fetched while nobody waits for it yet.
    thePress().catch(() => undefined);
    return;
  }
  lastTurn = ask.turn;
  if (ahead?.isFor(ask) === false) drop();
  answer(ask).catch((error: unknown) => {
    tell({ kind: 'failed', turn: ask.turn, message: error instanceof Error ? error.message : String(error) });
  });
};

function tell(told: ClassTold): void {
  self.postMessage(told);
}

type Read = {
  readonly workshop: ReadWorkshop | null;
  readonly troubles: readonly Trouble[];
  readonly wrong: readonly string[];
};

async function answer(ask: ClassAsk): Promise<void> {
  const { workshop, troubles, wrong } = await read(ask);
  const whole = troubles.length === 0 ? workshop : null;
  if (ask.kind === 'make' && whole !== null) return make(ask, whole);
  tell({ kind: 'checked', turn: ask.turn, people: whole?.people.length ?? 0, troubles, wrong });
  // Who chose no roster yet waits for no fonts, and is told nothing of them.
  if (whole === null) return;
  const press = await thePress();
  if (waiting > 0 || ahead !== null || ask.turn !== lastTurn) return;
  const start = headStart(
    ask,
    (patient) => deskOf(ask, whole, patient),
    press,
    () => {
      if (ahead === start) drop();
    },
  );
  ahead = start;
}

function drop(): void {
  ahead?.end();
  ahead = null;
}

/** The workshop with everybody who can be printed; and what is wrong, also where it is only left out. */
async function read({ raw, roster, rosterName, rows }: ClassAsk): Promise<Read> {
  const { facts, catalogue } = started();
  const { workshop, people, roster: place, problems } = await toWorkshop(raw, '', facts, async () => roster);
  const all = [...problems, ...(workshop?.skipped ?? [])];
  const ofRoster = all.filter(({ at, place }) => at !== undefined || place[0] === 'roster');
  const troubles = all
    .filter((one) => !ofRoster.includes(one))
    .map((one) => troubleOf(one, catalogue, 'metric'));
  // Nobody has to be told that they chose no roster yet.
  if (roster === null) return { workshop: null, troubles, wrong: [] };
  const { fine, wrong } =
    place === null ? { fine: people, wrong: [] } : await printablePeople(people, place, await thePress());
  const isBroken = wrong.length > 0 && (workshop?.raw.badRows === 'stop' || fine.length === 0);
  return {
    workshop: workshop === null || isBroken ? null : { ...workshop, people: fine },
    troubles: [...troubles, ...wrongRows(rows, workshop === null ? null : fine.length)],
    wrong: rosterLines([...ofRoster, ...wrong], rosterName, catalogue),
  };
}

/** Rows that nobody has, where it is known how many there are. */
function wrongRows(rows: string, most: number | null): readonly Trouble[] {
  if (most === null || rowsIn(rows, most) !== null) return [];
  const sentence = say(started().catalogue, 'class.wrongRows', { most: String(most) });
  return [{ place: ['rows'], kind: 'wrong', sentence }];
}

function deskOf({ day }: ClassAsk, workshop: ReadWorkshop, press: Press): ClassDesk {
  const { catalogue, terms, sources } = started();
  const core = { classFacts, handoutFacts };
  return classDesk(workshop, { words: { catalogue, terms, sources }, day, core }, press);
}

async function make(ask: ClassAsk, workshop: ReadWorkshop): Promise<void> {
  waiting += 1;
  try {
    await made(ask, workshop);
  } catch (cause) {
    // A desk keeps also what went wrong, such as fonts that did not load.
    drop();
    throw cause;
  } finally {
    waiting -= 1;
  }
}

async function made(ask: ClassAsk, workshop: ReadWorkshop): Promise<void> {
  const { turn, part } = ask;
  const rows = rowsIn(ask.rows, workshop.people.length) ?? [];
  const desk = (ahead?.isFor(ask) && ahead.take(part)) || deskOf(ask, workshop, await thePress());
  const told = (done: number, of: number): void => tell({ kind: 'progress', turn, done, of });
  const { bytes } = await partPrint(desk, part, { rows, told });
  const parts: BlobPart[] = [];
  for await (const some of bytes) parts.push(new Uint8Array(some));
  const mime = part === 'each' ? 'application/zip' : 'application/pdf';
  const whole = new Uint8Array(await new Blob(parts).arrayBuffer());
  tell({ kind: 'made', turn, made: { name: partFiles[part], mime, bytes: whole } });
}

function started(): ClassContent {
  if (content === undefined) throw new Error('the worker was not started');
  return content;
}
