import { fileURLToPath } from 'node:url';

/**
 * A phone with the invented season on it, all touches worked out, as the tests of a run that look
 * at it find it: made once a run, by demo-season.setup.ts.
 */
export const DEMO_SEASON = fileURLToPath(new URL('../../.cache/demo-season.json', import.meta.url));
