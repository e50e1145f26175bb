/** What stands in the repository beside the code: no trace of a machine, exact packages, a reason for each. */
import { execFileSync } from 'node:child_process';
import { existsSync, statSync } from 'node:fs';
import { describe, expect, test } from 'vitest';
import { root, textOf } from './sourceFiles.ts';

const tracked = existsSync(`${root}.git`)
  ? execFileSync('git', ['ls-files', '-z'], { cwd: root, encoding: 'utf8' }).split('\0')
  : [];

/** Texts that git keeps and that are still there; the lock file has rules of its own. */
const texts = tracked.filter((path) => path !== '' && path !== 'package-lock.json' && isText(path));

function isText(path: string): boolean {
  const inBytes = /\.(png|jpe?g|ico|pdf|woff2?|ttf|otf|wasm|gz|zip)$/i;
  return !inBytes.test(path) && existsSync(`${root}${path}`) && statSync(`${root}${path}`).isFile();
}

/** Written in two parts, so that this file does not hold what it looks for. */
const traces: readonly { readonly pattern: RegExp; readonly rule: string }[] = [
  { pattern: new RegExp(`(^|[\\s"'\`(=:])/${'home'}/\\w`), rule: 'names a folder of somebody’s machine' },
  { pattern: new RegExp(`(^|[\\s"'\`(=:])/${'root'}(/|\\b)`), rule: 'names a folder of somebody’s machine' },
  {
    pattern: new RegExp(`/${'Users'}/\\w|[A-Z]:\\\\\\\\?${'Users'}`),
    rule: 'names a folder of somebody’s machine',
  },
  { pattern: new RegExp(`(^|[\\s"'\`(=:])/${'tmp'}/\\w`), rule: 'names a temporary folder of a machine' },
  {
    pattern: new RegExp(
      `${'registry'}\\.[a-z]+\\.|${'npmjs'}\\.(com|org)|${'artifact'}ory|:\\/\\/${'localhost'}:48`,
    ),
    rule: 'names the host of a registry',
  },
];

/** The first two folders of where this checkout lies; nobody else has it there. */
const ownPlace = root.split('/').slice(0, 3).join('/');

function tracesIn(path: string, text: string): readonly string[] {
  return text.split('\n').flatMap((line, i) => {
    const found = traces.filter(({ pattern }) => pattern.test(line)).map(({ rule }) => rule);
    const own =
      ownPlace.length > 4 && line.includes(`${ownPlace}/`) ? ['names the folder of this checkout'] : [];
    return [...found, ...own].map((rule) => `${path}:${i + 1} ${rule}: ${line.trim().slice(0, 80)}`);
  });
}

type Manifest = {
  readonly dependencies?: Readonly<Record<string, string>>;
  readonly devDependencies?: Readonly<Record<string, string>>;
  readonly optionalDependencies?: Readonly<Record<string, string>>;
};

type Locked = { readonly link?: boolean; readonly resolved?: string; readonly integrity?: string };

const manifest: Manifest = JSON.parse(textOf('package.json'));
const locked: Readonly<Record<string, Locked>> = JSON.parse(textOf('package-lock.json')).packages;
const packages = {
  ...manifest.dependencies,
  ...manifest.devDependencies,
  ...manifest.optionalDependencies,
};

describe('what git keeps', () => {
  test.runIf(tracked.length > 0)('names no folder of a machine and no host of a registry', () => {
    expect(texts.length).toBeGreaterThan(100);
    expect(texts.flatMap((path) => tracesIn(path, textOf(path)))).toEqual([]);
  });

  test('looks for them in the right way', () => {
    const made = [
      `see /${'home'}/ann/x`,
      `"/${'tmp'}/x"`,
      `https://${'registry'}.some.org/x`,
      `${ownPlace}/x`,
    ];
    expect(made.flatMap((line) => tracesIn('x', line).slice(0, 1))).toHaveLength(made.length);
    expect(tracesIn('x', 'the root of 2, a home/garden, /rooted')).toEqual([]);
  });
});

describe('the lock file', () => {
  const entries = Object.entries(locked).filter(([path, one]) => path !== '' && !one.link);

  test('knows the checksum of every package', () => {
    expect(entries.length).toBeGreaterThan(100);
    expect(entries.filter(([, one]) => !one.integrity).map(([path]) => path)).toEqual([]);
  });

  test('names no place to fetch them from', () => {
    expect(entries.filter(([, one]) => one.resolved).map(([path]) => path)).toEqual([]);
  });
});

describe('a package', () => {
  test('is pinned to one exact version', () => {
    const loose = Object.entries(packages).filter(
      ([, version]) => !/^\d+\.\d+\.\d+(-[\w.]+)?$/.test(version),
    );
    expect(
      loose.map(([name, version]) => `package.json ${name}: ${version} is not one exact version`),
    ).toEqual([]);
  });

  const reasons = reasonsIn(textOf('DEVELOPERS.md'));

  test('has its reason in DEVELOPERS.md', () => {
    const missing = Object.keys(packages).filter((name) => (reasons.get(name) ?? '').length < 10);
    expect(missing.map((name) => `${name} has no row with a reason in DEVELOPERS.md`)).toEqual([]);
  });

  test('that has a reason in DEVELOPERS.md is one that we use', () => {
    expect([...reasons.keys()].filter((name) => !Object.hasOwn(packages, name))).toEqual([]);
  });
});

/** Rows of the table under "| package | why |". Packages with one reason share a row. */
function reasonsIn(guide: string): ReadonlyMap<string, string> {
  const table = guide.slice(guide.indexOf('| package | why |')).split('\n\n')[0] ?? '';
  const rows = [...table.matchAll(/^\| ([^|]+) \| ([^|]+) \|$/gm)].slice(1);
  return new Map(
    rows.flatMap(([, names = '', why = '']) => names.split(', ').map((name) => [name.trim(), why.trim()])),
  );
}
