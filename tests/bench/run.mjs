/*
 * `npm run bench`: what has a goal, measured in one run and printed as a table; it fails where a goal
 * is missed, and needs a build in dist/. With names it prints only those rows (court, opening, memory,
 * screens, season, estimate, r, weight) or what else can be measured: `npm run bench -- court levels`.
 */
import { runnerImport } from 'vite';

/** Each file with the function that gives its lines. */
const benches = {
  'set-size': 'setSizeBench',
  touches: 'touchesBench',
  figures: 'figuresBench',
  levels: 'levelsBench',
  planning: 'planningBench',
  club: 'clubBench',
};

async function print(file, bench, ...given) {
  const { module } = await runnerImport(`./tests/bench/${file}.ts`, {
    configFile: false,
    logLevel: 'error',
  });
  for (const line of await module[bench](...given)) console.log(line);
  console.log('');
}

const asked = process.argv.slice(2);
for (const [file, bench] of Object.entries(benches)) {
  if (asked.includes(file)) await print(file, bench);
}
const rows = asked.filter((name) => !(name in benches));
if (rows.length > 0 || asked.length === 0) await print('table', 'tableBench', rows);
