import { fileURLToPath } from 'node:url';
import { defineConfig } from 'vitest/config';

/** Test files that look at a finished site or its prints: only they wait for a build. */
const onBuilt = ['test/print/**/*.test.ts', 'test/site/**/*.test.ts'];

export default defineConfig({
  root: fileURLToPath(new URL('..', import.meta.url)),
  test: {
    setupFiles: ['test/sameSeed.ts'],
    testTimeout: 60_000,
    hookTimeout: 240_000,
    // What is waited for on a page takes as long as the machine does.
    expect: { poll: { timeout: 30_000 } },
    projects: [
      {
        extends: true,
        test: { name: 'rooms', include: ['test/**/*.test.ts', 'test/**/*.test.tsx'], exclude: onBuilt },
      },
      { extends: true, test: { name: 'built', include: onBuilt, globalSetup: ['test/builtSite.ts'] } },
    ],
  },
});
