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

/** Every kind of problem. A list, so that the wording can be checked to have a sentence for each. */
export const problemCodes = [
  // reading
  'fileTooLarge',
  'notUtf8',
  'notYaml',
  'duplicateKey',
  'fileMissing',
  'fileName',
  'emptyFile',
  'notRecord',
  'recordDamaged',
  'recordsDiffer',
  'recordNewer',
  'mixedEncodings',
  'moreProblems',
  // one field
  'missing',
  'unknownKey',
  'wrongUnit',
  'notNumber',
  'notWhole',
  'notText',
  'notList',
  'notGroup',
  'outOfRange',
  'notAllowed',
  'tooLong',
  'controlCharacter',
  'tooMany',
  'tooFew',
  'idLetters',
  'keyLetters',
  'notDate',
  'notTime',
  'rosterPlace',
  'planPlace',
  'wrongType',
  // several fields together
  'reference',
  'sameId',
  'sameTask',
  'mediaAboveRim',
  'waterAboveMedia',
  'fullAboveRim',
  'intakeAboveFull',
  'intakeAboveLow',
  'bedsTakeTooMuch',
  'cutAboveDiameter',
  'tooLongForShape',
  'wallTaper',
  'dipTableOrder',
  'dipTableAboveRim',
  'dipTableShort',
  'dipTableTooMuch',
  'bucketTest',
  'pumpMissing',
  'pumpUnneeded',
  'sumpNeedsPump',
  'drainAboveLine',
  'bedBelowReturn',
  'basketAboveRim',
  'basketAboveWater',
  'basketsTooLarge',
  'basketsTooWide',
  'lineSetByTank',
  'dayOrder',
  'absenceLong',
  'labelPitch',
  'labelsOffPaper',
  'labelsUsedUp',
  'rangeOrder',
  'pumpCurveOrder',
  'seasonLong',
  'seasonNoWorkday',
  'sameCrop',
  'sameBed',
  'outsideSeason',
  'weekTwice',
  'nightAboveMean',
  'missedLater',
  'againOrder',
  'wishesEarly',
  'sowingName',
  'sowingTwice',
  'planOther',
  'planCrop',
  'planClash',
  'planWide',
  'planHoliday',
  'planWeek',
  'planTwice',
  'sowingUnknown',
  'sowingAway',
  'partlyOne',
  'partlyAll',
  'partlyWide',
  'placesForm',
  'placesOther',
  'rotaLong',
  'sheetsEmpty',
  // a roster
  'rosterNoText',
  'rosterColumnUnknown',
  'rosterColumnTwice',
  'rosterColumnMissing',
  'rosterCellBeyond',
  'rosterQuote',
  'rosterLong',
  'rosterTooLarge',
  'rosterNobody',
  'rosterNameMissing',
  'rosterNameTwice',
  'rosterFormula',
  'rosterTeamTwice',
  'rosterUncovered',
  'teamContainers',
  'containersForm',
  'containersWord',
  'containersUnit',
  'containersNumber',
  'containersTwoNumbers',
  'containersMeasures',
  'containersRole',
  'containersName',
  'containersBedLarge',
] as const;

export type ProblemCode = (typeof problemCodes)[number];
