/*
 * `npm run bench`: what the app and its figures are worth, measured in one run and printed. It needs
 * a build in dist/. With names it runs those only: `npm run bench -- ledger`.
 */
import { runnerImport } from 'vite';

/** Each file with the function that gives its lines. */
const benches = {
  ledger: 'ledgerBench',
  'set-size': 'setSizeBench',
  touches: 'touchesBench',
  figures: 'figuresBench',
  levels: 'levelsBench',
  planning: 'planningBench',
  club: 'clubBench',
};

const asked = process.argv.slice(2);
for (const [file, bench] of Object.entries(benches)) {
  if (asked.length > 0 && !asked.includes(file)) continue;
  const { module } = await runnerImport(`./tests/bench/${file}.ts`, {
    configFile: false,
    logLevel: 'error',
  });
  for (const line of await module[bench]()) console.log(line);
  console.log('');
}
