/** The site: built by Astro into its own folder, then the sheets of shared systems, then the list for offline use. */
import { copyFile, mkdir, readdir } from 'node:fs/promises';
import { join } from 'node:path';
import { build } from 'astro';
import type { ReadSystem } from '../schemas/content.ts';
import { writeOffline } from './offline.ts';
import { writePreloads } from './preloads.ts';

/** Builds the pages. Astro prints what is wrong with a page and throws. */
export async function buildPages(folder: string): Promise<void> {
  await build({ root: process.cwd(), outDir: folder, logLevel: 'warn' });
  await writePreloads(folder);
}

/** Puts the sheets of shared systems, and only theirs, beside the pages: the card under the system's own name. */
export async function shareSheets(
  systems: readonly ReadSystem[],
  printed: string,
  site: string,
): Promise<void> {
  const into = join(site, 'sheets');
  await mkdir(into, { recursive: true });
  for (const { id } of systems.filter((system) => system.shared)) {
    await copyFile(join(printed, id, 'care-card.pdf'), join(into, `${id}.pdf`));
    await copyFile(join(printed, id, 'care-card-1.svg'), join(into, `${id}.svg`));
    await copyFile(join(printed, id, 'care-card-1.png'), join(into, `${id}.png`));
    const others = (await readdir(join(printed, id))).filter(isOtherSheet);
    for (const name of others) await copyFile(join(printed, id, name), join(into, `${id}-${name}`));
  }
  await writeOffline(site);
}

function isOtherSheet(name: string): boolean {
  return name.endsWith('.pdf') && name !== 'care-card.pdf';
}
