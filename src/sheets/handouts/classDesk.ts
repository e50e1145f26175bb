/** A workshop made ready to be printed: its class, its people, and a way to their pages. */
import type { ClassFacts, ClassWish, HandoutFacts } from '../../core/plan/handoutFacts.ts';
import type { Level } from '../../core/workshop/exercise.ts';
import type { Person } from '../../core/workshop/person.ts';
import type { System } from '../../core/system.ts';
import type { Page } from '../../paper/page.ts';
import type { Press } from '../../paper/press.ts';
import type { Filled } from '../../paper/stencil.ts';
import type { Printing } from '../sheet.ts';
import {
  type ClassInput,
  type ClassSheet,
  classSide,
  type Listed,
  type WorkedExample,
} from './classSheet.tsx';
import { facilitatorSheet } from './facilitatorSheet.tsx';
import { type HandoutInput, handoutWords, type Session } from './handout.ts';
import { type HandoutDesk, handoutDesk } from './handoutPages.ts';
import type { LayoutShelf } from './sharedLayouts.ts';
import { nameTags } from './nameTags.tsx';
import { type PlanDesk, planDesk } from './planDesk.ts';
import { rotaSheet } from './rotaSheet.tsx';
import { safetySheet } from './safetySheet.tsx';
import { signInSheet } from './signInSheet.tsx';

/** What a desk wants to know of a workshop; `schemas` reads it. */
export type WorkshopOf = {
  readonly raw: Session & {
    readonly starts: string;
    readonly length_min: number;
    readonly rota?: ClassWish['rota'] | undefined;
    readonly sheet: Pick<Printing, 'paper' | 'units'>;
    readonly sheets: readonly string[];
  };
  readonly people: readonly Person[];
  readonly example: { readonly name: string; readonly system: System };
};

/** What the core says, brought along by whoever prints. */
export type CoreOf = {
  readonly handoutFacts: (system: System, level: Level) => HandoutFacts;
  readonly classFacts: (wish: ClassWish) => ClassFacts;
};

type Job = Pick<Printing, 'words' | 'day'> & { readonly core: CoreOf; readonly layouts?: LayoutShelf | null };

export type ClassDesk = {
  readonly people: readonly Person[];
  readonly input: ClassInput;
  /** Names of the sheets that are wanted. */
  readonly wanted: ReadonlySet<string>;
  readonly handoutOf: (index: number) => HandoutInput;
  readonly handouts: HandoutDesk;
  readonly plans: PlanDesk;
  readonly press: Press;
  /** A side that says that it is empty on purpose; the same one every time. */
  readonly emptyBack: () => Promise<Filled>;
  /** The sheets of the whole class that are wanted and have something to say, each with its pages. */
  readonly ofClass: () => Promise<readonly { readonly sheet: ClassSheet; readonly pages: readonly Page[] }[]>;
};

/** By the names they have in a workshop's file, in the order in which they are stapled. */
const classSheets: Readonly<Record<string, ClassSheet>> = {
  facilitator: facilitatorSheet,
  safety: safetySheet,
  signIn: signInSheet,
  nameTags,
  rota: rotaSheet,
};

export function classDesk(
  { raw, people, example }: WorkshopOf,
  { words, day, core, layouts = null }: Job,
  press: Press,
): ClassDesk {
  const { name, place, date, level, starts, length_min } = raw;
  const printing = { words, day, ...raw.sheet };
  const session = { name, place, date, level };
  const listed = people.flatMap(({ members, name: own, notes, team }): readonly Listed[] =>
    members.length === 0 ? [{ name: own, notes, team }] : members.map((member) => ({ ...member, team })),
  );
  const teams = [...new Set(people.map(({ team }) => team))].filter((team) => team !== '');
  const teamless = listed.filter(({ team }) => team === '').map((one) => one.name);
  const alone = teamless.length;
  const facts = core.classFacts({
    ...{ level, starts, length_min, people: listed.length, teams: teams.length, alone },
    rota: raw.rota ?? null,
  });
  const input: ClassInput = {
    ...printing,
    session,
    people: listed,
    teams,
    alone,
    turns: [...teams, ...inGroups(teamless, facts.together)],
    worksheets: people.length,
    work: teams.length === 0 ? 'alone' : 'inTeams',
    example: () => worked(example, people, core, { ...printing, session }),
    facts,
  };
  const wanted = new Set(raw.sheets);
  let back: Promise<Filled> | null = null;
  const backOf = async (): Promise<Filled> => {
    const side = classSide(input, { kind: '', subject: handoutWords(input, 'empty') }, null);
    return press.asLaidOut(await press.layOutAnew(side));
  };
  return {
    ...{
      people,
      input,
      wanted,
      press,
      handouts: handoutDesk(press, layouts),
      plans: planDesk(press, layouts),
    },
    handoutOf: (index) => {
      const person = people[index];
      if (person === undefined) throw new RangeError(`there is no row ${index}`);
      return { ...printing, session, ...whoseOf(person), ...core.handoutFacts(person.system, level) };
    },
    emptyBack: () => {
      back ??= backOf();
      return back;
    },
    ofClass: async () => {
      const found = [];
      for (const [key, sheet] of Object.entries(classSheets)) {
        if (!wanted.has(key) || sheet.fits(input) === 'no') continue;
        const pages: Page[] = [];
        for await (const page of sheet.pages(input, press.layOutAnew)) pages.push(page);
        found.push({ sheet, pages });
      }
      return found;
    },
  };
}

/** Names in their order, so many at a time. */
function inGroups(names: readonly string[], sizes: readonly number[]): readonly string[] {
  const left = [...names];
  return sizes.map((size) => left.splice(0, size).join(', '));
}

/** A team goes by its name and its members; somebody alone is named once. */
function whoseOf({ name, team, members, number, typed }: Person) {
  if (members.length === 0 || team === '') return { name, team, number, typed, shared: 'alone' } as const;
  const shared = members.length > 1 ? 'team' : 'alone';
  return {
    name: `${name}: ${members.map((member) => member.name).join(', ')}`,
    team: '',
    number,
    typed,
    shared,
  } as const;
}

/** The example as a worksheet, and what the sheets of the class ask for beyond it. */
function worked(
  { name, system }: WorkshopOf['example'],
  people: readonly Person[],
  { handoutFacts }: CoreOf,
  printing: Printing & { readonly session: Session },
): WorkedExample {
  const { level } = printing.session;
  const facts = handoutFacts(system, level);
  // Every exercise asks for all that its level knows.
  const [first] = people;
  const usual = people.find(({ number }) => number !== null) ?? first;
  const asked = usual === undefined ? [] : handoutFacts(usual.system, level).asked;
  const shown = new Set(facts.asked.map(({ key }) => key));
  return {
    input: { ...printing, ...facts, name, team: '', number: null, typed: null, shared: 'alone' },
    lacks: asked.map(({ key }) => key).filter((key) => !shown.has(key)),
  };
}
