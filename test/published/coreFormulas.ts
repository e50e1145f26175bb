import { readdirSync, readFileSync } from 'node:fs';
import { unitSuffixes } from '../../src/core/units.ts';

const core = new URL('../../src/core/', import.meta.url);

/** Ratios, pH and pK have no unit to end in. */
const ratios = [
  'frictionFactor',
  'pHAtCarbonDioxide',
  'pHOfCarbonates',
  'pK1',
  'pK2',
  'pKw',
  'reynolds',
  'twoK',
] as const;

/** Names of all exported functions of the core that give a bare number: those that end in a unit, ratios, pH and pK. */
export function coreFormulas(): readonly string[] {
  const units = [...unitSuffixes].sort((a, b) => b.length - a.length).join('|');
  const name = new RegExp(`^export function (\\w+_(?:${units})|${ratios.join('|')})\\(`, 'gm');
  return readdirSync(core, { recursive: true, encoding: 'utf8' })
    .filter((file) => file.endsWith('.ts'))
    .flatMap((file) => [...readFileSync(new URL(file, core), 'utf8').matchAll(name)])
    .map((match) => match[1] ?? '')
    .sort();
}
