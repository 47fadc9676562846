import { fileURLToPath } from 'node:url';
import { defineConfig } from 'vitest/config';

const root = fileURLToPath(new URL('../..', import.meta.url));

/** The tests in WebKit; they need a build in dist/. */
export default defineConfig({
  root,
  test: {
    include: ['tests/webkit/**/*.webkit.ts'],
    globalSetup: ['tests/webkit/engine.ts'],
    // The driver holds one browser at a time.
    fileParallelism: false,
    testTimeout: 180_000,
    hookTimeout: 60_000,
    expect: { poll: { timeout: 20_000 } },
    reporters: ['verbose', ['json', { outputFile: '.cache/webkit-tests.json' }]],
  },
});
