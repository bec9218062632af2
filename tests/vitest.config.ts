import { defineConfig } from 'vitest/config';

export default defineConfig({
  root: new URL('..', import.meta.url).pathname,
  test: {
    projects: [
      {
        test: {
          name: 'unit',
          include: ['tests/**/*.test.ts'],
          exclude: ['tests/browser/**', 'tests/site/**'],
          testTimeout: 240_000,
        },
      },
      {
        // The built site: structure, links, axe, real browser. Builds once (tests/support/build-site.ts).
        test: {
          name: 'site',
          include: ['tests/{site,browser}/**/*.test.ts'],
          globalSetup: 'tests/support/build-site.ts',
          hookTimeout: 240_000,
          testTimeout: 240_000,
          fileParallelism: false,
          retry: 1, // a real browser on a busy machine now and then misses its moment
        },
      },
    ],
  },
});
