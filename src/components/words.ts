/** The words of the pages. */
import { getEntry } from 'astro:content';
import { type Catalogue, say } from '../wording/catalogue.ts';

const wording = await getEntry('wording', 'en');
if (wording === undefined) throw new Error('content/wording/en.yaml is missing');

export const catalogue = wording.data;

export function words(key: string, values: Readonly<Record<string, string>> = {}): string {
  return say(catalogue as Catalogue, `pages.${key}`, values);
}
