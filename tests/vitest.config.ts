// The phones of tests/app stand far from UTC, so that a date is never right by chance alone.
process.env.TZ ??= 'Pacific/Auckland';

import { defineConfig } from 'vitest/config';

// The app is built into one script before the tests of whole phones, on however busy a machine.
const shared = { setupFiles: ['tests/setup.ts'], testTimeout: 60_000, hookTimeout: 60_000 };

export default defineConfig({
  root: new URL('..', import.meta.url).pathname,
  test: {
    pool: 'threads',
    maxWorkers: '100%',
    projects: [
      // What is pure keeps nothing between files: without isolation it runs in half the time.
      {
        test: {
          ...shared,
          name: 'pure',
          include: ['tests/{core,demo-data,reference}/**/*.test.ts'],
          isolate: false,
        },
      },
      { test: { ...shared, name: 'app', include: ['tests/app/**/*.test.ts', 'tests/*.test.ts'] } },
    ],
  },
});
