import { readFileSync } from 'node:fs';
import { gzipSync } from 'node:zlib';
import { expect, test } from './test.ts';

const dist = new URL('../../dist/', import.meta.url);

/** What a phone with a thin connection can fetch before the first practice. */
const MOST_KB = 70;

/** The scripts that the page asks for before a person does anything: its own and all they import. */
function firstScripts(): Set<string> {
  const page = readFileSync(new URL('index.html', dist), 'utf8');
  const waiting = [...page.matchAll(/(?:src|href)="\.\/(assets\/[^"]+\.js)"/g)].map(
    (m) => m[1] ?? '',
  );
  const found = new Set<string>();
  for (let script = waiting.pop(); script !== undefined; script = waiting.pop()) {
    if (found.has(script)) continue;
    found.add(script);
    const text = readFileSync(new URL(script, dist), 'utf8');
    for (const [, name] of text.matchAll(/(?:from|import)\s*["']\.\/([^"']+\.js)["']/g)) {
      waiting.push(`assets/${name}`);
    }
  }
  return found;
}

test(`the first load has at most ${MOST_KB} kB of JavaScript, gzipped`, () => {
  const scripts = firstScripts();
  expect(scripts.size).toBeGreaterThan(0);
  const bytes = [...scripts].reduce(
    (sum, script) => sum + gzipSync(readFileSync(new URL(script, dist))).length,
    0,
  );
  console.log(`first load: ${(bytes / 1000).toFixed(1)} kB in ${scripts.size} scripts`);
  expect(bytes).toBeLessThanOrEqual(MOST_KB * 1000);
});
