/** What the class page and its worker say to each other. */
import type { PeopleFacts } from '../../schemas/people.ts';
import type { WorkshopPart } from '../../core/workshop/parts.ts';
import type { Words } from '../../sheets/sheet.ts';
import type { MadeFile } from '../messages.ts';
import type { Trouble } from '../troubles.ts';

/** The words, and what people's systems are made from. */
export type ClassContent = Words & {
  readonly facts: PeopleFacts;
  /** The system that is offered first to work through. */
  readonly example: string;
};

/** What is to be printed: the fields of a workshop's file, the roster's bytes, and which rows. */
export type ClassAsk = {
  readonly kind: 'check' | 'make';
  readonly turn: number;
  readonly raw: unknown;
  /** Its bytes; only their number where there are too many; null as long as none was chosen. */
  readonly roster: Uint8Array<ArrayBuffer> | number | null;
  /** What its file is called, for what is wrong with it. */
  readonly rosterName: string;
  readonly rows: string;
  readonly part: WorkshopPart;
  readonly day: string;
};

export type ClassTold =
  /** People found, every problem of a field at its place, and every problem of the roster as a line. */
  | {
      readonly kind: 'checked';
      readonly turn: number;
      readonly people: number;
      readonly troubles: readonly Trouble[];
      readonly wrong: readonly string[];
    }
  | { readonly kind: 'progress'; readonly turn: number; readonly done: number; readonly of: number }
  | { readonly kind: 'made'; readonly turn: number; readonly made: MadeFile }
  | { readonly kind: 'failed'; readonly turn: number; readonly message: string };
