import { fileURLToPath } from 'node:url';
import { afterEach, beforeAll, describe, test } from 'vitest';
import { builtApp } from './phone/built.ts';
import { holdScreens, holdTiles, holdWhole } from './walk/held-against.ts';
import { Walk } from './walk/walk.ts';

/*
 * Ten walks of a week here. `WALKS=200 npm run test:unit -- tests/app/walk.test.ts` is the large run,
 * of three weeks each; `WALK=17` is walk 17 of it, with all that was done in it.
 */
const { WALK, WALKS } = process.env;
const DAYS = WALK || WALKS ? 21 : 7;
const SEEDS = WALK
  ? [Number(WALK)]
  : Array.from({ length: Number(WALKS ?? 10) }, (_, at) => at + 1);

/** A day takes a tenth of it on a machine that has nothing else to do. */
const DAY_MS = 10_000;

const here = (path: string) => fileURLToPath(new URL(path, import.meta.url));

describe('a coach and a phone, led by chance', () => {
  let script: string;
  let walk: Walk | undefined;
  beforeAll(async () => {
    script = await builtApp({ 'core/figures/touches.ts': here('walk/stub-touches.ts') });
  });
  afterEach(() => walk?.end());

  test.each(SEEDS)(
    'show the numbers of the raw entries on every screen (walk %i)',
    async (seed) => {
      walk = new Walk(script, seed, DAYS, {
        tiles: holdTiles,
        screens: holdScreens,
        whole: holdWhole,
      });
      try {
        await walk.go();
      } finally {
        if (WALK) console.log(walk.done.join('\n'));
      }
    },
    DAYS * DAY_MS,
  );
});
