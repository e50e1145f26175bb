/** A content folder of its own for one test: the real one copied, without its systems, and what the test adds. */
import { cp, mkdir, mkdtemp, rm, writeFile } from 'node:fs/promises';
import { tmpdir } from 'node:os';
import { dirname, join } from 'node:path';
import type { Problem } from '../../src/core/problem.ts';
import type { Content } from '../../src/schemas/content.ts';
import { readContent } from '../../src/schemas/readContent.ts';
import { problemLine } from '../../src/wording/problem.ts';

export const realContent = new URL('../../content', import.meta.url).pathname;

export type Read = {
  readonly content: Content;
  readonly problems: readonly Problem[];
  /** As `build` and `plan` print them. */
  readonly lines: readonly string[];
};

/** Writes the files, reads the folder, and leaves nothing behind. */
export async function readWith(files: Readonly<Record<string, string | Uint8Array>>): Promise<Read> {
  const root = await mkdtemp(join(tmpdir(), 'bedfirst-content-'));
  const dir = join(root, 'content');
  try {
    for (const folder of [
      'care',
      'climates',
      'containers',
      'crops',
      'pumps',
      'fish',
      'media',
      'sources',
      'terms',
      'wording',
    ]) {
      await cp(join(realContent, folder), join(dir, folder), { recursive: true });
    }
    await mkdir(join(dir, 'systems'));
    await mkdir(join(dir, 'turnovers'));
    for (const [name, text] of Object.entries(files)) {
      await mkdir(dirname(join(dir, name)), { recursive: true });
      await writeFile(join(dir, name), text);
    }
    const { content, problems } = await readContent(dir);
    const { content: real } = await readContent(realContent);
    return { content, problems, lines: problems.map((problem) => problemLine(problem, english(real))) };
  } finally {
    await rm(root, { recursive: true });
  }
}

/** A small system without a fault. */
export const soundSystem = `id: sound
name: Sound
tank:
  container: { shape: box, length_mm: 1000, width_mm: 1000, depth_mm: 800 }
  full_mm: 700
beds:
  - name: Bed
    container: { shape: box, length_mm: 1000, width_mm: 1000, depth_mm: 360 }
    mode: siphon
    media: coarseGravel
    mediaDepth_mm: 330
    waterLine_mm: 300
    above_mm: 900
pump:
  flow_L_h: 900
  intake_mm: 100
fish:
  kind: nileTilapia
  present: 12
  massNow_g: 180
`;

/** The sound system under another id, with one text in it replaced. */
export function changed(id: string, from: string, to: string): string {
  if (!soundSystem.includes(from)) throw new Error(`the sound system has no "${from}"`);
  return soundSystem.replace('id: sound', `id: ${id}`).replace(from, to);
}

/** The English sentences of a content that has some. */
export function english(content: Content): NonNullable<Content['wording'][string]> {
  const { en } = content.wording;
  if (!en) throw new Error('there is no English');
  return en;
}
