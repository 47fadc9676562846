/*
 * `npm run test:any-hour`: the tests at hours and in zones at which a test that reads the machine's
 * clock would fail. The wall clock of Node, of the browsers and of all that they start is set by
 * libfaketime, which is put in where that can be done (as root on Debian); steady clocks, timers and
 * the times of files are the machine's own.
 *
 *   -- --times 1           once each, not twice
 *   -- --only midnight     the moments whose name holds one of these words
 *   -- test:unit           these steps of `npm test` only
 *
 * What each run said lies in .cache/any-hour/.
 */
import { spawn, spawnSync } from 'node:child_process';
import { createWriteStream, existsSync, mkdirSync, readdirSync, readFileSync } from 'node:fs';
import { parseArgs } from 'node:util';
import { runnerImport } from 'vite';

/** The time is that of the zone, or of UTC where it ends in Z. Summer time as in the European Union. */
const MOMENTS = [
  { name: 'shortly before midnight', at: '2026-11-24 23:58:00', zone: 'UTC' },
  { name: 'half past midnight', at: '2026-11-25 00:30:00', zone: 'UTC' },
  { name: 'noon', at: '2026-11-25 12:00:00', zone: 'UTC' },
  { name: 'a leap day', at: '2028-02-29 23:58:00', zone: 'Europe/Paris' },
  { name: 'summer time begins', at: '2027-03-28 01:58:00', zone: 'Europe/Paris' },
  { name: 'summer time ends', at: '2026-10-25 02:58:00', zone: 'Europe/Paris' },
  { name: 'the first zone', at: '2026-11-25 00:30:00', zone: 'Pacific/Kiritimati' },
  { name: 'a zone of half an hour', at: '2026-11-25 03:30:00', zone: 'Asia/Kolkata' },
  { name: 'one of the last zones', at: '2026-11-24 22:30:00', zone: 'Pacific/Honolulu' },
];

const { values, positionals } = parseArgs({
  allowPositionals: true,
  options: {
    times: { type: 'string', default: '2' },
    only: { type: 'string', multiple: true, default: [] },
  },
});
const times = Number(values.times);
const moments = MOMENTS.filter(
  ({ name }) => values.only.length === 0 || values.only.some((word) => name.includes(word)),
);

/** What loads TypeScript here says that this is development, which no run may hear: it builds for good. */
const own = { ...process.env };
const library = await findLibrary();
const folder = new URL('../.cache/any-hour/', import.meta.url);
mkdirSync(folder, { recursive: true });

const results = [];
for (const moment of moments) {
  for (let time = 1; time <= times; time++) {
    const log = new URL(`${moment.name.replaceAll(' ', '-')}-${time}.log`, folder);
    console.log(`… ${moment.name}, ${moment.at} ${moment.zone}, ${time} of ${times}`);
    const status = await run(['tests/run.mjs', ...positionals], clockAt(moment), log);
    const said = readFileSync(log, 'utf8').trimEnd().split('\n').at(-1);
    console.log(`  ${said}`);
    results.push({ ...moment, said, status });
  }
}

console.log('');
for (const { name, at, zone, said } of results) {
  console.log(`${name.padEnd(24)} ${at} ${zone.padEnd(19)} ${said}`);
}
const failed = results.filter(({ status }) => status !== 0).length;
console.log(`\n${results.length - failed} runs passed, ${failed} failed`);
process.exit(failed === 0 ? 0 : 1);

/** Runs Node with an environment, and keeps what it says in a file. */
async function run(given, env, log) {
  const file = createWriteStream(log);
  const child = spawn(process.execPath, given, { env, stdio: ['ignore', 'pipe', 'pipe'] });
  for (const stream of [child.stdout, child.stderr]) stream.pipe(file, { end: false });
  const status = await new Promise((resolve) => child.once('close', resolve));
  await new Promise((resolve) => file.end(resolve));
  return status;
}

/**
 * The environment in which the wall clock shows that moment now.
 *
 * @throws Error where the clock does not follow
 */
function clockAt({ name, at, zone }) {
  const there = { ...own, TZ: zone };
  const print = (code, env) =>
    Number(spawnSync(process.execPath, ['-p', code], { env, encoding: 'utf8' }).stdout);
  const wanted = print(`Date.parse(${JSON.stringify(at.replace(' ', 'T'))})`, there);
  const ahead = Math.round((wanted - Date.now()) / 1000);
  const env = {
    ...there,
    LD_PRELOAD: library,
    FAKETIME: `${ahead < 0 ? '' : '+'}${ahead}s`,
    // Timers and whatever measures how long a thing takes.
    FAKETIME_DONT_FAKE_MONOTONIC: '1',
    DONT_FAKE_MONOTONIC: '1',
    NO_FAKE_STAT: '1',
  };
  if (Math.abs(print('Date.now()', env) - wanted) > 30_000) {
    throw new Error(`${name}: the clock could not be set`);
  }
  return env;
}

/** @throws Error where it is not there and cannot be put in */
async function findLibrary() {
  const { module } = await runnerImport('./tests/debian.ts', {
    configFile: false,
    logLevel: 'error',
  });
  const find = () =>
    readdirSync('/usr/lib')
      .map((machine) => `/usr/lib/${machine}/faketime/libfaketimeMT.so.1`)
      .find((path) => existsSync(path));
  const there = find();
  if (there) return there;
  module.putIn(['libfaketime']);
  const found = find();
  if (!found) throw new Error('libfaketime is not here: put it in, or run this as root on Debian');
  return found;
}
