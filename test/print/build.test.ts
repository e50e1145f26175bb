import { allSheets } from '../../src/sheets/allSheets.ts';
import { existsSync } from 'node:fs';
import { mkdir, readdir, readFile, rm, writeFile } from 'node:fs/promises';
import { join } from 'node:path';
import { describe, expect, inject, test } from 'vitest';
import { readContent } from '../../src/schemas/readContent.ts';
import { freshHome, runBuild } from './runBuild.ts';

/** A good build of before, told from others by its one file. */
async function oldBuild(dist: string): Promise<string> {
  const kept = join(dist, 'site', 'kept.txt');
  await mkdir(join(dist, 'site'), { recursive: true });
  await writeFile(kept, 'the last good build');
  return kept;
}

describe('the whole build', () => {
  const built = inject('built');

  test('succeeds and tells how far it is', () => {
    // A season is planned and printed as one; a workshop in three parts.
    const sheets = 13 * allSheets.length + 4 + 3;
    expect(built.log).toContain(`Sheets: ${sheets} of ${sheets}`);
    expect(built.log).toMatch(/\d+ sheets, \d+ pages in [\d.]+ s: [\d.]+ pages a second on \d+ cores/);
    expect(built.code, built.log).toBe(0);
  });

  test('gives every system its card as PDF, PNG and SVG', async () => {
    const { content } = await readContent('content');
    expect(content.systems.length).toBeGreaterThanOrEqual(12);
    for (const { id } of content.systems) {
      const files = await readdir(join(built.out, 'print', id));
      expect(files, id).toEqual(
        expect.arrayContaining(['care-card.pdf', 'care-card-1.png', 'care-card-1.svg']),
      );
      expect(files, id).toEqual(expect.arrayContaining(['care-card-2.png', 'care-card-2.svg']));
    }
  });

  test('gives every season its sheets, a calendar for the phone and a table', async () => {
    const { content } = await readContent('content');
    expect(content.turnovers.length).toBeGreaterThanOrEqual(4);
    for (const { id } of content.turnovers) {
      const files = await readdir(join(built.out, 'print', 'turnovers', id));
      const wanted = ['turnover-calendar.pdf', 'turnover-months.pdf', 'weekly-jobs.pdf', 'sowing-tags.pdf'];
      expect(files, id).toEqual(expect.arrayContaining([...wanted, 'calendar.ics', 'plan.csv', 'plan.json']));
    }
  });

  test('gives every workshop its stack, its answers and a file for each; and no name of a roster gets into the site', async () => {
    const { content } = await readContent('content');
    expect(content.workshops.length).toBeGreaterThan(0);
    const names = content.workshops.flatMap(({ people }) =>
      people.flatMap(({ name, members }) => [name, ...members.map((one) => one.name)]),
    );
    for (const { id } of content.workshops) {
      const files = await readdir(join(built.out, 'print', 'workshops', id));
      expect(files.sort(), id).toEqual(['answers.pdf', 'each.zip', 'stack.pdf']);
    }
    const site = join(built.out, 'site');
    const published = await readdir(site, { recursive: true, withFileTypes: true });
    for (const file of published.filter((one) => one.isFile())) {
      const text = (await readFile(join(file.parentPath, file.name))).toString('latin1');
      expect(
        names.filter((name) => text.includes(name)),
        file.name,
      ).toEqual([]);
    }
  }, 60_000);

  test('shares the sheets of shared systems and of no others', async () => {
    const { content } = await readContent('content');
    const shared = content.systems.filter((system) => system.shared).map((system) => system.id);
    const sheets = await readdir(join(built.out, 'site', 'sheets'));
    const ids = shared.flatMap((id) => [`${id}.pdf`, `${id}-planning-worksheet.pdf`]);
    expect(sheets).toEqual(expect.arrayContaining(ids));
    const strangers = sheets.filter((name) => !shared.some((id) => name.startsWith(id)));
    expect(strangers).toEqual([]);
    expect(shared.length).toBeLessThan(content.systems.length);
  });

  test('leaves no name of a private system and no link to the prints in the site', async () => {
    const { content } = await readContent('content');
    const hidden = content.systems.filter((system) => !system.shared);
    expect(hidden.length).toBeGreaterThanOrEqual(2);
    const secrets = hidden.flatMap(({ id, raw }) => [
      id,
      raw.name,
      raw.place,
      ...wordsOnlyIn(raw.name, raw.place),
    ]);
    const files = (await readdir(join(built.out, 'site'), { recursive: true, withFileTypes: true })).filter(
      (entry) => entry.isFile(),
    );
    for (const entry of files) {
      const path = join(entry.parentPath, entry.name);
      const text = (await readFile(path)).toString('latin1');
      for (const secret of secrets) {
        const bytes = Buffer.from(secret, 'utf8').toString('latin1');
        expect(text.includes(bytes), `${secret} in ${path}`).toBe(false);
      }
      expect(text.includes('/print/'), `a link to the prints in ${path}`).toBe(false);
    }
  });
});

/** The invented words that stand nowhere else: a name must not leak in pieces either. */
function wordsOnlyIn(...names: readonly string[]): readonly string[] {
  return names.flatMap((name) => name.match(/Tolverine|Braskwether/g) ?? []);
}

describe('a build that cannot be finished', () => {
  test('tells every problem with its place, exits with 1 and leaves the last good build alone', async () => {
    const { home, content, dist } = await freshHome(2);
    const kept = await oldBuild(dist);
    await writeFile(join(content, 'systems', 'broken.yaml'), 'id: broken\nname: Broken\nlength_cm: 4\n');
    await writeFile(join(content, 'systems', 'tabs.yaml'), 'id: tabs\n\tname: {');
    const { code, err } = await runBuild(content, dist);
    expect(code).toBe(1);
    expect(err).toMatch(/content\/systems\/broken\.yaml:3:1 length_cm/);
    expect(err).toMatch(/content\/systems\/tabs\.yaml:2:/);
    expect(err).not.toMatch(/\n\s+at /);
    expect(await readFile(kept, 'utf8')).toBe('the last good build');
    await rm(home, { recursive: true });
  });

  test('names the character that no font has, and the system it stands in', async () => {
    const { home, content, dist } = await freshHome(2);
    const kept = await oldBuild(dist);
    const file = join(content, 'systems', 'hollow-lane-ibc.yaml');
    const text = await readFile(file, 'utf8');
    await writeFile(file, text.replace('name: The big tank', 'name: The big თ tank'));
    const { code, err } = await runBuild(content, dist);
    expect(code).toBe(1);
    expect(err).toMatch(/hollow-lane-ibc\.yaml: name: .*თ.*U\+10D7/);
    expect(existsSync(kept)).toBe(true);
    await rm(home, { recursive: true });
  });

  test('leaves the last good build alone when it is killed half-way, and the next one clears up', async () => {
    const { home, content, dist } = await freshHome(6);
    const kept = await oldBuild(dist);
    const killed = await runBuild(content, dist, (out) => (out.includes('Sheets: 20 of') ? 'kill' : 'go on'));
    expect(killed.code).not.toBe(0);
    expect(await readFile(kept, 'utf8')).toBe('the last good build');
    const left = (await readdir(home)).filter((name) => name.startsWith('.dist-'));
    expect(left).toHaveLength(1);
    await writeFile(join(content, 'systems', 'broken.yaml'), 'id: broken\n');
    expect((await runBuild(content, dist)).code).toBe(1);
    expect((await readdir(home)).filter((name) => name.startsWith('.dist-'))).toEqual([]);
    expect(await readFile(kept, 'utf8')).toBe('the last good build');
    await rm(home, { recursive: true });
  });

  test('puts its half of the work away when it is asked to stop', async () => {
    const { home, content, dist } = await freshHome(6);
    const kept = await oldBuild(dist);
    const stopped = await runBuild(content, dist, (out) => (out.includes('Sheets: 5 of') ? 'stop' : 'go on'));
    expect(stopped.code).toBe(1);
    expect(stopped.err).toContain('Stopped.');
    expect(stopped.out).not.toContain('Sheets: 40 of');
    expect((await readdir(home)).filter((name) => name.startsWith('.dist-'))).toEqual([]);
    expect(await readFile(kept, 'utf8')).toBe('the last good build');
    await rm(home, { recursive: true });
  });

  test('tells options that it does not know, and makes nothing', async () => {
    const { home, content, dist } = await freshHome(2);
    const { code, err } = await runBuild(content, dist, () => 'go on', ['--pictures=some', '--dpi=12']);
    expect(code).toBe(1);
    expect(err).toContain('--pictures is some. It can be all, first, none.');
    expect(err).toContain('--dpi is 12. It must be a whole number from 30 to 1200.');
    expect(existsSync(dist)).toBe(false);
    await rm(home, { recursive: true });
  });

  test('puts the old build back if it was killed between the two renames', async () => {
    const { home, content, dist } = await freshHome(2);
    // No process has this number: the system gives none so high.
    await oldBuild(join(home, '.dist-old-999999999'));
    await writeFile(join(content, 'systems', 'broken.yaml'), 'id: broken\n');
    expect((await runBuild(content, dist)).code).toBe(1);
    expect(await readFile(join(dist, 'site', 'kept.txt'), 'utf8')).toBe('the last good build');
    await rm(home, { recursive: true });
  });
});
