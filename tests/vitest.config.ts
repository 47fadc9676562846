import { defineConfig } from 'vitest/config';

export default defineConfig({
  root: new URL('..', import.meta.url).pathname,
  test: {
    include: ['tests/**/*.test.ts'],
    setupFiles: ['tests/setup.ts'],
    // Browser tests have a runner of their own.
    exclude: ['tests/browser/**', 'tests/faults/**', 'node_modules/**'],
    testTimeout: 60_000,
  },
});
