/*
 * `npm test`: everything that has to hold before a change lands. Each step is an npm script that
 * can be run by itself. Steps that leave each other alone run side by side, for most of them wait
 * more than they work; each says what it has to say once it has ended. The last line adds up all
 * runners: `N passed, N failed`.
 */
import { spawn } from 'node:child_process';
import { mkdirSync, readFileSync, rmSync } from 'node:fs';
import { runnerImport } from 'vite';

const cache = new URL('../.cache/', import.meta.url);
mkdirSync(cache, { recursive: true });

/** What loads TypeScript here says that this is development, which no step may hear: it builds for good. */
const env = { ...process.env };
const { module } = await runnerImport('./tests/failures.ts', {
  configFile: false,
  logLevel: 'error',
});

let passed = 0;
let failed = 0;
let leftOut = 0;
/** What failed, each with the first of what was said of it: said again at the end, where it is looked for. */
const failures = [];

/** With names of steps, as in `npm test -- test:unit build`, only those. */
const asked = process.argv.slice(2);
const isLeftOut = (script) => asked.length > 0 && !asked.includes(script);

/** Runs an npm script; true where it succeeded. */
async function run(script, ...options) {
  const started = Date.now();
  console.log(`… npm run ${script}`);
  const separator = options.length > 0 ? ['--', ...options] : [];
  const child = spawn('npm', ['run', '--silent', script, ...separator], {
    stdio: ['inherit', 'pipe', 'pipe'],
    shell: process.platform === 'win32',
    env: { ...env, ...(process.stdout.isTTY && { FORCE_COLOR: '1' }) },
  });
  const said = [];
  for (const stream of [child.stdout, child.stderr]) stream.on('data', (data) => said.push(data));
  const status = await new Promise((resolve) => {
    child.once('error', resolve);
    child.once('close', resolve);
  });
  const seconds = ((Date.now() - started) / 1000).toFixed(1);
  console.log(`\n— npm run ${script}\n${Buffer.concat(said)}  ${script}: ${seconds} s`);
  return status === 0;
}

/** A step without tests of its own counts as one. */
async function step(script) {
  if (isLeftOut(script)) return;
  if (await run(script)) passed += 1;
  else {
    failed += 1;
    failures.push(script);
  }
}

/**
 * A step with a runner: its report says how many passed, failed, and where it may be so were left
 * out because what they need cannot be had here; no report is a failure.
 */
async function tests(script, report, count, ...options) {
  if (isLeftOut(script)) return;
  rmSync(new URL(report, cache), { force: true });
  const succeeded = await run(script, ...options);
  let counted = { passed: 0, failed: 0 };
  try {
    const said = JSON.parse(readFileSync(new URL(report, cache), 'utf8'));
    counted = count(said);
    failures.push(...module.failuresIn(said).map((failure) => `${script} › ${failure}`));
  } catch {
    console.log(`  ${script} left no report`);
  }
  passed += counted.passed;
  failed += counted.failed;
  leftOut += counted.leftOut ?? 0;
  // A runner that failed outside its tests, or found none, has failed.
  const found = counted.passed + counted.failed + (counted.leftOut ?? 0);
  if ((!succeeded && counted.failed === 0) || found === 0) {
    failed += 1;
    failures.push(script);
  }
}

const unit = () =>
  tests(
    'test:unit',
    'unit-tests.json',
    (report) => ({ passed: report.numPassedTests, failed: report.numFailedTests }),
    '--reporter=default',
    '--reporter=json',
    '--outputFile.json=.cache/unit-tests.json',
  );
const inBrowser = (script, report) =>
  tests(script, report, ({ stats }) => ({ passed: stats.expected, failed: stats.unexpected }));
const inWebKit = () =>
  tests('test:webkit', 'webkit-tests.json', (report) => ({
    passed: report.numPassedTests,
    failed: report.numFailedTests,
    leftOut: report.numPendingTests,
  }));

const engines = run('test:engines');
await Promise.all([step('check'), step('types'), step('build')]);
await Promise.all([
  unit()
    .then(() => engines)
    .then(() => inBrowser('test:browser', 'browser-tests.json')),
  engines.then(inWebKit).then(() => inBrowser('test:faults', 'fault-tests.json')),
]);

for (const failure of failures) console.log(`\nfailed: ${failure}`);
if (leftOut > 0) console.log(`\n${leftOut} tests were left out, as said above`);

console.log(`\n${passed} passed, ${failed} failed`);
process.exit(failed === 0 ? 0 : 1);
