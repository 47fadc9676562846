/*
 * `npm run test:faults`: breaks things on purpose, in a real browser with a real profile folder,
 * and prints what came of it. `-- --large` does it many more times; other arguments are handed on.
 */
import { spawnSync } from 'node:child_process';

const given = process.argv.slice(2);
const large = given.includes('--large');
const { status } = spawnSync(
  'npx',
  [
    ...['playwright', 'test', '--config', 'tests/faults/playwright.config.ts'],
    ...given.filter((each) => each !== '--large'),
  ],
  {
    stdio: 'inherit',
    shell: process.platform === 'win32',
    env: { ...process.env, FAULTS: large ? 'large' : 'small' },
  },
);
process.exit(status ?? 1);
