import { describe, expect, test } from 'vitest';
import { tallyRows } from '../../../core/exchange/tallies.ts';
import { shares, turnedAfter } from '../../../core/figures/counted.ts';
import { estimateOf, estimateTally } from '../../../core/figures/estimate.ts';
import { lastPractised } from '../../../core/figures/last-practised.ts';
import { levelTallies } from '../../../core/figures/level-tallies.ts';
import { pairStints, playerStints } from '../../../core/figures/stints.ts';
import { byDrill, byPlayer } from '../../../core/figures/totals.ts';
import { ownDay, pairUsual } from '../../../core/figures/usual.ts';
import type { PlayedRound } from '../../../core/ledger/summary.ts';
import { lobTerms, practiceWith, roundWith, serveTerms, termsWith } from '../made.ts';

/** A round in which ana and bo were not heard, and cy and dot called three sets. */
function partlyHeard(): PlayedRound {
  const round = roundWith(0, termsWith(), [
    [['ana', 'bo'], 0],
    [['cy', 'dot'], 3],
  ]);
  round.tallies[0]!.unheard = ['ana', 'bo'];
  round.tallies[1]!.origin = 'called';
  return round;
}
const practice = () => practiceWith('2026-03-02', [partlyHeard()]);

describe('a count that was not heard', () => {
  test('is no round without a set in any rate, trend or advice: there is no stint of it', () => {
    expect([...playerStints([practice()]).keys()]).toEqual(['cy', 'dot']);
    expect(pairStints([practice()]).map(({ players }) => players)).toEqual([['cy', 'dot']]);
  });

  test('is not in the model of levels', () => {
    const round = partlyHeard();
    const estimate = estimateTally(round.terms, 120, round.tallies[1]!, undefined);
    const heard = practiceWith('2026-03-02', [
      { ...round, tallies: [round.tallies[0]!, { ...round.tallies[1]!, estimate }] },
    ]);
    expect(levelTallies([heard], false)?.tallies.map(({ players }) => players)).toEqual([
      ['cy', 'dot'],
    ]);
  });

  test('is no usual count and no own day', () => {
    const heard = practiceWith('2026-03-01', [roundWith(0, termsWith(), [[['ana', 'bo'], 4]])]);
    expect(pairUsual([heard, practice()], termsWith(), ['ana', 'bo'], 120)).toBe(4);
    expect(ownDay([], practice(), 'ana')).toEqual([]);
  });

  test('has no estimate', () => {
    const round = partlyHeard();
    expect(estimateOf(round, round.tallies[0]!, undefined)).toBeUndefined();
    expect(estimateOf(round, round.tallies[1]!, undefined)).toEqual(
      estimateTally(round.terms, 120, round.tallies[1]!, undefined),
    );
  });

  test('is time on court and practice of its strokes all the same, and is told', () => {
    expect(byPlayer([practice()]).get('ana')).toMatchObject({ seconds: 120, sets: 0, unheard: 1 });
    expect(byPlayer([practice()]).get('cy')).toMatchObject({ sets: 3, unheard: 0 });
    expect(byDrill([practice()]).get('rally')).toMatchObject({ sets: 3, unheard: 1 });
    const { players } = lastPractised([practice()], '2026-03-02');
    expect(players.get('ana')?.strokes.groundstroke).toBe('2026-03-02');
  });

  test('leaves its cells of the table empty, which says why', () => {
    const [header, ...rows] = tallyRows([practice()], { player: (id) => id, drill: () => 'rally' });
    const at = (column: string) => header!.indexOf(column);
    const cells = (row: unknown[]) =>
      ['player', 'sets', 'touches_counted', 'sets_per_minute', 'live_seconds', 'counted_by'].map(
        (column) => row[at(column)],
      );
    expect(cells(rows[0]!)).toEqual(['ana', undefined, undefined, undefined, 120, 'not heard']);
    expect(cells(rows[2]!)).toEqual(['cy', 3, 15, 1.5, 120, 'called']);
  });

  test('of one player on target takes nothing from the other', () => {
    const round = roundWith(0, serveTerms, [[['ana', 'bo'], { ana: 8, bo: 0 }]]);
    round.tallies[0]!.unheard = ['bo'];
    const estimate = estimateOf(round, round.tallies[0]!, undefined)!;
    expect(Object.keys(estimate.own!)).toEqual(['ana']);
    // The same share as that of a pair of whom both met it as often.
    const both = { ...round.tallies[0]!, sets: 16, byPlayer: { ana: 8, bo: 8 } };
    const { unheard: _, ...known } = both;
    const whole = estimateOf(round, known, undefined)!;
    expect(estimate.own!.ana).toEqual(whole.own!.ana);
    expect(Math.abs(estimate.shots - whole.shots)).toBeLessThan(0.02 * whole.shots);
  });
});

describe('a pair that turned its roles in mid-round', () => {
  const tally = (times: number[], sets = times.length) => ({
    ...{ pair: { letter: 'A', players: ['ana', 'bo'] }, sets, times, turned: 60 },
  });

  test('has each role’s strokes of the sets before the turn and after it', () => {
    const [ana, bo] = shares(lobTerms, tally([20, 40, 55, 70]), 120);
    expect(ana).toMatchObject({ sets: 4, touches: { lob: 3, overhead: 1 } });
    expect(bo).toMatchObject({ sets: 4, touches: { lob: 1, overhead: 3 } });
  });

  test('shares by the clock what was called, for nobody saw when', () => {
    const [ana] = shares(lobTerms, { ...tally([], 5), turned: 72 }, 120);
    expect(ana!.touches.lob).toBeCloseTo(3, 10);
    expect(ana!.touches.overhead).toBeCloseTo(2, 10);
    expect(turnedAfter({ span: { from: 20, to: 100 }, turned: 40 }, 120)).toBe(0.25);
    expect(turnedAfter({ turned: 40 }, 0)).toBe(0);
  });

  test('has practised both roles’ strokes', () => {
    const round = roundWith(0, lobTerms, [[['ana', 'bo'], 2]]);
    round.tallies[0]!.turned = 60;
    const { players } = lastPractised([practiceWith('2026-03-02', [round])], '2026-03-02');
    expect(Object.keys(players.get('ana')!.strokes).toSorted()).toEqual(['lob', 'overhead']);
  });
});

describe('a pair that played part of a round', () => {
  test('has its own clock in every rate', () => {
    const round = roundWith(0, termsWith(), [[['ana', 'bo'], 2]]);
    round.tallies[0]!.span = { from: 0, to: 50 };
    const summary = practiceWith('2026-03-02', [round]);
    expect(playerStints([summary]).get('ana')![0]).toMatchObject({ seconds: 50, sets: 2 });
    expect(byPlayer([summary]).get('ana')!.seconds).toBe(50);
    expect(pairUsual([summary], termsWith(), ['ana', 'bo'], 100)).toBe(4);
    const own = { ...round.tallies[0]!, times: [22, 47] };
    expect(estimateOf(round, own, undefined)).toEqual(
      estimateTally(round.terms, 50, own, undefined),
    );
  });

  test('has its sets timed from its own start', () => {
    const round = roundWith(0, termsWith(), [[['ana', 'bo'], 2]]);
    const late = { ...round.tallies[0]!, span: { from: 60, to: 120 }, times: [82, 107] };
    expect(estimateOf(round, late, undefined)).toEqual(
      estimateTally(round.terms, 60, { ...late, times: [22, 47] }, undefined),
    );
  });
});
