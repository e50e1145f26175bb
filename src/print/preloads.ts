/**
 * Names in the head of each page all modules that its scripts import, so that a browser fetches them together and does not
 * learn of one from the other.
 */
import { readdir, readFile, writeFile } from 'node:fs/promises';
import { basename, join } from 'node:path';

/** Writes the names into the pages of a finished site. */
export async function writePreloads(site: string): Promise<void> {
  const imports = await importsIn(join(site, '_astro'));
  const files = await readdir(site, { recursive: true });
  await Promise.all(
    files
      .filter((file) => file.endsWith('.html'))
      .map(async (file) => {
        const page = await readFile(join(site, file), 'utf8');
        await writeFile(join(site, file), withPreloads(page, imports));
      }),
  );
}

/** What each script imports from the start, by their names. */
type Imports = ReadonlyMap<string, readonly string[]>;

async function importsIn(folder: string): Promise<Imports> {
  const names = (await readdir(folder)).filter((name) => name.endsWith('.js'));
  const each = names.map(async (name) => {
    const text = await readFile(join(folder, name), 'utf8');
    const found = [...text.matchAll(/\b(?:from|import)\s*"\.\/([^"/]+\.js)"/g)].map(
      ([, other = '']) => other,
    );
    return [name, found.filter((other) => names.includes(other))] as const;
  });
  return new Map(await Promise.all(each));
}

function withPreloads(page: string, imports: Imports): string {
  const scripts = [...page.matchAll(/<script type="module" src="([^"]*\/)([^"/]+)"/g)];
  const [, folder = ''] = scripts[0] ?? [];
  const known = new Set<string>();
  const add = (name: string): void => {
    if (known.has(name)) return;
    known.add(name);
    for (const other of imports.get(name) ?? []) add(other);
  };
  for (const [, , name = ''] of scripts) add(basename(name));
  const links = [...known].map((name) => `<link rel="modulepreload" href="${folder}${name}">`);
  return page.replace('</head>', `${links.join('')}</head>`);
}
