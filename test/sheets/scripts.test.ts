import { readFile } from 'node:fs/promises';
import { beforeAll, describe, expect, test } from 'vitest';
import type { System } from '../../src/core/system.ts';
import { overflows } from '../../src/paper/overflows.ts';
import type { Page } from '../../src/paper/page.ts';
import { allSheets } from '../../src/sheets/allSheets.ts';
import type { SheetInput } from '../../src/sheets/sheet.ts';
import { scriptNames } from '../paper/scriptNames.ts';
import { readWith } from '../schemas/contentFolder.ts';
import { cardPages, faultsOf, inputOf, press, textOf } from './laidOut.ts';

let system: System;
beforeAll(async () => {
  const file = await readFile(new URL('./manyScripts.yaml', import.meta.url), 'utf8');
  const { content, lines } = await readWith({ 'systems/many-scripts.yaml': file });
  expect(lines).toEqual([]);
  const [read] = content.systems;
  if (read === undefined) throw new Error('the system was not read');
  system = read.system;
});

async function pagesOf(kind: (typeof allSheets)[number], input: SheetInput): Promise<readonly Page[]> {
  const pages = [];
  for await (const page of kind.pages(input, press.layOut)) pages.push(page);
  return pages;
}

/** The same system with this name for everything. */
function named(name: string): System {
  return { ...system, name, place: name, beds: system.beds.map((bed) => ({ ...bed, name })) };
}

describe('a system with an Arabic, a Hebrew and a Tamil name', () => {
  for (const paper of ['A4', 'Letter'] as const) {
    test(`has a whole card on ${paper}, in which every name stands as it was written`, async () => {
      const pages = await cardPages(inputOf(system, paper));
      expect(pages.length).toBeGreaterThanOrEqual(2);
      expect(pages.flatMap(faultsOf)).toEqual([]);
      expect(pages.flatMap(overflows)).toEqual([]);
      const [front] = pages;
      const text = front ? textOf(front) : '';
      expect(text).toContain('حوض السمك الكبير 3');
      expect(text).toContain('מרכז הגינה ( Quillbeck ), மேல் தொட்டி 12');
    });
  }
});

/** One script of each kind is tried on every sheet: it runs to the left, has no spaces, or has wide signs. */
const everywhere = ['Arabic', 'Thai', 'Chinese'];
const elsewhere = ['care-card', 'start-up-log'];

describe('a long name', () => {
  for (const { script, name } of scriptNames) {
    test(`stays in its place on the sheets, in this script: ${script}`, async () => {
      const input = inputOf(named(Array.from({ length: 6 }, () => name).join(' ')), 'Letter');
      const kinds = allSheets.filter(({ id }) => everywhere.includes(script) || elsewhere.includes(id));
      for (const kind of kinds.filter((one) => one.fits(input) === 'yes')) {
        const pages = await pagesOf(kind, input);
        expect(pages.flatMap(overflows), kind.id).toEqual([]);
        expect(pages.flatMap(faultsOf), kind.id).toEqual([]);
      }
    });
  }
});
