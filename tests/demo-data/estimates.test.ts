import { describe, expect, test } from 'vitest';
import { sumEstimates } from '../../core/figures/all-touches.ts';
import { estimateTally } from '../../core/figures/estimate.ts';
import { playerStints } from '../../core/figures/stints.ts';
import { foldPractice } from '../../core/ledger/practice.ts';
import { type Summary, summarise } from '../../core/ledger/summary.ts';
import { DEMO_SEED, season } from '../../demo-data/season.ts';

/*
 * The invented season knows every shot that was struck. It was played by rules of its own, with
 * partners of unequal skill, good and bad days, late taps and slips: nothing that the model of
 * touches was made from.
 */

const { practices, truth } = season({ seed: DEMO_SEED, lastDate: '2026-03-04' });
const AFTERWARDS = Date.parse('2026-04-01');

const summaries = practices.map(({ entries }) => {
  const practice = foldPractice(entries);
  if (!practice) throw new Error('no entry opened the practice');
  const summary = summarise(practice, AFTERWARDS);
  return {
    ...summary,
    rounds: summary.rounds.map((round) => ({
      ...round,
      tallies: round.tallies.map((tally) => ({
        ...tally,
        estimate: estimateTally(round.terms, round.seconds, tally, undefined),
      })),
    })),
  };
});
const truthOf = new Map(truth.map((known) => [`${known.round} ${known.pair}`, known]));

const share = (held: readonly boolean[]) => held.filter(Boolean).length / held.length;

describe('the estimates of the invented season', () => {
  const rounds = summaries.flatMap((summary) =>
    summary.rounds.flatMap((round) =>
      round.tallies.map(({ pair, sets, estimate }) => ({
        estimate,
        shots: truthOf.get(`${round.id} ${pair.letter}`)?.shots ?? Number.NaN,
        proved: sets * round.terms.size,
      })),
    ),
  );

  test('hold the shots that were struck in about eight rounds of ten', () => {
    expect(rounds.length).toBeGreaterThan(900);
    const held = rounds.map(
      ({ shots, estimate: { low, high } }) => Math.ceil(low) <= shots && shots <= Math.floor(high),
    );
    expect(share(held)).toBeGreaterThan(0.75);
    expect(share(held)).toBeLessThan(0.86);
  });

  test('come within two per cent of all shots, of which counting alone shows less than two thirds', () => {
    const sum = (of: (round: (typeof rounds)[number]) => number) =>
      rounds.reduce((all, round) => all + of(round), 0);
    const struck = sum(({ shots }) => shots);
    expect(Math.abs(sum(({ estimate }) => estimate.shots) / struck - 1)).toBeLessThan(0.02);
    expect(sum(({ proved }) => proved) / struck).toBeLessThan(0.66);
  });

  test('doubt no count, since none was impossible', () => {
    expect(rounds.filter(({ estimate }) => estimate.implausible)).toEqual([]);
  });

  /** How often a player's limits over each span hold what the player struck in it. */
  const held = (spans: readonly Summary[][]) =>
    spans.flatMap((span) => {
      const struck = new Map<string, number>();
      for (const { id, tallies } of span.flatMap((summary) => summary.rounds)) {
        for (const { pair } of tallies) {
          for (const [player, shots] of Object.entries(
            truthOf.get(`${id} ${pair.letter}`)!.struck,
          )) {
            struck.set(player, (struck.get(player) ?? 0) + shots);
          }
        }
      }
      return [...playerStints(span)].map(([player, stints]) => {
        const { all } = sumEstimates(stints);
        const shots = struck.get(player) ?? 0;
        return all !== undefined && all.low <= shots && shots <= all.high;
      });
    });

  test('added up to a player’s days and weeks hold about as often, and not much more often', () => {
    const days = held(summaries.map((summary) => [summary]));
    expect(days.length).toBeGreaterThan(300);
    expect(share(days)).toBeGreaterThan(0.78);
    expect(share(days)).toBeLessThan(0.93);
    const weeks = held(
      Array.from({ length: 12 }, (_, week) => summaries.slice(3 * week, 3 * week + 3)),
    );
    expect(share(weeks)).toBeGreaterThan(0.75);
    expect(share(weeks)).toBeLessThan(0.93);
  });
});
