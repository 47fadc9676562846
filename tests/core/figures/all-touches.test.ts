import { describe, expect, test } from 'vitest';
import { sumEstimates } from '../../../core/figures/all-touches.ts';
import { pairStints, playerStints } from '../../../core/figures/stints.ts';
import type { PlayedRound } from '../../../core/ledger/summary.ts';
import { lobTerms, practiceWith, roundWith, serveTerms, termsWith } from '../made.ts';
import { estimatedRound, estimateWith } from './estimated.ts';

const rally = termsWith();
const volley = termsWith({ drill: 'volley' });
const play = (terms = rally, players = ['a', 'b'], sets = 4) =>
  roundWith(0, terms, [[players, sets]]);
const known = (shots: number, sd: number, round = play(), over = {}) =>
  estimatedRound(round, estimateWith(shots, sd, over));
const own = (player: string, ...days: PlayedRound[][]) =>
  playerStints(days.map((rounds, day) => practiceWith(`2026-03-0${day + 1}`, rounds))).get(
    player,
  ) ?? [];
const sumOf = (player: string, ...days: PlayedRound[][]) => sumEstimates(own(player, ...days));
const pairsOf = (...days: PlayedRound[][]) =>
  sumEstimates(pairStints(days.map((rounds, day) => practiceWith(`2026-03-0${day + 1}`, rounds))));
const REACH = 1.2815515655446004;

describe('all touches', () => {
  test('of nothing are not known, and none were counted', () => {
    expect(sumEstimates([])).toEqual({ counted: 0, waiting: 0, doubted: 0 });
  });

  test('of one round are half the pair’s, the whole limits of it rounded outwards', () => {
    // From 49.6 to 62.4 the whole shots are 50 to 62, of which halves are 25 and 31.
    expect(sumOf('a', [known(56, 5)])).toEqual({
      counted: 20,
      waiting: 0,
      doubted: 0,
      all: { touches: 28, low: 25, high: 31 },
    });
    // From 50.6 to 61.4 they are 51 to 61: 25.5 and 30.5.
    expect(sumOf('a', [known(56, 4.2)]).all).toMatchObject({ low: 25, high: 31 });
  });

  test('of one round have its own quantiles, however skew', () => {
    const skew = known(56, 5, play(), { low: 52, high: 70 });
    expect(sumOf('a', [skew]).all).toEqual({ touches: 28, low: 26, high: 35 });
  });

  test('of independent rounds vary by the root of the summed squares, not end to end', () => {
    const rounds = [known(60, 3), known(60, 4, play(volley))];
    expect(pairsOf(rounds).all).toEqual({
      touches: 120,
      low: Math.ceil(120 - REACH * 5),
      high: Math.floor(120 + REACH * 5),
    });
  });

  test('of a player over several rounds vary also by who of a pair strikes more', () => {
    const rounds = [known(60, 3), known(60, 4, play(volley))];
    const sd = Math.hypot(5 / 2, 1.5 * Math.SQRT2);
    expect(sumOf('a', rounds).all).toEqual({
      touches: 60,
      low: Math.floor(Math.ceil(2 * (60 - REACH * sd)) / 2),
      high: Math.ceil(Math.floor(2 * (60 + REACH * sd)) / 2),
    });
  });

  test.each([
    ['of one drill played by the same two in one practice', [[known(60, 3), known(60, 4)]]],
    ['whoever began', [[known(60, 3), known(60, 4, play(rally, ['b', 'a']))]]],
    [
      'that lean on the same tempo check, in whatever practice and with whomever',
      [
        [known(60, 3, play(), { pace: { tempo: 1.4 } })],
        [known(60, 4, play(rally, ['a', 'c']), { pace: { tempo: 1.4 } })],
      ],
    ],
  ])('of rounds %s err together: their sds add', (_, days) => {
    expect(pairsOf(...days).all).toMatchObject({
      low: Math.ceil(120 - REACH * 7),
      high: Math.floor(120 + REACH * 7),
    });
  });

  test.each([
    ['another day', [[known(60, 3)], [known(60, 4)]]],
    ['another partner', [[known(60, 3), known(60, 4, play(rally, ['a', 'c']))]]],
    [
      'another check',
      [
        [
          known(60, 3, play(), { pace: { tempo: 1.4 } }),
          known(60, 4, play(), { pace: { tempo: 1.5 } }),
        ],
      ],
    ],
    [
      'another drill of the same tempo',
      [
        [
          known(60, 3, play(), { pace: { tempo: 1.4 } }),
          known(60, 4, play(volley), { pace: { tempo: 1.4 } }),
        ],
      ],
    ],
  ])('of rounds with %s are independent', (_, days) => {
    expect(pairsOf(...days).all?.low).toBe(Math.ceil(120 - REACH * 5));
  });

  test('are what was counted and a part of the rest, so never below what was counted', () => {
    expect(sumOf('a', [known(40.4, 3)]).all).toEqual({
      touches: expect.closeTo(20.2, 9),
      low: 20,
      high: 22,
    });
    // Eight sets of five: three of each by a, two by b, and half of the one shot beyond by either.
    const odd = play(termsWith({ size: 5 }), ['a', 'b'], 8);
    expect(sumOf('a', [known(41, 0.1, odd)])).toMatchObject({
      counted: 24,
      all: { touches: 24.5, low: 24, high: 25 },
    });
    expect(sumOf('b', [known(41, 0.1, odd)]).all).toEqual({ touches: 16.5, low: 16, high: 17 });
  });

  test('on target are half of the balls, and never fewer than met the target', () => {
    const target = roundWith(0, serveTerms, [[['a', 'b'], { a: 12, b: 0 }]]);
    const rounds = [known(40, 3, target)];
    expect(sumOf('a', rounds).all?.touches).toBe(20);
    expect(sumOf('b', rounds).all?.touches).toBe(20);
    expect(sumOf('a', [known(20, 3, target)]).all).toEqual({ touches: 12, low: 12, high: 12 });
  });

  test('are not known while a round waits for its estimate, but what was counted is', () => {
    expect(sumOf('a', [known(56, 5), play(volley)])).toEqual({
      counted: 40,
      waiting: 1,
      doubted: 0,
    });
  });

  test('say how many rounds have more sets than their clock allows', () => {
    const doubted = known(300, 0, play(rally, ['a', 'b'], 30), { implausible: true });
    expect(sumOf('a', [doubted, known(60, 3, play(volley))]).doubted).toBe(1);
  });

  test('of no round with live clock are exactly what was counted', () => {
    const still = known(0, 0, play(rally, ['a', 'b'], 0));
    expect(sumOf('a', [still]).all).toEqual({ touches: 0, low: 0, high: 0 });
  });

  test('with limits between two whole numbers keep both', () => {
    const narrow = known(40.5, 0.1, play(rally, ['a', 'b'], 0));
    const [pair] = pairStints([practiceWith('2026-03-01', [narrow])]);
    expect(sumEstimates([pair!]).all).toMatchObject({ low: 40, high: 41 });
  });

  test('of a sequence are as much as the role strikes of it', () => {
    const serve = termsWith({
      rule: 'sequence',
      size: 3,
      shots: [
        { role: 0, stroke: 'serve' },
        { role: 1, stroke: 'return' },
        { role: 0, stroke: 'groundstroke' },
      ],
    });
    const rounds = [known(45, 3, play(serve, ['a', 'b'], 10))];
    // From 41.2 to 48.8: whole 42 to 48, of which two thirds are 28 and 32.
    expect(sumOf('a', rounds).all).toEqual({ touches: 30, low: 28, high: 32 });
    expect(sumOf('b', rounds).all).toEqual({ touches: 15, low: 14, high: 16 });
  });

  test('of unlike parts are rounded outwards as they are', () => {
    // Six sets, two of which a rested in, and two touches in each of the other four.
    const trio = estimatedRound(
      roundWith(1, lobTerms, [[['a', 'b', 'c'], 6]]),
      estimateWith(33, 3),
    );
    const { all } = sumOf('a', [known(60, 4), trio]);
    const part = 0.5 * (1 - 2 / 7);
    const mean = 30 + 4 + part * (33 - 12);
    const sd = Math.hypot(4 / 2, 3 * part, 1.5 * Math.SQRT2);
    expect(all).toEqual({
      touches: expect.closeTo(mean, 9),
      low: Math.floor(mean - REACH * sd),
      high: Math.ceil(mean + REACH * sd),
    });
  });

  test('of a role that strikes nothing are none', () => {
    const fed = termsWith({ rule: 'in-a-row', shots: [{ role: 0, stroke: 'volley' }] });
    expect(sumOf('b', [known(60, 4, play(fed))]).all).toEqual({ touches: 0, low: 0, high: 0 });
    expect(sumOf('a', [known(60, 4, play(fed))]).all?.touches).toBe(60);
  });
});
