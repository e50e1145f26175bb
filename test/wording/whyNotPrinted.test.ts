import { readFile } from 'node:fs/promises';
import { expect, test } from 'vitest';
import { layOut } from '../../src/paper/layOut.ts';
import { nodeParts } from '../../src/paper/node.ts';
import { whyNotPrinted } from '../../src/print/whyNotPrinted.ts';
import { oneBox } from '../paper/oneBox.tsx';
import { readWith } from '../schemas/contentFolder.ts';

const file = await readFile(new URL('../sheets/manyScripts.yaml', import.meta.url), 'utf8');
const parts = await nodeParts();

/** What the build says of a system with these names, when a sheet that shows all its texts is laid out. */
async function said(change: (text: string) => string): Promise<string> {
  const { content, lines } = await readWith({ 'systems/many-scripts.yaml': change(file) });
  expect(lines).toEqual([]);
  const [read] = content.systems;
  if (read === undefined) throw new Error('the system was not read');
  const shown = [read.raw.name, read.raw.place, ...read.raw.beds.map((bed) => bed.name)].join(' · ');
  try {
    await layOut(oneBox(shown), parts.types, parts.engine);
  } catch (error) {
    return whyNotPrinted(error, read.raw, content.wording['en'] ?? {});
  }
  return 'printed';
}

test('names in scripts that the packs have are printed', async () => {
  expect(await said((text) => text)).toBe('printed');
});

test('a character that no font has is told with its code, at each field that holds it', async () => {
  const told = await said((text) => text.replace('name: حوض', 'name: Pond თ').replace('(2)', '(🐟) თ'));
  expect(told).toMatchInlineSnapshot(
    `"name: The name holds the character თ (U+10D7), which no font here can print. Write it in another way. beds[1].name: The name holds the character თ (U+10D7), which no font here can print. Write it in another way. beds[1].name: The name holds the character 🐟 (U+1F41F), which no font here can print. Write it in another way."`,
  );
});

test('any other reason is told in its own words', () => {
  expect(whyNotPrinted(new Error('the disk is full'), { name: 'a' }, {})).toBe('the disk is full');
});
