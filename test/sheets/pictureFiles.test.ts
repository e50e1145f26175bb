import { mkdtemp, readdir, rm } from 'node:fs/promises';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import { expect, test } from 'vitest';
import { printSheet } from '../../src/print/printSystem.ts';
import { allSheets } from '../../src/sheets/allSheets.ts';
import { content, press, words } from './laidOut.ts';

test('without pictures a sheet is a PDF alone, but the card keeps those that the site shows', async () => {
  const [of] = content.systems;
  if (of === undefined) throw new Error('no system');
  const folder = await mkdtemp(join(tmpdir(), 'bedfirst-pictures-'));
  try {
    const job = { words, care: content.care, day: '2031-05-04', folder, pictures: 'none', dpi: 12 } as const;
    const kinds = allSheets.filter(({ id }) => id === 'care-card' || id === 'build-sheet');
    for (const kind of kinds) await printSheet(kind, of, job, press);
    const files = await readdir(join(folder, of.id));
    expect(files).toEqual(expect.arrayContaining(['care-card-1.svg', 'care-card-1.png']));
    expect(files.filter((name) => name.startsWith('build-sheet'))).toEqual(['build-sheet.pdf']);
  } finally {
    await rm(folder, { recursive: true });
  }
});
