import { expect, test } from './test.ts';
import { firstLoadBytes, firstScripts, wholeBytes } from './weight.ts';

/** What a phone with a thin connection can fetch before the first practice. */
const MOST_KB = 70;
/** What a phone keeps of the app, so that all of it works without a network. */
const MOST_KEPT_KB = 425;

test(`the first load has at most ${MOST_KB} kB of JavaScript, gzipped`, () => {
  const scripts = firstScripts();
  expect(scripts.size).toBeGreaterThan(0);
  const bytes = firstLoadBytes();
  console.log(`first load: ${(bytes / 1000).toFixed(1)} kB in ${scripts.size} scripts`);
  expect(bytes).toBeLessThanOrEqual(MOST_KB * 1000);
});

test(`all that is kept for offline is at most ${MOST_KEPT_KB} kB, gzipped`, () => {
  const bytes = wholeBytes();
  console.log(`kept for offline: ${(bytes / 1000).toFixed(1)} kB`);
  expect(bytes).toBeLessThanOrEqual(MOST_KEPT_KB * 1000);
});
