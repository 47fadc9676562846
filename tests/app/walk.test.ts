import { fileURLToPath } from 'node:url';
import { afterEach, beforeAll, describe, test } from 'vitest';
import { builtApp } from './phone/built.ts';
import { holdScreens, holdTiles, holdWhole } from './walk/held-against.ts';
import { Walk } from './walk/walk.ts';

/*
 * `WALKS=200 npm run test:unit -- tests/app/walk.test.ts` is the large run; `WALK=17` the one walk of
 * that seed, with all that was done in it.
 */
const SEEDS = process.env.WALK
  ? [Number(process.env.WALK)]
  : Array.from({ length: Number(process.env.WALKS ?? 10) }, (_, at) => at + 1);

const here = (path: string) => fileURLToPath(new URL(path, import.meta.url));

describe('three weeks of a coach, led by chance', () => {
  let script: string;
  let walk: Walk | undefined;
  beforeAll(async () => {
    script = await builtApp({ 'core/figures/touches.ts': here('walk/stub-touches.ts') });
  });
  afterEach(() => walk?.end());

  test.each(SEEDS)(
    'show the numbers of the raw entries on every screen (walk %i)',
    async (seed) => {
      walk = new Walk(script, seed, {
        tiles: holdTiles,
        screens: holdScreens,
        whole: holdWhole,
      });
      try {
        await walk.go();
      } finally {
        if (process.env.WALK) console.log(walk.done.join('\n'));
      }
    },
  );
});
