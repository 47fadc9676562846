import { readdirSync, readFileSync } from 'node:fs';
import { expect, test } from 'vitest';

/* What makes a test fail at some hour, in some zone or on a busy machine is in none of them. */

const FORBIDDEN: [what: string, sign: RegExp, where: RegExp][] = [
  [
    "a phone with the machine's own clock, not that of tests/browser/test.ts",
    /import \{[^}]*\btest\b[^}]*\} from 'playwright\/test'/,
    /\.test\.ts$/,
  ],
  ['a wait for a time, not for what is shown', /\bwaitForTimeout\(/, /\.(test|webkit)\.ts$/],
  ['a test that begins again', /\b(retries|retry): [1-9]/, /\.ts$/],
];

/** What a file under tests/ holds of it, in words. */
const faultsOf = (file: string, text: string) =>
  FORBIDDEN.filter(([, sign, where]) => where.test(file) && sign.test(text)).map(([what]) => what);

test('a test that would depend on the hour or on a quick machine is found out', () => {
  const bad = [
    "import { expect, test } from 'playwright/test';",
    'await page.waitForTimeout(500);',
    'test.describe.configure({ retries: 1 });',
  ].join('\n');
  expect(faultsOf('browser/court.test.ts', bad)).toEqual(FORBIDDEN.map(([what]) => what));
  expect(faultsOf('browser/test.ts', "import { test as base } from 'playwright/test';")).toEqual(
    [],
  );
});

test('no test in a browser depends on the hour, waits for a time, or begins again', () => {
  const files = ['browser', 'faults', 'webkit'].flatMap((folder) =>
    readdirSync(new URL(folder, import.meta.url)).map((name) => `${folder}/${name}`),
  );
  const sources = files.filter((file) => file.endsWith('.ts'));
  expect(sources.length).toBeGreaterThan(40);
  const found = sources.flatMap((file) =>
    faultsOf(file, readFileSync(new URL(file, import.meta.url), 'utf8')).map(
      (what) => `${file}: ${what}`,
    ),
  );
  expect(found).toEqual([]);
});
