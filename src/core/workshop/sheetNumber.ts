/** The number of a worksheet: which exercise of which class it is, and never whose. */
import { type Level, levels } from './exercise.ts';

export type SheetNumber = {
  readonly level: Level;
  /** That of the class, 0 to 9,999. */
  readonly seed: number;
  /** That of the sheet in its class, from 0; 9,998 at most, since it is printed counted from 1. */
  readonly index: number;
};

/** Largest seed, and most sheets of a class. */
const mostOfNumber = 9_999;

/**
 * A sheet's number as it is printed: level, seed, index from 1, and two digits that show a slip of the pen.
 * The last two digits make the whole number leave 1 when divided by 97.
 * @param of level, seed and index
 * @returns such as 1-0417-0012-06
 * @valid seed and index as their bounds say
 * @throws RangeError outside them
 * @source iso7064 MOD 97-10
 * @example sheetNumber({ level: 'primary', seed: 417, index: 11 }) // '1-0417-0012-06'
 */
export function sheetNumber(of: SheetNumber): string {
  const { level, seed, index } = of;
  for (const part of [seed, index + 1])
    if (!(Number.isInteger(part) && 0 <= part && part <= mostOfNumber))
      throw new RangeError(`sheetNumber(${level}, ${seed}, ${index})`);
  const parts = [levels.indexOf(level) + 1, four(seed), four(index + 1)];
  return [...parts, checkPair(parts.join(''))].join('-');
}

/**
 * What a printed number stands for.
 * The other way round of sheetNumber.
 * @param text as somebody copied it, with or without blanks and hyphens
 * @returns level, seed and index; null where it is no such number, or a digit of it was copied wrong
 * @valid any text
 * @source iso7064 MOD 97-10
 */
export function readSheetNumber(text: string): SheetNumber | null {
  const digits = text.replace(/[\s\u2010-\u2015-]/g, '');
  if (!/^\d{11}$/.test(digits) || Number(digits) % 97 !== 1) return null;
  const level = levels[Number(digits[0]) - 1];
  const index = Number(digits.slice(5, 9)) - 1;
  return level === undefined || index < 0 ? null : { level, seed: Number(digits.slice(1, 5)), index };
}

/**
 * The two digits that make a number leave 1 when divided by 97.
 * 98 less what a hundred times the number leaves.
 * @param digits up to 13 digits
 * @returns two digits, 02 to 98
 * @valid whole numbers that can be told exactly
 * @source iso7064 MOD 97-10
 * @example checkPair('794') // '44'
 */
export function checkPair(digits: string): string {
  return String(98 - ((Number(digits) * 100) % 97)).padStart(2, '0');
}

function four(part: number): string {
  return String(part).padStart(4, '0');
}
