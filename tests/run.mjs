/*
 * `npm test`: everything that has to hold before a change lands, in the order in which a failure
 * is cheapest. Each step is an npm script that can be run by itself. The last line adds up all
 * runners: `N passed, N failed`.
 */
import { spawnSync } from 'node:child_process';
import { mkdirSync, readFileSync, rmSync } from 'node:fs';

const cache = new URL('../.cache/', import.meta.url);
mkdirSync(cache, { recursive: true });

let passed = 0;
let failed = 0;
let leftOut = 0;

/** Runs an npm script; true where it succeeded. */
function run(script, ...options) {
  const started = Date.now();
  console.log(`\n— npm run ${script}`);
  const separator = options.length > 0 ? ['--', ...options] : [];
  const { status } = spawnSync('npm', ['run', '--silent', script, ...separator], {
    stdio: 'inherit',
    shell: process.platform === 'win32',
  });
  console.log(`  ${script}: ${((Date.now() - started) / 1000).toFixed(1)} s`);
  return status === 0;
}

/** A step without tests of its own counts as one. */
function step(script) {
  if (run(script)) passed += 1;
  else failed += 1;
}

/**
 * A step with a runner: its report says how many passed, failed, and where it may be so were left
 * out because what they need cannot be had here; no report is a failure.
 */
function tests(script, report, count, ...options) {
  rmSync(new URL(report, cache), { force: true });
  const succeeded = run(script, ...options);
  let counted = { passed: 0, failed: 0 };
  try {
    counted = count(JSON.parse(readFileSync(new URL(report, cache), 'utf8')));
  } catch {
    console.log(`  ${script} left no report`);
  }
  passed += counted.passed;
  failed += counted.failed;
  leftOut += counted.leftOut ?? 0;
  // A runner that failed outside its tests, or found none, has failed.
  const found = counted.passed + counted.failed + (counted.leftOut ?? 0);
  if ((!succeeded && counted.failed === 0) || found === 0) failed += 1;
}

step('check');
step('types');
tests(
  'test:unit',
  'unit-tests.json',
  (report) => ({ passed: report.numPassedTests, failed: report.numFailedTests }),
  '--reporter=default',
  '--reporter=json',
  '--outputFile.json=.cache/unit-tests.json',
);
step('build');
for (const [script, report] of [
  ['test:browser', 'browser-tests.json'],
  ['test:faults', 'fault-tests.json'],
]) {
  tests(script, report, ({ stats }) => ({
    passed: stats.expected + stats.flaky,
    failed: stats.unexpected,
  }));
}
tests('test:webkit', 'webkit-tests.json', (report) => ({
  passed: report.numPassedTests,
  failed: report.numFailedTests,
  leftOut: report.numPendingTests,
}));

if (leftOut > 0) console.log(`\n${leftOut} tests were left out, as said above`);

console.log(`\n${passed} passed, ${failed} failed`);
process.exit(failed === 0 ? 0 : 1);
