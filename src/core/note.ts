/**
 * A caution or doubt as data. `wording` makes the sentence from the code; the numbers carry their unit in
 * their name (`tankFull_L`), so that the sentence can show them in the reader's units.
 */
export type Note = {
  readonly code: string;
  /** `info` explains, `caution` wants a look, `stop` says: do not run it like this. */
  readonly level: 'info' | 'caution' | 'stop';
  readonly numbers: Readonly<Record<string, number>>;
  /** Names and words that stand in the sentence as they are (a bed's name, a fish's name). */
  readonly words?: Readonly<Record<string, string>>;
  /** Citation key of `content/sources/`, or one of the two honest substitutes. */
  readonly source: SourceKey;
};

/** A citation key of `content/sources/`. `commonPractice` and `fromMemory` are entries there too. */
export type SourceKey = string;
