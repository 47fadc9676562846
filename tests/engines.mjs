/*
 * `npm run test:engines`: the browsers that the tests run in are looked for, and put in where they
 * are not there, so that no runner does so in its own time.
 */
import { runnerImport } from 'vite';

const { module } = await runnerImport('./tests/engines.ts', {
  configFile: false,
  logLevel: 'error',
});
module.findEngines();
