// Programs as one file each. Compiling every source anew at every start would take longer than most of what they do; so
// it is done when a source has changed, or a package was installed, and kept with what Node made of it.
import {
  accessSync,
  constants,
  existsSync,
  mkdirSync,
  readFileSync,
  renameSync,
  rmSync,
  statSync,
  writeFileSync,
} from 'node:fs';
import { enableCompileCache } from 'node:module';
import { basename, join } from 'node:path';
import { fileURLToPath, pathToFileURL } from 'node:url';

const root = fileURLToPath(new URL('../../', import.meta.url));
const kept = join(root, 'node_modules/.cache/bedfirst');
/** Written whenever a package is installed. */
const packages = 'node_modules/.package-lock.json';

/** What finds its own files beside itself stays where it is, and what few programs need. */
const external = ['harfbuzzjs', '@resvg/resvg-js', 'highs', 'playwright-core', '@sparticuz/chromium'];

/** The address of the compiled program; of its source where nothing can be kept. */
export async function compiled(source) {
  if (!canKeep()) {
    await import('tsx/esm');
    return pathToFileURL(join(root, source)).href;
  }
  const name = basename(source, '.ts');
  const program = join(kept, `${name}.mjs`);
  const list = join(kept, `${name}.json`);
  if (!isFresh(list, program)) await compile(source, program, list);
  enableCompileCache(join(kept, 'code'));
  return pathToFileURL(program).href;
}

function canKeep() {
  try {
    mkdirSync(kept, { recursive: true });
    accessSync(kept, constants.W_OK);
    return true;
  } catch {
    return false;
  }
}

function isFresh(list, program) {
  if (!existsSync(list) || !existsSync(program)) return false;
  return Object.entries(JSON.parse(readFileSync(list, 'utf8'))).every(([file, at]) => changedAt(file) === at);
}

function changedAt(file) {
  return statSync(join(root, file), { throwIfNoEntry: false })?.mtimeMs ?? null;
}

async function compile(source, program, list) {
  const { build, stop } = await import('esbuild');
  const started = Date.now();
  // Whoever runs beside us has the old program until the new one is whole.
  const beside = `${program}-${process.pid}`;
  const { metafile } = await build({
    absWorkingDir: root,
    entryPoints: [source],
    outfile: beside,
    bundle: true,
    platform: 'node',
    format: 'esm',
    mainFields: ['module', 'main'],
    jsx: 'automatic',
    jsxImportSource: 'satori/jsx',
    external,
    banner: { js: "import{createRequire as from_}from'node:module';const require=from_(import.meta.url);" },
    metafile: true,
    logLevel: 'error',
  });
  await stop();
  rmSync(list, { force: true });
  // What older programs kept is of no more use.
  rmSync(join(kept, 'kept'), { recursive: true, force: true });
  renameSync(beside, program);
  const own = Object.keys(metafile.inputs).filter((file) => !file.startsWith('node_modules/'));
  const files = [...own, packages].map((file) => [file, changedAt(file)]);
  // What changed meanwhile may have been read before it did, so the next start compiles again.
  if (files.every(([, at]) => at < started)) writeFileSync(list, JSON.stringify(Object.fromEntries(files)));
}
