import { describe, expect, it } from 'vitest';
import { attempts } from '../../../core/figures/attempts.ts';
import { shareGrid } from '../../../core/figures/share-grid.ts';
import { estimateShots, type TouchesRound } from '../../../core/figures/touches.ts';

describe('the grid of shares', () => {
  it('is finer where the prior is worth more than thirty shots', () => {
    expect(shareGrid(4, 1).points).toHaveLength(13);
    expect(shareGrid(29, 1).points).toHaveLength(13);
    expect(shareGrid(29, 2).points).toHaveLength(25);
  });

  it('has for every share the chances of that share, however long the rows were asked for before', () => {
    const size = 7;
    for (const most of [20, 300, 50, 90]) {
      const { points, attempts: attemptsAt } = shareGrid(4, 1);
      const ways = attemptsAt(size, most);
      points.forEach(({ share }, j) => {
        const alone = attempts(share, size, most);
        for (const misses of [0, 5, 2]) {
          const first = most + 1;
          expect(ways.failed(misses)[j]?.subarray(0, first)).toEqual(alone.failed(misses));
          expect(ways.goingOn(misses)[j]?.subarray(0, first)).toEqual(alone.goingOn(misses));
        }
      });
    }
  });
});

describe('what is kept from round to round', () => {
  it('changes no estimate, whatever other rounds were asked for in between', () => {
    const round: TouchesRound = {
      rule: 'in-a-row',
      size: 6,
      sets: 4,
      seconds: 120,
      times: [18, 41, 70, 99],
    };
    const first = estimateShots(round);
    for (let size = 1; size <= 20; size++) {
      estimateShots({ ...round, size });
      estimateShots({ ...round, size, seconds: 600, times: [150, 300, 400, 590] });
    }
    expect(estimateShots(round)).toEqual(first);
  });
});
