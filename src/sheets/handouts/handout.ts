/** What a handout is made from: one person's containers in one workshop. */
import type { Level } from '../../core/workshop/exercise.ts';
import type { HandoutFacts } from '../../core/plan/handoutFacts.ts';
import { say } from '../../wording/catalogue.ts';
import type { Printing } from '../sheet.ts';

/** What is the same for everybody. */
export type Session = {
  readonly name: string;
  readonly place: string;
  /** ISO 8601. */
  readonly date: string;
  readonly level: Level;
};

export type Handout = HandoutFacts & {
  readonly session: Session;
  /** One person, or a team by its name and all who belong to it. */
  readonly name: string;
  /** Empty where the name says it. */
  readonly team: string;
  /** Whether several work on this sheet, each with a role. */
  readonly shared: 'team' | 'alone';
  /** The number of an exercise; null for containers of one's own. */
  readonly number: string | null;
  /** What to type instead of a number where the work is checked. */
  readonly typed: string | null;
};

export type HandoutInput = Handout & Printing;

/** The worksheet to fill in, or the same with its answers. */
export type HandoutView = 'blank' | 'key';

export function handoutWords(
  input: Pick<Printing, 'words'>,
  key: string,
  values: Readonly<Record<string, string>> = {},
): string {
  return say(input.words.catalogue, `workshop.${key}`, values);
}
