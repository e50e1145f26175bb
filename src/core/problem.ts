/**
 * What is wrong with an input, as data. `place` is the path to the field; whoever read the text adds the
 * line and column (`at`), whoever shows a form finds the field by the path. `wording` makes the sentence.
 */
export type Problem = {
  readonly code: ProblemCode;
  readonly place: readonly (string | number)[];
  /** What came, as the person wrote it, shortened by the wording where it is long. */
  readonly given?: string;
  readonly min?: number;
  readonly max?: number;
  readonly unit?: string;
  /** What would be right: allowed words, or the field or reference that was probably meant. */
  readonly allowed?: readonly string[];
  readonly meant?: string;
  /** The second file, field or thing that the problem is about (the other system with the same id). */
  readonly other?: string;
  /** File, line and column, counted from 1, where a file was read. */
  readonly at?: { readonly file: string; readonly line: number; readonly column: number };
};

export type ProblemCode =
  // reading
  | 'fileTooLarge' | 'notUtf8' | 'notYaml' | 'fileMissing' | 'fileName' | 'emptyFile'
  // one field
  | 'missing' | 'unknownKey' | 'wrongUnit' | 'notNumber' | 'notWhole' | 'notText' | 'notList' | 'notGroup'
  | 'outOfRange' | 'notAllowed' | 'tooLong' | 'controlCharacter' | 'tooMany' | 'tooFew' | 'notDate' | 'wrongType'
  // several fields together
  | 'reference' | 'sameId' | 'mediaAboveRim' | 'waterAboveMedia' | 'fullAboveRim' | 'intakeAboveFull'
  | 'intakeAboveLow' | 'cutAboveDiameter' | 'tooLongForShape' | 'dipTableOrder' | 'bucketTest' | 'pumpMissing'
  | 'pumpUnneeded' | 'basketAboveRim' | 'drainAboveLine' | 'sumpNeedsPump' | 'bedBelowReturn' | 'wallTaper';
