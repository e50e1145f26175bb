/** All content as checked data: what every other room works from. */
import type { CareTask } from '../core/care/routine.ts';
import type { Crop } from '../core/crops/crop.ts';
import type { System } from '../core/system.ts';
import type { TurnoverTask } from '../core/turnover/turnover.ts';
import type { Again } from './again.ts';
import type { Facts } from './facts.ts';
import type { SourceFile } from './source.ts';
import type { Starts } from './starts.ts';
import type { SystemFile } from './systemFile.ts';
import type { TermFile } from './term.ts';
import type { TurnoverFile } from './turnoverFile.ts';
import type { WordingFile } from './wording.ts';

export type ReadSystem = {
  readonly id: string;
  /** Where it was read: folder and name, with forward slashes, never the path of the machine. */
  readonly file: string;
  readonly shared: boolean;
  readonly sheet: SystemFile['sheet'];
  /** As it was written, with what was left out filled in: plain data, to keep and to attach. */
  readonly raw: SystemFile;
  readonly system: System;
};

export type ReadTurnover = {
  readonly id: string;
  readonly file: string;
  readonly shared: boolean;
  readonly sheet: TurnoverFile['sheet'];
  readonly raw: TurnoverFile;
  readonly task: TurnoverTask;
  /** What came differently since, one after the other. */
  readonly again: readonly Again[];
};

import type { ReadWorkshop } from './workshops.ts';

export type Content = Facts & {
  readonly starts: Starts;
  readonly crops: Readonly<Record<string, Crop>>;
  /** In the order of their ids. */
  readonly turnovers: readonly ReadTurnover[];
  /** In the order of their ids. */
  readonly systems: readonly ReadSystem[];
  /** In the order of their ids. */
  readonly workshops: readonly ReadWorkshop[];
  readonly sources: Readonly<Record<string, SourceFile>>;
  readonly terms: Readonly<Record<string, TermFile>>;
  /** Every task of every topic, in the order of their headings. */
  readonly care: readonly CareTask[];
  /** By language: `en`. */
  readonly wording: Readonly<Record<string, WordingFile>>;
};
