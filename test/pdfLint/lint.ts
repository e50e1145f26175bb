/** Looks at a finished PDF as PDF/UA-1 asks of it, as far as a machine can. It is no certificate. */
import { checkContent } from './contentRules.ts';
import { look } from './document.ts';
import { checkFile } from './fileRules.ts';
import { checkFonts } from './fontRules.ts';
import { covered, type Rule } from './rules.ts';
import { checkStructure } from './structureRules.ts';

export type Finding = { readonly rule: Rule; readonly where: string; readonly what: string };
export type Tell = (rule: Rule, where: string, what?: string) => void;

export async function lint(bytes: Uint8Array): Promise<readonly Finding[]> {
  const found: Finding[] = [];
  const tell: Tell = (rule, where, what) => {
    found.push({ rule, where, what: what === undefined ? covered[rule] : `${covered[rule]}: ${what}` });
  };
  const looked = await look(bytes);
  for (const check of [checkFile, checkStructure, checkContent, checkFonts]) check(looked, tell);
  return found;
}
