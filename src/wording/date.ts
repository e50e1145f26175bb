/** A day as people write it, from its ISO form. */
import { type Catalogue, say } from './catalogue.ts';

/** "25 Nov 2026" from "2026-11-25". */
export function dayText(iso: string, catalogue: Catalogue): string {
  const [year = '', month = '', day = ''] = iso.split('-');
  return `${Number(day)} ${say(catalogue, `months.${month}`)} ${year}`;
}

/** "25 Nov" from "2026-11-25", where the year goes without saying. */
export function dayInYear(iso: string, catalogue: Catalogue): string {
  const [, month = '', day = ''] = iso.split('-');
  return `${Number(day)} ${say(catalogue, `months.${month}`)}`;
}

/** "Nov 2026" from "2026-11-25". */
export function monthText(iso: string, catalogue: Catalogue): string {
  const [year = '', month = ''] = iso.split('-');
  return `${say(catalogue, `months.${month}`)} ${year}`;
}

/** "28" from "2031-04-28". */
export function dayOfMonth(iso: string): string {
  return String(Number(iso.slice(8)));
}

/** "Nov" from "2026-11-25". */
export function monthShort(iso: string, catalogue: Catalogue): string {
  return say(catalogue, `months.${iso.slice(5, 7)}`);
}
