/** Cells that a spreadsheet program would work out, told from words that only begin with one of its signs. */

/** "B7", "$B$7:C9", "12.5"; functions as the programs write them, in capitals. */
const cell = String.raw`\$?[A-Z]{1,3}\$?[1-9]\d*`;
const operand = String.raw`(?:${cell}(?::${cell})?|\d+(?:[.,]\d+)?%?)`;

/** "=1+1". */
const equation = /^=/;
/** "+SUM(A1)", "@NOW()": a function right behind the sign. */
const call = /^[-+@][A-Z][A-Z\d.]*\(/;
/** "-2+3", "+A1*2": nothing but cells and numbers, with a sign before each. */
const sum = new RegExp(String.raw`^[-+@]${operand}(?:\s*[-+*/^&]\s*${operand})+$`);
/** "-A1". */
const reference = new RegExp(`^[-+@]${cell}(?::${cell})?$`);
/** "+cmd|'/C calc'!A0": another program, called from a cell. */
const program = /^[-+@]\w+\|.*!/;
/** "+49-555-0143": as many figures as a call takes, none of which is added up. */
const telephone = /^\+(?:\d[-/]?){7,}$/;

/**
 * Whether a cell holds a formula. A dash before a note, a plus before one more person and a number are none: only
 * what has nothing but a formula to be.
 */
export function isFormula(text: string): boolean {
  if (telephone.test(text)) return false;
  return [equation, call, sum, reference, program].some((form) => form.test(text));
}
