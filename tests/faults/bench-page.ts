import { mkdtempSync, rmSync, writeFileSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import { fileURLToPath } from 'node:url';
import { build } from 'vite';
import { Host } from './served.ts';
import { test as base } from './test.ts';
import type { Workbench } from './workbench.ts';

/** Tests on a page that has nothing but the workbench, as `workbench`. */
export const test = base.extend<object, { folder: string }>({
  folder: [
    // biome-ignore lint/correctness/noEmptyPattern: the fixture needs none, and must say so this way
    async ({}, use) => {
      const outDir = mkdtempSync(join(tmpdir(), 'rally-ledger-workbench-'));
      await build({
        configFile: false,
        logLevel: 'error',
        build: {
          outDir,
          target: 'es2022',
          lib: {
            entry: fileURLToPath(new URL('./workbench.ts', import.meta.url)),
            formats: ['es'],
            fileName: () => 'workbench.js',
          },
        },
      });
      const page = '<!doctype html><script type="module" src="./workbench.js"></script>';
      writeFileSync(join(outDir, 'index.html'), page);
      await use(outDir);
      rmSync(outDir, { recursive: true, force: true });
    },
    { scope: 'worker' },
  ],
  host: async ({ folder }, use) => {
    const host = await Host.of(folder);
    await use(host);
    await host.close();
  },
  page: async ({ page, host }, use) => {
    await page.goto(host.address);
    await page.waitForFunction(() => 'workbench' in window);
    await use(page);
  },
});

declare global {
  /** On the workbench's own page only. */
  var workbench: Workbench;
}

export { expect } from './test.ts';
