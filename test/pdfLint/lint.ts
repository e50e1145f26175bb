/** Looks at a finished PDF as PDF/UA-1 asks of it, as far as a machine can. It is no certificate. */
import { checkAnnotations } from './annotationRules.ts';
import { checkContent } from './contentRules.ts';
import { look } from './document.ts';
import { checkFile } from './fileRules.ts';
import { checkFonts } from './fontRules.ts';
import { checkLanguage } from './languageRules.ts';
import { covered, type Rule, scope } from './rules.ts';
import { checkStructure } from './structureRules.ts';

export type Finding = { readonly rule: Rule; readonly where: string; readonly what: string };
export type Tell = (rule: Rule, where: string, what?: string) => void;
export type Linted = { readonly findings: readonly Finding[]; readonly scope: string };

const checks = [checkFile, checkLanguage, checkStructure, checkContent, checkAnnotations, checkFonts];

export async function lint(bytes: Uint8Array): Promise<Linted> {
  const findings: Finding[] = [];
  const tell: Tell = (rule, where, what) => {
    findings.push({ rule, where, what: what === undefined ? covered[rule] : `${covered[rule]}: ${what}` });
  };
  const looked = await look(bytes);
  for (const check of checks) check(looked, tell);
  return { findings, scope };
}
