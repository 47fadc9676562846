import { expect, test } from 'vitest';
import { addDays } from '../../../core/calendar.ts';
import { fitLevels } from '../../../core/figures/level-fit.ts';
import { levelTallies } from '../../../core/figures/level-tallies.ts';
import { playerTrends } from '../../../core/figures/player-trends.ts';
import { lobTerms, practiceWith, roundWith, serveTerms, termsWith } from '../made.ts';
import { estimatedRound, estimateWith } from './estimated.ts';

const pair = ['a', 'b'];
const known = (round: ReturnType<typeof roundWith>) =>
  estimatedRound(
    round,
    estimateWith(50, 4, { success: { consistency: 0.8, consistencySd: 0.03 } }),
  );

test('of nothing there are none, and none of whoever never played', () => {
  expect(playerTrends([])).toEqual(new Map());
  const trends = playerTrends([
    practiceWith('2026-03-02', [roundWith(0, termsWith(), [[pair, 3]])]),
  ]);
  expect([...trends.keys()]).toEqual(pair);
});

test('every kind of work has its own, in the order of the families, a point each practice', () => {
  const season = ['2026-03-02', '2026-03-04'].map((date) =>
    practiceWith(date, [
      known(roundWith(0, lobTerms, [[pair, 5]])),
      known(roundWith(1, termsWith(), [[pair, 3]])),
      known(roundWith(2, serveTerms, [[pair, { a: 4, b: 2 }]])),
    ]),
  );
  const kinds = playerTrends(season).get('a') ?? [];
  expect(kinds.map(({ family, onTarget }) => [family, onTarget])).toEqual([
    ['groundstrokes', false],
    ['overheads-and-lobs', false],
    ['serves-and-returns', true],
  ]);
  for (const { trend } of kinds) {
    expect(trend.points.map(({ date }) => date)).toEqual(['2026-03-02', '2026-03-04']);
  }
});

test('they rest on the practices that the levels rest on, those of the last twelve weeks', () => {
  const days = [90, 84, 83, 40, 0].map((before) => addDays('2026-03-04', -before));
  const season = days.map((date) =>
    practiceWith(date, [known(roundWith(0, termsWith(), [[pair, 3]]))]),
  );
  const practices = playerTrends(season)
    .get('a')?.[0]
    ?.trend.points.map(({ date }) => date);
  expect(practices).toEqual(days.slice(2));
  const fit = fitLevels(levelTallies(season, false)!)!;
  expect(fit.tallies.map(({ practice }) => practice)).toEqual(practices);
  // One that was struck out ends nothing, and whoever was not seen lately has none.
  const later = { ...practiceWith('2026-09-01', []), struck: true as const };
  expect(playerTrends([...season, later])).toEqual(playerTrends(season));
  const others = practiceWith('2026-09-01', [known(roundWith(0, termsWith(), [[['c', 'd'], 3]]))]);
  expect([...playerTrends([...season, others]).keys()]).toEqual(['c', 'd']);
});
