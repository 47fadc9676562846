import { describe, expect, test } from 'vitest';
import { fociHeld } from '../../../core/figures/focus-held.ts';
import { minimalStandard, PLAYERS, seasonOfLooks } from './simulated-looks.ts';

const SEASONS = 120;
/** Some looks cannot be seen: a player stands behind another, or has just stopped. */
const UNSEEN = 0.1;

/** The shares of players, and of squads, of whom a fall is called. */
function calledFalling(truth: (player: number, week: number) => number, seed: number) {
  const draw = minimalStandard(seed);
  let players = 0;
  let squads = 0;
  for (let season = 0; season < SEASONS; season++) {
    const [focus] = fociHeld(seasonOfLooks(draw, truth, UNSEEN));
    players += focus!.players.filter(({ change }) => change === 'falling').length;
    squads += focus!.change === 'falling' ? 1 : 0;
  }
  return { players: players / (SEASONS * PLAYERS), squads: squads / SEASONS };
}

describe('over simulated seasons with known true shares', () => {
  test('the interval of a share covers the truth as often as it says, within 3 points', () => {
    const draw = minimalStandard(11);
    let covered = 0;
    for (let season = 0; season < SEASONS; season++) {
      const truths = Array.from({ length: PLAYERS }, () => 0.25 + 0.7 * draw());
      const [focus] = fociHeld(seasonOfLooks(draw, (player) => truths[player]!, UNSEEN));
      for (const { player, now } of focus!.players) {
        const truth = truths[Number(player.slice(1))]!;
        if (now.share!.low <= truth && truth <= now.share!.high) covered += 1;
      }
    }
    const share = covered / (SEASONS * PLAYERS);
    console.log(`the 95% interval of a share covers ${(100 * share).toFixed(1)}%`);
    expect(share).toBeGreaterThan(0.92);
    expect(share).toBeLessThan(0.98);
  });

  test('a true fall from 80% to 55% is called of 80% of players at the least', () => {
    const called = calledFalling((_, week) => (week < 4 ? 0.8 : 0.55), 12);
    console.log(`a fall from 80% to 55% is called of ${(100 * called.players).toFixed(1)}%`);
    expect(called.players).toBeGreaterThan(0.8);
    expect(called.squads).toBeGreaterThan(0.99);
  });

  test.each([0.5, 0.6, 0.7, 0.8, 0.9, 0.95])(
    'where the share stays at %d a fall is called of 10% at the most',
    (stays) => {
      const called = calledFalling(() => stays, 100 * stays);
      console.log(
        `without a fall from ${stays} one is called of ${(100 * called.players).toFixed(1)}%`,
      );
      expect(called.players).toBeLessThan(0.1);
      // Of so few squads, twice the standard error of 10%.
      expect(called.squads).toBeLessThan(0.1 + 2 * Math.sqrt((0.1 * 0.9) / SEASONS));
    },
  );
});
