import { readdirSync, readFileSync } from 'node:fs';
import { dirname, join, relative, resolve } from 'node:path';
import { fileURLToPath } from 'node:url';
import { describe, expect, test } from 'vitest';

const CORE = fileURLToPath(new URL('../../core', import.meta.url));
const files = readdirSync(CORE, { recursive: true, encoding: 'utf8' }).filter((file) =>
  /\.tsx?$/.test(file),
);

/** The one package that core may use: it is pure itself. */
const PACKAGES = ['zod/mini'];
const REACHES = {
  'Date.now': /\bDate\s*\.\s*now\b/,
  'new Date()': /\bnew\s+Date\b(?!\s*\(\s*[^\s)])/,
  'Date()': /(?<!new\s+)\bDate\s*\(/,
  'Math.random': /\bMath\s*\.\s*random\b/,
  ...Object.fromEntries(
    ['performance', 'window', 'document', 'indexedDB', 'globalThis', 'crypto'].map((name) => [
      name,
      new RegExp(`(?<![.\\w'"-])${name}\\b(?!\\s*[:'"-])`),
    ]),
  ),
};

const withoutComments = (source: string) =>
  source.replace(/\/\*\*?\s[\s\S]*?\*\//g, '').replace(/(?<![:'"\\])\/\/.*$/gm, '');

/** The names of what a source reaches for outside itself, besides what it is given. */
const reaches = (source: string): string[] =>
  Object.entries(REACHES)
    .filter(([, pattern]) => pattern.test(withoutComments(source)))
    .map(([name]) => name);

const imports = (source: string): string[] =>
  [
    ...withoutComments(source).matchAll(
      /(?:\bfrom|\bimport|\bimport\s*\(|\brequire\s*\()\s*(['"`])(.*?)\1/g,
    ),
  ].map(([, , from]) => from ?? '');

const staysInside = (file: string, from: string): boolean =>
  from.startsWith('.')
    ? !relative(CORE, resolve(dirname(join(CORE, file)), from)).startsWith('..')
    : PACKAGES.includes(from);

describe('core', () => {
  test('is more than a few files, so that this looks at something', () => {
    expect(files.length).toBeGreaterThan(15);
    expect(files).toContain('ledger/practice.ts');
    expect(files.some((file) => file.startsWith('figures'))).toBe(true);
  });

  test.each(files)('%s imports nothing from outside, but for the schemas', (file) => {
    const found = imports(readFileSync(join(CORE, file), 'utf8'));
    expect(found.filter((from) => !staysInside(file, from))).toEqual([]);
  });

  test.each(files)('%s reaches for no clock, no chance and no page', (file) => {
    expect(reaches(readFileSync(join(CORE, file), 'utf8'))).toEqual([]);
  });
});

/** The rooms of core in the order in which they build on each other. */
const ROOMS = ['court', 'drill', 'round', 'ledger', 'figures', 'planning', 'exchange'];
const roomOf = (file: string) => (file.includes('/') ? file.split('/')[0] : undefined);

describe('the rooms of core', () => {
  test('are those that are named here, with a dozen files at most beside them', () => {
    expect([...new Set(files.map(roomOf))].filter(Boolean).toSorted()).toEqual(ROOMS.toSorted());
    expect(files.filter((file) => !roomOf(file)).length).toBeLessThanOrEqual(12);
  });

  test.each(files)('%s imports from no room that builds on its own', (file) => {
    const own = ROOMS.indexOf(roomOf(file) ?? '');
    const upward = imports(readFileSync(join(CORE, file), 'utf8'))
      .filter((from) => from.startsWith('.'))
      .map((from) => roomOf(relative(CORE, resolve(dirname(join(CORE, file)), from))))
      .filter((room) => room !== undefined && ROOMS.indexOf(room) > own);
    expect(upward).toEqual([]);
  });
});

describe('the look at a source', () => {
  test.each([
    ['const at = Date.now();', 'Date.now'],
    ['const at = new Date();', 'new Date()'],
    ['const at = new Date( );', 'new Date()'],
    ['const at = new Date;', 'new Date()'],
    ['const at = Date();', 'Date()'],
    ['const p = Math.random();', 'Math.random'],
    ['const at = performance.now();', 'performance'],
    ['window.alert(1);', 'window'],
    ['const tag = document.body;', 'document'],
    ['await indexedDB.open("x");', 'indexedDB'],
    ['const id = crypto.randomUUID();', 'crypto'],
    ['globalThis.name = "x";', 'globalThis'],
  ])('sees in %s a reach for %s', (source, name) => {
    expect(reaches(source)).toEqual([name]);
  });

  test('lets a date be made of a given time', () => {
    expect(reaches('const at = new Date(day * DAY); const utc = Date.UTC(2026, 1, 1);')).toEqual(
      [],
    );
  });

  test('takes no notice of comments', () => {
    expect(reaches('/** A window that writes Date.now. */\n// Math.random\nconst a = 1;')).toEqual(
      [],
    );
  });

  test('finds every way to import', () => {
    const source = `import type { A } from './a.ts';
      import 'b';
      export { c } from "../c.ts";
      const d = await import('d');
      const e = require('e');`;
    expect(imports(source)).toEqual(['./a.ts', 'b', '../c.ts', 'd', 'e']);
  });

  test('tells inside from outside', () => {
    expect(staysInside('figures/x.ts', '../ledger/squad.ts')).toBe(true);
    expect(staysInside('figures/x.ts', '../../app/x.ts')).toBe(false);
    expect(staysInside('x.ts', 'zod/mini')).toBe(true);
    expect(staysInside('x.ts', 'zod')).toBe(false);
  });
});
